package lastinch.solver.wall;

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
 * Freezing of deep metal through its own thickness. One and two phases (Stefan, Neumann): Carslaw
 * and Jaeger, ch. 11. Metal in a mould half-space: Schwarz 1931, in Poirier and Geiger, Transport
 * Phenomena in Materials Processing. Freezing range: Cho and Sunderland 1969; Tien and Geiger 1967.
 */
class FreezingFrontExactSolutionTest {
  private static final double DENSITY = 2500.0;
  private static final double LATENT = 397e3;

  /** Aluminium-like: freezes at 660, solid 210 and liquid 95 W/(m K). */
  private static MetalTable aluminium(double solid, double liquid) {
    return MetalTable.byPoints(
        new double[] {-LATENT - 1100.0 * 660.0, -LATENT, 0.0, 1080.0 * 200.0},
        new double[] {ZERO, 660.0 + ZERO, 660.0 + ZERO, 860.0 + ZERO},
        new double[] {1.0, 1.0, 0.0, 0.0},
        new double[] {solid, solid, liquid, liquid},
        LATENT / 2000.0);
  }

  /** Deep metal on a wall of fixed temperature or on a mould. */
  private static final class Deep {
    final WallGrid grid;
    final WallColumns columns;
    final double gap;
    final double massPerArea;
    final MetalTable metal;
    double h;
    double flux;
    double coldestFace = Double.MAX_VALUE;

    Deep(
        WallColumns columns,
        WallGrid grid,
        MetalTable metal,
        double density,
        double wall,
        double gap,
        double start) {
      this.columns = columns;
      this.grid = grid;
      this.metal = metal;
      this.gap = gap;
      massPerArea = density * gap;
      h = start;
      columns.openThick(0, wall, 0.0, INFINITE, gap, start);
    }

    void run(double seconds, int steps) {
      for (int i = 0; i < steps; i++) {
        double after = columns.exchange(0, seconds / steps, INFINITE, massPerArea, h);
        flux = (h - after) * massPerArea * steps / seconds;
        h = after;
        coldestFace = Math.min(coldestFace, columns.faceTemperature(0));
      }
    }

    double frozen() {
      double sum = 0.0;
      for (int j = 0; j < grid.metalNodes(); j++) {
        sum += gap * grid.metalShare(j) * metal.solid(columns.metalNode(0, j));
      }
      return sum;
    }

    /** Depth of the arrest's front: full nodes, and the share of the last that has passed it. */
    double frozenThrough() {
      double sum = 0.0;
      for (int j = 0; j < grid.metalNodes(); j++) {
        double share = metal.solid(columns.metalNode(0, j));
        sum += gap * grid.metalShare(j) * Math.max(0.0, (share - 0.7) / 0.3);
      }
      return sum;
    }

    double middle(int node) {
      double x = 0.5 * grid.metalShare(node);
      for (int j = 0; j < node; j++) {
        x += grid.metalShare(j);
      }
      return x * gap;
    }

    double temperatureAt(double depth) {
      int j = 1;
      while (middle(j) < depth) {
        j++;
      }
      double a = middle(j - 1);
      double share = (depth - a) / (middle(j) - a);
      double left = metal.temperature(columns.metalNode(0, j - 1));
      double right = metal.temperature(columns.metalNode(0, j));
      return left + share * (right - left);
    }

    double depthOf(double temperature) {
      int j = 1;
      while (metal.temperature(columns.metalNode(0, j)) < temperature) {
        j++;
      }
      double a = metal.temperature(columns.metalNode(0, j - 1));
      double b = metal.temperature(columns.metalNode(0, j));
      return middle(j - 1) + (temperature - a) / (b - a) * (middle(j) - middle(j - 1));
    }
  }

  private static Deep fixedWall(
      MetalTable metal, double density, double wall, double gap, int nodes, double start) {
    WallGrid grid = WallGrid.graded(1e-3, 1.0, 1e-3).withMetalNodes(nodes);
    WallColumns columns = WallColumns.fixed(1, grid, Rig.mould(), metal);
    return new Deep(columns, grid, metal, density, wall, gap, start);
  }

