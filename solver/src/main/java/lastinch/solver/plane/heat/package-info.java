/** Heat of the metal and the mould over the plane. */
package lastinch.solver.plane.heat;
