/**
 * What is not known of a pour, and what that does to its answer.
 *
 * <p>{@code UncertainInput} is the whole list of what nobody knows exactly, each with the {@code
 * JobParameter} that has its band. All else goes through that list.
 *
 * <ul>
 *   <li>{@code Bands} pours the job with each input at both ends ({@code OneAtATimeEffect}) and
 *       then as a good and a bad pour, about one in twenty, to first order: a {@code BandStudy}.
 *   <li>{@code FillProbability} pours it many times with inputs drawn evenly ({@code
 *       ScrambledSobol}, {@code SampledInputs}): a {@code ChanceInterval}, and by {@code
 *       FirstOrderIndex} or {@code PairedTrials} what the spread comes from ({@code Influence}).
 * </ul>
 *
 * <p>Conventions: a band holds the truth nine times in ten; where it is wide the scale is that of
 * the logarithm. Samples come from a fixed sequence, so the answer is the same every time. What to
 * measure first is the input with the largest part of the spread for its effort; the weights are
 * ours.
 */
package lastinch.solver.uncertainty;
