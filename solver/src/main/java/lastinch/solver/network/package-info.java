/**
 * Fills channels joined at joints with plugs of metal that have real front positions, pools and
 * falling metal, each cell of wall facing its own column of mould. Lumped across the gap; see
 * {@link lastinch.solver.network.Scope} for what is beyond it.
 */
package lastinch.solver.network;
