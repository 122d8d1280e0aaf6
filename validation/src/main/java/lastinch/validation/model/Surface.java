package lastinch.validation.model;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A closed surface that grows from patches; sizes in mm. */
final class Surface {
  private static final int HEAD = 80;

  private final List<double[]> points = new ArrayList<>();
  private final List<int[]> faces = new ArrayList<>();

  /** Where a place on a patch lies, and how thick the piece is there. */
  @FunctionalInterface
  interface Patch {
    /**
     * A place.
     *
     * @param u along, 0 to 1
     * @param v across, -1 to 1
     * @return x, y and full thickness [mm]
     */
    double[] at(double u, double v);
  }

  /** Adds a piece that lies on both sides of the plane z = 0. */
  Surface patch(int along, int across, Patch patch) {
    int[][][] at = new int[2][along + 1][across + 1];
    for (int i = 0; i <= along; i++) {
      for (int j = 0; j <= across; j++) {
        double[] p = patch.at((double) i / along, -1.0 + 2.0 * j / across);
        at[0][i][j] = point(p[0], p[1], 0.5 * p[2]);
        at[1][i][j] = p[2] == 0.0 ? at[0][i][j] : point(p[0], p[1], -0.5 * p[2]);
      }
    }
    for (int i = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        quad(at[0][i][j], at[0][i + 1][j], at[0][i + 1][j + 1], at[0][i][j + 1]);
        quad(at[1][i][j], at[1][i][j + 1], at[1][i + 1][j + 1], at[1][i + 1][j]);
      }
      quad(at[1][i][0], at[1][i + 1][0], at[0][i + 1][0], at[0][i][0]);
      quad(at[0][i][across], at[0][i + 1][across], at[1][i + 1][across], at[1][i][across]);
    }
    for (int j = 0; j < across; j++) {
      quad(at[0][0][j], at[0][0][j + 1], at[1][0][j + 1], at[1][0][j]);
      quad(at[1][along][j], at[1][along][j + 1], at[0][along][j + 1], at[0][along][j]);
    }
    return this;
  }

  /** Adds a flat ring; an inner radius of 0 makes a disc. */
  Surface ring(double inner, double outer, double thick, int round) {
    int[][] at = new int[4][round];
    for (int k = 0; k < round; k++) {
      double c = StrictMath.cos(2.0 * Math.PI * k / round);
      double s = StrictMath.sin(2.0 * Math.PI * k / round);
      at[0][k] = point(outer * c, outer * s, 0.5 * thick);
      at[1][k] = point(outer * c, outer * s, -0.5 * thick);
      at[2][k] = inner == 0.0 && k > 0 ? at[2][0] : point(inner * c, inner * s, 0.5 * thick);
      at[3][k] = inner == 0.0 && k > 0 ? at[3][0] : point(inner * c, inner * s, -0.5 * thick);
    }
    for (int k = 0; k < round; k++) {
      int n = (k + 1) % round;
      quad(at[0][k], at[0][n], at[2][n], at[2][k]);
      quad(at[1][n], at[1][k], at[3][k], at[3][n]);
      quad(at[1][k], at[1][n], at[0][n], at[0][k]);
      if (inner > 0.0) {
        quad(at[2][k], at[2][n], at[3][n], at[3][k]);
      }
    }
    return this;
  }

  private int point(double x, double y, double z) {
    points.add(new double[] {x, y, z});
    return points.size() - 1;
  }

  private void quad(int a, int b, int c, int d) {
    triangle(a, b, c);
    triangle(a, c, d);
  }

  private void triangle(int a, int b, int c) {
    if (a != b && b != c && c != a) {
      faces.add(new int[] {a, b, c});
    }
  }

  int triangles() {
    return faces.size();
  }

  /** All coordinates [mm]. */
  double[] points() {
    return points.stream().flatMapToDouble(Arrays::stream).toArray();
  }

  /** All corners. */
  int[] corners() {
    return faces.stream().flatMapToInt(Arrays::stream).toArray();
  }

  /** The surface as a binary STL file. */
  byte[] stl(String title) {
    ByteBuffer out =
        ByteBuffer.allocate(HEAD + 4 + 50 * faces.size()).order(ByteOrder.LITTLE_ENDIAN);
    out.put(title.getBytes(StandardCharsets.US_ASCII));
    out.position(HEAD);
    out.putInt(faces.size());
    for (int[] face : faces) {
      for (int k = 0; k < 3; k++) {
        out.putFloat(0.0f);
      }
      for (int corner : face) {
        for (double c : points.get(corner)) {
          out.putFloat((float) c);
        }
      }
      out.putShort((short) 0);
    }
    return out.array();
  }

  /** The surface as a 3MF mesh element. */
  String mesh() {
    StringBuilder text = new StringBuilder("<mesh><vertices>\n");
    for (double[] p : points) {
      text.append(
          String.format(
              Locale.ROOT, "<vertex x=\"%.4f\" y=\"%.4f\" z=\"%.4f\"/>%n", p[0], p[1], p[2]));
    }
    text.append("</vertices><triangles>\n");
    for (int[] f : faces) {
      text.append(
          String.format(
              Locale.ROOT, "<triangle v1=\"%d\" v2=\"%d\" v3=\"%d\"/>%n", f[0], f[1], f[2]));
    }
    return text.append("</triangles></mesh>").toString().replace("\r\n", "\n");
  }
}
