package lastinch.solver.plane;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneFlow;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;

/** A box of even gap with metal or water in it, for tests of the flow alone. */
public final class Basin {
  static final double G = 9.81;
  final PlaneGrid grid;
  final PlaneFlow flow;
  public final FlowState state;

  public Basin(
      PlaneGrid grid, FlowingLiquid liquid, List<PlaneInlets.Gate> gates, AirEscapeLaw air) {
    this(grid, liquid, gates, air, 1e-6);
  }

  public Basin(
      PlaneGrid grid,
      FlowingLiquid liquid,
      List<PlaneInlets.Gate> gates,
      AirEscapeLaw air,
      double tolerance) {
    this.grid = grid;
    flow =
        new PlaneFlow(
            grid, liquid, new PlaneInlets(gates), air, PlaneFlow.Carried.NOTHING, tolerance);
    state = flow.state;
  }

  public static PlaneGrid box(int nx, int ny, double dx, double gap) {
    double[] b = new double[nx * ny];
    java.util.Arrays.fill(b, gap);
    return PlaneGrid.of(nx, ny, dx, b);
  }

  /** Ideal fluid of a density without friction, tension or push of the gap. */
  public static FlowingLiquid ideal(double density, double gx, double gy) {
    return new FlowingLiquid(density, 1e-3, 0.0, 0.0, 0.0, gx, gy, true);
  }

  /** Fills where a signed distance [m] in metres from the lower left corner is positive. */
  public void fill(DoubleBinaryOperator depth) {
    for (int j = 0; j < grid.ny; j++) {
      for (int i = 0; i < grid.nx; i++) {
        int c = grid.cell(i, j);
        double in = 0.0;
        for (int b = 0; b < 10; b++) {
          for (int a = 0; a < 10; a++) {
            double x = (i + (a + 0.5) / 10) * grid.dx;
            double y = (j + (b + 0.5) / 10) * grid.dx;
            in += Math.max(0.0, Math.min(1.0, 0.5 + depth.applyAsDouble(x, y) / (0.1 * grid.dx)));
          }
        }
        state.liquid[c] = grid.volume[c] * in / 100.0;
      }
    }
    flow.begin();
  }

  void runTo(double end) {
    while (flow.time() < end - 1e-12) {
      flow.step(Math.min(flow.chooseStep(), end - flow.time()));
    }
  }

  double kineticEnergy() {
    double sum = 0.0;
    for (int c = 0; c < grid.size; c++) {
      if (grid.volume[c] > 0.0) {
        double u = 0.5 * (state.u[c] * state.u[c] + state.u[c + 1] * state.u[c + 1]);
        double v =
            0.5 * (state.v[c] * state.v[c] + state.v[c + grid.stride] * state.v[c + grid.stride]);
        sum += 0.5 * flow.liquid.density() * state.liquid[c] * (u + v);
      }
    }
    return sum;
  }

  double fastest() {
    double most = 0.0;
    for (int c = 0; c < grid.size; c++) {
      most = Math.max(most, Math.max(Math.abs(state.u[c]), Math.abs(state.v[c])));
    }
    return most;
  }

  /** Metal in a column of cells, as a height [m]. */
  double heightAt(int i) {
    double sum = 0.0;
    for (int j = 0; j < grid.ny; j++) {
      sum += state.fill(grid.cell(i, j));
    }
    return sum * grid.dx;
  }
}
