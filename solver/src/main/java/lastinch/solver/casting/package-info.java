/** The job in the words of the trade: immutable, in SI units, without any grid. */
package lastinch.solver.casting;
