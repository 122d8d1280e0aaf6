package lastinch.ui.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.schema.NearestWord;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command as typed, and what was probably meant. */
final class WrongWords {
  private final Sentences sentences;
  private final ProblemText text;

  WrongWords(Sentences sentences) {
    this.sentences = sentences;
    this.text = new ProblemText(sentences);
  }

  /** What to put right in the command. */
  List<String> of(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      return unknown(command, unmatched.getUnmatched().get(0));
    }
    if (wrong instanceof MissingParameterException missing) {
      List<String> labels = missing.getMissing().stream().map(ArgSpec::paramLabel).toList();
      String key = "cli.missing." + labels.get(0);
      return sentences.has(key)
          ? text.sentence(key, "command", command.getCommandName())
          : text.sentence("cli.missing", "what", String.join(", ", labels), "help", help(command));
    }
    if (isRoot(command) && wrong.getArgSpec() == null && wrong.getValue() != null) {
      return unknown(command, wrong.getValue()); // help for a command that there is none of
    }
    return text.sentence("cli.wrong", "message", wrong.getMessage(), "help", help(command));
  }

  private List<String> unknown(CommandLine command, String word) {
    String key = "cli.instead." + word;
    if (isRoot(command) && sentences.has(key)) {
      return text.sentence(key);
    }
    Optional<String> near = NearestWord.of(word, known(command, word.startsWith("-")));
    return near.isPresent()
        ? text.sentence("cli.unknown.nearest", "word", word, "nearest", near.get())
        : text.sentence("cli.unknown", "word", word, "help", help(command));
  }

  /** Options of a command, or the commands themselves. */
  private static List<String> known(CommandLine command, boolean options) {
    List<String> known = new ArrayList<>();
    if (options) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        known.addAll(List.of(option.names()));
      }
    } else {
      known.addAll(command.getSubcommands().keySet());
    }
    return known;
  }

  private static boolean isRoot(CommandLine command) {
    return command.getParent() == null;
  }

  /** The command that explains a command. */
  private static String help(CommandLine command) {
    return isRoot(command) ? "lastinch help" : "lastinch help " + command.getCommandName();
  }
}
