/**
 * The job in the words of the trade, as it would be poured: immutable, in SI units and kelvin, of
 * the cavity, not of the pattern.
 *
 * <p>{@link lastinch.solver.casting.PourCase} holds all of it: the {@link
 * lastinch.solver.casting.Piece} (limbs by stations, or a drawn model, and a boss), the {@link
 * lastinch.solver.casting.Mould}, the {@link lastinch.solver.casting.gating.Gating}, the {@link
 * lastinch.solver.casting.Metal} in the crucible, what the hand does ({@link
 * lastinch.solver.casting.Pour}), options that switch physics off for checks ({@link
 * lastinch.solver.casting.Checking}) and the two coefficients of the model that nobody has measured
 * ({@link lastinch.solver.casting.ModelCoefficients}). Places on the piece are {@link
 * lastinch.solver.casting.Place}s: a named part, or a distance along a limb and a side of it.
 *
 * <p>The one grid here is {@link lastinch.solver.casting.GapMap}, the cavity on squares, because it
 * may be given instead of a described piece; it is built in {@code lastinch.solver.geometry.cavity}
 * and read by the plane and by pictures.
 *
 * <p>Conventions: records check ranges when they are made and throw {@link
 * java.lang.IllegalArgumentException} for a programmer's slip; what a person may get wrong is
 * checked where it is read, with file and line. Figures that are not known exactly are {@link
 * lastinch.solver.material.Band}s: best, lowest, highest, source. x runs from the first station to
 * the tip, y to the left; heights are against gravity.
 */
package lastinch.solver.casting;
