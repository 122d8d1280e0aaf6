package lastinch.solver.geometry.solid;

import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.Solid;

/** Area of the faces of a solid by cell: every triangle is cut along the cell borders. */
public final class FaceShares {
  /** Most corners of a triangle after four cuts [-]: seven, with room to spare. */
  private static final int MOST = 16;

  private final GapGrid grid;
  private final double[] area;
  private final double[][] a = new double[MOST][3];
  private final double[][] b = new double[MOST][3];
  private final double[][] c = new double[MOST][3];

  private FaceShares(GapGrid grid) {
    this.grid = grid;
    area = new double[grid.size()];
  }

  /** Area over each cell [m2], [cells]. */
  public static double[] of(Solid solid, GapGrid grid) {
    FaceShares shares = new FaceShares(grid);
    for (int t = 0; t < solid.triangles(); t++) {
      shares.add(solid, t);
    }
    return shares.area;
  }

  private void add(Solid solid, int t) {
    double lowX = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < 3; k++) {
      for (int axis = 0; axis < 3; axis++) {
        a[k][axis] = solid.cornerAt(t, k, axis);
      }
      lowX = Math.min(lowX, a[k][0]);
      highX = Math.max(highX, a[k][0]);
    }
    int first = grid.column(lowX);
    int last = grid.column(highX);
    for (int i = first; i <= last; i++) {
      int n = 3;
      double[][] strip = a;
      if (first != last) {
        n = cut(a, 3, c, 0, grid.x0() + i * grid.cell(), 1.0, i > first);
        n = cut(c, n, b, 0, grid.x0() + (i + 1) * grid.cell(), -1.0, i < last);
        strip = b;
      }
      addStrip(strip, n, i);
    }
  }

  private void addStrip(double[][] strip, int n, int i) {
    double lowY = Double.POSITIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < n; k++) {
      lowY = Math.min(lowY, strip[k][1]);
      highY = Math.max(highY, strip[k][1]);
    }
    if (n < 3) {
      return;
    }
    int first = grid.row(lowY);
    int last = grid.row(highY);
    if (first == last) {
      area[grid.index(i, first)] += areaOf(strip, n);
      return;
    }
    double[][] kept = new double[MOST][3];
    double[][] cell = new double[MOST][3];
    for (int j = first; j <= last; j++) {
      int m = cut(strip, n, kept, 1, grid.y0() + j * grid.cell(), 1.0, j > first);
      m = cut(kept, m, cell, 1, grid.y0() + (j + 1) * grid.cell(), -1.0, j < last);
      area[grid.index(i, j)] += areaOf(cell, m);
    }
  }

  /** Keeps the part of a polygon on one side of a plane; returns the number of corners left. */
  private static int cut(
      double[][] in, int n, double[][] out, int axis, double at, double side, boolean needed) {
    int m = 0;
    for (int k = 0; k < n; k++) {
      double[] p = in[k];
      double[] q = in[(k + 1) % n];
      double dp = needed ? side * (p[axis] - at) : 1.0;
      double dq = needed ? side * (q[axis] - at) : 1.0;
      if (dp >= 0.0) {
        System.arraycopy(p, 0, out[m++], 0, 3);
      }
      if (dp >= 0.0 != dq >= 0.0) {
        double share = dp / (dp - dq);
        for (int d = 0; d < 3; d++) {
          out[m][d] = p[d] + share * (q[d] - p[d]);
        }
        m++;
      }
    }
    return m;
  }

  private static double areaOf(double[][] p, int n) {
    double nx = 0.0;
    double ny = 0.0;
    double nz = 0.0;
    for (int k = 1; k + 1 < n; k++) {
      double x1 = p[k][0] - p[0][0];
      double y1 = p[k][1] - p[0][1];
      double z1 = p[k][2] - p[0][2];
      double x2 = p[k + 1][0] - p[0][0];
      double y2 = p[k + 1][1] - p[0][1];
      double z2 = p[k + 1][2] - p[0][2];
      nx += y1 * z2 - z1 * y2;
      ny += z1 * x2 - x1 * z2;
      nz += x1 * y2 - y1 * x2;
    }
    return 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
  }
}
