/**
 * The filling solver along channels: one-dimensional passages between joints, in which metal has
 * real front positions. Milliseconds a pour, so that studies can make thousands.
 *
 * <p>{@link lastinch.solver.network.NetworkSolver} is the door, {@link
 * lastinch.solver.network.NetworkRun} one run: it builds everything once and steps until {@link
 * lastinch.solver.network.RunEnding} says that nothing more can come. {@code NetworkRun.step} is
 * the whole story in its order: flows of all columns for a step that ends at the first event; the
 * hand; the leading metal's marks; metal and its heat carried on; falling metal; events; air; heat
 * to the mould when it is due. After the verdict the same steps top up ({@link
 * lastinch.solver.network.NetworkToppingUp}), and what stands is handed over cell by cell ({@link
 * lastinch.solver.network.NetworkHandover}).
 *
 * <ul>
 *   <li>{@code layout}: where each channel runs, its sections, how they join; made once.
 *   <li>{@code flow}: columns, pockets of air, falling metal, events; the state.
 *   <li>{@code heat}: metal and mould of cells, marks of fronts, rims.
 *   <li>{@code record}: what fronts leave behind, findings, books.
 * </ul>
 *
 * <p>Conventions: a channel runs from face 0 (end A) to its last face (end B), flows are volume
 * rates [m3/s] and positive from A to B; joint 0 is the floor of the cup; pressures are above the
 * open air; enthalpy is 0 for liquid at the liquidus. Steps allocate nothing; the same job gives
 * the same bits. Mathematics, symbols and the test of each claim: {@code solver/docs/network.md}.
 * What is beyond this solver: {@link lastinch.solver.network.layout.NetworkScope}.
 */
package lastinch.solver.network;
