package lastinch.solver.geometry.solid;

import lastinch.solver.casting.GapGrid;
import lastinch.solver.geometry.cavity.GapRegion;

/** Which cells of a grid lie in a piece, by their middles, in one connected part. */
final class PlanOutline {
  static final int NONE = -1;
  private final GapGrid grid;
  private final boolean[] in;
  private final double[] gap;

  PlanOutline(GapRegion region, GapGrid grid) {
    this.grid = grid;
    in = new boolean[grid.size()];
    gap = new double[grid.size()];
    for (int c = 0; c < in.length; c++) {
      gap[c] = region.gapAt(grid.x(c % grid.nx()), grid.y(c / grid.nx()));
      in[c] = gap[c] > 0.0;
    }
  }

  GapGrid grid() {
    return grid;
  }

  boolean isIn(int cell) {
    return in[cell];
  }

  double gap(int cell) {
    return gap[cell];
  }

  /** The neighbour of a cell one step away, or {@link #NONE} outside of the piece. */
  int neighbour(int cell, int di, int dj) {
    int i = cell % grid.nx() + di;
    int j = cell / grid.nx() + dj;
    boolean onGrid = i >= 0 && j >= 0 && i < grid.nx() && j < grid.ny();
    return onGrid && in[grid.index(i, j)] ? grid.index(i, j) : NONE;
  }

  /** Number of separate gaps in the outline, holes, larger than some cells. */
  int holes(int least) {
    int n = in.length;
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int holes = 0;
    for (int seed = 0; seed < n; seed++) {
      if (in[seed] || seen[seed]) {
        continue;
      }
      int end = 0;
      queue[end++] = seed;
      seen[seed] = true;
      boolean outside = false;
      for (int at = 0; at < end; at++) {
        int i = queue[at] % grid.nx();
        int j = queue[at] / grid.nx();
        outside |= i == 0 || j == 0 || i == grid.nx() - 1 || j == grid.ny() - 1;
        end = spread(i, j, queue, end, seen);
      }
      holes += !outside && end >= least ? 1 : 0;
    }
    return holes;
  }

  private int spread(int i, int j, int[] queue, int from, boolean[] seen) {
    int end = from;
    int[] di = {1, -1, 0, 0};
    int[] dj = {0, 0, 1, -1};
    for (int k = 0; k < 4; k++) {
      int ni = i + di[k];
      int nj = j + dj[k];
      if (ni >= 0 && nj >= 0 && ni < grid.nx() && nj < grid.ny()) {
        int c = grid.index(ni, nj);
        if (!in[c] && !seen[c]) {
          seen[c] = true;
          queue[end++] = c;
        }
      }
    }
    return end;
  }
}
