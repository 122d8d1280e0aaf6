package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.physics.Slurry;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Which way metal is pulled along the plane, and when a shut square opens again. */
class PlanePullExactSolutionTest {
  private static double pull(Orientation stands) {
    PourCase job =
        SampleJob.strip(0.2, 0.03, 4e-3)
            .alloy(SampleFoundry.tinBronze())
            .medium(SampleFoundry.sand())
            .reads(1150.0 + SampleJob.ZERO)
            .mouldAt(293.15)
            .attitude(stands)
            .build();
    return FlowingLiquid.of(job, new MeltProperties(job, 293.15)).gravityX();
  }

  /** The tip lies at large x: with the tip down the pull goes towards it. */
  @Test
  void metalIsPulledTowardsTheTipThatIsDownAndAwayFromOneThatIsUp() {
    assertThat(pull(Orientation.UPRIGHT_TIP_DOWN)).isCloseTo(9.81, within(1e-9));
    assertThat(pull(Orientation.UPRIGHT_TIP_UP)).isCloseTo(-9.81, within(1e-9));
    assertThat(pull(Orientation.FLAT)).isZero();
    assertThat(pull(Orientation.tilted(Math.toRadians(30.0)))).isCloseTo(-0.5 * 9.81, within(1e-9));
  }

  @Test
  void aShutSquareOpensWithAMarginOnly() {
    double stop = 1e-4;
    assertThat(Slurry.isShut(false, 0.29, 0.3, 1.1 * stop, stop)).isFalse();
    assertThat(Slurry.isShut(true, 0.29, 0.3, 2.0 * stop, stop)).isTrue();
    assertThat(Slurry.isShut(true, 0.0, 0.3, 1.1 * stop, stop)).isTrue();
    assertThat(Slurry.isShut(true, 0.24, 0.3, 1.3 * stop, stop)).isFalse();
    assertThat(Slurry.isShut(false, 0.31, 0.3, 2.0 * stop, stop)).isTrue();
    assertThat(Slurry.isShut(false, 0.0, 0.3, 0.9 * stop, stop)).isTrue();
  }
}
