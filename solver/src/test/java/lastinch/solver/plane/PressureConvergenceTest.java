package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;
import org.junit.jupiter.api.Test;

/** How the effort of the pressure grows as the cells of a filling plate are halved. */
class PressureConvergenceTest {
  private static double iterations(int n) {
    double dx = 0.06 / n;
    PlaneGrid grid = Basin.box(n, n * 2 / 3, dx, 3e-3);
    int half = n / 12;
    int[] cells = new int[2 * half];
    double[] area = new double[2 * half];
    for (int k = 0; k < 2 * half; k++) {
      cells[k] = grid.cell(0, n / 3 - half + k);
      area[k] = 2e-3 * dx;
    }
    PlaneInlets.Gate gate = new PlaneInlets.Gate(cells, area, 1.0, 0.0, 1.0);
    FlowingLiquid l = new FlowingLiquid(8000.0, 4e-3, 1.2, 1.9, 0.0, 0.0, 0.0, false);
    Basin b = new Basin(grid, l, List.of(gate), AirEscapeLaw.NONE);
    b.flow.gates.pressure[0] = 6000.0;
    b.fill((x, y) -> -1.0);
    b.runTo(0.15);
    return b.flow.projection.meanIterations();
  }

  /** Measured 6.4 and 8.1, 9.0 at 192 cells; without patches twice as many for every halving. */
  @Test
  void halvingTheCellsCostsAtMostHalfAsManyIterationsMore() {
    double coarse = iterations(48);
    assertThat(iterations(96)).isLessThan(1.4 * coarse);
  }
}
