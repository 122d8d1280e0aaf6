package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Side;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Metal that comes stiffer than it can flow fills nothing, though it falls. */
class ColdDregsLimitsTest {
  private static final double CELSIUS = 273.15;

  /** Down into an upright plate 1.5 mm thick through a sprue on its end. */
  private static PourResult poured(double reading) {
    return DryPour.run(
        SampleJob.strip(0.3, 0.03, 1.5e-3)
            .attitude(Orientation.UPRIGHT_TIP_DOWN)
            .alloy(SampleFoundry.tinBronze())
            .medium(SampleFoundry.sand())
            .mouldAt(20.0 + CELSIUS)
            .sprueAt(0.05, 0.02, 0.014, Side.THICK_END)
            .vent(0.3, 3e-3)
            .reads(reading)
            .melted(1.0)
            .empties(3.0)
            .build(),
        RunObserver.NONE,
        () -> false);
  }

  @Test
  void metalThatEntersBeyondItsStopStaysOutside() {
    double stiff = SampleFoundry.tinBronze().liquidus() - 120.0;
    PourResult cold = poured(stiff);
    assertThat(cold.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(cold.filledFraction()).isLessThan(0.01);
    assertThat(cold.stops().get(0).reason()).isIn(StopReason.SLUSH, StopReason.SKIN);
    assertThat(cold.accounts().metalError()).isCloseTo(0.0, within(1e-10));
  }

  /** Part solid already it stiffens as it falls, and chokes the plate. */
  @Test
  void metalThatStiffensWhileItFallsChokesThePlate() {
    PourResult cool = poured(SampleFoundry.tinBronze().liquidus() - 20.0);
    assertThat(cool.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(cool.filledFraction()).isLessThan(0.9);
    assertThat(cool.accounts().metalError()).isCloseTo(0.0, within(1e-10));
    assertThat(cool.accounts().heatError()).isCloseTo(0.0, within(1e-6));
    // hot metal fills the same plate: what is told apart
    assertThat(poured(1180.0 + CELSIUS).outcome()).isInstanceOf(Outcome.Filled.class);
  }
}
