/**
 * Answers for other programs: stable, versioned, documented by a schema beside the code.
 *
 * <p>{@code ResultJson} is a pour; {@code LeastJson}, {@code RoomJson}, {@code CompareJson}, {@code
 * WhyJson}, {@code FoundJson}, {@code SureJson} and {@code GatesJson} are studies, with what they
 * share in {@code StudyJson}; {@code ShapeJson} and {@code MaterialJson} are models and materials,
 * {@code ProblemsJson} is bad input, {@code PlaneCsv} a line for each square. {@code JsonText}
 * writes plain ASCII.
 *
 * <p>Conventions: each class names its format with a number; a key keeps its meaning while the
 * number stays. Keys end in their unit; what there is none of is null. Keys and meanings: {@code
 * ui/docs/json.md}.
 */
package lastinch.ui.json;
