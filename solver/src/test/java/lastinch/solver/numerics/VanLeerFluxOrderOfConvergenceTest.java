package lastinch.solver.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Transport of a smooth monotone profile: second order in L1, bounded; plain upwind fails. */
class VanLeerFluxOrderOfConvergenceTest {
  private static double profile(double x) {
    return 0.5 * (1.0 - StrictMath.tanh((x - 0.35) / 0.08));
  }

  private static double error(int cells, boolean limited) {
    double dx = 1.0 / cells;
    double courant = 0.5;
    double[] h = new double[cells];
    for (int i = 0; i < cells; i++) {
      h[i] = profile((i + 0.5) * dx);
    }
    int steps = (int) Math.rint(0.3 / (courant * dx));
    double[] face = new double[cells + 1];
    for (int n = 0; n < steps; n++) {
      double inlet = profile(-(n + 0.5) * courant * dx);
      for (int i = 0; i <= cells; i++) {
        double up = i > 0 ? h[i - 1] : inlet;
        double upup = i > 1 ? h[i - 2] : inlet;
        double down = i < cells ? h[i] : h[cells - 1];
        face[i] = limited ? VanLeerFlux.face(upup, up, down, courant) : up;
      }
      for (int i = 0; i < cells; i++) {
        h[i] += courant * (face[i] - face[i + 1]);
        assertThat(h[i]).isBetween(-1e-15, 1.0 + 1e-15);
      }
    }
    double sum = 0.0;
    for (int i = 0; i < cells; i++) {
      sum += Math.abs(h[i] - profile((i + 0.5) * dx - 0.3)) * dx;
    }
    return sum;
  }

  @Test
  void secondOrderOnASmoothMonotoneProfile() {
    double order = StrictMath.log(error(200, true) / error(400, true)) / StrictMath.log(2.0);
    assertThat(order).isGreaterThan(1.75);
  }

  @Test
  void plainUpwindIsOnlyFirstOrder() {
    double order = StrictMath.log(error(200, false) / error(400, false)) / StrictMath.log(2.0);
    assertThat(order).isLessThan(1.2);
    assertThat(error(200, false)).isGreaterThan(5.0 * error(200, true));
  }

  @Test
  void extremesAreTakenFromUpstream() {
    assertThat(VanLeerFlux.face(1.0, 2.0, 1.5, 0.3)).isEqualTo(2.0);
    assertThat(VanLeerFlux.face(1.0, 1.0, 4.0, 0.3)).isEqualTo(1.0);
  }

  @Test
  void wholeCellCrossingCarriesTheCellsOwnValue() {
    assertThat(VanLeerFlux.face(1.0, 2.0, 4.0, 1.0)).isEqualTo(2.0);
  }

  @Test
  void faceValueLiesBetweenItsNeighbours() {
    for (double down = 2.0; down < 50.0; down *= 1.7) {
      assertThat(VanLeerFlux.face(1.0, 2.0, down, 0.0)).isBetween(2.0, down);
    }
  }
}
