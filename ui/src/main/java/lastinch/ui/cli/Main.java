package lastinch.ui.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import lastinch.ui.cli.study.CompareCommand;
import lastinch.ui.cli.study.GatesCommand;
import lastinch.ui.cli.study.LeastCommand;
import lastinch.ui.cli.study.RoomCommand;
import lastinch.ui.cli.study.SureCommand;
import lastinch.ui.cli.study.WhyCommand;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Entry of the command line. */
public final class Main {
  private final Console surroundings;
  private final Workshop workshop;
  private final Sentences sentences = Sentences.english();
  private final ProblemText words = new ProblemText(sentences);

  Main(Console surroundings, Workshop workshop) {
    this.surroundings = surroundings;
    this.workshop = workshop;
  }

  /** Runs one command and ends the process with its code. */
  public static void main(String[] args) {
    System.exit(new Main(Console.ofProcess(), new Shop()).run(args));
  }

  /** Runs one command; gives the code to end with. */
  int run(String... args) {
    Faults faults = new Faults(surroundings, words);
    try {
      return commands(faults, args).execute(args.length == 0 ? new String[] {"--help"} : args);
    } catch (RuntimeException | Error fault) {
      return faults.report(fault, List.of(args));
    }
  }

  /** The commands that a command line may mean. */
  CommandLine commands(Faults faults, String... args) {
    CommandLine root = new CommandLine(new LastInch());
    addCommands(root, args.length == 0 ? "" : args[0]);
    root.getCommandSpec()
        .addOption(
            OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .descriptionKey("version")
                .build());
    addHelp(root);
    root.getSubcommands().values().stream()
        .filter(c -> !(c.getCommand() instanceof CommandLine.HelpCommand))
        .forEach(Main::addHelp);
    root.setResourceBundle(sentences.bundle());
    root.setOut(plain(surroundings.out()));
    root.setErr(plain(surroundings.err()));
    root.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    root.setUsageHelpAutoWidth(false);
    root.setParameterExceptionHandler((e, a) -> wrongWord(e));
    root.setExecutionExceptionHandler((e, line, parsed) -> faults.report(e, List.of(args)));
    return root;
  }

  /**
   * Adds the commands; only the one that the first word names, where it is one that knows nothing
   * of the others, since each costs some of the start.
   */
  private void addCommands(CommandLine root, String first) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("pour", () -> new PourCommand(surroundings, workshop, sentences));
    commands.put("why", () -> new WhyCommand(surroundings, workshop, sentences));
    commands.put("sure", () -> new SureCommand(surroundings, workshop, sentences));
    commands.put("gates", () -> new GatesCommand(surroundings, workshop, sentences));
    commands.put("compare", () -> new CompareCommand(surroundings, workshop, sentences));
    commands.put("least", () -> new LeastCommand(surroundings, workshop, sentences));
    commands.put("room", () -> new RoomCommand(surroundings, workshop, sentences));
    for (MaterialsCommand.Kind kind : MaterialsCommand.Kind.values()) {
      commands.put(
          kind.command(), () -> new MaterialsCommand(surroundings, workshop, sentences, kind));
    }
    commands.put("shape", () -> new ShapeCommand(surroundings, workshop, sentences));
    commands.put("new", () -> new NewCommand(surroundings, workshop, sentences));
    commands.put("words", () -> new WordsCommand(surroundings, sentences));
    if (commands.containsKey(first)) {
      root.addSubcommand(first, commands.get(first).get());
      return;
    }
    commands.forEach((name, command) -> root.addSubcommand(name, command.get()));
    root.addSubcommand(new CompletionCommand(surroundings));
    root.addSubcommand(new CommandLine.HelpCommand());
  }

  private static PrintWriter plain(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.US_ASCII), true);
  }

  private static void addHelp(CommandLine command) {
    command
        .getCommandSpec()
        .addOption(
            OptionSpec.builder("-h", "--help").usageHelp(true).descriptionKey("help").build());
  }

  private int wrongWord(ParameterException e) {
    surroundings.complain(new WrongWords(sentences).of(e));
    return Exit.BAD_INPUT;
  }
}
