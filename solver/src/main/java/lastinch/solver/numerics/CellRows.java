package lastinch.solver.numerics;

import java.util.Arrays;

/**
 * Symmetric positive definite system of cells in rows, each coupled to the one before it in its row
 * and to one in the row below, plus a few unknowns that touch many cells; all couplings are
 * negative off the diagonal.
 *
 * <p>Conjugate gradients with a modified incomplete factorisation without fill (Gustafsson 1978;
 * share of dropped fill kept on the diagonal {@value #KEPT}) for the cells and the diagonal for the
 * others; what cells of a patch of the grid have in common is solved apart ({@link PatchRows}), so
 * that iterations hardly grow with the number of cells. Everything is done in one fixed order.
 * Nothing is allocated after construction but for a small system of patches that has outgrown its
 * room. An instance belongs to one run.
 */
public final class CellRows {
  private static final double KEPT = 0.5;
  private static final double LEAST = 0.25;

  private final int capacity;
  private final int others;
  private final PatchRows patches;
  final double[] diagonal;
  final double[] right;
  final double[] above;
  final int[] belowIndex;
  final int[] aboveIndex;
  private final double[] rhs;
  private final double[] weight;
  private final double[] x;
  private final double[] r;
  private final double[] z;
  private final double[] p;
  private final double[] q;
  private final double[] inverse;
  private final double[] fromWest;
  private final double[] fromSouth;
  private final double[] fromEast;
  private final double[] fromNorth;
  final double[] otherDiagonal;
  private int cells;
  private int rest;
  private int links;
  final int[] linkCell;
  final int[] linkOther;
  final double[] linkSize;
  private double residual;

  /**
   * Room for a system.
   *
   * @param capacity most cells
   * @param others most other unknowns
   * @param links most couplings between both
   * @param patches how many patches the grid is cut into
   */
  public CellRows(int capacity, int others, int links, int patches) {
    this.capacity = capacity;
    this.patches = new PatchRows(capacity, others, patches);
    this.others = others;
    int n = capacity + others + 1;
    diagonal = new double[n];
    right = new double[n];
    above = new double[n];
    belowIndex = new int[n];
    aboveIndex = new int[n];
    rhs = new double[n];
    weight = new double[n];
    x = new double[n];
    r = new double[n];
    z = new double[n];
    p = new double[n];
    q = new double[n];
    inverse = new double[n];
    fromWest = new double[n];
    fromSouth = new double[n];
    fromEast = new double[n];
    fromNorth = new double[n];
    otherDiagonal = new double[others + 1];
    linkCell = new int[links];
    linkOther = new int[links];
    linkSize = new double[links];
  }

  /** Starts a new system without cells. */
  public void clear() {
    cells = 0;
    rest = 0;
    links = 0;
    patches.clear();
  }

  /**
   * Adds the next cell of the present row.
   *
   * @param diag diagonal, its couplings included
   * @param before size of the coupling to the cell added last, 0 for none
   * @param below size of the coupling to an earlier cell, 0 for none
   * @param belowCell that cell, any when there is none
   * @param value right-hand side
   * @param scale what a residual is multiplied by before it is compared with the tolerance
   * @param guess where the search starts
   * @param patch patch of the grid that the cell lies in; neighbouring patches should have near
   *     numbers
   */
  public void add(
      double diag,
      double before,
      double below,
      int belowCell,
      double value,
      double scale,
      double guess,
      int patch) {
    int k = cells;
    if (k >= capacity) {
      throw new IllegalArgumentException("more than " + capacity + " cells");
    }
    diagonal[k] = diag;
    right[k] = 0.0;
    above[k] = 0.0;
    aboveIndex[k] = k;
    belowIndex[k] = k;
    if (before != 0.0) {
      right[k - 1] = before;
    }
    if (below != 0.0) {
      belowIndex[k] = belowCell;
      above[belowCell] = below;
      aboveIndex[belowCell] = k;
    }
    rhs[k] = value;
    weight[k] = scale;
    x[k] = guess;
    patches.add(k, patch, before == 0.0 ? k : k - 1, belowIndex[k]);
    cells++;
  }

  /**
   * Adds an unknown that touches many cells, after all cells.
   *
   * @param diag diagonal, its couplings included
   * @return its number among the others
   */
  public int addOther(double diag, double value, double scale, double guess) {
    if (rest >= others) {
      throw new IllegalArgumentException("more than " + others + " other unknowns");
    }
    int k = cells + rest;
    otherDiagonal[rest] = diag;
    rhs[k] = value;
    weight[k] = scale;
    x[k] = guess;
    return rest++;
  }

  /** Couples a cell and another unknown. */
  public void link(int cell, int other, double size) {
    linkCell[links] = cell;
    linkOther[links] = other;
    linkSize[links] = size;
    links++;
  }

  /** Number of cells added. */
  public int cells() {
    return cells;
  }

