package lastinch.solver.plane.record;

import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;

/**
 * Where metal runs against the mould: at every cell with outline in it, the greatest speed square
 * to that outline, in the mean over a few hundredths of a second, so that a stream counts and a
 * squirt into a closing hole does not. The outline's direction is that of what its open faces lack:
 * metal that glides along a slanting one does not run against it.
 */
public final class JetImpingement {
  /**
   * Outline in a cell shorter than this share of its edge is no wall to run against [-]; our own
   * limit, no source.
   */
  private static final double WALL = 0.3;

  /** A cell less full than this takes spray, not a stream [-]; our own limit, no source. */
  private static final double STREAM = 0.5;

  /** Time over which the speed is taken in the mean [s]; our own figure, no source. */
  private static final double MEAN = 20e-3;

  private final PlaneGrid grid;
  private final int[] cells;
  private final double[] towardsX;
  private final double[] towardsY;
  private final double[] mean;

  /** By cell of the grid: greatest speed against the mould [m/s]. */
  public final double[] speed;

  public JetImpingement(PlaneGrid grid) {
    this.grid = grid;
    speed = new double[grid.size];
    int[] found = new int[grid.size];
    int count = 0;
    for (int c = 0; c < grid.size; c++) {
      double size = StrictMath.hypot(lackX(c), lackY(c));
      if (grid.volume[c] > 0.0 && size > WALL * grid.dx * grid.gap[c]) {
        found[count++] = c;
      }
    }
    cells = java.util.Arrays.copyOf(found, count);
    towardsX = new double[count];
    towardsY = new double[count];
    mean = new double[count];
    for (int k = 0; k < count; k++) {
      double x = lackX(cells[k]);
      double y = lackY(cells[k]);
      towardsX[k] = x / StrictMath.hypot(x, y);
      towardsY[k] = y / StrictMath.hypot(x, y);
    }
  }

  private double lackX(int c) {
    return grid.volume[c] > 0.0 ? grid.faceX[c] - grid.faceX[c + 1] : 0.0;
  }

  private double lackY(int c) {
    return grid.volume[c] > 0.0 ? grid.faceY[c] - grid.faceY[c + grid.stride] : 0.0;
  }

  /** Notes how metal goes in a step [s]. */
  public void note(FlowState s, double dt) {
    double share = Math.min(1.0, dt / MEAN);
    int n = grid.stride;
    for (int k = 0; k < cells.length; k++) {
      int c = cells[k];
      boolean metal = s.liquid[c] >= STREAM * grid.volume[c];
      mean[k] += share * ((metal ? against(s, c, n, k) : 0.0) - mean[k]);
      if (mean[k] > speed[c]) {
        speed[c] = mean[k];
      }
    }
  }

  private double against(FlowState s, int c, int n, int k) {
    double u = Math.abs(s.u[c]) > Math.abs(s.u[c + 1]) ? s.u[c] : s.u[c + 1];
    double v = Math.abs(s.v[c]) > Math.abs(s.v[c + n]) ? s.v[c] : s.v[c + n];
    return Math.max(0.0, u * towardsX[k] + v * towardsY[k]);
  }
}
