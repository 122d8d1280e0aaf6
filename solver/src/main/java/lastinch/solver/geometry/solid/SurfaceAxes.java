package lastinch.solver.geometry.solid;

import org.apache.commons.math3.exception.MathArithmeticException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/** Principal axes of a surface. */
final class SurfaceAxes {
  private SurfaceAxes() {}

  /** Direction in which the area of the faces is spread least, unit vector. */
  static double[] thin(double[] points, int[] corners) {
    double total = 0.0;
    double[] mean = new double[3];
    double[][] square = new double[3][3];
    for (int t = 0; t < corners.length; t += 3) {
      double[] m = new double[3];
      double[][] v = new double[3][3];
      for (int k = 0; k < 3; k++) {
        for (int d = 0; d < 3; d++) {
          v[k][d] = points[3 * corners[t + k] + d];
          m[d] += v[k][d] / 3.0;
        }
      }
      double area = area(v);
      total += area;
      for (int d = 0; d < 3; d++) {
        mean[d] += area * m[d];
        for (int e = 0; e < 3; e++) {
          square[d][e] += area * m[d] * m[e];
        }
      }
    }
    if (!(total > 0.0)) {
      return up();
    }
    for (int d = 0; d < 3; d++) {
      for (int e = 0; e < 3; e++) {
        square[d][e] = square[d][e] / total - mean[d] * mean[e] / (total * total);
      }
    }
    double trace = square[0][0] + square[1][1] + square[2][2];
    if (!(trace > 0.0)) {
      return up();
    }
    for (double[] row : square) {
      for (int e = 0; e < 3; e++) {
        row[e] /= trace;
      }
    }
    try {
      return new EigenDecomposition(new Array2DRowRealMatrix(square)).getEigenvector(2).toArray();
    } catch (MathArithmeticException onOneLine) {
      return up();
    }
  }

  private static double[] up() {
    return new double[] {0.0, 0.0, 1.0};
  }

  private static double area(double[][] v) {
    double[] a = new double[3];
    double[] b = new double[3];
    for (int d = 0; d < 3; d++) {
      a[d] = v[1][d] - v[0][d];
      b[d] = v[2][d] - v[0][d];
    }
    double x = a[1] * b[2] - a[2] * b[1];
    double y = a[2] * b[0] - a[0] * b[2];
    double z = a[0] * b[1] - a[1] * b[0];
    return 0.5 * Math.sqrt(x * x + y * y + z * z);
  }
}
