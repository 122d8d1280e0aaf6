/**
 * Comparisons of the product's own code with exact solutions and published values, and the page
 * that lists them.
 *
 * <p>A {@code Study} is one comparison: its source, what was put in, and rows ({@code Row},
 * collected by {@code Rows}) of what was expected and what came out, each with its tolerance and
 * the reason of that. {@code Studies} lists them, {@code ValidationReport} runs them and writes the
 * page ({@code StudyPage}), with a curve ({@code StudyCurve}) where points are compared.
 *
 * <p>Rooms: {@code flow}, {@code wall}, {@code metal} and {@code pour} hold the studies, {@code
 * model} makes the demo models, {@code benchmark} measures speed.
 *
 * <p>Conventions: a study can also be made with a plainly wrong model in it, and a test requires
 * that one to fail. A trend is a row without a value to meet. Inputs are never changed to make a
 * check pass.
 */
package lastinch.validation;
