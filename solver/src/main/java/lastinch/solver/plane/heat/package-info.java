/**
 * Heat of metal and mould over the plane, and what freezing does to the flow.
 *
 * <p>{@link lastinch.solver.plane.heat.PlaneHeat} keeps the heat of every cell. It is carried each
 * flow step with the volumes of the metal; every 1.5 ms or so it is conducted along the plane,
 * spread along the flow ({@link lastinch.solver.plane.heat.DispersionAlongFlow}) and given to the
 * mould ({@link lastinch.solver.plane.heat.WallHeat}): each wetted cell faces a column of its own,
 * whose implicit step stands any length. New solid is shared there between slurry, which thickens
 * the metal, and skin, which narrows the gap; a cell that carries too much of either is shut.
 *
 * <p>{@link lastinch.solver.plane.heat.FrontMarkerField} follows the newest metal of every cell at
 * the front, because the mean of a cell says little of what leads: markers cool on fresh mould, are
 * warmed from behind, go on with the metal, and halt the front when they are too stiff.
 *
 * <p>Sprue, well and cup have walls too ({@link lastinch.solver.plane.heat.SprueWalls}, {@link
 * lastinch.solver.plane.heat.SprueFall}).
 *
 * <p>Conventions: content is heat over density [m3 J/kg], 0 for liquid at the liquidus; specific
 * enthalpy that of what moves, skin left out; both halves of the grid have their own table of the
 * metal, because a table counts its look-ups. Heat is kept to rounding, from the crucible to the
 * last column of mould. Mathematics: {@code solver/docs/plane.md}, section 4; the columns {@code
 * solver/docs/wall.md}.
 */
package lastinch.solver.plane.heat;
