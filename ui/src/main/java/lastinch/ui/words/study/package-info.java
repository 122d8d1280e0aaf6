/**
 * What is said about studies.
 *
 * <p>Each study has the class that prints it: {@code LeastText}, {@code RoomText}, {@code
 * CompareText}, {@code WhyText}, {@code BlameText}, {@code SureText}, {@code GatesText}. What they
 * share: {@code GlanceWords} for what came of a run, {@code LeverWords} for levers, their values
 * and the way they are moved, {@code NextWords} for what to do next, {@code HowPoured} for the
 * solver. {@code StudyTables} are the tables of their pages; {@code GateFile} writes the case file
 * of a layout of gates.
 *
 * <p>Conventions: a text takes the answer of a search and the sentences and gives lines; a short
 * form fits one screen. A value is printed on the marks of its lever, and what is printed was
 * poured.
 */
package lastinch.ui.words.study;
