package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.EFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.material.MetalTable;
import org.junit.jupiter.api.Test;

/** Errors of the heat taken behind a film fall with the order that the scheme claims. */
class WallColumnsOrderOfConvergenceTest {
  private static final double FILM = 1000.0;

  private static double error(double width, int steps) {
    double seconds = 1.0;
    WallColumns columns =
        new WallColumns(
            1, WallGrid.graded(width, 1.0, 6e-3), Rig.mould(), Rig.warmBody(450.0, 60.0));
    columns.open(0, 500.0 + ZERO, 0.0, INFINITE);
    double heat = 0.0;
    for (int i = 0; i < steps; i++) {
      heat += columns.exchangeAt(0, seconds / steps, FILM, 950.0 + ZERO);
    }
    return Math.abs(heat / (450.0 * ConductionFormulas.filmHeat(EFFUSIVITY, FILM, seconds)) - 1.0);
  }

  private static double order(double coarse, double fine) {
    return StrictMath.log(coarse / fine) / StrictMath.log(2.0);
  }

  @Test
  void secondOrderInNodeWidth() {
    double[] heat = new double[3];
    for (int i = 0; i < 3; i++) {
      heat[i] = error(0.4e-3 / (1 << i), 40_000);
    }
    double rich = order(heat[0] - heat[1], heat[1] - heat[2]);
    assertThat(rich).isBetween(1.8, 2.2);
  }

  @Test
  void firstOrderInTimeStep() {
    assertThat(order(error(0.02e-3, 100), error(0.02e-3, 200))).isBetween(0.85, 1.15);
    assertThat(order(error(0.02e-3, 200), error(0.02e-3, 400))).isBetween(0.85, 1.15);
  }

  /** A curved wall with conductivity and heat that vary: no exact answer, so by halving. */
  @Test
  void firstOrderInTimeStepWithTables() {
    MetalTable metal = Rig.warmBody(450.0, 60.0);
    double[] h = new double[3];
    for (int i = 0; i < 3; i++) {
      WallColumns columns = new WallColumns(1, WallGrid.usual(6e-7, 5.0), Rig.sandTable(), metal);
      columns.open(0, 300.0, 200.0, INFINITE);
      h[i] = metal.enthalpy(1500.0);
      int n = 200 << i;
      for (int step = 0; step < n; step++) {
        h[i] = columns.exchange(0, 1.0 / n, FILM, 12.0, h[i]);
      }
    }
    assertThat(order(h[0] - h[1], h[1] - h[2])).isBetween(0.85, 1.15);
  }
}