  /** Number of other unknowns added. */
  int others() {
    return rest;
  }

  int links() {
    return links;
  }

  /** Solution of a cell. */
  public double cell(int k) {
    return x[k];
  }

  /** Solution of another unknown. */
  public double other(int k) {
    return x[cells + k];
  }

  /** Largest scaled residual at the end. */
  public double residual() {
    return residual;
  }

  /**
   * Solves until no scaled residual is larger than the tolerance.
   *
   * @return iterations made; {@code most} when it did not get there
   */
  public int solve(double tolerance, int most) {
    int n = cells + rest;
    findResidual(n);
    residual = worst(n);
    if (residual <= tolerance) {
      return 0;
    }
    factorise();
    patches.assemble(this);
    patches.begin(cells, r, x);
    findResidual(n);
    residual = worst(n);
    if (residual <= tolerance) {
      return 1;
    }
    double rz = precondition();
    System.arraycopy(z, 0, p, 0, n);
    for (int it = 1; it <= most; it++) {
      double pq = multiply(p, q);
      if (!(pq > 0.0)) {
        return residual <= tolerance ? it : most;
      }
      double a = rz / pq;
      double largest = 0.0;
      for (int k = 0; k < n; k++) {
        x[k] += a * p[k];
        double rest2 = r[k] - a * q[k];
        r[k] = rest2;
        largest = Math.max(largest, Math.abs(rest2) * weight[k]);
      }
      residual = largest;
      if (largest <= tolerance) {
        return it;
      }
      double next = precondition();
      double b = next / rz;
      rz = next;
      for (int k = 0; k < n; k++) {
        p[k] = z[k] + b * p[k];
      }
    }
    return most;
  }

  private void findResidual(int n) {
    multiply(x, q);
    for (int k = 0; k < n; k++) {
      r[k] = rhs[k] - q[k];
    }
  }

  private double worst(int n) {
    double largest = 0.0;
    for (int k = 0; k < n; k++) {
      largest = Math.max(largest, Math.abs(r[k]) * weight[k]);
    }
    return largest;
  }

  private void factorise() {
    for (int k = 0; k < cells; k++) {
      double west = k > 0 ? right[k - 1] : 0.0;
      double e = diagonal[k];
      if (west != 0.0) {
        e -= west * (west + KEPT * above[k - 1]) * inverse[k - 1];
      }
      int b = belowIndex[k];
      double south = b == k ? 0.0 : above[b];
      if (south != 0.0) {
        e -= south * (south + KEPT * right[b]) * inverse[b];
      }
      double one = 1.0 / (e < LEAST * diagonal[k] ? diagonal[k] : e);
      inverse[k] = one;
      fromWest[k] = west * one;
      fromSouth[k] = south * one;
      fromEast[k] = right[k] * one;
      fromNorth[k] = above[k] * one;
    }
  }

  /** Applies the preconditioner to the residual; returns the product of both. */
  private double precondition() {
    double last = 0.0;
    for (int k = 0; k < cells; k++) {
      last = (r[k] * inverse[k] + fromSouth[k] * z[belowIndex[k]]) + fromWest[k] * last;
      z[k] = last;
    }
    double next = 0.0;
    for (int k = cells - 1; k >= 0; k--) {
      next = (z[k] + fromNorth[k] * z[aboveIndex[k]]) + fromEast[k] * next;
      z[k] = next;
    }
    for (int o = 0; o < rest; o++) {
      int k = cells + o;
      z[k] = r[k] / otherDiagonal[o];
    }
    return patches.project(this, z, r);
  }

  /** Product with the matrix; returns the scalar product of both vectors. */
  private double multiply(double[] in, double[] out) {
    double before = 0.0;
    double product = 0.0;
    for (int k = 0; k < cells; k++) {
      double here = in[k];
      double t = diagonal[k] * here - right[k] * (k + 1 < cells ? in[k + 1] : 0.0);
      t -= k > 0 ? right[k - 1] * before : 0.0;
      int b = belowIndex[k];
      t -= b == k ? 0.0 : above[b] * in[b];
      t -= above[k] * in[aboveIndex[k]];
      out[k] = t;
      product += t * here;
      before = here;
    }
    if (rest > 0) {
      for (int o = 0; o < rest; o++) {
        out[cells + o] = otherDiagonal[o] * in[cells + o];
      }
      for (int i = 0; i < links; i++) {
        int k = linkCell[i];
        int o = cells + linkOther[i];
        out[k] -= linkSize[i] * in[o];
        out[o] -= linkSize[i] * in[k];
      }
      product = 0.0;
      for (int k = 0; k < cells + rest; k++) {
        product += out[k] * in[k];
      }
    }
    return product;
  }

  /** Forgets the last solution, so that a search may be repeated from nothing. */
  public void startFromZero() {
    Arrays.fill(x, 0, cells + rest, 0.0);
  }
}
