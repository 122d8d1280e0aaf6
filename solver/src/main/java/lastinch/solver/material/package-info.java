/**
 * Metals and mould media as figures with bands and sources, and the tables a run looks them up in.
 * No particular alloy lives here; those are data files of the {@code cases} module.
 */
package lastinch.solver.material;
