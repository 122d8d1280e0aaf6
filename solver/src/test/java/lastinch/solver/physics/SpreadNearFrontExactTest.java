package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What runs ahead of the mean in a slot, by adding up the profile. */
class SpreadNearFrontExactTest {
  private static final int PARTS = 1_000_000;

  /** Excess over the mean, added up over the half gap where there is any [-]. */
  private static double ahead(DoubleUnaryOperator profile) {
    double sum = 0.0;
    for (int i = 0; i < PARTS; i++) {
      sum += Math.max(0.0, profile.applyAsDouble((i + 0.5) / PARTS) - 1.0);
    }
    return sum / PARTS;
  }

  @Test
  void laminarFlowBringsWhatRunsAheadInAParabola() {
    double exact = ahead(y -> 1.5 * (1.0 - y * y));
    double law = TaylorArisDispersion.mostNearFront(2.0, 0.01, 1000.0);
    // the midpoint rule with a million parts
    assertThat(law / (2.0 * 0.01)).isCloseTo(exact, withinPercentage(1e-4));
  }

  @Test
  void turbulentFlowBringsWhatRunsAheadInItsFlatterProfile() {
    double exact = ahead(y -> 8.0 / 7.0 * StrictMath.pow(1.0 - y, 1.0 / 7.0));
    double law = TaylorArisDispersion.mostNearFront(2.0, 0.01, 10_000.0);
    // three digits are written down
    assertThat(law / (2.0 * 0.01)).isCloseTo(exact, withinPercentage(0.1));
    // the law far behind a front would bring five times that 5 mm from one in a slot of 4 mm
    double far = TaylorArisDispersion.plates(1.4e-5, 2.0, 4e-3, 40_000.0, 0.03);
    assertThat(far).isGreaterThan(5.0 * TaylorArisDispersion.mostNearFront(2.0, 5e-3, 40_000.0));
  }
}
