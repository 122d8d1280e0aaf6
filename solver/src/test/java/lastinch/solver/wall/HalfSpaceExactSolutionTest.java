package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.DIFFUSIVITY;
import static lastinch.solver.wall.Rig.EFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conduction without freezing against Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed.,
 * ch. 2: fixed face, film, two bodies in contact. Figures computed from the formulas.
 */
class HalfSpaceExactSolutionTest {
  private static final double START = 500.0 + ZERO;
  private static final double HOT = 950.0 + ZERO;

  /**
   * Half a percent of the step: the column's own aim is 1 %, and half the conductivity gives 20.
   */
  private static final double SHARE = 0.005;

  private static WallColumns column(MouldTable mould, WallGrid grid) {
    WallColumns columns = new WallColumns(1, grid, mould, Rig.warmBody(450.0, 60.0));
    columns.open(0, START, 0.0, INFINITE);
    return columns;
  }

  /** Runs against a body of fixed temperature with 400 steps; returns the heat taken. */
  private static double heat(WallColumns columns, double h, double seconds) {
    double sum = 0.0;
    for (int i = 0; i < 400; i++) {
      sum += columns.exchangeAt(0, seconds / 400, h, HOT);
    }
    return sum;
  }

  private static double worst(WallColumns columns, WallGrid grid, double h, double seconds) {
    double worst = 0.0;
    for (int k = 0; k < columns.nodes(0); k++) {
      double x = grid.depth(k);
      double share =
          h == INFINITE
              ? ConductionFormulas.fixedFace(x, DIFFUSIVITY, seconds)
              : ConductionFormulas.film(x, DIFFUSIVITY, Rig.K, h, seconds);
      double got = (columns.nodeTemperature(0, k) - START) / (HOT - START);
      worst = Math.max(worst, Math.abs(got - share));
    }
    return worst;
  }

  private static WallGrid fine(double seconds) {
    return WallGrid.graded(0.02e-3, 1.08, 5.0 * Math.sqrt(DIFFUSIVITY * seconds));
  }

  @ParameterizedTest
  @CsvSource({"1, 481713.511", "10, 1523311.88", "60, 3731336.81"})
  void fixedFaceTemperature(double seconds, double expected) {
    WallGrid grid = fine(seconds);
    WallColumns columns = column(Rig.mould(), grid);
    double heat = heat(columns, INFINITE, seconds);
    assertThat(heat).isCloseTo(expected, within(SHARE * expected));
    assertThat(worst(columns, grid, INFINITE, seconds)).isLessThan(SHARE);
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 618.598615", "10, 2, 715.775055", "10, 5, 534.694942", "60, 10, 567.011603"})
  void formulaGivesTheCataloguedTemperatures(double seconds, double mm, double celsius) {
    double share = ConductionFormulas.fixedFace(mm * 1e-3, DIFFUSIVITY, seconds);
    assertThat(500.0 + 450.0 * share).isCloseTo(celsius, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, 629.486200, 35793.6074",
    "1, 764.040062, 244077.456",
    "10, 876.879518, 1184120.31",
    "60, 919.133675, 3354116.51"
  })
  void film(double seconds, double face, double expected) {
    WallGrid grid = fine(seconds);
    WallColumns columns = column(Rig.mould(), grid);
    double heat = heat(columns, 1000.0, seconds);
    assertThat(heat).isCloseTo(expected, within(SHARE * expected));
    assertThat(columns.faceTemperature(0) - ZERO).isCloseTo(face, within(SHARE * 450.0));
    assertThat(worst(columns, grid, 1000.0, seconds)).isLessThan(SHARE);
  }

  @Test
  void halfTheConductivityFails() {
    WallGrid grid = fine(1.0);
    WallColumns wrong =
        column(MouldTable.constant(0.5 * Rig.K, Rig.DENSITY_HEAT, 200.0, 1800.0), grid);
    double heat = heat(wrong, INFINITE, 1.0);
    assertThat(Math.abs(heat / 481713.511 - 1.0)).isGreaterThan(SHARE);
    assertThat(worst(wrong, grid, INFINITE, 1.0)).isGreaterThan(SHARE);
  }

  @Test
  void coarseFirstNodeFails() {
    WallColumns coarse = column(Rig.mould(), WallGrid.graded(1e-3, 1.35, 10e-3));
    double heat = heat(coarse, 1000.0, 0.1);
    assertThat(Math.abs(heat / 35793.6074 - 1.0)).isGreaterThan(SHARE);
  }

  /**
   * The usual grid and steps: 1 % after 50 ms up to 1000 W/(m2 K), 2 % up to 2500; the contact
   * figure itself is known to a factor of two.
   */
  @ParameterizedTest
  @CsvSource({"300, 0.01", "600, 0.01", "1000, 0.01", "1500, 0.02", "2500, 0.02"})
  void usualGridTakesTheRightHeatFromFiftyMillisecondsOn(double h, double share) {
    WallColumns columns = column(Rig.mould(), WallGrid.usual(DIFFUSIVITY, 10.0));
    double heat = 0.0;
    double t = 0.0;
    for (int i = 0; t < 10.0; i++) {
      double dt = Rig.step(i, t < 0.1 ? 2e-3 : 1e-2);
      heat += columns.exchangeAt(0, dt, h, HOT);
      t += dt;
      if (t > 0.05 - 1e-9) {
        double exact = 450.0 * ConductionFormulas.filmHeat(EFFUSIVITY, h, t);
        assertThat(heat / exact).as("at %s s", t).isCloseTo(1.0, within(share));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.01, 789741.759, 993.625422, 598.754542",
    "0.1, 522150.796, 985.512638, 724.437241",
    "1, 231595.528, 976.703627, 860.905863",
    "10, 78730.1722, 972.069077, 932.703991"
  })
  void twoBodiesThroughAContact(double seconds, double flux, double metalFace, double mouldFace) {
    double[] got = contact(seconds, 2000.0);
    // 0.3 % of the 500 K between the bodies
    assertThat(got[0] - ZERO).isCloseTo(mouldFace, within(1.5));
    assertThat(got[0] + got[1] / 2000.0 - ZERO).isCloseTo(metalFace, within(1.5));
    assertThat(got[1]).isCloseTo(flux, within(0.005 * flux));
  }

  @Test
  void twoBodiesInPerfectContactKeepOneFaceTemperature() {
    for (double seconds : new double[] {0.1, 1.0, 10.0}) {
      assertThat(contact(seconds, INFINITE)[0] - ZERO).isCloseTo(969.682148, within(1.5));
    }
  }

  /** Face temperature of the mould and flux at the end. */
  private static double[] contact(double seconds, double h) {
    double a = 60.0 / (8000.0 * 450.0);
    double gap = 5.0 * Math.sqrt(a * seconds);
    MetalTable metal = Rig.warmBody(450.0, 60.0);
    WallGrid grid =
        WallGrid.graded(0.01e-3, 1.08, 5.0 * Math.sqrt(DIFFUSIVITY * seconds))
            .withMetalNodes(60, 1.05);
    WallColumns columns = new WallColumns(1, grid, Rig.mould(), metal);
    double enthalpy = metal.enthalpy(1000.0 + ZERO);
    columns.openThick(0, START, 0.0, INFINITE, gap, enthalpy);
    double flux = 0.0;
    int n = 1000;
    for (int i = 0; i < n; i++) {
      double after = columns.exchange(0, seconds / n, h, 8000.0 * gap, enthalpy);
      flux = (enthalpy - after) * 8000.0 * gap * n / seconds;
      enthalpy = after;
    }
    return new double[] {columns.faceTemperature(0), flux};
  }
}
