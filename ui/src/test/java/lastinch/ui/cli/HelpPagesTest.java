package lastinch.ui.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All help pages, as they are printed. */
class HelpPagesTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private String help(String... words) {
    out.reset();
    PrintStream answers = new PrintStream(out, true, US_ASCII);
    assertThat(new Main(new Console(answers, answers, false, folder), new Shop()).run(words))
        .isZero();
    return out.toString(US_ASCII);
  }

  /** The commands that the first page lists. */
  private List<String> commands() {
    return help("help")
        .lines()
        .dropWhile(line -> !line.equals("Commands:"))
        .skip(1)
        .takeWhile(line -> !line.isBlank())
        .filter(line -> line.matches("  [a-z]+ .*"))
        .map(line -> line.strip().split(" ", 2)[0])
        .filter(name -> !name.equals("help"))
        .toList();
  }

  /** Texts of all help pages, as they go through the formatter of the library. */
  private static List<String> texts() {
    ResourceBundle bundle = Sentences.english().bundle();
    return bundle.keySet().stream()
        .filter(key -> key.startsWith("lastinch."))
        .map(bundle::getString)
        .toList();
  }

  @Test
  void everyTextPassesTheFormatterThatPrintsIt() {
    assertThat(commands()).contains("pour", "least", "room", "gates", "shape");
    for (String command : commands()) {
      assertThat(help("help", command)).as(command).contains("Use:");
    }
    assertThat(texts()).hasSizeGreaterThan(60).anyMatch(text -> text.contains("%%"));
    for (String text : texts()) {
      assertThatCode(() -> String.format(text)).as(text).doesNotThrowAnyException();
    }
  }

  @Test
  void examplesAreNotBroken() {
    for (String command : commands()) {
      help("help", command)
          .lines()
          .filter(line -> line.startsWith("  lastinch "))
          .forEach(
              line -> assertThat(line.chars().filter(c -> c == '"').count() % 2).as(line).isZero());
    }
  }
}
