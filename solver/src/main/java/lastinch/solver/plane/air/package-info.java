/** Air shut in over the plane. */
package lastinch.solver.plane.air;
