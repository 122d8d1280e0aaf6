/**
 * Why a pour ended as it did: where the heat went, and the causes that fit what was found on a
 * casting.
 *
 * <ul>
 *   <li>{@code HeatLossBudget}: what the leading metal gave up, line by line, in degrees' worth;
 *       from the ledger of a run, or from arrivals where it keeps none ({@code ArrivalHeatLoss}).
 *   <li>{@code Diagnosis}: each {@code CandidateCause} alone, over its range and beyond, by how
 *       well the run comes out ({@code BrokenOut}) as was found ({@code Observation}).
 *   <li>{@code Difference}: what made the difference between two plans, by taking over one {@code
 *       PlanPart} at a time and giving it back.
 * </ul>
 *
 * <p>Diagnosis and difference ask a {@code RunCache} for their runs. Places are on the ruler of the
 * piece, from its thick end. How well a person reads places, laps and weights is our own choice, in
 * {@code Observation}; causes that fit equally well are told as alike, with what would tell them
 * apart.
 */
package lastinch.solver.diagnosis;
