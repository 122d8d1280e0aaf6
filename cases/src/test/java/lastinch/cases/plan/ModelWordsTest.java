package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import lastinch.solver.casting.Solid;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a case file says of a model: what is taken, and what is refused. */
class ModelWordsTest {
  private static final Path FEATHER = Path.of("demo", "models", "feather.stl");

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void layTheModelBesideTheCase() throws IOException {
    bench = new Bench(folder);
    Files.copy(FEATHER, folder.resolve("feather.stl"));
    bench.write("base.yaml", Bench.flat());
  }

  private ReadResult with(String words) {
    return bench.read(
        "format: last inch case 1\ntitle: a model\nbased on: base.yaml\npiece:\n  model: {file: "
            + "feather.stl"
            + words
            + "}\n");
  }

  private static Solid solid(ReadResult read) {
    return Bench.plan(read).pourCase().piece().model().orElseThrow().solid();
  }

  @Test
  void partingAtMovesThePlaneAndGrowsWithThePattern() {
    Solid usual = solid(with(", unit: mm"));
    Solid low = solid(with(", unit: mm, parting at: 1 mm"));
    double height = usual.high(2) - usual.low(2);
    // the lens is parted in the middle of its thickness, to one of 400 levels
    assertThat(-usual.low(2) / height).isBetween(0.49, 0.51);
    // 1 mm of the 6 mm that were drawn, however much larger the cavity is
    assertThat(-low.low(2) / height).isBetween(0.16, 0.175);
  }

  /** Leaves faces of the model out, which are 50 bytes each behind a head of 84. */
  private void damage(IntPredicate gone) throws IOException {
    byte[] whole = Files.readAllBytes(FEATHER);
    ByteBuffer part = ByteBuffer.allocate(whole.length).order(ByteOrder.LITTLE_ENDIAN);
    part.put(whole, 0, 84);
    int faces = (whole.length - 84) / 50;
    int kept = 0;
    for (int i = 0; i < faces; i++) {
      if (!gone.test((int) (1000L * i / faces))) {
        part.put(whole, 84 + 50 * i, 50);
        kept++;
      }
    }
    part.putInt(80, kept);
    Files.write(folder.resolve("feather.stl"), Arrays.copyOf(part.array(), part.position()));
  }

  @Test
  void anOpenSurfaceIsWarnedOf() throws IOException {
    damage(perMille -> perMille >= 995);
    ReadResult read = with(", unit: mm");
    assertThat(Bench.problems(read)).isEmpty();
    assertThat(Bench.lines(read.notes()))
        .anySatisfy(n -> assertThat(n).contains("Faces are missing").contains("trusted"));
  }

  @Test
  void aWholeSurfaceIsNot() {
    assertThat(Bench.lines(with(", unit: mm").notes()))
        .noneSatisfy(n -> assertThat(n).contains("Faces are missing"));
  }

  @Test
  void aTornSurfaceIsRefused() throws IOException {
    damage(perMille -> perMille % 10 == 3);
    assertThat(Bench.problems(with(", unit: mm")))
        .anySatisfy(p -> assertThat(p).contains("has holes; close it"));
  }

  @ParameterizedTest
  @CsvSource({
    "-1 mm, 0 mm",
    "3, Millimetres or inches",
    "2 kg, A length is needed here",
    "high, A number is needed here",
    "60 mm, above the piece"
  })
  void aPartingThatCannotBeIsRefused(String word, String complaint) {
    List<String> problems = Bench.problems(with(", unit: mm, parting at: " + word));
    assertThat(problems).anySatisfy(p -> assertThat(p).startsWith("5:52 ").contains(complaint));
  }
}
