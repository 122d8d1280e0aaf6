/**
 * The command line.
 *
 * <p>{@code Main} runs one command; each is a class: {@code PourCommand}, {@code ShapeCommand},
 * {@code MaterialsCommand}, {@code NewCommand}, {@code WordsCommand}, {@code CompletionCommand},
 * and those that make many runs in {@code lastinch.ui.cli.study}. A command reads its plans ({@code
 * Request}), runs them through the {@code Workshop}, and hands the answer to words, JSON, charts
 * and report; {@code AnswerOptions} are the options that all of them share, {@code OutFolder} the
 * files they write.
 *
 * <p>Around them: {@code Console} is where a command runs, {@code CancelHook} turns Ctrl-C into a
 * wish to stop, {@code Progress} is the bar, {@code WrongWords} says what was wrong with a command
 * as typed, {@code Faults} keeps a report of a fault of ours.
 *
 * <p>Conventions: {@code Exit} lists how a command ends. Answers go to standard output, all else to
 * standard error; a folder gets all of its files or none. Tests put another {@code Workshop} in
 * place of the real one ({@code Shop}).
 */
package lastinch.ui.cli;
