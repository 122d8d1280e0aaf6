/**
 * Commands that make many runs of one plan or several.
 *
 * <p>{@code StudyCommand} is what they share: it reads plans, says beforehand how long many slow
 * runs may take ({@code RunTimeEstimate}), makes the runs, prints the answer and writes its page.
 * The commands are {@code LeastCommand}, {@code RoomCommand}, {@code CompareCommand}, {@code
 * WhyCommand}, {@code SureCommand} and {@code GatesCommand}; {@code FoundOptions} are what a person
 * found on a casting.
 *
 * <p>Runs go through {@code StudyRuns}, along the channels or over the plane, so that a plan is
 * poured once. Conventions: a command asks a search of the solver and hands its answer to words,
 * JSON and charts; it works out nothing. Stopped by Ctrl-C it prints what it had.
 */
package lastinch.ui.cli.study;
