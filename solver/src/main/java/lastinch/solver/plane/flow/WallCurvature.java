package lastinch.solver.plane.flow;

/**
 * How the mould round the cavity widens with depth: half a circle along every rim, spread over the
 * wall near it (sums of rim and wall in a square of 13 mm), so that a strip gets 2 pi over its
 * perimeter as a channel does. Steiner's formula for convex bodies.
 */
public final class WallCurvature {
  /** Half the edge of the square over which rim and wall are summed [m]; chosen, no source. */
  private static final double REACH = 6.5e-3;

  private WallCurvature() {}

  /** Curvature by cell [1/m]. */
  public static double[] of(PlaneGrid grid) {
    int n = grid.stride;
    int r = Math.max(1, (int) Math.rint(REACH / grid.dx));
    double[] rim = sums(grid, grid.rim);
    double[] wall = sums(grid, grid.wall);
    double[] curvature = new double[grid.size];
    for (int j = PlaneGrid.HALO; j < grid.ny + PlaneGrid.HALO; j++) {
      for (int i = PlaneGrid.HALO; i < grid.nx + PlaneGrid.HALO; i++) {
        int c = j * n + i;
        if (grid.volume[c] > 0.0) {
          double edge = window(grid, rim, i, j, r);
          double face = window(grid, wall, i, j, r);
          curvature[c] = Math.PI * edge / face;
        }
      }
    }
    return curvature;
  }

  private static double[] sums(PlaneGrid grid, double[] value) {
    int n = grid.stride;
    double[] sum = new double[grid.size];
    for (int c = n; c < grid.size; c++) {
      boolean first = c % n == 0;
      sum[c] = first ? 0.0 : value[c] + sum[c - 1] + sum[c - n] - sum[c - n - 1];
    }
    return sum;
  }

  private static double window(PlaneGrid grid, double[] sum, int i, int j, int r) {
    int n = grid.stride;
    int i0 = Math.max(1, i - r) - 1;
    int i1 = Math.min(n - 1, i + r);
    int j0 = Math.max(1, j - r) - 1;
    int j1 = Math.min(grid.size / n - 1, j + r);
    return sum[j1 * n + i1] - sum[j0 * n + i1] - sum[j1 * n + i0] + sum[j0 * n + i0];
  }
}
