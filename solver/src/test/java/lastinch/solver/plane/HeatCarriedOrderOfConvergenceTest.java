package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.heat.PlaneHeat;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** How fast the error of heat carried through full cells falls with the grid. */
class HeatCarriedOrderOfConvergenceTest {
  private static final double LENGTH = 1.0;
  private static final double HOT = 1e5;
  private static final double COURANT = 0.4;

  /** Even flow along one side of a box of metal, nothing else going on. */
  private static final class Stream {
    private final PlaneGrid grid;
    private final FlowState state;
    private final PlaneHeat heat;
    private final int cells;
    private final boolean upwards;

    Stream(int cells, boolean upwards, double fill) {
      this.cells = cells;
      this.upwards = upwards;
      double dx = LENGTH / cells;
      grid = upwards ? Basin.box(4, cells, dx, 2e-3) : Basin.box(cells, 4, dx, 2e-3);
      state = new FlowState(grid);
      PourCase job = SampleJob.strip(0.1, 0.02, 2e-3).build();
      double mould = 773.15;
      MeltProperties melt = new MeltProperties(job, mould);
      heat =
          new PlaneHeat(
              grid,
              melt,
              job,
              new MouldColumns(job, melt, mould, 1.0),
              mould,
              new boolean[grid.size]);
      heat.enters(HOT);
      for (int k = 0; k < cells; k++) {
        for (int across = 0; across < 4; across++) {
          int c = cell(k, across);
          double passes = COURANT * fill * grid.volume[c];
          state.liquid[c] = fill * grid.volume[c];
          heat.enthalpy[c] = mean(k, cells, 0.0);
          heat.content[c] = state.liquid[c] * heat.enthalpy[c];
          state.fluxX[c] = k == 0 || upwards ? 0.0 : passes;
          state.fluxY[c] = k == 0 || !upwards ? 0.0 : passes;
          state.gateFlux[c] = k == 0 ? passes : k == cells - 1 ? -passes : 0.0;
        }
      }
      state.findWetPart(new int[0]);
    }

    private int cell(int k, int across) {
      return upwards ? grid.cell(across, k) : grid.cell(k, across);
    }

    /** Four tenths of the length on. */
    void run() {
      for (int k = 0; k < cells; k++) {
        heat.carry(state, 1e-3);
      }
    }

    double error() {
      double sum = 0.0;
      for (int k = 0; k < cells; k++) {
        sum += Math.abs(heat.enthalpy[cell(k, 1)] - mean(k, cells, COURANT)) / cells;
      }
      return sum;
    }
  }

  /** Cell mean of half a hyperbolic tangent's step, moved on. */
  private static double mean(int k, int cells, double moved) {
    double width = 0.06;
    double a = (k * LENGTH / cells - 0.3 - moved) / width;
    double b = ((k + 1) * LENGTH / cells - 0.3 - moved) / width;
    double integral = Math.log(Math.cosh(b) / Math.cosh(a)) / (b - a);
    return HOT * 0.5 * (1.0 - integral);
  }

  private static double error(int cells, boolean upwards, double fill) {
    Stream stream = new Stream(cells, upwards, fill);
    stream.run();
    return stream.error();
  }

  private static double order(int cells, boolean upwards, double fill) {
    return Math.log(error(cells, upwards, fill) / error(2 * cells, upwards, fill)) / Math.log(2.0);
  }

  /** L1 of a fall without an extreme; limiting costs a little of the two, donor cells give one. */
  @Test
  void smoothFallIsCarriedToSecondOrderAlongBothAxes() {
    assertThat(order(100, false, 1.0)).isGreaterThan(1.8);
    assertThat(order(200, false, 1.0)).isGreaterThan(1.8);
    assertThat(order(100, true, 1.0)).isGreaterThan(1.8);
    assertThat(error(200, true, 1.0)).isEqualTo(error(200, false, 1.0));
  }

  /** Cells that are not full hand on what they hold, donor by donor: first order only. */
  @Test
  void donorCellsFallShort() {
    assertThat(order(200, false, 0.9)).isLessThan(1.2);
    assertThat(error(200, false, 0.9)).isGreaterThan(5.0 * error(200, false, 1.0));
  }

  @Test
  void nothingIsCarriedBeyondWhatThereWas() {
    Stream stream = new Stream(100, false, 1.0);
    stream.run();
    for (int k = 0; k < 100; k++) {
      assertThat(stream.heat.enthalpy[stream.cell(k, 2)]).isBetween(-1e-7, HOT * (1.0 + 1e-12));
    }
  }
}
