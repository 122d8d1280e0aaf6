/**
 * A drawn solid: how it lies in the mould, where the mould parts, what it holds, and its cuts from
 * end to end.
 *
 * <p>How a model goes through it: {@link lastinch.solver.geometry.solid.PartOrientation} turns it
 * so that it is drawn along z and runs along x with its thick end first, and moves it so that z = 0
 * is the parting plane that locks least. {@link lastinch.solver.geometry.solid.SolidTree} answers,
 * for a line along the draw, how much of it lies inside, at what height, in how many stretches; all
 * else asks it. {@link lastinch.solver.geometry.solid.SlicedPart} draws a centreline ({@link
 * lastinch.solver.geometry.solid.BandCentreline}, then middles of chords) and cuts stations square
 * to it, or says that the piece is too wide or too branched for a channel. {@link
 * lastinch.solver.geometry.solid.UndercutAnalysis} marks where two halves of a mould could not come
 * apart, and {@link lastinch.solver.geometry.solid.ShapeReport} gathers it all.
 *
 * <p>Conventions: points x, y, z in one array [m], triangles anticlockwise from outside, closed
 * surfaces. Bodies may touch or lie in each other: what lies in two counts once. Faces are exact,
 * nothing is smoothed; only the centreline is found by search, and its slips are bounded by tests.
 * Reading files and mending surfaces is done elsewhere, before.
 *
 * <p>Mathematics: {@code solver/docs/geometry.md}, sections 2 to 4.
 */
package lastinch.solver.geometry.solid;
