/**
 * Speed of what runs most often. Run by hand on a quiet machine, never by the build machine.
 *
 * <p>From small to large: {@code NodeUpdate} (one heat step of one mould node), {@code DemoPour} (a
 * dry pour), {@code PlanePourBenchmark} (a pour over the plane), {@code DemoStudy} and {@code
 * DemoQuestions} (whole studies), {@code ModelReading} (a model from file to stations). {@code
 * DemoPlan} reads a plan of the demo folder once; {@code DrawnFeather} is a feather drawn by
 * formulas.
 *
 * <p>Times that are asked for are in the Javadoc of each class; how to run them: {@code
 * validation/docs/comparisons.md}. No test is timed.
 */
package lastinch.validation.benchmark;
