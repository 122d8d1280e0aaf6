package lastinch.solver.geometry.solid;

/** Middle and spread of a solid's volume as seen along z: sums of prisms under its faces. */
final class PlanMoments {
  /** Points and weights on a triangle, exact to the third power (Strang and Fix 1973). */
  private static final double[][] CUBIC = {
    {1.0 / 3.0, 1.0 / 3.0, 1.0 / 3.0, -27.0 / 48.0},
    {0.6, 0.2, 0.2, 25.0 / 48.0},
    {0.2, 0.6, 0.2, 25.0 / 48.0},
    {0.2, 0.2, 0.6, 25.0 / 48.0}
  };

  private PlanMoments() {}

  /** Signed plan area of a face [m2]: positive where it looks up; {@code t} its first corner. */
  static double planArea(double[] points, int[] corners, int t) {
    int a = 3 * corners[t];
    int b = 3 * corners[t + 1];
    int c = 3 * corners[t + 2];
    return 0.5
        * ((points[b] - points[a]) * (points[c + 1] - points[a + 1])
            - (points[c] - points[a]) * (points[b + 1] - points[a + 1]));
  }

  /** Mean x, mean y [m], then the mean squares about them: xx, xy, yy [m2]. */
  static double[] of(double[] points, int[] corners) {
    double[] origin = {points[0], points[1], points[2]};
    double volume = 0.0;
    double[] sum = new double[5];
    for (int t = 0; t < corners.length; t += 3) {
      double area = planArea(points, corners, t);
      for (double[] rule : CUBIC) {
        double[] at = new double[3];
        for (int d = 0; d < 3; d++) {
          for (int k = 0; k < 3; k++) {
            at[d] += rule[k] * (points[3 * corners[t + k] + d] - origin[d]);
          }
        }
        double prism = rule[3] * area * at[2];
        volume += prism;
        sum[0] += prism * at[0];
        sum[1] += prism * at[1];
        sum[2] += prism * at[0] * at[0];
        sum[3] += prism * at[0] * at[1];
        sum[4] += prism * at[1] * at[1];
      }
    }
    if (volume == 0.0) {
      return new double[] {origin[0], origin[1], 1.0, 0.0, 1.0};
    }
    double mx = sum[0] / volume;
    double my = sum[1] / volume;
    return new double[] {
      mx + origin[0],
      my + origin[1],
      sum[2] / volume - mx * mx,
      sum[3] / volume - mx * my,
      sum[4] / volume - my * my
    };
  }

  /** Volume at x below a bound [m3]; the cut itself stands upright and adds nothing. */
  static double volumeBelow(double[] points, int[] corners, double bound) {
    double volume = 0.0;
    double[][] kept = new double[4][3];
    for (int t = 0; t < corners.length; t += 3) {
      int n = 0;
      for (int k = 0; k < 3; k++) {
        int p = 3 * corners[t + k];
        int q = 3 * corners[t + (k + 1) % 3];
        double dp = bound - points[p];
        double dq = bound - points[q];
        if (dp >= 0.0) {
          System.arraycopy(points, p, kept[n++], 0, 3);
        }
        if (dp >= 0.0 != dq >= 0.0) {
          for (int d = 0; d < 3; d++) {
            kept[n][d] = points[p + d] + dp / (dp - dq) * (points[q + d] - points[p + d]);
          }
          n++;
        }
      }
      for (int k = 1; k + 1 < n; k++) {
        double[] a = kept[0];
        double[] b = kept[k];
        double[] c = kept[k + 1];
        double area = 0.5 * ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]));
        volume += area * (a[2] + b[2] + c[2] - 3.0 * points[2]) / 3.0;
      }
    }
    return volume;
  }
}
