/**
 * How metal gets from the crucible to the piece and air gets out, as it is described: {@link
 * lastinch.solver.casting.gating.Gating} holds cup, sprue, well, runner, gates, vents, overflows
 * and feeders, lists in the order of the file.
 *
 * <p>Sizes are those of the channels in the mould [m]. Where each joins is a {@link
 * lastinch.solver.casting.Place} on the piece; where it then runs is worked out by those who need
 * it, as channels for the network and as regions for the map. Names are unique and come back in
 * results.
 */
package lastinch.solver.casting.gating;
