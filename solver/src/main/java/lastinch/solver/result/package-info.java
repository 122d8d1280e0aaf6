/** What a run found, as immutable values in SI units; words and pictures are made elsewhere. */
package lastinch.solver.result;
