package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lastinch.cases.plan.ReadResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code lastinch new --ask}, with what a person types. */
class PlanQuestionsTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int ask(String typed) {
    Console here =
        new Console(
            new PrintStream(out, true, StandardCharsets.US_ASCII),
            new PrintStream(err, true, StandardCharsets.US_ASCII),
            true,
            folder,
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.US_ASCII)));
    return new Main(here, new Shop()).run("new", "oak leaf", "--ask", "--out", file().toString());
  }

  private Path file() {
    return folder.resolve("oak.yaml");
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  private ReadResult read() {
    return new Shop().read(file(), Optional.empty());
  }

  @Test
  void whatIsSaidStandsInAPlanThatIsSoundAndTheRestIsMarkedAsAssumed() throws IOException {
    assertThat(ask("250 mm\n4 mm\n\n2 mm\n25 mm\n\n\nlens\nno\ngreen sand\n\n\n\n\n\n3 s\n\n"))
        .isZero();
    assertThat(read()).isInstanceOf(ReadResult.Sound.class);
    assertThat(file())
        .content()
        .contains("title: oak leaf")
        .contains("- [0 mm, 25 mm, 4 mm]    # thick end; you said")
        .contains("- [125 mm, 20 mm, 3.2 mm]  # middle; assumed")
        .contains("section: lens   # you said")
        .contains("material: green sand   # you said")
        .contains("alloy: tin bronze   # assumed")
        .contains("crucible empties in: 3 s   # you said");
    assertThat(printed()).contains("Assumed, because you did not say: thickness half-way,");
  }

  @Test
  void aPersonMayLeaveAtAnyTimeAndKeepsWhatWasSaid() throws IOException {
    assertThat(ask("250 mm\n4 mm\n")).isZero();
    assertThat(read()).isInstanceOf(ReadResult.Sound.class);
    assertThat(file()).content().contains("- [250 mm,").contains("4 mm]    # thick end; you said");
    assertThat(folder).isDirectoryContaining(f -> f.endsWith("oak.yaml"));
    try (var all = Files.list(folder)) {
      assertThat(all).hasSize(1);
    }
  }

  @Test
  void whoSaysNothingGetsNoFile() {
    assertThat(ask("")).isZero();
    assertThat(file()).doesNotExist();
    assertThat(printed()).contains("Nothing was answered, nothing was written.");
  }

  @ParameterizedTest
  @CsvSource({
    "'250\n250 mm\n', Millimetres or inches?",
    "'9 km\n250 mm\n', is not a unit known here",
    "'?\n250 mm\n', The way the metal has to run",
  })
  void aWrongAnswerIsExplainedAndAskedAgain(String typed, String told) throws IOException {
    assertThat(ask(typed)).isZero();
    assertThat(printed()).contains(told);
    assertThat(printed().split("How long is the piece")).hasSize(3);
    assertThat(file()).content().contains("[250 mm,");
  }

  @ParameterizedTest
  @CsvSource({"bonded sand, flat", "green sand, tilted", "gypsum investment, upright"})
  void everyMouldAndPositionGivesASoundPlan(String mould, String stands) {
    assertThat(ask("\n\n\n\n\n\n\n\nyes\n\n\n\n" + mould + "\n\n" + stands + "\n")).isZero();
    assertThat(read()).isInstanceOf(ReadResult.Sound.class);
  }

  @Test
  void aFileThatIsThereIsKept() throws IOException {
    Files.writeString(file(), "mine");
    assertThat(ask("250 mm\n")).isEqualTo(Exit.BAD_INPUT);
    assertThat(file()).hasContent("mine");
  }
}
