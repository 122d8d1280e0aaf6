package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Orientation;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Halved cells, flow steps and heat steps: no stop moves by more than 1 % or 1 mm. */
class HalvedStepsLimitsTest {
  /** Length missing at the tip: 1 % of the 320 mm of the piece [m]. */
  private static final double MISSING = 3.2e-3;

  @ParameterizedTest
  @CsvSource({
    "flat, 6.0, 2e-3, 0.25, 10e-3",
    "flat, 6.0, 4e-3, 0.125, 10e-3",
    "flat, 6.0, 4e-3, 0.25, 5e-3",
    "flat, 7.0, 2e-3, 0.25, 10e-3",
    "flat, 7.0, 4e-3, 0.125, 10e-3",
    "flat, 7.0, 4e-3, 0.25, 5e-3",
    "flat, 3.0, 2e-3, 0.25, 10e-3",
    "flat, 3.0, 4e-3, 0.125, 10e-3",
    "flat, 3.0, 4e-3, 0.25, 5e-3",
    "tilted, 2.8, 2e-3, 0.25, 10e-3",
    "tilted, 2.8, 4e-3, 0.125, 10e-3",
    "tilted, 2.8, 4e-3, 0.25, 5e-3",
    "hot, 2.5, 2e-3, 0.25, 10e-3",
    "hot, 2.5, 4e-3, 0.25, 5e-3"
  })
  void stopStaysWhereItIs(String plan, double seconds, double cell, double courant, double heat) {
    PourResult usual = poured(plan, seconds, SampleJob.Options.ordinary());
    PourResult finer =
        poured(
            plan, seconds, SampleJob.Options.ordinary().cell(cell).courant(courant).heatStep(heat));
    assertThat(finer.outcome()).hasSameClassAs(usual.outcome());
    assertThat(finer.reach())
        .isCloseTo(usual.reach(), within(Math.max(1e-3, 0.01 * usual.reach())));
    if (usual.outcome() instanceof Outcome.Filled) {
      assertThat(finer.margin().heat()).isCloseTo(usual.margin().heat(), within(0.02));
    } else {
      assertThat(finer.stops()).hasSameSizeAs(usual.stops());
      assertThat(finer.stops().get(0).reason()).isEqualTo(usual.stops().get(0).reason());
      assertThat(-finer.margin().distance().orElseThrow())
          .isCloseTo(-usual.margin().distance().orElseThrow(), within(MISSING));
    }
    assertThat(effort(finer)).isGreaterThan(1.05 * effort(usual));
  }

  private static double effort(PourResult result) {
    int cells = 0;
    for (PassageRecord p : result.passages()) {
      cells += p.size();
    }
    return cells * (result.record().steps() + result.record().heatSteps());
  }

  private static PourResult poured(String plan, double seconds, SampleJob.Options options) {
    SampleJob job =
        switch (plan) {
          case "hot" -> SampleJob.featherInGypsum(seconds);
          case "tilted" -> SampleJob.featherInSand(seconds).attitude(Orientation.tilted(0.26));
          default -> SampleJob.featherInSand(seconds);
        };
    return DryPour.run(job.checking(options).build(), RunObserver.NONE, () -> false);
  }
}
