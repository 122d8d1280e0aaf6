package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.EFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.MouldTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Node grids: what growing nodes cost, where columns end, and a shell in its steady state. */
class WallGridExactSolutionTest {
  /**
   * Growing nodes take the right heat over many decades of time: 0.3 % holds the 0.1 % of the
   * nodes' place and the time step; nodes carrying their temperature in the middle miss by 0.6 % at
   * 1.35.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.35, 1.5})
  void growingNodesTakeTheRightHeat(double ratio) {
    WallColumns columns =
        new WallColumns(
            1, WallGrid.graded(0.01e-3, ratio, 20e-3), Rig.mould(), Rig.warmBody(450.0, 60.0));
    columns.open(0, 500.0 + ZERO, 0.0, INFINITE);
    double heat = 0.0;
    double t = 0.0;
    while (t < 10.0) {
      double dt = Math.max(1e-4, 2e-3 * t);
      heat += columns.exchangeAt(0, dt, INFINITE, 950.0 + ZERO);
      t += dt;
      if (t > 0.3) {
        double exact = 2.0 * EFFUSIVITY * 450.0 * Math.sqrt(t / Math.PI);
        assertThat(heat / exact).as("at %s s", t).isCloseTo(1.0, within(0.003));
      }
    }
  }

  @Test
  void usualGridHasFourteenToSixteenNodesForCommonPours() {
    assertThat(WallGrid.usual(4e-7, 5.0).nodes()).isEqualTo(14);
    assertThat(WallGrid.usual(6e-7, 20.0).nodes()).isBetween(14, 16);
    WallGrid grid = WallGrid.usual(6e-7, 20.0);
    double depth = 0.0;
    for (int k = 0; k < grid.nodes(); k++) {
      depth += grid.thickness(k);
    }
    assertThat(depth).isGreaterThan(4.0 * Math.sqrt(6e-7 * 20.0));
  }

  @Test
  void columnEndsExactlyAtItsDepthLimit() {
    WallColumns columns =
        new WallColumns(1, WallGrid.usual(6e-7, 20.0), Rig.mould(), Rig.warmBody(450.0, 60.0));
    for (double depth : new double[] {0.02e-3, 0.3e-3, 4e-3, 9e-3}) {
      columns.open(0, 500.0, 0.0, depth);
      columns.exchangeAt(0, 1e6, INFINITE, 1000.0);
      // all of it takes the temperature of the body
      double full = Rig.DENSITY_HEAT * depth * 500.0;
      assertThat(columns.held(0)).isCloseTo(full, within(1e-3 * full));
    }
  }

  @Test
  void shellPassesItsSteadyFlowToTheAir() {
    double wall = 8e-3;
    double curvature = 60.0;
    WallColumns columns =
        WallColumns.shell(
            1,
            WallGrid.graded(0.05e-3, 1.1, wall),
            MouldTable.constant(1.0, 2e6, 200.0, 1800.0),
            Rig.warmBody(450.0, 60.0),
            OuterAir.of(293.0, 50.0, 0.0));
    columns.open(0, 800.0, curvature, wall);
    columns.exchangeAt(0, 1e7, 500.0, 1300.0);
    double before = columns.lostToAir(0);
    columns.exchangeAt(0, 100.0, 500.0, 1300.0);
    double conduction = StrictMath.log(1.0 + curvature * wall) / curvature;
    double resistance = 1.0 / 500.0 + conduction + 1.0 / (50.0 * (1.0 + curvature * wall));
    double flow = (1300.0 - 293.0) / resistance;
    // the mid-node areas stand for logarithms; a flat wall would be 15 % off
    assertThat((columns.lostToAir(0) - before) / 100.0).isCloseTo(flow, within(0.005 * flow));
  }

  @Test
  void gridsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> WallGrid.graded(1e-3, 0.9, 1e-2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("ratio");
    assertThatThrownBy(() -> WallGrid.usual(6e-7, 20.0).withMetalNodes(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nodes");
  }
}
