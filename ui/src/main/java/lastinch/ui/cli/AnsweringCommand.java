package lastinch.ui.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Mixin;

/** What all commands share that answer a question about a plan or a model. */
public abstract class AnsweringCommand implements Callable<Integer> {
  protected final Console surroundings;
  protected final Workshop workshop;
  protected final Sentences sentences;
  protected final ProblemText problemText;

  @Mixin protected AnswerOptions wanted = new AnswerOptions();

  protected AnsweringCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    this.surroundings = surroundings;
    this.workshop = workshop;
    this.sentences = sentences;
    this.problemText = new ProblemText(sentences);
  }

  /** Says why there is no answer. */
  protected final int refuse(List<String> lines) {
    surroundings.complain(lines);
    return Exit.BAD_INPUT;
  }

  /** Says why there is no answer, in one sentence. */
  protected final int refuse(String key, String... namesAndValues) {
    return refuse(problemText.sentence(key, namesAndValues));
  }

  /** Writes the answer in words, for other programs and as pictures, as far as it may. */
  protected static void add(
      OutFolder folder, List<String> text, String json, ChartFiles charts, BooleanSupplier stop) {
    folder.add("answer.txt", f -> Files.write(f, text, StandardCharsets.US_ASCII));
    folder.add("answer.json", f -> Files.writeString(f, json + "\n", StandardCharsets.US_ASCII));
    for (String chart : charts.names()) {
      if (stop.getAsBoolean()) {
        return;
      }
      folder.add(chart + ".png", f -> charts.png(chart, f));
      folder.add(chart + ".svg", f -> charts.svg(chart, f));
    }
  }

  /** Lets what was written show up, and says where it is. */
  protected final void finish(OutFolder folder) {
    List<String> names = folder.finish();
    if (wanted.talks()) {
      surroundings.print(
          problemText.sentence(
              "cli.written",
              "folder",
              wanted.out().map(Path::toString).orElse(""),
              "files",
              String.join(", ", names)));
    }
  }
}
