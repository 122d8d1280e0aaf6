package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The unit of a model that no file says: asked for at a terminal, an error elsewhere. */
class UnitQuestionTest {
  private static final Path DEMO = Path.of("../cases/demo");

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void layACaseWithoutAUnitBesideItsModel() throws IOException {
    for (String name : new String[] {"feather-sand-flat.yaml", "shop.yaml"}) {
      Files.copy(DEMO.resolve(name), folder.resolve(name));
    }
    Files.copy(DEMO.resolve("models").resolve("feather.stl"), folder.resolve("feather.stl"));
    Files.writeString(
        folder.resolve("plan.yaml"),
        """
        format: last inch case 1
        title: no unit said
        based on: feather-sand-flat.yaml
        piece:
          model: {file: feather.stl}
        """);
  }

  private int run(boolean terminal, String typed, String... args) {
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    ByteArrayInputStream keys = new ByteArrayInputStream(typed.getBytes(StandardCharsets.US_ASCII));
    Console here = new Console(answers, complaints, terminal, folder, keys);
    return new Main(here, new Shop()).run(args);
  }

  private String plan() {
    return folder.resolve("plan.yaml").toString();
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII);
  }

  private String complained() {
    return err.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  @Test
  void elsewhereThanAtATerminalTheMissingWordIsNamed() {
    assertThat(run(false, "mm\n", "pour", plan())).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("does not say what one unit is").contains("unit: mm");
    assertThat(printed()).isEmpty();
  }

  @Test
  void anotherProgramIsNotAsked() {
    assertThat(run(true, "mm\n", "pour", plan(), "--json")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).doesNotContain("mm, cm, m or in?");
  }

  @Test
  void aPersonIsAskedAndTheAnswerTaken() {
    int code = run(true, "mm\n", "pour", plan(), "--quiet");
    assertThat(code).isEqualTo(Exit.SOLVED);
    assertThat(complained())
        .contains("feather.stl: mm, cm, m or in? Its sizes are 320 x 34 x 6.")
        .doesNotContain("to correct");
    assertThat(printed()).isNotEmpty();
  }

  @Test
  void enterTakesTheLikelyOne() {
    assertThat(run(true, "\n", "shape", folder.resolve("feather.stl").toString())).isZero();
    assertThat(printed()).contains("One unit is 1 mm").contains("320 mm along its middle");
  }

  @Test
  void anotherAnswerMakesAnotherPiece() {
    assertThat(run(true, "in\n", "shape", folder.resolve("feather.stl").toString()))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("8128 mm").contains("is its unit right?");
  }

  @Test
  void anAnswerThatIsNoUnitIsRefused() {
    assertThat(run(true, "furlong\n", "pour", plan())).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained())
        .contains("A unit is mm, cm, m or in, not \"furlong\".")
        .contains("unit: mm");
    assertThat(printed()).isEmpty();
  }

  @Test
  void aStudyAsksOnceForOneModelInTwoPlans() throws IOException {
    Path second = folder.resolve("second.yaml");
    Files.writeString(
        second, Files.readString(folder.resolve("plan.yaml")).replace("no unit", "again no unit"));
    // the answer after the first would be refused if it were asked for
    int code = run(true, "furlong\nmm\n", "compare", plan(), second.toString());
    assertThat(code).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained().split("mm, cm, m or in\\?", -1)).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pour", "why", "sure", "least", "gates"})
  void everyCommandAsksOnce(String command) {
    assertThat(run(true, "furlong\nmm\n", command, plan())).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained().split("mm, cm, m or in\\?", -1)).hasSize(2);
    assertThat(complained()).contains("not \"furlong\"");
  }
}
