/**
 * From the described job to the map of its cavity.
 *
 * <p>A part of the cavity is a {@link lastinch.solver.geometry.cavity.GapRegion}: a gap, a middle
 * height and a distance along, at any place of the parting plane. Limbs by stations ({@link
 * lastinch.solver.geometry.cavity.SweptLimb}), a drawn piece ({@link
 * lastinch.solver.geometry.cavity.SolidRegion}), bars, discs and the boss are regions. {@link
 * lastinch.solver.geometry.cavity.PieceShape} lays the piece out and knows where its rim is, {@link
 * lastinch.solver.geometry.cavity.GatingShape} makes regions of runner, gates, feeders and
 * overflows as {@link lastinch.solver.geometry.gating.GatingGeometry} says where they run and tells
 * of what misses the piece or lies over it. {@link lastinch.solver.geometry.cavity.CavityMap} fills
 * them all into the squares of one {@link lastinch.solver.casting.GapMap} by sampling ({@link
 * lastinch.solver.geometry.cavity.CellFilling}); the wall of a drawn piece is the true area of its
 * faces ({@link lastinch.solver.geometry.cavity.SolidWall}).
 *
 * <p>Conventions: x along the piece from the first station, y to the left seen from above with the
 * thick end towards the viewer, z along the draw; [m]. Where regions overlap the widest gap counts.
 * Cup, sprue and well are not in the map: the foot of the sprue and vents are openings of its
 * cells.
 *
 * <p>Mathematics: {@code solver/docs/geometry.md}, section 5.
 */
package lastinch.solver.geometry.cavity;
