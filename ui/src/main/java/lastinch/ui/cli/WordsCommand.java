package lastinch.ui.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.WordsText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch words}: what may be written in a plan, all of it or one word. */
@Command(name = "words")
final class WordsCommand implements Callable<Integer> {
  private final Console surroundings;
  private final WordsText text;

  @Parameters(paramLabel = "WORD", arity = "0..*", descriptionKey = "word")
  private List<String> word = new ArrayList<>();

  @Option(names = "--markdown", descriptionKey = "markdown")
  private boolean markdown;

  WordsCommand(Console surroundings, Sentences sentences) {
    this.surroundings = surroundings;
    this.text = new WordsText(sentences);
  }

  @Override
  public Integer call() {
    if (markdown) {
      surroundings.print(text.page().lines().toList());
      return Exit.SOLVED;
    }
    if (word.isEmpty()) {
      surroundings.print(text.all());
      return Exit.SOLVED;
    }
    String typed = String.join(" ", word);
    List<String> about = text.about(typed);
    if (about.isEmpty()) {
      surroundings.complain(List.of(text.unknown(typed)));
      return Exit.BAD_INPUT;
    }
    surroundings.print(about);
    return Exit.SOLVED;
  }
}
