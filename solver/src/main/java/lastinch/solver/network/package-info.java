/**
 * Fills channels joined at joints with plugs of metal that have real front positions, pools and
 * falling metal, each cell of wall facing its own column of mould. Lumped across the gap; single
 * path from cup to tip for the present, see {@link lastinch.solver.network.Scope}.
 */
package lastinch.solver.network;
