package lastinch.validation.pour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.plan.CaseReader;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Metal comes through cup, sprue, well, runner and gate into the piece as hot and as late in the
 * plane as in the network. Metal that kept its heat on its way down the sprue came in 10 degrees
 * hotter; one that passed the well by, 0.3 s sooner.
 */
class PlaneInletLimitsTest {
  /** Less than the 10 K and more that the fall down the sprue takes [K]. */
  private static final double KELVIN = 7.0;

  /** Share of the time to the first station; the well takes a third of it [-]. */
  private static final double LATER = 0.06;

  private static final double SQUARE = 2e-3;

  @TempDir Path folder;

  private PourCase strip(String well) throws IOException {
    String text = Files.readString(Path.of("..", "cases", "demo", "strip-2mm.yaml"));
    Path file = folder.resolve("strip.yaml");
    Files.writeString(file, text.replace("  runner:", well + "  runner:"));
    ReadResult read = CaseReader.read(file, new CatalogueMaterials(Catalogue.builtIn()));
    assertThat(read).isInstanceOf(ReadResult.Sound.class);
    PourCase job = ((ReadResult.Sound) read).plan().pourCase();
    // the network alone puts a factor on what gates lose
    return job.withLaws(job.laws().withTurns(Band.typed(1.0)));
  }

  /** Time [s] and heat [K] at the first station of the piece. */
  private static double[] arrival(PourResult result) {
    PassageRecord way =
        result.passages().stream()
            .filter(p -> p.role() == PassageRecord.Role.PIECE)
            .findFirst()
            .orElseThrow();
    int k = 0;
    while (way.at(k) < 0.002) {
      k++;
    }
    assertThat(way.reached(k)).isTrue();
    return new double[] {way.arrivalTime(k), way.arrivalTemperature(k)};
  }

  private static double[] network(PourCase job) {
    return arrival(DryPour.run(job, RunObserver.NONE, () -> false));
  }

  private static double[] plane(PourCase job) {
    double[] now = new double[1];
    return arrival(
        DryPour.run(
                DryPour.plane(PlaneSettings.squares(SQUARE)),
                job,
                Phase.FILLING,
                (time, filled) -> now[0] = filled,
                () -> now[0] > 0.05)
            .filling());
  }

  private static void agree(PourCase job) {
    double[] network = network(job);
    double[] plane = plane(job);
    assertThat(plane[0]).isCloseTo(network[0], within(LATER * network[0]));
    assertThat(plane[1]).isCloseTo(network[1], within(KELVIN));
  }

  @Test
  void metalComesIntoThePieceAsHotAndAsLate() throws IOException {
    agree(strip(""));
  }

  @Test
  void aWellFillsFirst() throws IOException {
    PourCase welled = strip("  well: {across: 25 mm, deep: 15 mm}\n");
    agree(welled);
    double without = network(strip(""))[0];
    assertThat(network(welled)[0]).isGreaterThan(1.3 * without);
    assertThat(plane(welled)[0]).isGreaterThan(1.3 * without);
  }
}
