/**
 * Flow of metal and air through the network: the state and everything that moves it.
 *
 * <p>{@link lastinch.solver.network.flow.NetworkState} holds channels, joints, cup and clock;
 * {@link lastinch.solver.network.flow.Channel} its two plugs, the metal in its cells and what falls
 * in it. A step goes through the room so:
 *
 * <ol>
 *   <li>{@link lastinch.solver.network.flow.StepChoice} says how long it may be, and later shortens
 *       it to the first event;
 *   <li>{@link lastinch.solver.network.flow.ColumnFlowSolver} finds the flows: {@link
 *       lastinch.solver.network.flow.LiquidColumns} measures each moving column's inertia, weight
 *       and losses, {@link lastinch.solver.network.flow.NodePressures} solves joints and pockets
 *       together, and fronts that surface tension holds are found by trying; {@link
 *       lastinch.solver.network.flow.ColumnSeparation} lets air in where a falling column pulls;
 *   <li>{@link lastinch.solver.network.flow.ColumnTransport} carries metal and heat with them;
 *   <li>{@link lastinch.solver.network.flow.FallingMetal} moves and lands what is in free fall;
 *   <li>{@link lastinch.solver.network.flow.AirPockets} books the air that is left;
 *   <li>{@link lastinch.solver.network.flow.Topology} settles what met, filled or ran dry: only
 *       here does connectivity change.
 * </ol>
 *
 * <p>{@link lastinch.solver.network.flow.EnergyBudget} books mechanical energy beside it and takes
 * part in nothing. Plug A hangs at face 0, plug B at the last face, a full channel is plug A alone.
 * Node pressures are total pressures above the open air. All schemes are implicit and free of a
 * stability limit; the Courant number is kept for the carried heat. Mathematics: {@code
 * solver/docs/network.md}, sections 1 to 3.
 */
package lastinch.solver.network.flow;
