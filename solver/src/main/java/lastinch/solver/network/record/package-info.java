/**
 * What is kept of a run of the network, and its conservation audit. Nothing here takes part in the
 * run.
 *
 * <p>{@link lastinch.solver.network.record.FrontRecorder} notes arrivals, speeds, laps, meetings
 * and gates as they happen, {@link lastinch.solver.network.record.Snapshots} moments of all cells,
 * thinned by half whenever their room is full, {@link
 * lastinch.solver.network.record.FlowLimitRecorder} what held the flow back. After the run {@link
 * lastinch.solver.network.record.FinalStops}, {@link lastinch.solver.network.record.PassageParts}
 * and {@link lastinch.solver.network.record.EdgeReport} put together what a result needs, {@link
 * lastinch.solver.network.record.NetworkFindings} what a caster should hear besides.
 *
 * <p>{@link lastinch.solver.network.record.ConservationAudit} draws metal, heat and air from what
 * is stored where, never from the flows that the solver used, so that a slip there shows: a leak
 * made on purpose of a hundred-thousandth does. Room is set aside before the run; recording
 * allocates nothing.
 */
package lastinch.solver.network.record;
