package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pouring as a plane from the command line. */
class PlanePourTest {
  private static final Path PLAN = Path.of("..", "cases", "demo", "strip-4mm-short.yaml");

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    return new Main(new Console(answers, complaints, false, folder), new Shop()).run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  private String complained() {
    return err.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  private static int frames(Path gif) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(gif.toFile())) {
      reader.setInput(in);
      return reader.getNumImages(true);
    } finally {
      reader.dispose();
    }
  }

  @Test
  void allWrongWordsAreNamedTogether() {
    int code =
        run("pour", PLAN.toString(), "--solver", "plain", "--square", "9 mm", "--every", "2");
    assertThat(code).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained())
        .contains("network or plane, not \"plain\"")
        .contains("not \"9 mm\"")
        .contains("not \"2\"")
        .contains("--out DIR");
    assertThat(printed()).isEmpty();
  }

  @Test
  void wordsOfThePlaneAloneAreRefused() {
    assertThat(run("pour", PLAN.toString(), "--square", "2 mm")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("--square belongs to --solver plane");
  }

  @Test
  void theAnswerSaysHowItWasPoured() {
    assertThat(run("pour", PLAN.toString(), "--solver", "plane", "--square", "4 mm")).isZero();
    assertThat(printed()).contains("IT FILLS").contains("grid of").contains("4 mm");
  }

  @Test
  void pouredAgainItSaysHowFarTheAnswersLieApart() {
    String[] words = {"pour", PLAN.toString(), "--solver", "plane", "--square", "5 mm", "--again"};
    assertThat(run(words)).isZero();
    assertThat(printed()).contains("Computed 5 times with squares of 4.7 to 5.3 mm: it");
    assertThat(complained()).contains("4 more times with other squares");
    assertThat(run("pour", PLAN.toString(), "--again")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("--again belongs to --solver plane");
  }

  @Test
  void otherProgramsAreToldToo() {
    String[] words = {"pour", PLAN.toString(), "--solver", "plane", "--square", "4 mm", "--json"};
    assertThat(run(words)).isZero();
    assertThat(printed()).contains("\"solver\": \"plane 1\"").contains("\"verdict\": \"fills\"");
  }

  @Test
  void mapsFramesAndAFilmAreWritten() throws IOException {
    Path pictures = folder.resolve("pictures");
    int code =
        run(
            "pour",
            PLAN.toString(),
            "--solver",
            "plane",
            "--square",
            "4 mm",
            "--every",
            "0.2 s",
            "--out",
            pictures.toString(),
            "--quiet");
    assertThat(code).isZero();
    assertThat(pictures.resolve("arrival-heat.png")).exists();
    assertThat(pictures.resolve("arrival-time.svg")).exists();
    assertThat(pictures.resolve("pressure.png")).exists();
    assertThat(pictures.resolve("gap.svg")).exists();
    List<String> map = Files.readAllLines(pictures.resolve("map.csv"));
    assertThat(map.get(0)).startsWith("x_mm,y_mm,part,gap_mm,fill,arrival_s");
    assertThat(map.size()).isGreaterThan(300);
    try (Stream<Path> files = Files.list(pictures)) {
      long stills = files.filter(f -> f.getFileName().toString().startsWith("filling-")).count();
      assertThat(stills).isGreaterThan(3);
      assertThat(frames(pictures.resolve("filling.gif"))).isEqualTo((int) stills);
    }
  }
}