  /** 20 and 200 nodes behind the front at 10 s; what lies before it stays at one temperature. */
  @ParameterizedTest
  @CsvSource({"40, 0.01", "400, 0.002"})
  void frontFromAColdWallIntoMetalWithoutSuperheat(int nodes, double tolerance) {
    Deep deep = fixedWall(aluminium(210.0, 210.0), DENSITY, 400.0 + ZERO, 60e-3, nodes, 0.0);
    deep.run(10.0, 50 * nodes);
    assertThat(deep.frozen() * 1e3).isCloseTo(30.0085582, within(tolerance * 30.0));
    assertThat(deep.columns.unsettled()).isZero();
  }

  @Test
  void temperatureAndFluxBehindTheFrontWithoutSuperheat() {
    Deep deep = fixedWall(aluminium(210.0, 210.0), DENSITY, 400.0 + ZERO, 20e-3, 400, 0.0);
    deep.run(1.0, 2000);
    assertThat(deep.frozen() * 1e3).isCloseTo(9.48953931, within(0.002 * 9.49));
    assertThat(deep.temperatureAt(5e-3) - ZERO).isCloseTo(546.558649, within(1.3));
    assertThat(deep.flux).isCloseTo(6.32383360e6, within(0.005 * 6.3e6));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 2.58503187", "1, 8.17458852", "10, 25.8503187"})
  void frontWithSuperheat(double seconds, double millimetres) {
    Deep deep = superheated(seconds, 210.0);
    assertThat(deep.frozen() * 1e3).isCloseTo(millimetres, within(0.01 * millimetres));
    if (seconds == 1.0) {
      assertThat(deep.temperatureAt(20e-3) - ZERO).isCloseTo(754.809830, within(0.5));
    }
    assertThat(deep.columns.unsettled()).isZero();
  }

  @Test
  void halfTheSolidConductivityFails() {
    double got = superheated(1.0, 105.0).frozen() * 1e3;
    assertThat(Math.abs(got / 8.17458852 - 1.0)).isGreaterThan(0.01);
  }

  private static Deep superheated(double seconds, double solidConductivity) {
    MetalTable metal = aluminium(solidConductivity, 95.0);
    double gap = 70e-3 * Math.sqrt(seconds / 1.0);
    Deep deep = fixedWall(metal, DENSITY, 400.0 + ZERO, gap, 500, metal.enthalpy(760.0 + ZERO));
    deep.run(seconds, 2000);
    return deep;
  }

  private static Deep onMould(MouldTable mould, double pour, double seconds) {
    MetalTable metal = aluminium(210.0, 95.0);
    double diffusivity = mould.conductivityAt(600.0) / mould.capacityAt(600.0);
    double gap = 6.0 * Math.sqrt(7.6e-5 * seconds);
    double first = 0.01 * Math.sqrt(diffusivity * seconds);
    WallGrid grid =
        WallGrid.graded(first, 1.06, 6.0 * Math.sqrt(diffusivity * seconds))
            .withMetalNodes(180, 1.03);
    WallColumns columns = new WallColumns(1, grid, mould, metal);
    return new Deep(columns, grid, metal, DENSITY, 20.0 + ZERO, gap, metal.enthalpy(pour + ZERO));
  }

  @ParameterizedTest
  @CsvSource({"1, 0.688006057", "10, 2.17566619", "100, 6.88006057"})
  void skinOnAnInsulatingMould(double seconds, double millimetres) {
    Deep deep = onMould(Rig.mould(), 660.0, seconds);
    deep.run(seconds, 2000);
    assertThat(deep.frozen() * 1e3).isCloseTo(millimetres, within(0.01 * millimetres));
    assertThat(deep.columns.faceTemperature(0) - ZERO).isCloseTo(658.880267, within(0.5));
    assertThat(deep.flux * Math.sqrt(seconds)).isCloseTo(341952.508, within(0.01 * 341952.0));
  }

  @ParameterizedTest
  @CsvSource({"1, 6.72596441", "10, 21.2693670", "100, 67.2596441"})
  void skinOnAChill(double seconds, double millimetres) {
    Deep deep = onMould(MouldTable.constant(40.0, 7200.0 * 600.0, 200.0, 1500.0), 660.0, seconds);
    deep.run(seconds, 2000);
    assertThat(deep.frozen() * 1e3).isCloseTo(millimetres, within(0.01 * millimetres));
    assertThat(deep.columns.faceTemperature(0) - ZERO).isCloseTo(541.889156, within(2.0));
  }

  @Test
  void noSkinFormsWhereTheContactTemperatureLiesAboveFreezing() {
    Deep deep = onMould(Rig.mould(), 760.0, 1.0);
    for (int i = 0; i < 100; i++) {
      deep.run(0.01, 20);
      assertThat(deep.frozen()).isZero();
      assertThat(deep.columns.surfaceSolid(0)).isZero();
    }
    assertThat(deep.columns.faceTemperature(0) - ZERO).isCloseTo(718.617472, within(0.5));
  }

  /** Bronze-like freezing range, every state with its own constant figures. */
  private static MetalTable range(double shareAtEnd) {
    double mush = 440.0 * 150.0 + 190e3 * shareAtEnd;
    double solid = mush + 190e3 * (1.0 - shareAtEnd);
    return MetalTable.byPoints(
        new double[] {-solid - 420.0 * 450.0, -solid, -mush, -mush, 0.0, 0.0, 480.0 * 100.0},
        new double[] {
          400.0 + ZERO,
          850.0 + ZERO,
          850.0 + ZERO,
          850.0 + ZERO,
          1000.0 + ZERO,
          1000.0 + ZERO,
          1100.0 + ZERO
        },
        new double[] {1.0, 1.0, shareAtEnd, shareAtEnd, 0.0, 0.0, 0.0},
        new double[] {70.0, 70.0, 70.0, 60.0, 60.0, 40.0, 40.0},
        mush / 4000.0);
  }

  @Test
  void bothFrontsOfAFreezingRange() {
    MetalTable metal = range(1.0);
    double h = metal.enthalpy(1050.0 + ZERO);
    Deep deep = fixedWall(metal, 8000.0, 500.0 + ZERO, 80e-3, 800, h);
    deep.run(10.0, 4000);
    assertThat(deep.depthOf(850.0 + ZERO) * 1e3).isCloseTo(11.8447687, within(0.118));
    assertThat(deep.depthOf(1000.0 + ZERO) * 1e3).isCloseTo(21.8636697, within(0.218));
    double[] depth = {2e-3, 5e-3, 10e-3, 20e-3, 30e-3};
    double[] celsius = {562.331592, 654.531510, 800.107381, 989.394188, 1035.49412};
    for (int i = 0; i < depth.length; i++) {
      assertThat(deep.temperatureAt(depth[i]) - ZERO)
          .as("at %s m", depth[i])
          .isCloseTo(celsius[i], within(3.0));
    }
    assertThat(deep.flux).isCloseTo(6.90988294e6 / Math.sqrt(10.0), within(0.01 * 2.185e6));
    assertThat(deep.columns.unsettled()).isZero();
  }

  /**
   * Thirty percent left at the end of freezing, no superheat: the companion of Tien and Geiger's
   * case for a share of solid that follows temperature; their own front is 12.5164 mm.
   */
  @Test
  void frontsOfAFreezingRangeThatEndsInAnArrest() {
    Deep deep = fixedWall(range(0.7), 8000.0, 500.0 + ZERO, 90e-3, 900, 0.0);
    deep.run(10.0, 4000);
    double fullySolid = deep.frozenThrough();
    assertThat(fullySolid * 1e3).isCloseTo(12.6178646, within(0.126));
    assertThat(fullySolid * 1e3).isCloseTo(12.5164099, within(0.25));
    double fivePercent = 1000.0 + ZERO - 150.0 * 0.05 / 0.7;
    assertThat(deep.depthOf(fivePercent) * 1e3).isCloseTo(25.4218413, within(0.254));
  }
}
