/**
 * What a pour found, as immutable values in SI units and kelvin; words and pictures are made
 * elsewhere.
 *
 * <p>{@link lastinch.solver.result.Poured} holds what every phase found: {@link
 * lastinch.solver.result.PourResult} until the verdict, the same from both solvers; {@link
 * lastinch.solver.result.PlaneField}, cell by cell, from a pour over the plane; {@link
 * lastinch.solver.result.ToppedUp} after the verdict. A result has
 *
 * <ul>
 *   <li>how it ended: {@link lastinch.solver.result.Outcome}, {@link lastinch.solver.result.Stop}s
 *       with their reason, {@link lastinch.solver.result.Gap}s derived from them;
 *   <li>what is on the casting: {@link lastinch.solver.result.EdgeStretch}, {@link
 *       lastinch.solver.result.Meeting}, {@link lastinch.solver.result.LapStretch};
 *   <li>what was to spare and why: {@link lastinch.solver.result.Margin}, {@link
 *       lastinch.solver.result.HeatLossEntry}, {@link lastinch.solver.result.FlowLimit};
 *   <li>how it went: {@link lastinch.solver.result.PassageRecord} by place, {@link
 *       lastinch.solver.result.FrontTrack} and {@link lastinch.solver.result.FillHistory} by time;
 *   <li>what a caster should hear besides: {@link lastinch.solver.result.Finding};
 *   <li>whether to trust it: {@link lastinch.solver.result.ConservationFigures}, {@link
 *       lastinch.solver.result.RunRecord}.
 * </ul>
 *
 * <p>A pour that does not fill is a result, not an error. Places are a channel's name and a
 * distance along it. Entries of a place that metal never reached are to be ignored: its time of
 * arrival is infinite. Findings are heaviest first, meetings in order of time, gates as in the
 * case. Limits that both solvers judge by are in {@link lastinch.solver.judge.Judge} and beside
 * what they grade.
 */
package lastinch.solver.result;
