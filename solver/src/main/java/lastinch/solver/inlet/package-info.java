/**
 * Hand, crucible and cup: how metal gets to the top of the sprue. Shared by every solver.
 *
 * <p>{@link lastinch.solver.inlet.PouringCup} is a balance of volumes, no flow: in each step the
 * hand pours ({@code pour}), then a solver takes out what its sprue draws ({@code draw}) or, while
 * the sprue is not full, what Torricelli's law lets through the mouth ({@code drainFree}, implicit
 * in the level, so that no step is too long). Metal that a full cup cannot take stays in the
 * crucible, because the hand sees the cup; a pour given as a measured rate spills instead.
 *
 * <p>Level [m] counts from the cup's floor, where the mouth is. Mass poured, spilled and left in
 * the crucible add up to what was melted. Enthalpy of the cup's metal is kept by the solvers.
 */
package lastinch.solver.inlet;
