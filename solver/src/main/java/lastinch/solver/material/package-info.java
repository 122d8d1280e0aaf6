/**
 * Metals and mould media as figures with bands and sources, and the tables a run looks them up in.
 * No particular alloy lives here; those are data files of the {@code cases} module.
 *
 * <p>{@link lastinch.solver.material.Alloy} and {@link lastinch.solver.material.MouldMedium} are
 * what is known: each figure a {@link lastinch.solver.material.Band} (nine times in ten the truth
 * lies inside) with its {@link lastinch.solver.material.Citation}. {@code with(figure, band)}
 * changes one, which is how levers, bands and chance ask for another. {@link
 * lastinch.solver.material.FreezingCurve} is the share of solid against temperature.
 *
 * <p>{@link lastinch.solver.material.MetalTable} and {@link lastinch.solver.material.MouldTable}
 * are made once per run: temperature, solid and conductivity against enthalpy, straight between
 * even knots. They are looked up by enthalpy, never by temperature, so that pure metals and arrests
 * need no special case; {@code MetalTable.settle} solves one implicit heat balance exactly.
 * Enthalpy of a metal is 0 for liquid at the liquidus [J/kg], that of a mould 0 at the table's
 * coldest temperature [J/m3]. Look-ups beyond the end of a metal's table give its end and are
 * counted.
 *
 * <p>Mathematics: {@code solver/docs/wall.md}.
 */
package lastinch.solver.material;
