/**
 * How far metal ran when somebody measured it, against how far this program lets it run.
 *
 * <p>{@code MeasuredLengths} holds the rows with what their sources say and, as ranges, what they
 * leave out; {@code StudyMaterials} the metals and the tube that the catalogue does not have.
 * {@code LengthPour} pours a row: with the middle of every range, and on days drawn from all of
 * them. {@code MeasuredLengthsStudy} puts the rows on the page.
 *
 * <p>Conventions: nothing of a row is ever chosen so that its length comes out; a row that cannot
 * be poured is named with its reason. All run through {@code lastinch.solver.run.DryPour} as any
 * case does.
 */
package lastinch.validation.lengths;
