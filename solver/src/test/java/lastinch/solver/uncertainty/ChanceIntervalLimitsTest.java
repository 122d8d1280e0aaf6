package lastinch.solver.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The interval of a chance holds the truth, and is no wider than counting alone would make it. */
class ChanceIntervalLimitsTest {
  private static final NormalDistribution BELL = new NormalDistribution();
  private static final double[] WEIGHTS = {0.8, 0.4, 0.3, 0.2, 0.2, 0.1, 0.1, 0.05, 0.03, 0.02};
  private static final int SAMPLES = 16;
  private static final int EACH = 64;

  /** Ten figures that count unevenly; it fills when their weighted sum is low enough. */
  private static ChanceInterval repeat(int number, double limit) {
    int[] yes = new int[SAMPLES];
    int[] counted = new int[SAMPLES];
    for (int s = 0; s < SAMPLES; s++) {
      for (double[] p : ScrambledSobol.points(WEIGHTS.length, EACH, number * SAMPLES + s)) {
        double sum = 0.0;
        for (int d = 0; d < p.length; d++) {
          sum += WEIGHTS[d] * BELL.inverseCumulativeProbability(p[d]);
        }
        counted[s]++;
        yes[s] += sum < limit ? 1 : 0;
      }
    }
    return ChanceInterval.of(yes, counted);
  }

  private static double spread() {
    double sum = 0.0;
    for (double w : WEIGHTS) {
      sum += w * w;
    }
    return Math.sqrt(sum);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.004, 0.05, 0.2, 0.5, 0.8, 0.97})
  void holdsTheTruthInAtLeast85Of100RepeatsAndIsNoWiderThanTheExactOne(double truth) {
    double limit = spread() * BELL.inverseCumulativeProbability(truth);
    int held = 0;
    double wide = 0.0;
    double exactWide = 0.0;
    for (int r = 0; r < 100; r++) {
      ChanceInterval found = repeat(r, limit);
      held += found.low() <= truth && truth <= found.high() ? 1 : 0;
      wide += found.high() - found.low();
      int yes = (int) Math.round(found.share() * SAMPLES * EACH);
      ChanceInterval exact = ChanceInterval.exact(yes, SAMPLES * EACH);
      exactWide += exact.high() - exact.low();
    }
    assertThat(held).isGreaterThanOrEqualTo(85);
    assertThat(wide).isLessThanOrEqualTo(exactWide);
    if (truth > 0.05 && truth < 0.95) {
      assertThat(wide).as("even samples are worth having").isLessThan(0.9 * exactWide);
    }
  }

  @Test
  void exactIntervalOfNoneInTenIsThePublishedOne() {
    // Clopper and Pearson's upper limit for 0 of n leaves (1 - p)^n = 0.05
    ChanceInterval none = ChanceInterval.exact(0, 10);
    assertThat(StrictMath.pow(1.0 - none.high(), 10)).isCloseTo(0.05, within(1e-9));
    assertThat(none.low()).isZero();
    assertThat(ChanceInterval.exact(10, 10).low()).isCloseTo(1.0 - none.high(), within(1e-9));
  }

  @Test
  void anIntervalHalfAsWideHoldsTheTruthTooSeldom() {
    double limit = spread() * BELL.inverseCumulativeProbability(0.5);
    int held = 0;
    for (int r = 0; r < 100; r++) {
      ChanceInterval found = repeat(r, limit);
      held += Math.abs(found.share() - 0.5) < 0.25 * (found.high() - found.low()) ? 1 : 0;
    }
    assertThat(held).isLessThan(85);
  }

  @Test
  void nothingCountedIsNothingKnown() {
    assertThat(ChanceInterval.of(new int[4], new int[4]))
        .isEqualTo(new ChanceInterval(0.0, 0.0, 1.0));
  }
}
