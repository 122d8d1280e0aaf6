/**
 * Heat in the network: metal against mould, leading metal, rims.
 *
 * <p>{@link lastinch.solver.network.heat.CellHeat} lets every wetted cell and the cup exchange heat
 * with its own column of mould ({@code solver.wall}), parts new solid into skin on the wall and
 * slurry that rides along, and says which cells are shut. It has a step of its own, longer than
 * that of the flows.
 *
 * <p>{@link lastinch.solver.network.heat.FrontMarkers} carries the marks of leading metal. A mark
 * ({@link lastinch.solver.network.heat.FrontMarker}) has no mass, its own enthalpy and a ledger of
 * what it lost and gained by place. It alone decides where metal stops, laps and joins: a cell's
 * mean would let metal run 6 to 74 % too far. Marks move before the plugs do, and the carried heat
 * takes them as neighbours.
 *
 * <p>{@link lastinch.solver.network.heat.EdgeStrips} works out thin rims beside the run, {@link
 * lastinch.solver.network.heat.RunOutExtrapolation} how far metal would have gone on, neither of
 * them changes anything in the flow.
 *
 * <p>Enthalpy is 0 for liquid at the liquidus; below it a mark keeps only the share of new solid
 * that rides along. Mathematics: {@code solver/docs/network.md} and {@code solver/docs/wall.md}.
 */
package lastinch.solver.network.heat;
