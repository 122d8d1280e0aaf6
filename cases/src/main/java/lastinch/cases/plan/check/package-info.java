/**
 * What has to fit together across a whole case, once all it is based on is known.
 *
 * <p>{@code RequiredWords} takes out words that cannot apply and asks for those that have to be
 * there. {@code CrossChecks} goes on to the parts: {@code PieceChecks}, {@code GatingChecks},
 * {@code FlaskChecks} and {@code HeatChecks}. {@code Needs} tells of parts of the solver that a
 * plan asks for and that are not there.
 *
 * <p>Conventions: a check adds a {@code Problem} at the place of the value that a person would
 * change, with what is allowed; it judges only what was read soundly, so that one slip is not told
 * twice. Limits of our own choice say so beside the constant.
 */
package lastinch.cases.plan.check;
