/**
 * What a caster can change about a job, how far, and at what effort.
 *
 * <p>The lists are {@code PourLevers}, {@code MouldLevers}, {@code GatingLevers}, {@code
 * GateLevers}, {@code RunnerLevers} and {@code PieceLevers}; {@code Levers.ALL} is all of them in
 * the order in which a caster thinks of them. Each line is a {@code LeverEntry}: for a job it gives
 * the levers of its name, none, one, or one for each part. A {@code Lever} has its unit, its value
 * now with the range in which that lies, the ends of what can be described and of what a shop does
 * (each {@code Bound} with reason and source), the marks that its instrument shows, an {@code
 * Effort}, sizes that are owned ({@code Owned}), and the {@code JobParameter} that it moves: how
 * one figure of a job is read and written, in one place for levers, uncertain inputs, causes of a
 * fault and plans that are compared.
 *
 * <p>Conventions: a job is never changed, always made anew. A value outside the physical range
 * cannot be set; one outside the practical range can, and whoever shows it says so. Values fall on
 * {@code Marks}. Nothing is assumed about which way helps: no lever is taken for monotone. SI units
 * and kelvin; words for the keys are in {@code lever.KEY} of the sentences.
 */
package lastinch.solver.levers;
