package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lastinch.solver.filling.Need;
import lastinch.ui.json.ResultJson;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The real program, from a file on disk to what is printed. */
class WholeProgramTest {
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

  static Stream<String> kinds() {
    return NewCommand.KINDS.stream();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyStarterIsAPlanAsItStands(String kind) {
    String file = folder.resolve("piece.yaml").toString();
    assertThat(run("new", "My \"first\" piece #1", "--kind", kind, "--out", file)).isZero();
    assertThat(printed()).contains("Open it in any text editor");
    out.reset();
    int code = run("pour", file);
    assertThat(complained()).isEmpty();
    assertThat(code).isZero();
    assertThat(printed()).startsWith("DRY POUR (computed) My \"first\" piece #1");
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyStarterFillsOnABadPourTooAndSplashesNowhere(String kind) {
    String file = folder.resolve("piece.yaml").toString();
    assertThat(run("new", "piece", "--kind", kind, "--out", file)).isZero();
    out.reset();
    assertThat(run("pour", file, "--json")).isZero();
    assertThat(printed())
        .contains("\"verdict\": \"fills\"")
        .containsPattern("\"badPour\": \\{ \"outcome\": \"filled\"")
        .doesNotContain("gateSplashes")
        .doesNotContain("runsAgainstMould")
        .doesNotContain("\"falls\"")
        .doesNotContain("airPushesBack");
  }

  @Test
  void startersAreOfferedByName() {
    assertThat(run("new")).isZero();
    assertThat(printed()).contains(NewCommand.KINDS);
  }

  @Test
  void aFileThatIsThereIsNeverWrittenOver() throws IOException {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, "mine");
    assertThat(run("new", "mine", "--out", file.toString())).isEqualTo(Exit.BAD_INPUT);
    assertThat(file).hasContent("mine");
    assertThat(complained()).contains("already exists.");
  }

  @Test
  void anUnknownKindIsAnsweredWithAllThereAre() {
    assertThat(run("new", "x", "--kind", "spoon")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("sand-flat, sand-upright, investment, leaf, wheel");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\t- a\n", "---\na: 1\n---\nb: 2\n", "{\"", "\u0000\u0001"})
  void aFileThatIsNoPlanIsRefusedWithoutATrace(String text) throws IOException {
    Path file = folder.resolve("bad.yaml");
    Files.writeString(file, text);
    assertThat(run("pour", file.toString(), "--out", folder.resolve("out").toString()))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(printed()).isEmpty();
    assertThat(complained())
        .contains("to correct")
        .contains("Nothing was run")
        .doesNotContain("Exception")
        .doesNotContain(" at lastinch");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void aFileThatIsNotThereIsRefused() {
    assertThat(run("pour", folder.resolve("none.yaml").toString())).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("1 thing to correct");
  }

  @Test
  void everyNeedHasItsWords() {
    ProblemText words = new ProblemText(Sentences.english());
    assertThat(words.unsupported("f.yaml", List.of(Need.values()), "2 mm"))
        .isNotEmpty()
        .allMatch(line -> line.length() <= 78);
  }

  @Test
  void chartsAndTextsAreWrittenTogether() throws IOException {
    String file = folder.resolve("leaf.yaml").toString();
    run("new", "leaf", "--kind", "leaf", "--out", file);
    Path target = folder.resolve("pictures");
    assertThat(run("pour", file, "--quiet", "--out", target.toString())).isZero();
    try (Stream<Path> files = Files.list(target)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "answer.json",
              "answer.txt",
              "broken-out.png",
              "broken-out.svg",
              "front.png",
              "front.svg",
              "gates.png",
              "gates.svg",
              "heat.png",
              "heat.svg",
              "laps.png",
              "laps.svg",
              "mould.png",
              "mould.svg",
              "race.png",
              "race.svg",
              "report.html");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sand-flat", "sand-upright", "investment", "leaf"})
  void realAnswersObeyTheSchema(String kind) throws IOException {
    String file = folder.resolve("piece.yaml").toString();
    run("new", "piece", "--kind", kind, "--out", file);
    out.reset();
    assertThat(run("pour", file, "--json")).isZero();
    try (InputStream schema = ResultJson.class.getResourceAsStream("result-schema.json")) {
      assertThat(
              SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                  .getSchema(
                      new String(schema.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON)
                  .validate(printed(), InputFormat.JSON))
          .isEmpty();
    }
  }

  @Test
  void aSlowPourOfTheLeafStopsShortAndSaysWhatToTry() throws IOException {
    Path leaf = folder.resolve("leaf.yaml");
    run("new", "leaf", "--kind", "leaf", "--out", leaf.toString());
    Path slow = folder.resolve("slow.yaml");
    Files.writeString(
        slow,
        """
        format: last inch case 1
        title: Slow leaf
        based on: leaf.yaml
        pour:
          crucible empties in: 9 s
        """);
    out.reset();
    assertThat(run("pour", slow.toString(), "--expect", "fills"))
        .isEqualTo(Exit.EXPECTATION_NOT_MET);
    assertThat(printed())
        .contains("IT WILL PROBABLY STOP SHORT.")
        .contains("Least sure")
        .contains("Why it stops: NOT ENOUGH HEAT, because the pour is slow.")
        .containsIgnoringCase("pour it in ");
  }
}
