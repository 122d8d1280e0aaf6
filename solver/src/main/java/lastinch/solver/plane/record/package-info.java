/**
 * What is kept of a run over the plane, and what is read from it at the end. Nothing here changes
 * the run.
 *
 * <p>During the run: {@link lastinch.solver.plane.record.PlaneRecorder} (when, how hot and how fast
 * metal came to a cell), {@link lastinch.solver.plane.record.GateTracer} (through which gate),
 * {@link lastinch.solver.plane.record.JetImpingement} (where it runs against the mould), {@link
 * lastinch.solver.plane.record.GateRecorder}, {@link
 * lastinch.solver.plane.record.SprueLimitRecorder} (what held the flow back), {@link
 * lastinch.solver.plane.record.PlaneSnapshots}.
 *
 * <p>At the end: {@link lastinch.solver.plane.record.PlaneLimbs} reads the plane along the middle
 * of every part, as a ruler would; {@link lastinch.solver.plane.record.PlaneStops} says where and
 * why metal stopped and which edges are rounded; {@link lastinch.solver.plane.record.MeetingLines}
 * finds where streams met, from times of arrival alone; {@link
 * lastinch.solver.plane.record.PlaneFindings} lists what a caster should hear; {@link
 * lastinch.solver.plane.record.PlaneAudit} checks metal, heat and air from what is stored where,
 * never from the fluxes that the solver used.
 *
 * <p>Limits by which pours are judged are named constants with their source; most are our own. How
 * each is found: {@code solver/docs/plane.md}, section 5.
 */
package lastinch.solver.plane.record;
