package lastinch.solver.plane.flow;

/**
 * Curvature of the surface in the plane, at empty cells beside metal: from heights of metal in
 * three rows of seven cells where these describe the surface, else from smoothed shares. Walls do
 * not bend the surface (it meets them square).
 */
final class SurfaceCurvature {
  /**
   * Cells of a column on either side of the middle [-]: seven in all, the usual height function;
   * chosen.
   */
  private static final int REACH = 3;

  /**
   * How far from empty or full the ends of a column may be, and how much it may turn back [-];
   * chosen.
   */
  private static final double NEARLY = 0.05;

  private final PlaneGrid grid;
  private final double most;
  private final double[] block = new double[25];
  private final double[] smooth = new double[9];

  SurfaceCurvature(PlaneGrid grid) {
    this.grid = grid;
    most = 0.5 / grid.dx;
  }

  /** Curvature at a cell [1/m], positive where metal bulges out. */
  double at(FlowState s, int c) {
    int n = grid.stride;
    double gx = slope(s, c, 1);
    double gy = slope(s, c, n);
    double k;
    boolean alongX = Math.abs(gx) > Math.abs(gy);
    int column = alongX ? 1 : n;
    int row = alongX ? n : 1;
    int sign = (alongX ? gx : gy) > 0.0 ? 1 : -1;
    double middle = height(s, c, column * sign);
    if (middle >= 0.0) {
      double left = neighbour(s, c - row, column * sign, middle);
      double right = neighbour(s, c + row, column * sign, middle);
      if (left >= 0.0 && right >= 0.0) {
        double first = 0.5 * (right - left);
        double bent = (right + left) - 2.0 * middle;
        double length = 1.0 + first * first;
        k = -bent / (grid.dx * length * Math.sqrt(length));
        return Math.max(-most, Math.min(most, k));
      }
    }
    k = smoothed(s, c);
    return Math.max(-most, Math.min(most, k));
  }

  private double slope(FlowState s, int c, int d) {
    double here = s.fill(c);
    double up = grid.volume[c + d] > 0.0 ? s.fill(c + d) : here;
    double down = grid.volume[c - d] > 0.0 ? s.fill(c - d) : here;
    return up - down;
  }

  private double neighbour(FlowState s, int c, int towardsMetal, double middle) {
    return grid.volume[c] > 0.0 ? height(s, c, towardsMetal) : middle;
  }

  /** Metal in a row of seven cells, in cells; negative when it does not describe the surface. */
  private double height(FlowState s, int c, int towardsMetal) {
    double sum = s.fill(c);
    double last = sum;
    int at = c;
    for (int k = 0; k < REACH; k++) {
      at += towardsMetal;
      double f = at >= 0 && at < grid.size && grid.volume[at] > 0.0 ? s.fill(at) : 1.0;
      if (f < last - NEARLY) {
        return -1.0;
      }
      sum += f;
      last = f;
      if (grid.volume[clamp(at)] == 0.0) {
        sum += REACH - 1 - k;
        break;
      }
    }
    if (last < 1.0 - NEARLY) {
      return -1.0;
    }
    last = s.fill(c);
    at = c;
    for (int k = 0; k < REACH; k++) {
      at -= towardsMetal;
      if (grid.volume[clamp(at)] == 0.0) {
        last = 0.0;
        break;
      }
      double f = s.fill(at);
      if (f > last + NEARLY) {
        return -1.0;
      }
      sum += f;
      last = f;
    }
    return last > NEARLY ? -1.0 : sum;
  }

  private int clamp(int at) {
    return Math.max(0, Math.min(grid.size - 1, at));
  }

  private double smoothed(FlowState s, int c) {
    int n = grid.stride;
    double here = s.fill(c);
    for (int b = 0; b < 5; b++) {
      for (int a = 0; a < 5; a++) {
        int k = c + (b - 2) * n + a - 2;
        block[5 * b + a] = k >= 0 && k < grid.size && grid.volume[k] > 0.0 ? s.fill(k) : here;
      }
    }
    for (int b = 0; b < 3; b++) {
      for (int a = 0; a < 3; a++) {
        int m = 5 * (b + 1) + a + 1;
        double corners = (block[m - 6] + block[m + 6]) + (block[m - 4] + block[m + 4]);
        double sides = (block[m - 5] + block[m + 5]) + (block[m - 1] + block[m + 1]);
        smooth[3 * b + a] = (4.0 * block[m] + 2.0 * sides + corners) / 16.0;
      }
    }
    double sum = 0.0;
    for (int b = 0; b < 2; b++) {
      for (int a = 0; a < 2; a++) {
        int k = 3 * b + a;
        double gx = 0.5 * ((smooth[k + 1] + smooth[k + 4]) - (smooth[k] + smooth[k + 3]));
        double gy = 0.5 * ((smooth[k + 3] + smooth[k + 4]) - (smooth[k] + smooth[k + 1]));
        double size = Math.sqrt(gx * gx + gy * gy);
        if (size > 1e-9) {
          sum += ((a == 1 ? gx : -gx) + (b == 1 ? gy : -gy)) / size;
        }
      }
    }
    return -sum / (2.0 * grid.dx);
  }
}
