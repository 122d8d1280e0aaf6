package lastinch.solver.geometry.solid;

import java.util.Arrays;
import lastinch.solver.casting.Solid;

/**
 * Bounding rectangles over the faces of a solid, seen along the draw, halved at the middle face
 * until few are left. A line along the draw meets exactly the faces it passes through: a line
 * through an edge counts for one of its two faces.
 */
public final class SolidTree {
  /** Most faces of a leaf [-]; chosen for speed, changes no answer. */
  private static final int LEAF = 6;

  /** Most boxes waiting to be looked at [-]: halving reaches no deeper. */
  private static final int DEEPEST = 64;

  /** Lines along each side of the solid that tell what one costs [-]; chosen. */
  private static final int TRIED = 32;

  /**
   * Sand less thick than this between two stretches of metal is none [m]: bodies touch there;
   * chosen.
   */
  private static final double NOTHING = 1e-6;

  private final Solid solid;
  private final int[] order;

  /** By node: lowest x, lowest y, highest x, highest y [m]. */
  private final double[] box;

  /** By node: first and one past last face of the range. */
  private final int[] from;

  private final int[] to;

  /** By node: its right child, 0 for a leaf; the left one follows the node. */
  private final int[] right;

  private int nodes;

  public SolidTree(Solid solid) {
    this.solid = solid;
    int n = solid.triangles();
    order = new int[n];
    double[] middleX = new double[n];
    double[] middleY = new double[n];
    for (int t = 0; t < n; t++) {
      order[t] = t;
      for (int k = 0; k < 3; k++) {
        middleX[t] += solid.cornerAt(t, k, 0);
        middleY[t] += solid.cornerAt(t, k, 1);
      }
    }
    int most = Math.max(3, 4 * n / LEAF + 3);
    box = new double[4 * most];
    from = new int[most];
    to = new int[most];
    right = new int[most];
    build(0, n, middleX, middleY);
  }

  private int build(int first, int last, double[] middleX, double[] middleY) {
    int node = nodes++;
    from[node] = first;
    to[node] = last;
    bound(node);
    if (last - first > LEAF) {
      boolean alongX = box[4 * node + 2] - box[4 * node] > box[4 * node + 3] - box[4 * node + 1];
      int half = (first + last) >>> 1;
      select(first, last - 1, half, alongX ? middleX : middleY);
      build(first, half, middleX, middleY);
      right[node] = build(half, last, middleX, middleY);
    }
    return node;
  }

