package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
