/** What is kept of a run over the plane, and its conservation audit. */
package lastinch.solver.plane.record;
