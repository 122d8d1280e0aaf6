package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The explicit rough law against Colebrook's implicit one, and its two ends. */
class RoughWallExactTest {
  private static double factor(double reynolds, double relative) {
    return Friction.rough(reynolds, Friction.SLOT, relative) / reynolds;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.003, 0.01, 0.025, 0.05, 0.1})
  void staysNearColebrook(double relative) {
    for (double reynolds : new double[] {4e3, 1e4, 3e4, 1e5, 1e6}) {
      double over = factor(reynolds, relative) / Friction.colebrook(reynolds, relative) - 1.0;
      // -6.3 to 2.5 %, the error that stands beside the law
      assertThat(over).isBetween(-0.064, 0.026);
    }
  }

  /** Sand cast channels of 8 and 4 mm: a smooth wall misses by 38 to 48 %. */
  @Test
  void smoothLawFailsForSand() {
    for (double[] wall : new double[][] {{24e3, 0.025}, {12e3, 0.05}}) {
      double rough = Friction.colebrook(wall[0], wall[1]);
      double smooth = Friction.smooth(wall[0], Friction.SLOT) / wall[0];
      assertThat(smooth / rough).isLessThan(0.65);
    }
  }

  @Test
  void slowFlowDoesNotFeelRoughness() {
    assertThat(Friction.rough(1500.0, Friction.SLOT, 0.05)).isEqualTo(Friction.SLOT);
  }

  @Test
  void fineRoughnessIsSmooth() {
    // the rough part goes with the fourth power of a factor that has fallen to a quarter
    assertThat(factor(1e4, 1e-9))
        .isCloseTo(Friction.smooth(1e4, Friction.SLOT) / 1e4, within(1e-4));
  }

  @Test
  void fastFlowIsFullyRough() {
    double inverse = 2.0 * StrictMath.log10(3.7 / 0.05);
    // what is left of the smooth law at Re 1e8: (0.006 / 0.07)^4, a hundred thousandth
    assertThat(factor(1e8, 0.05)).isCloseTo(1.0 / (inverse * inverse), within(1e-5));
  }

  /** The gradient rises with speed through the join, so that one push has one flow. */
  @Test
  void gradientRisesWithSpeed() {
    double last = 0.0;
    for (double reynolds = 1000.0; reynolds < 2e4; reynolds += 50.0) {
      double gradient = Friction.rough(reynolds, Friction.SLOT, 0.1) * reynolds;
      assertThat(gradient).isGreaterThan(last);
      last = gradient;
    }
  }
}
