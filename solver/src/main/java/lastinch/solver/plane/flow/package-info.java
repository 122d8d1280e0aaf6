/**
 * Flow of metal over the plane with a free surface: incompressible, averaged through the gap, with
 * wall friction, gravity, surface tension and pockets of air.
 *
 * <p>{@link lastinch.solver.plane.flow.PlaneGrid} lays square cells over the map, with cut cells at
 * the outline; {@link lastinch.solver.plane.flow.FlowState} holds what cells and faces have now.
 * One step of {@link lastinch.solver.plane.flow.PlaneFlow}, each part a class of its own:
 *
 * <ol>
 *   <li>{@link lastinch.solver.plane.flow.PlaneInlets}: what comes in from the sprue ({@link
 *       lastinch.solver.plane.flow.Downsprue}).
 *   <li>{@link lastinch.solver.plane.flow.VofAdvection} with {@link
 *       lastinch.solver.plane.flow.PlicCut}: volumes that cross the faces. Everything else is moved
 *       by these same volumes.
 *   <li>{@link lastinch.solver.plane.flow.FaceMomentum}: speeds by momentum alone. Heat and gate
 *       tracers come along as {@link lastinch.solver.plane.flow.PlaneFlow.Carried}.
 *   <li>Cells are sorted into metal and air.
 *   <li>{@link lastinch.solver.plane.flow.WallFriction}: what friction leaves of a new speed.
 *   <li>{@link lastinch.solver.plane.flow.Projection}: pressures that leave no divergence, with
 *       {@link lastinch.solver.plane.flow.SurfaceDistance}, {@link
 *       lastinch.solver.plane.flow.SurfaceCurvature} and {@link
 *       lastinch.solver.plane.flow.VolumeRelaxation}, then speeds outside of the metal by {@link
 *       lastinch.solver.plane.flow.VelocityExtrapolation}.
 * </ol>
 *
 * <p>The order matters: speeds without divergence are what keeps the next volumes in bounds, and
 * one set of volumes is what keeps speeds and heat between old ones. A cell is <i>active</i>, it
 * carries a pressure, when it is at least half full and holds no bubble. Speeds are means over the
 * whole gap, skins included. What belongs to an axis is written once and called for both.
 *
 * <p>Kept to rounding: metal, and with the pockets air. Held by tests: bounds of the volumes, metal
 * at rest, wave periods, mirrored and turned cases. Mathematics, order and stability of each
 * scheme: {@code solver/docs/plane.md}, sections 2 to 4.
 */
package lastinch.solver.plane.flow;
