package lastinch.solver.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import lastinch.solver.casting.Solid;

/** Surfaces with closed forms, made of triangles. */
public final class SampleSolid {
  private final List<double[]> points = new ArrayList<>();
  private final List<int[]> faces = new ArrayList<>();

  private SampleSolid() {}

  /**
   * A piece along x: half width by x, gap by x and by share across from -1 to 1; the line it
   * follows bends by a side shift.
   */
  static SampleSolid swept(
      double length,
      int alongCells,
      int acrossCells,
      DoubleUnaryOperator halfWidth,
      DoubleBinaryOperator gap,
      DoubleUnaryOperator shift) {
    SampleSolid s = new SampleSolid();
    int[][][] at = new int[2][alongCells + 1][acrossCells + 1];
    for (int i = 0; i <= alongCells; i++) {
      double x = length * i / alongCells;
      for (int j = 0; j <= acrossCells; j++) {
        double v = -1.0 + 2.0 * j / acrossCells;
        double y = v * halfWidth.applyAsDouble(x) + shift.applyAsDouble(x);
        double half = 0.5 * gap.applyAsDouble(x, v);
        at[0][i][j] = s.point(x, y, half);
        at[1][i][j] = half == 0.0 ? at[0][i][j] : s.point(x, y, -half);
      }
    }
    for (int i = 0; i < alongCells; i++) {
      for (int j = 0; j < acrossCells; j++) {
        s.quad(at[0][i][j], at[0][i + 1][j], at[0][i + 1][j + 1], at[0][i][j + 1]);
        s.quad(at[1][i][j], at[1][i][j + 1], at[1][i + 1][j + 1], at[1][i + 1][j]);
      }
    }
    for (int i = 0; i < alongCells; i++) {
      s.quad(at[1][i][0], at[1][i + 1][0], at[0][i + 1][0], at[0][i][0]);
      int n = acrossCells;
      s.quad(at[0][i][n], at[0][i + 1][n], at[1][i + 1][n], at[1][i][n]);
    }
    for (int j = 0; j < acrossCells; j++) {
      s.quad(at[0][0][j], at[0][0][j + 1], at[1][0][j + 1], at[1][0][j]);
      int m = alongCells;
      s.quad(at[1][m][j], at[1][m][j + 1], at[0][m][j + 1], at[0][m][j]);
    }
    return s;
  }

  static SampleSolid plate(double length, double width, double thickness) {
    return swept(length, 4, 2, x -> 0.5 * width, (x, v) -> thickness, x -> 0.0);
  }

  public static SampleSolid wedge(double length, double width, double from, double to) {
    return swept(
        length, 4, 2, x -> 0.5 * width, (x, v) -> from + (to - from) * x / length, x -> 0.0);
  }

  static SampleSolid lens(double length, double width, double thickness) {
    return swept(length, 60, 96, x -> 0.5 * width, (x, v) -> thickness * (1.0 - v * v), x -> 0.0);
  }

  /** Blocks by lowest and highest x, y, z. */
  public static SampleSolid blocks(double[][] boxes) {
    SampleSolid s = new SampleSolid();
    for (double[] b : boxes) {
      int[] v = new int[8];
      for (int k = 0; k < 8; k++) {
        v[k] = s.point(b[k >> 2], b[2 + (k >> 1 & 1)], b[4 + (k & 1)]);
      }
      s.quad(v[0], v[1], v[3], v[2]);
      s.quad(v[4], v[6], v[7], v[5]);
      s.quad(v[0], v[4], v[5], v[1]);
      s.quad(v[2], v[3], v[7], v[6]);
      s.quad(v[0], v[2], v[6], v[4]);
      s.quad(v[1], v[5], v[7], v[3]);
    }
    return s;
  }

  /** A round bar along x. */
  static SampleSolid cylinder(double length, double radius, int sides) {
    SampleSolid s = new SampleSolid();
    int[][] ring = new int[2][sides];
    for (int e = 0; e < 2; e++) {
      for (int k = 0; k < sides; k++) {
        double a = 2.0 * Math.PI * k / sides;
        ring[e][k] = s.point(e * length, radius * StrictMath.cos(a), radius * StrictMath.sin(a));
      }
    }
    int first = s.point(0.0, 0.0, 0.0);
    int last = s.point(length, 0.0, 0.0);
    for (int k = 0; k < sides; k++) {
      int n = (k + 1) % sides;
      s.quad(ring[0][k], ring[0][n], ring[1][n], ring[1][k]);
      s.faces.add(new int[] {first, ring[0][n], ring[0][k]});
      s.faces.add(new int[] {last, ring[1][k], ring[1][n]});
    }
    return s;
  }

  /** A ring lying flat: middle radius and radius of the bar. */
  static SampleSolid torus(double radius, double bar, int round, int about) {
    SampleSolid s = new SampleSolid();
    int[][] at = new int[round][about];
    for (int i = 0; i < round; i++) {
      double a = 2.0 * Math.PI * i / round;
      for (int j = 0; j < about; j++) {
        double b = 2.0 * Math.PI * j / about;
        double r = radius + bar * StrictMath.cos(b);
        at[i][j] = s.point(r * StrictMath.cos(a), r * StrictMath.sin(a), bar * StrictMath.sin(b));
      }
    }
    for (int i = 0; i < round; i++) {
      for (int j = 0; j < about; j++) {
        int m = (i + 1) % round;
        int n = (j + 1) % about;
        s.quad(at[i][j], at[m][j], at[m][n], at[i][n]);
      }
    }
    return s;
  }

  private int point(double x, double y, double z) {
    points.add(new double[] {x, y, z});
    return points.size() - 1;
  }

  private void quad(int a, int b, int c, int d) {
    tri(a, b, c);
    tri(a, c, d);
  }

  private void tri(int a, int b, int c) {
    if (a != b && b != c && c != a) {
      faces.add(new int[] {a, b, c});
    }
  }

  /** Turned by three angles [rad], about z, then y, then x. */
  SampleSolid turned(double aboutZ, double aboutY, double aboutX) {
    double[] angle = {aboutX, aboutY, aboutZ};
    for (int axis = 2; axis >= 0; axis--) {
      int p = (axis + 1) % 3;
      int q = (axis + 2) % 3;
      double c = StrictMath.cos(angle[axis]);
      double s = StrictMath.sin(angle[axis]);
      for (double[] v : points) {
        double u = c * v[p] - s * v[q];
        v[q] = s * v[p] + c * v[q];
        v[p] = u;
      }
    }
    return this;
  }

  SampleSolid scaled(double factor) {
    points.forEach(
        v -> {
          for (int d = 0; d < 3; d++) {
            v[d] *= factor;
          }
        });
    return this;
  }

  double[] points() {
    return points.stream().flatMapToDouble(Arrays::stream).toArray();
  }

  int[] corners() {
    return faces.stream().flatMapToInt(Arrays::stream).toArray();
  }

  public Solid solid() {
    return new Solid(points(), corners());
  }

  /** Laid into the mould as it comes. */
  Solid laid() {
    return PartOrientation.of(points(), corners(), PartOrientation.Wish.NONE).solid();
  }
}
