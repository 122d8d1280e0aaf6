/**
 * Fills a thin cavity in two dimensions, averaged through the gap: jets, edges, streams that meet,
 * air that is shut in. One of the two implementations of {@link
 * lastinch.solver.filling.FillingSolver}.
 *
 * <p>The rooms: {@link lastinch.solver.plane.flow flow} moves metal, {@link
 * lastinch.solver.plane.air air} presses back, {@link lastinch.solver.plane.heat heat} cools it,
 * {@link lastinch.solver.plane.record record} keeps what is asked for afterwards. This one puts
 * them together.
 *
 * <p>How a pour goes through it:
 *
 * <ol>
 *   <li>{@link lastinch.solver.plane.PlaneSolver} says what a job needs that is not there, draws
 *       its {@link lastinch.solver.casting.GapMap} and begins a {@link
 *       lastinch.solver.plane.PlaneFilling}.
 *   <li>{@link lastinch.solver.plane.PlaneRun} builds grid, flow, heat and recorders, and steps:
 *       the hand, the flow with all it carries, heat when due, the record. Its {@code step} reads
 *       as the physics does.
 *   <li>At the verdict the filling turns what was recorded into a {@link
 *       lastinch.solver.result.PourResult} and a {@link lastinch.solver.result.PlaneField}.
 *   <li>{@link lastinch.solver.plane.PlaneToppingUp} lets feeders, overflows and cup fill; {@link
 *       lastinch.solver.plane.PlaneHandover} lays all of it out as a {@link
 *       lastinch.solver.filling.FilledState}.
 * </ol>
 *
 * <p>Conventions of all its rooms: a cell is one index into flat arrays as long as the grid with
 * its halo; face {@code c} lies between cell {@code c} and the one before it; volumes are metal,
 * heat is kept over density; pressures are above open air unless they are called absolute. Enthalpy
 * is 0 for liquid at the liquidus. Steps allocate nothing. Every loop is done in two fixed halves,
 * so that one thread and two give bitwise the same result. A run belongs to one caller.
 *
 * <p>Mathematics: {@code solver/docs/plane.md}; the columns of mould {@code solver/docs/wall.md}.
 */
package lastinch.solver.plane;