  private void bound(int node) {
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int k = from[node]; k < to[node]; k++) {
      for (int c = 0; c < 3; c++) {
        double x = solid.cornerAt(order[k], c, 0);
        double y = solid.cornerAt(order[k], c, 1);
        lowX = Math.min(lowX, x);
        lowY = Math.min(lowY, y);
        highX = Math.max(highX, x);
        highY = Math.max(highY, y);
      }
    }
    box[4 * node] = lowX;
    box[4 * node + 1] = lowY;
    box[4 * node + 2] = highX;
    box[4 * node + 3] = highY;
  }

  /** Hoare's selection: afterwards no face before {@code k} lies beyond any behind it. */
  private void select(int first, int last, int k, double[] key) {
    int low = first;
    int high = last;
    while (low < high) {
      double pivot = key[order[(low + high) >>> 1]];
      int i = low;
      int j = high;
      while (i <= j) {
        while (key[order[i]] < pivot) {
          i++;
        }
        while (key[order[j]] > pivot) {
          j--;
        }
        if (i <= j) {
          int swap = order[i];
          order[i++] = order[j];
          order[j--] = swap;
        }
      }
      if (k <= j) {
        high = j;
      } else if (k >= i) {
        low = i;
      } else {
        return;
      }
    }
  }

  /** A line along the draw and what it meets; one for each thread. */
  public final class Line {
    private final int[] stack = new int[DEEPEST];
    private double[] z = new double[16];
    private int[] sense = new int[16];
    private int hits;
    private double inside;
    private double moment;
    private int spans;
    private boolean torn;
    private boolean crossing;
    private long looks;

    private Line() {}

    /** Casts the line through a place. */
    public void cast(double x, double y) {
      hits = 0;
      int top = 0;
      stack[top++] = 0;
      while (top > 0) {
        int node = stack[--top];
        int b = 4 * node;
        looks++;
        if (x < box[b] || x > box[b + 2] || y < box[b + 1] || y > box[b + 3]) {
          continue;
        }
        if (right[node] == 0) {
          looks += to[node] - from[node];
          for (int k = from[node]; k < to[node]; k++) {
            meet(order[k], x, y);
          }
        } else {
          stack[top++] = right[node];
          stack[top++] = node + 1;
        }
      }
      walk();
    }

    private void meet(int t, double x, double y) {
      double a = edge(t, 1, 2, x, y);
      double b = edge(t, 2, 0, x, y);
      double c = edge(t, 0, 1, x, y);
      boolean left = a > 0.0 && b > 0.0 && c > 0.0;
      boolean reverse = a < 0.0 && b < 0.0 && c < 0.0;
      if (!left && !reverse) {
        return;
      }
      double height =
          (a * solid.cornerAt(t, 0, 2) + b * solid.cornerAt(t, 1, 2) + c * solid.cornerAt(t, 2, 2))
              / (a + b + c);
      if (hits == z.length) {
        z = Arrays.copyOf(z, 2 * hits);
        sense = Arrays.copyOf(sense, 2 * hits);
      }
      int at = hits++;
      int way = left ? -1 : 1;
      // at one height a way in comes first, so that touching bodies count as one
      while (at > 0 && (z[at - 1] > height || (z[at - 1] == height && sense[at - 1] < way))) {
        z[at] = z[at - 1];
        sense[at] = sense[at - 1];
        at--;
        looks++;
      }
      z[at] = height;
      sense[at] = way;
    }

    /**
     * Which side of an edge a place lies on; worked out from the lower point on, so that both faces
     * beside the edge get the same figure, and never 0.
     */
    private double edge(int t, int i, int j, double x, double y) {
      int p = solid.corner(t, i);
      int q = solid.corner(t, j);
      boolean up = p < q;
      int a = up ? p : q;
      int b = up ? q : p;
      double ax = solid.at(a, 0);
      double ay = solid.at(a, 1);
      double side = (solid.at(b, 0) - ax) * (y - ay) - (solid.at(b, 1) - ay) * (x - ax);
      if (side == 0.0) {
        side = Double.MIN_NORMAL;
      }
      return up ? side : -side;
    }

    private void walk() {
      inside = 0.0;
      moment = 0.0;
      spans = 0;
      torn = false;
      crossing = false;
      int depth = 0;
      double start = 0.0;
      double left = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < hits; k++) {
        int next = depth + sense[k];
        if (depth == 0 && next == 1) {
          start = z[k];
        } else if (depth == 1 && next == 0) {
          double length = z[k] - start;
          inside += length;
          moment += length * 0.5 * (z[k] + start);
          spans += length > 0.0 && start > left + NOTHING ? 1 : 0;
          left = z[k];
        }
        crossing |= next > 1;
        torn |= next < 0;
        depth = Math.max(0, next);
      }
      torn |= depth != 0;
    }

    /** Length of the line inside the solid [m]. */
    public double inside() {
      return inside;
    }

    /** Height of the middle of what is inside [m]. */
    public double middle() {
      return inside > 0.0 ? moment / inside : 0.0;
    }

    /** How many separate stretches lie inside: more than one is an undercut. */
    int spans() {
      return spans;
    }

    /**
     * Whether it meets a face that looks down above the height 0 or one that looks up below it.
     *
     * @param slack so near to 0 it is neither above nor below [m]
     */
    boolean leansOver(double slack) {
      int depth = 0;
      boolean leans = false;
      double left = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < hits; k++) {
        int next = Math.max(0, depth + sense[k]);
        if (depth == 0 && next == 1 && z[k] > left + NOTHING) {
          leans |= z[k] > slack || (left < -slack && left > Double.NEGATIVE_INFINITY);
        }
        left = depth == 1 && next == 0 ? z[k] : left;
        depth = next;
      }
      return leans || (left < -slack && left > Double.NEGATIVE_INFINITY);
    }

    /** Whether it leaves without having entered, or the other way round. */
    public boolean isTorn() {
      return torn;
    }

    /** Whether it is inside of two bodies at once. */
    public boolean isCrossing() {
      return crossing;
    }

    public boolean isHit() {
      return hits > 0;
    }
  }

  public Line line() {
    return new Line();
  }

  /** Boxes and faces that a line looks at, on the average of some over the whole solid [-]. */
  double looksPerLine() {
    Line line = new Line();
    for (int j = 0; j < TRIED; j++) {
      for (int i = 0; i < TRIED; i++) {
        line.cast(
            box[0] + (box[2] - box[0]) * (i + 0.5) / TRIED,
            box[1] + (box[3] - box[1]) * (j + 0.5) / TRIED);
      }
    }
    return (double) line.looks / (TRIED * TRIED);
  }
}
