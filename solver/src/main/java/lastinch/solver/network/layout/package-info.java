/**
 * Channels of the network as geometry: where each runs, its sections, and how they join. Made once
 * from a job, never changed.
 *
 * <p>{@link lastinch.solver.network.layout.ChannelLayout} makes channels of sprue, well, runner,
 * gates, overflows, feeders and vents as {@link lastinch.solver.geometry.gating.GatingGeometry}
 * says where they run; {@link lastinch.solver.network.layout.PieceChannels} cuts boss and limbs
 * where something joins them. The result is a {@link lastinch.solver.network.layout.ChannelGraph}:
 * channels, the joints at their ends, loss coefficients for either direction.
 *
 * <p>{@link lastinch.solver.network.layout.ChannelShape} is one channel on equal cells. Area is
 * straight between faces, volume and the integral of ds/A are exact sums up to each face, so that a
 * volume has one front position and the other way round, to rounding. Sections ({@link
 * lastinch.solver.network.layout.SectionShape}) are flat, lens, round or cut from a drawn shape,
 * each with its own laminar friction.
 *
 * <p>Heights count from the first station of the first limb along the mould's own slope. A cell
 * never straddles a joint; a joint has no volume. Closures and losses: {@code
 * solver/docs/network.md}, section 1.
 */
package lastinch.solver.network.layout;
