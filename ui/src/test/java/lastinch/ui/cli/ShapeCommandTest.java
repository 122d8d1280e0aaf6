package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code lastinch shape}, asked as a person asks it. */
class ShapeCommandTest {
  private static final String FEATHER = "../cases/demo/models/feather.stl";
  private static final String TRIVET = "../cases/demo/models/trivet.3mf";

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    return new Main(new Console(answers, complaints, false, folder), new Shop()).run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII);
  }

  private String complained() {
    return err.toString(StandardCharsets.US_ASCII);
  }

  private List<String> left(String name) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void saysWhatThePieceIsAndDrawsItsMaps() throws IOException {
    int code = run("shape", FEATHER, "--unit", "mm", "--out", folder.resolve("maps").toString());
    assertThat(code).isZero();
    assertThat(printed())
        .contains("A long piece: 320 mm along its middle, 34 mm at its widest, up to 5.9 mm")
        .contains("in tin bronze")
        .contains("0.3 mm at its thinnest is thinner than most shops fill by hand")
        .contains("unit: mm}");
    assertThat(left("maps"))
        .containsExactly(
            "answer.json",
            "answer.txt",
            "freezes-last.png",
            "freezes-last.svg",
            "thickness.png",
            "thickness.svg");
    assertThat(Files.readString(folder.resolve("maps").resolve("thickness.svg")))
        .contains("<text")
        .contains("along the piece");
  }

  @Test
  void withoutAUnitAndATerminalItNamesTheWordThatIsMissing() {
    assertThat(run("shape", FEATHER)).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("Say --unit mm").contains("320");
    assertThat(printed()).isEmpty();
  }

  @Test
  void aFileThatSaysItsUnitNeedsNone() {
    assertThat(run("shape", TRIVET)).isZero();
    assertThat(printed())
        .contains("the file says so")
        .contains("branched for the quick calculation");
  }

  @ParameterizedTest
  @CsvSource({
    "--unit, furlong, A unit is mm",
    "--up, q, --up takes",
    "--thick-end, q, --thick-end takes",
    "--square, 3 kg, --square takes",
    "--parting-at, 3, --parting-at takes a height",
    "--parting-at, -1 mm, --parting-at takes a height",
    "--parting-at, 2 kg, --parting-at takes a height",
    "--parting-at, 600 mm, --parting-at takes a height",
    "--alloy, moonstone, moonstone"
  })
  void wordsThatCannotBeMeantAreRefused(String option, String word, String complaint) {
    assertThat(run("shape", FEATHER, option, word)).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains(complaint);
  }

  @Test
  void aPartingIsWhereItLocksLeastOrAsThePersonSays() throws IOException {
    assertThat(run("shape", FEATHER, "--unit", "mm")).isZero();
    assertThat(printed()).contains("3 mm above the lowest place, where it locks least");
    assertThat(printed()).doesNotContain("leans over").doesNotContain("parting at:");
    out.reset();
    String maps = folder.resolve("maps").toString();
    assertThat(run("shape", FEATHER, "--unit", "mm", "--parting-at", "0.75 mm", "--out", maps))
        .isZero();
    assertThat(printed())
        .contains("as you say")
        .contains("leans over the flat parting")
        .contains("unit: mm, parting at: 0.75 mm}");
    assertThat(Files.readString(folder.resolve("maps").resolve("answer.json")))
        .contains("\"partingM\": 0.00075");
  }

  @Test
  void aPartingAboveThePieceIsRefused() {
    assertThat(run("shape", FEATHER, "--unit", "mm", "--parting-at", "7 mm"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("--parting-at 7 mm is above the piece, which is 6 mm high");
    assertThat(printed()).isEmpty();
  }

  @Test
  void theLineForACaseFileSaysAllThatWasSaidHere() {
    assertThat(run("shape", FEATHER, "--unit", "mm", "--up", "-z", "--thick-end", "other"))
        .isZero();
    assertThat(printed()).contains("unit: mm, up: -z, thick end: other end}");
  }

  @Test
  void aUnitBesideTheFilesOwnIsRefused() {
    assertThat(run("shape", TRIVET, "--unit", "in")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("Leave --unit out");
  }

  @Test
  void halfOfTheFacesHaveNoInside() throws IOException {
    Path torn = folder.resolve("torn.stl");
    Files.write(torn, without(i -> i % 2 == 0));
    assertThat(run("shape", torn.toString(), "--unit", "mm")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("There is no inside to this model");
  }

  @Test
  void missingFacesAreCounted() throws IOException {
    Path open = folder.resolve("open.stl");
    int faces = (Files.readAllBytes(Path.of(FEATHER)).length - HEAD) / FACE;
    Files.write(open, without(i -> i >= faces * 9 / 10));
    assertThat(run("shape", open.toString(), "--unit", "mm")).isZero();
    assertThat(printed().replaceAll("\\s+", " "))
        .contains("98 edges of the surface are open")
        .contains("do not trust its thickness or weight until it is closed")
        .contains("not to be trusted: the surface is open");
  }

  @Test
  void aTenthOfTheFacesMissingHereAndThereIsNoThickness() throws IOException {
    Path torn = folder.resolve("torn.stl");
    Files.write(torn, without(i -> i % 10 == 3));
    assertThat(run("shape", torn.toString(), "--unit", "mm")).isEqualTo(Exit.BAD_INPUT);
    assertThat(printed()).contains("no one can say how thick the piece is");
  }

  @Test
  void bodiesThatDoNotTouchAreNoChannel() throws IOException {
    Path cut = folder.resolve("cut.stl");
    int faces = (Files.readAllBytes(Path.of(FEATHER)).length - HEAD) / FACE;
    Files.write(cut, without(i -> i >= faces * 4 / 10 && i < faces / 2));
    assertThat(run("shape", cut.toString(), "--unit", "mm")).isZero();
    assertThat(printed())
        .contains("2 separate bodies")
        .contains("branched for the quick calculation")
        .doesNotContain("Every command can pour it");
  }

  private static final int HEAD = 84;
  private static final int FACE = 50;

  /** The feather without some of its faces. */
  private static byte[] without(IntPredicate gone) throws IOException {
    byte[] whole = Files.readAllBytes(Path.of(FEATHER));
    ByteBuffer part = ByteBuffer.allocate(whole.length).order(ByteOrder.LITTLE_ENDIAN);
    part.put(whole, 0, HEAD);
    int kept = 0;
    for (int i = 0; HEAD + (i + 1) * FACE <= whole.length; i++) {
      if (!gone.test(i)) {
        part.put(whole, HEAD + i * FACE, FACE);
        kept++;
      }
    }
    part.putInt(HEAD - 4, kept);
    return Arrays.copyOf(part.array(), part.position());
  }

  @Test
  void aFileThatIsNoModelIsProblemsInJsonToo() throws IOException {
    Path text = folder.resolve("poem.stl");
    Files.writeString(text, "roses are red");
    assertThat(run("shape", text.toString(), "--unit", "mm", "--json")).isEqualTo(Exit.BAD_INPUT);
    assertThat(printed()).startsWith("{").contains("poem.stl");
  }
}
