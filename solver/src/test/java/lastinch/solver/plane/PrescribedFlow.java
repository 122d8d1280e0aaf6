package lastinch.solver.plane;

import java.util.function.DoubleBinaryOperator;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.VofAdvection;

/** Shapes and speeds for tests of the surface transport alone: a box with a stream function. */
public final class PrescribedFlow {
  final PlaneGrid grid;
  public final FlowState state;
  final VofAdvection transport;
  private final int n;
  private final double edge;

  public PrescribedFlow(int n, double edge) {
    this.n = n;
    this.edge = edge;
    double[] gap = new double[n * n];
    java.util.Arrays.fill(gap, 1e-3);
    grid = PlaneGrid.of(n, n, edge / n, gap);
    state = new FlowState(grid);
    transport = new VofAdvection(grid);
  }

  /** Fills cells by 20 x 20 samples of a shape that is positive inside. */
  public void fill(DoubleBinaryOperator shape) {
    double h = edge / n;
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        int in = 0;
        for (int b = 0; b < 20; b++) {
          for (int a = 0; a < 20; a++) {
            double x = (i + (a + 0.5) / 20) * h;
            double y = (j + (b + 0.5) / 20) * h;
            in += shape.applyAsDouble(x, y) > 0.0 ? 1 : 0;
          }
        }
        int c = grid.cell(i, j);
        state.liquid[c] = grid.volume[c] * in / 400.0;
      }
    }
  }

  /** Speeds from a stream function on the corners: free of divergence to rounding. */
  public void stream(DoubleBinaryOperator psi) {
    double h = edge / n;
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        int c = grid.cell(i, j);
        double low = psi.applyAsDouble(i * h, j * h);
        state.u[c] = (psi.applyAsDouble(i * h, (j + 1) * h) - low) / h;
        state.v[c] = -(psi.applyAsDouble((i + 1) * h, j * h) - low) / h;
        if (i == 0) {
          state.u[c] = 0.0;
        }
        if (j == 0) {
          state.v[c] = 0.0;
        }
      }
    }
  }

  public void step(double dt) {
    state.findWetPart(new int[0]);
    transport.findVolumes(state, dt);
    transport.move(state);
  }

  /** Least and largest share of any cell. */
  public double[] bounds() {
    double low = 1.0;
    double high = 0.0;
    for (int c = 0; c < grid.size; c++) {
      if (grid.volume[c] > 0.0) {
        low = Math.min(low, state.fill(c));
        high = Math.max(high, state.fill(c));
      }
    }
    return new double[] {low, high};
  }

  /** Sum of absolute differences of the liquid over what there was. */
  public double differenceTo(double[] before) {
    double off = 0.0;
    double sum = 0.0;
    for (int c = 0; c < before.length; c++) {
      off += Math.abs(state.liquid[c] - before[c]);
      sum += before[c];
    }
    return off / sum;
  }

  /** Plain upwind volumes: the wrong model that smears the surface. */
  public void smearedStep(double dt) {
    state.findWetPart(new int[0]);
    for (int c = grid.stride; c < grid.size; c++) {
      double x = grid.faceX[c] * state.u[c] * dt;
      double y = grid.faceY[c] * state.v[c] * dt;
      state.fluxX[c] = x * state.fill(x > 0.0 ? c - 1 : c);
      state.fluxY[c] = y * state.fill(y > 0.0 ? c - grid.stride : c);
    }
    transport.move(state);
  }
}
