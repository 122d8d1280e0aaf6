/** Flow of metal over the plane with a free surface. */
package lastinch.solver.plane.flow;
