package lastinch.validation.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.format.Problems;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshChecks;
import lastinch.cases.mesh.MeshFile;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.UnsupportedCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped models against their generator, and what pouring them says. */
class DemoModelsLimitsTest {
  private static final Path DEMO = Path.of("..", "cases", "demo");

  @TempDir private Path folder;

  private static PourCase read(String name) {
    ReadResult read =
        CaseReader.read(DEMO.resolve(name), new CatalogueMaterials(Catalogue.builtIn()));
    assertThat(read).as(name).isInstanceOf(ReadResult.Sound.class);
    return ((ReadResult.Sound) read).plan().pourCase();
  }

  private static PourResult pour(String name) {
    return DryPour.run(read(name), RunObserver.NONE, () -> false);
  }

  @Test
  void theShippedModelsAreThoseOfTheGenerator() throws IOException {
    DemoModels.main(new String[] {folder.toString()});
    long bytes = 0;
    for (String name : List.of("feather.stl", "ginkgo-leaf.stl", "trivet.3mf")) {
      Problems problems = new Problems();
      Path shipped = DEMO.resolve("models").resolve(name);
      Mesh made = MeshFile.read(folder.resolve(name), problems).orElseThrow();
      assertThat(MeshFile.read(shipped, problems)).as(name).contains(made);
      assertThat(MeshChecks.of(made).openEdges()).as(name).isZero();
      bytes += Files.size(shipped);
    }
    assertThat(bytes).isLessThan(2L << 20);
    try (Stream<Path> all = Files.list(DEMO.resolve("models"))) {
      assertThat(all).hasSize(3);
    }
  }

  @Test
  void theDrawnFeatherStopsWhereTheTypedOneDoes() {
    Stop typed = pour("feather-sand-flat.yaml").stops().get(0);
    Stop drawn = pour("feather-model.yaml").stops().get(0);
    assertThat(drawn.at()).isCloseTo(typed.at(), within(0.02 * typed.at()));
    assertThat(drawn.time()).isCloseTo(typed.time(), within(0.02 * typed.time()));
  }

  @Test
  void theDrawnFeatherFillsWhenTheTypedOneDoes() throws IOException {
    Path brisk = DEMO.resolve("feather-sand-tilted.yaml").toAbsolutePath();
    Path model = DEMO.resolve("models/feather.stl").toAbsolutePath();
    Path file = folder.resolve("drawn.yaml");
    Files.writeString(
        file,
        "format: last inch case 1\ntitle: drawn\nbased on: "
            + brisk
            + "\npiece:\n  model: {file: "
            + model
            + ", unit: mm}\n");
    PourResult typed = pour("feather-sand-tilted.yaml");
    PourResult drawn = pour(file.toAbsolutePath().toString());
    assertThat(typed.outcome()).isInstanceOf(Outcome.Filled.class);
    double seconds = ((Outcome.Filled) typed.outcome()).time();
    assertThat(drawn.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(((Outcome.Filled) drawn.outcome()).time())
        .isCloseTo(seconds, within(0.02 * seconds));
  }

  @Test
  void theQuickSolverRefusesWhatIsNoChannel() {
    for (String name : List.of("ginkgo-leaf.yaml", "trivet.yaml")) {
      PourCase job = read(name);
      assertThatThrownBy(() -> DryPour.run(job, RunObserver.NONE, () -> false))
          .as(name)
          .isInstanceOf(UnsupportedCase.class);
    }
  }
}
