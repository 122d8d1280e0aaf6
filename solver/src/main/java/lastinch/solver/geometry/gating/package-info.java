/**
 * Where gating and piece lie, in trade terms: places named in a plan, the ends at which limbs meet,
 * the sections of limbs, foot of the sprue, runner, gates and their mouths. Lengths in metres in
 * the parting plane: x along the piece from its first station to its tip, y to its left seen from
 * the cope side.
 *
 * <p>It is read three times and each reader only translates it: {@code network.layout} into
 * channels, {@code geometry.cavity} into squares, the pictures into ink. What differs between them
 * is where the rim of the piece is, which each answers by a {@link
 * lastinch.solver.geometry.gating.GatingGeometry.Rim}: the channels know the axis only, the map
 * looks for the rim of what was drawn, the pictures measure by stations.
 */
package lastinch.solver.geometry.gating;
