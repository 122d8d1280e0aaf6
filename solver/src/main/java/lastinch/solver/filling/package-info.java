/**
 * What every filling solver is to whoever runs one, and what it hands on.
 *
 * <p>A pour goes through {@link lastinch.solver.filling.Phase phases}: {@link
 * lastinch.solver.filling.FillingSolver#begin begin}, fill until the verdict, top up until nothing
 * moves. Each phase adds its part to the result and changes no part that is there. What follows the
 * filling starts from the {@link lastinch.solver.filling.FilledState filled state}, one type from
 * both solvers: cells of metal, the faces between them and the columns of mould they face, with
 * cup, sprue, well, runners, feeders and overflows.
 */
package lastinch.solver.filling;
