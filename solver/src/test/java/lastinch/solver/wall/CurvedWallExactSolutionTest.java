package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.DIFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.K;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.MouldTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Freezing times from the heat a mould takes at a face of fixed temperature: plates by Chvorinov's
 * rule with the constant from properties (Chvorinov 1940; Flemings, Solidification Processing), a
 * cylinder by the exact outer-cylinder flux (Carslaw and Jaeger, sec. 13.5).
 */
class CurvedWallExactSolutionTest {
  private static WallColumns column(double mouldCelsius, double curvature) {
    WallColumns columns =
        new WallColumns(
            1, WallGrid.usual(DIFFUSIVITY, 6000.0), Rig.mould(), Rig.warmBody(450.0, 60.0));
    columns.open(0, mouldCelsius + ZERO, curvature, INFINITE);
    return columns;
  }

  /** Time until the face has taken a heat per area, from the square root law between steps. */
  private static double timeToTake(WallColumns columns, double faceCelsius, double heat) {
    double sum = 0.0;
    double t = 0.0;
    while (sum < heat) {
      double dt = Math.max(2e-3, 2e-3 * t);
      sum += columns.exchangeAt(0, dt, INFINITE, faceCelsius + ZERO);
      t += dt;
    }
    return t;
  }

  /** 1 cm of modulus; without and with 100 K of superheat. */
  @ParameterizedTest
  @CsvSource({
    "8000, 190e3, 450, 950, 20, 233.114158, 356.613002",
    "8000, 190e3, 450, 950, 300, 477.208131, 730.022687",
    "8000, 190e3, 450, 950, 500, 995.656470, 1523.13376",
    "9400, 105e3, 290, 870, 20, 117.664059, 191.634997",
    "9400, 105e3, 290, 870, 300, 261.656764, 426.150463",
    "9400, 105e3, 290, 870, 500, 620.980881, 1011.36805",
    "2400, 397e3, 1080, 660, 20, 193.415342, 312.962760",
    "2400, 397e3, 1080, 660, 300, 611.287996, 989.116872",
    "2400, 397e3, 1080, 660, 500, 3094.64545, 5007.40417"
  })
  void platesFollowChvorinovsRule(
      double density,
      double latent,
      double c,
      double melts,
      double mould,
      double plain,
      double hot) {
    double modulus = 0.01;
    double without = timeToTake(column(mould, 0.0), melts, density * latent * modulus);
    double with = timeToTake(column(mould, 0.0), melts, density * (latent + 100.0 * c) * modulus);
    assertThat(without).isCloseTo(plain, within(0.01 * plain));
    assertThat(with).isCloseTo(hot, within(0.01 * hot));
  }

  @Test
  void cylinderFreezesFasterThanItsModulusSays() {
    double radius = 0.01;
    double heat = 8000.0 * 190e3 * radius / 2;
    double curved = timeToTake(column(500.0, 1.0 / radius), 950.0, heat);
    double flat = timeToTake(column(500.0, 0.0), 950.0, heat);
    assertThat(curved).isCloseTo(148.108057, within(0.03 * 148.108057));
    // the flat column gives the plain rule and so fails the mark
    assertThat(flat).isCloseTo(248.914118, within(0.01 * 248.914118));
    assertThat(Math.abs(flat / 148.108057 - 1.0)).isGreaterThan(0.03);
  }

  /** A tip of 12 x 1.2 mm: flow 13 % and 23 % above a flat wall's at 1 and 3 s, heat 6 and 11 %. */
  @ParameterizedTest
  @CsvSource({"1, 0.13, 0.06", "3, 0.23, 0.11"})
  void slenderTipLosesMoreThanAFlatWall(double seconds, double flow, double heat) {
    double curvature = 2.0 * Math.PI / (2.0 * (12e-3 + 1.2e-3));
    double[] flat = taken(0.0, seconds);
    double[] tip = taken(curvature, seconds);
    assertThat(tip[1] / flat[1] - 1.0).isCloseTo(flow, within(0.015));
    assertThat(tip[0] / flat[0] - 1.0).isCloseTo(heat, within(0.015));
    // short-time series of the outer cylinder: sqrt(fo) pi^1/2 / 2 - fo/4 + ...
    double fo = DIFFUSIVITY * seconds * curvature * curvature;
    double series =
        1.0 / Math.sqrt(Math.PI * fo) + 0.5 - 0.25 * Math.sqrt(fo / Math.PI) + 0.125 * fo;
    assertThat(tip[1] / (450.0 * K * curvature)).isCloseTo(series, within(0.01 * series));
  }

  private static double[] taken(double curvature, double seconds) {
    WallColumns columns = column(500.0, curvature);
    double sum = 0.0;
    double last = 0.0;
    int n = 1000;
    for (int i = 0; i < n; i++) {
      last = columns.exchangeAt(0, seconds / n, INFINITE, 950.0 + ZERO);
      sum += last;
    }
    return new double[] {sum, last * n / seconds};
  }

  /**
   * A rod cooling from outside, area shrinking towards the axis: infinite cylinder, radius 50 mm, k
   * 0.6, density 1200, c 1000, film 60 W/(m2 K), 700 into 20 degrees (Carslaw and Jaeger, ch. 7).
   */
  @ParameterizedTest
  @CsvSource({
    "300, 692.745007, 245.720321",
    "600, 618.057995, 176.103082",
    "1200, 412.510103, 111.485771",
    "1800, 265.514369, 76.5017663"
  })
  void rodCoolsAsTheExactCylinder(double seconds, double centre, double surface) {
    double radius = 0.05;
    WallColumns columns =
        new WallColumns(
            1,
            WallGrid.graded(0.2e-3, 1.08, radius),
            MouldTable.constant(0.6, 1.2e6, 200.0, 1500.0),
            Rig.warmBody(450.0, 60.0));
    columns.open(0, 700.0 + ZERO, -1.0 / radius, radius);
    int n = (int) Math.rint(seconds * 2.0);
    for (int i = 0; i < n; i++) {
      columns.exchangeAt(0, 0.5, 60.0, 20.0 + ZERO);
    }
    assertThat(columns.faceTemperature(0) - ZERO).isCloseTo(surface, within(2.0));
    double axis = columns.nodeTemperature(0, columns.nodes(0) - 1);
    assertThat(axis - ZERO).isCloseTo(centre, within(2.0));
  }
}
