package lastinch.ui.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.ParameterException;

/**
 * Every command that the pages show is one that the program understands, on files that are there.
 */
class ReadmeCommandsTest {
  private static final Path TOP = Path.of("..");
  private static final Pattern COMMAND =
      Pattern.compile("`ui/lastinch ([^`]+)`|^    ui/lastinch ([^#\n]+)", Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  static Stream<String> commands() {
    List<String> all = new ArrayList<>();
    for (String page : List.of("README.md", "ui/docs/questions.md")) {
      Matcher command = COMMAND.matcher(text(page));
      while (command.find()) {
        all.add((command.group(1) != null ? command.group(1) : command.group(2)).strip());
      }
    }
    return all.stream();
  }

  private static String text(String page) {
    try {
      return Files.readString(TOP.resolve(page), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> words(String command) {
    return WORD.matcher(command)
        .results()
        .map(w -> w.group(1) != null ? w.group(1) : w.group(2))
        .toList();
  }

  /** Reads a command line as the program does, without running it. */
  private static void parse(List<String> words) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, UTF_8);
    Console here = new Console(nowhere, nowhere, false, Path.of("."));
    String[] line = words.toArray(String[]::new);
    Faults faults = new Faults(here, new ProblemText(Sentences.english()));
    new Main(here, new Shop()).commands(faults, line).parseArgs(line);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandShownIsUnderstoodAndItsFilesAreThere(String command) {
    List<String> words = words(command);
    assertThatCode(() -> parse(words)).doesNotThrowAnyException();
    for (String word : words) {
      if (word.startsWith("cases/")) {
        assertThat(TOP.resolve(word)).exists();
      }
    }
  }

  @Test
  void aCommandThatTheProgramDoesNotKnowWouldBeNoticed() {
    for (String wrong : List.of("pour feather.yaml --picturs here", "poor feather.yaml")) {
      assertThatThrownBy(() -> parse(words(wrong))).isInstanceOf(ParameterException.class);
    }
    assertThat(commands()).hasSizeGreaterThan(25);
  }
}
