package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All help pages, as they are printed. */
class HelpPagesTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private String help(String... words) {
    out.reset();
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    assertThat(new Main(new Surroundings(answers, answers, false, folder), new Shop()).run(words))
        .isZero();
    return out.toString(StandardCharsets.US_ASCII);
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

  @Test
  void noPageComplainsAboutItsOwnWords() {
    PrintStream before = System.err;
    ByteArrayOutputStream complaints = new ByteArrayOutputStream();
    System.setErr(new PrintStream(complaints, true, StandardCharsets.UTF_8));
    try {
      assertThat(commands()).contains("pour", "least", "room", "gates", "shape");
      for (String command : commands()) {
        assertThat(help("help", command)).as(command).contains("Use:").doesNotContain("WARN");
      }
    } finally {
      System.setErr(before);
    }
    assertThat(complaints.toString(StandardCharsets.UTF_8)).isEmpty();
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
