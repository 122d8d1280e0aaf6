package lastinch.cases.mesh;

/**
 * The edges of a mesh with the faces beside them. Sides of triangles are numbered {@code 3 t + k};
 * side k runs from corner k to corner k + 1.
 */
final class Edges {
  /** Marks a side whose edge has no second face, or more than two. */
  static final int NONE = -1;

  private final int[] partner;
  private final boolean[] turned;
  private int open;
  private int crowded;

  Edges(Mesh mesh) {
    int sides = 3 * mesh.triangles();
    partner = new int[sides];
    turned = new boolean[sides];
    int size = Integer.highestOneBit(Math.max(16, sides)) * 2;
    long[] keys = new long[size];
    int[] first = new int[size];
    int[] uses = new int[size];
    int[] slotOf = new int[sides];
    for (int s = 0; s < sides; s++) {
      partner[s] = NONE;
      int a = mesh.corner(s / 3, s % 3);
      int b = mesh.corner(s / 3, (s + 1) % 3);
      long key = ((long) Math.min(a, b) << 32 | Math.max(a, b)) + 1;
      long h = key * 0x9E3779B97F4A7C15L;
      int slot = (int) (h >>> 32) & (size - 1);
      while (keys[slot] != 0 && keys[slot] != key) {
        slot = (slot + 1) & (size - 1);
      }
      if (keys[slot] == 0) {
        keys[slot] = key;
        first[slot] = s;
      } else if (uses[slot] == 1) {
        int other = first[slot];
        partner[s] = other;
        partner[other] = s;
        boolean same = a == mesh.corner(other / 3, other % 3);
        turned[s] = same;
        turned[other] = same;
      }
      uses[slot]++;
      slotOf[s] = slot;
    }
    for (int s = 0; s < sides; s++) {
      int n = uses[slotOf[s]];
      if (n == 1) {
        open++;
      } else if (n > 2) {
        partner[s] = NONE;
        crowded++;
      }
    }
  }

  /** Edges with one face only. */
  int open() {
    return open;
  }

  /** Sides on edges with more than two faces. */
  int crowded() {
    return crowded;
  }

  /** The other side on the edge of a side, or {@link #NONE}. */
  int partner(int side) {
    return partner[side];
  }

  /** Whether the two faces at a side run along it the same way, so that one is inside out. */
  boolean isTurned(int side) {
    return turned[side];
  }
}
