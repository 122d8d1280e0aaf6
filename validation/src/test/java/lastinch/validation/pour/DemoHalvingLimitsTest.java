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
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.VerdictWord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Halving cell, flow step and heat step of the demo plans and of the small cases for each ending. A
 * stop may move by 2 % or 1 mm: rims that stiffen make it a little rougher than the 1 % it was; a
 * meeting by half a cell; heat to spare by 3.5 points, the distance that counts as near a border.
 * Further from one the word stays.
 */
class DemoHalvingLimitsTest {
  private static final double CELL = Checking.USUAL_CELL;
  private static final double COURANT = Checking.USUAL_COURANT;
  private static final double HEAT = Checking.USUAL_HEAT_STEP;

  /** Heat to spare that counts as near a border between two words [-]. */
  private static final double NEAR = 0.035;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "feather-sand-flat",
        "feather-sand-tilted",
        "feather-investment-hot",
        "feather-investment-silicon",
        "strip-2mm",
        "strip-3mm",
        "strip-4mm",
        "strip-4mm-short",
        "strip-low-head",
        "tag-thin-rim",
        "feather-sand-upright",
        "trivet-spokes-meet",
        "teaching/air-holds",
        "teaching/cold-shut",
        "teaching/gate-freezes",
        "teaching/just-fills",
        "teaching/lap-line",
        "teaching/out-of-metal",
        "teaching/stops-short",
        "teaching/streams-join"
      })
  void halvedStepsLeaveStopAndVerdictWhereTheyWere(String name) {
    PourCase job = demo(name);
    PourResult usual = pour(with(job, CELL, COURANT, HEAT));
    stays(usual, pour(with(job, CELL / 2, COURANT, HEAT)));
    stays(usual, pour(with(job, CELL, COURANT / 2, HEAT)));
    stays(usual, pour(with(job, CELL, COURANT, HEAT / 2)));
  }

  /**
   * Surface tension holds metal at the mouth of a thin gate while the runner rises past it: it is
   * the runner's metal, so the gate opens hot. A mouth whose metal cooled as if it had stood in the
   * gate let nothing through with the usual steps, and 42 % with shorter ones.
   */
  @Test
  void metalHeldAtAMouthIsThatOfTheRunnerWhateverTheSteps(@TempDir Path folder) throws IOException {
    String text = Files.readString(Path.of("..", "cases", "demo", "teaching", "gate-freezes.yaml"));
    String wider =
        text.replace("thick: 0.6 mm, long: 60 mm", "thick: 1.5 mm, long: 25 mm")
            .replace("away: 55 mm", "away: 20 mm");
    assertThat(wider).doesNotContain("0.6 mm", "55 mm");
    PourCase job = read(Files.writeString(folder.resolve("mouth.yaml"), wider));
    PourResult usual = pour(with(job, CELL, COURANT, HEAT));
    assertThat(usual.gates().get(0).share()).isGreaterThan(0.3);
    stays(usual, pour(with(job, CELL / 2, COURANT, HEAT)));
    stays(usual, pour(with(job, CELL, COURANT / 2, HEAT)));
    stays(usual, pour(with(job, CELL, COURANT, HEAT / 2)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"feather-sand-flat"})
  void aGridFourTimesAsCoarseDoesNot(String name) {
    PourCase job = demo(name);
    PourResult usual = pour(with(job, CELL, COURANT, HEAT));
    PourResult coarse = pour(with(job, 8 * CELL, 1.0, 8 * HEAT));
    assertThat(Math.abs(coarse.reach() - usual.reach())).isGreaterThan(0.01 * usual.reach());
  }

  private static void stays(PourResult usual, PourResult halved) {
    double allowed = Math.max(0.02 * usual.reach(), 1e-3);
    assertThat(halved.reach()).isCloseTo(usual.reach(), within(allowed));
    double spare = usual.margin().heat();
    assertThat(halved.margin().heat()).isCloseTo(spare, within(NEAR));
    if (Math.abs(spare - VerdictWord.JUST) > NEAR && (spare == 0.0 || spare > NEAR)) {
      assertThat(VerdictWord.of(halved)).isEqualTo(VerdictWord.of(usual));
    }
    assertThat(halved.stops()).hasSameSizeAs(usual.stops());
    for (int k = 0; k < usual.stops().size(); k++) {
      Stop stop = usual.stops().get(k);
      Stop other = halved.stops().get(k);
      assertThat(other.passage()).isEqualTo(stop.passage());
      assertThat(other.reason()).isEqualTo(stop.reason());
      assertThat(other.at()).isCloseTo(stop.at(), within(Math.max(0.02 * stop.at(), 1e-3)));
    }
    sharesStay(usual, halved);
    assertThat(halved.meetings()).hasSameSizeAs(usual.meetings());
    for (int k = 0; k < usual.meetings().size(); k++) {
      double at = usual.meetings().get(k).at();
      // half a cell: a pool still rises while the metal that meets it falls
      assertThat(halved.meetings().get(k).at()).isCloseTo(at, within(0.5 * CELL));
    }
  }

  private static void sharesStay(PourResult usual, PourResult halved) {
    for (int k = 0; k < usual.gates().size(); k++) {
      // a gate that closes in one run and lets metal through in the other is off by ten times this
      assertThat(halved.gates().get(k).share())
          .isCloseTo(usual.gates().get(k).share(), within(NEAR));
    }
  }

  private static PourCase demo(String name) {
    return read(Path.of("..", "cases", "demo", name + ".yaml"));
  }

  private static PourCase read(Path file) {
    ReadResult read = CaseReader.read(file, new CatalogueMaterials(Catalogue.builtIn()));
    assertThat(read).isInstanceOf(ReadResult.Sound.class);
    return ((ReadResult.Sound) read).plan().pourCase();
  }

  private static PourResult pour(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  private static PourCase with(PourCase job, double cell, double courant, double heat) {
    return job.withChecking(
        Checking.NONE
            .with(Checking.Figure.CELL_LENGTH, cell)
            .with(Checking.Figure.FRONT_COURANT, courant)
            .with(Checking.Figure.HEAT_STEP, heat));
  }
}
