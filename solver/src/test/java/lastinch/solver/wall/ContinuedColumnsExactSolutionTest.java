package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.DIFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.MetalTable;
import lastinch.solver.material.SampleMetals;
import org.junit.jupiter.api.Test;

/**
 * Columns that are copied and followed for longer, against the half-space under a face of fixed
 * temperature: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., ch. 2, heat taken = 2 k
 * (T - T0) sqrt(t / (pi a)).
 */
class ContinuedColumnsExactSolutionTest {
  private static final double START = 500.0 + ZERO;
  private static final double HOT = 950.0 + ZERO;

  /** A column may err by one part in a hundred; one that ends too early errs by a third. */
  private static final double SHARE = 0.01;

  private static double exact(double seconds) {
    return 2.0 * Rig.K * (HOT - START) * Math.sqrt(seconds / (Math.PI * DIFFUSIVITY));
  }

  private static WallColumns column(double seconds) {
    WallGrid grid = WallGrid.usual(DIFFUSIVITY, seconds);
    WallColumns columns = new WallColumns(2, grid, Rig.mould(), Rig.warmBody(450.0, 60.0));
    columns.open(1, START, 0.0, INFINITE);
    return columns;
  }

  private static void heat(WallColumns columns, double seconds) {
    for (int i = 0; i < 2000; i++) {
      columns.exchangeAt(1, seconds / 2000, INFINITE, HOT);
    }
  }

  @Test
  void aDeepenedColumnTakesTheHeatOfAHalfSpace() {
    WallColumns filling = column(2.0);
    heat(filling, 2.0);
    WallColumns freezing = filling.continued(1800.0);
    assertThat(freezing.held(1)).isEqualTo(filling.held(1));
    assertThat(freezing.nodes(1)).isGreaterThan(filling.nodes(1));
    heat(freezing, 1798.0);
    assertThat(freezing.held(1)).isCloseTo(exact(1800.0), within(SHARE * exact(1800.0)));
  }

  @Test
  void aColumnLeftShallowDoesNot() {
    WallColumns filling = column(2.0);
    heat(filling, 2.0);
    heat(filling, 1798.0);
    assertThat(filling.held(1)).isLessThan((1.0 - 20.0 * SHARE) * exact(1800.0));
  }

  @Test
  void aCopyGoesOnAsTheFirstWouldHave() {
    WallColumns first = column(60.0);
    heat(first, 1.0);
    WallColumns copy = first.continued(59.0);
    heat(first, 10.0);
    heat(copy, 10.0);
    assertThat(copy.held(1)).isEqualTo(first.held(1));
    assertThat(copy.faceTemperature(1)).isEqualTo(first.faceTemperature(1));
  }

  @Test
  void aColumnThatEndsSomewhereEndsThereStill() {
    MetalTable metal = MetalTable.of(SampleMetals.scheilBronze(), false, 280.0, 1500.0);
    for (double depth : new double[] {1e-3, 7e-3, 9e-3, 30e-3}) {
      WallColumns filling = new WallColumns(1, WallGrid.usual(6e-7, 1.0), Rig.sandTable(), metal);
      filling.open(0, START, 100.0, depth);
      double h = metal.enthalpy(1100.0 + ZERO);
      for (int i = 0; i < 200; i++) {
        h = filling.exchange(0, 5e-3, 800.0, 8.0, h);
      }
      WallColumns whole = new WallColumns(1, WallGrid.usual(6e-7, 900.0), Rig.sandTable(), metal);
      whole.open(0, START, 100.0, depth);
      double g = metal.enthalpy(1100.0 + ZERO);
      for (int i = 0; i < 200; i++) {
        g = whole.exchange(0, 5e-3, 800.0, 8.0, g);
      }
      WallColumns freezing = filling.continued(899.0);
      assertThat(freezing.nodes(0)).isEqualTo(whole.nodes(0));
      assertThat(freezing.held(0)).isCloseTo(filling.held(0), within(1e-12 * filling.held(0)));
      for (int i = 0; i < 900; i++) {
        h = freezing.exchange(0, 1.0, 300.0, 8.0, h);
        g = whole.exchange(0, 1.0, 300.0, 8.0, g);
      }
      // What the first second could not send beyond its grid is a few parts in a thousand.
      assertThat(h).isCloseTo(g, within(1e-3 * Math.abs(g - metal.enthalpy(START))));
    }
  }
}
