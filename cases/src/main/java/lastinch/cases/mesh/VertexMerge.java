package lastinch.cases.mesh;

import java.util.Arrays;
import java.util.Optional;

/** Makes one point of those that lie on the same spot. */
final class VertexMerge {
  /** Points nearer than this share of the longest size are taken for one. */
  private static final double NEAR = 1e-6;

  private VertexMerge() {}

  static Mesh of(double[] points, int[] corners, Optional<MeshUnit> unit) {
    Mesh exact = weld(points, corners, unit, 0.0);
    if (new Edges(exact).open() == 0) {
      return exact;
    }
    double step = NEAR * exact.longest();
    Mesh near = step > 0.0 ? weld(points, corners, unit, step) : exact;
    return near.triangles() > 0 && new Edges(near).open() < new Edges(exact).open() ? near : exact;
  }

  private static Mesh weld(double[] points, int[] corners, Optional<MeshUnit> unit, double step) {
    int count = points.length / 3;
    int size = Integer.highestOneBit(Math.max(16, 2 * count)) * 2;
    int[] table = new int[size];
    int[] to = new int[count];
    double[] kept = new double[points.length];
    double[] key = new double[points.length];
    int used = 0;
    for (int p = 0; p < count; p++) {
      double x = snapped(points[3 * p], step);
      double y = snapped(points[3 * p + 1], step);
      double z = snapped(points[3 * p + 2], step);
      int slot = hash(x, y, z) & (size - 1);
      while (table[slot] != 0) {
        int q = 3 * (table[slot] - 1);
        if (key[q] == x && key[q + 1] == y && key[q + 2] == z) {
          break;
        }
        slot = (slot + 1) & (size - 1);
      }
      if (table[slot] == 0) {
        System.arraycopy(points, 3 * p, kept, 3 * used, 3);
        key[3 * used] = x;
        key[3 * used + 1] = y;
        key[3 * used + 2] = z;
        table[slot] = ++used;
      }
      to[p] = table[slot] - 1;
    }
    int[] whole = new int[corners.length];
    int n = 0;
    for (int t = 0; t < corners.length; t += 3) {
      int a = to[corners[t]];
      int b = to[corners[t + 1]];
      int c = to[corners[t + 2]];
      if (a != b && b != c && c != a) {
        whole[n++] = a;
        whole[n++] = b;
        whole[n++] = c;
      }
    }
    return new Mesh(Arrays.copyOf(kept, 3 * used), Arrays.copyOf(whole, n), unit);
  }

  private static double snapped(double value, double step) {
    return step > 0.0 ? Math.rint(value / step) + 0.0 : value;
  }

  private static int hash(double x, double y, double z) {
    long h = Double.doubleToLongBits(x) * 0x9E3779B97F4A7C15L;
    h = (h ^ Double.doubleToLongBits(y)) * 0xC2B2AE3D27D4EB4FL;
    h = (h ^ (h >>> 29) ^ Double.doubleToLongBits(z)) * 0x165667B19E3779F9L;
    return (int) (h ^ (h >>> 32));
  }
}
