package lastinch.solver.numerics;

import java.util.Arrays;

/**
 * The coarse half of {@link FivePointMatrix}: joined cells of one patch of the grid move up and
 * down together, and the small system of the patches and the other unknowns is solved exactly. What
 * the fine half of the preconditioner cannot do, to carry a change from one end of the metal to the
 * other, is taken out of its hands, so that its iterations do not grow with the number of cells.
 *
 * <p>Projected ("deflated") conjugate gradients: R. A. Nicolaides, SIAM J. Numer. Anal. 24 (1987)
 * 355; with an incomplete factorisation for flow, C. Vuik, A. Segal, J. A. Meijerink, J. Comput.
 * Phys. 152 (1999) 385; the order of steps is that of "A-DEF2" without its last term, J. M. Tang,
 * R. Nabben, C. Vuik, Y. A. Erlangga, J. Sci. Comput. 39 (2009) 340. From memory.
 */
final class DeflationPreconditioner {
  /** Fewer cells than this are left to the fine half [-]; chosen. */
  private static final int FEW = 4;

  /** A cell gives or takes on its own account from this share of its diagonal on [-]; chosen. */
  private static final double OWN = 1e-12;

  /** A pivot under this share of its diagonal is one of rounding [-]; chosen. */
  private static final double ROUNDING = 1e-13;

  /** Stands for no patch. */
  private static final int NONE = -1;

  private final int[] of;
  private final int[] patch;
  private final int[] size;
  private final int[] row;
  private final int[] at;
  private final int[] order;
  private int groups;
  private int rows;
  private int rest;
  private int none;

  private final int[] crossFrom;
  private final int[] crossTo;
  private final double[] crossSize;
  private int crossings;
  private final int[] ownCell;
  private final double[] ownSize;
  private int owns;

  private final int[] first;
  private final int[] start;
  private final double[] inverse;
  private final double[] y;
  private final double[] upperY;
  private final WorkerPair team;

  /** First cell of the upper half, and how much of each list belongs to the lower one. */
  private int half;

  private int lowerCrossings;
  private int lowerOwns;
  private double[] z;
  private double[] residual;
  private int cells;
  private double lowerProduct;
  private double upperProduct;
  private final WorkerPair.Work gathers = this::gather;
  private final WorkerPair.Work removals = this::remove;
  private double[] lower = new double[1024];

  /**
   * Room for a system.
   *
   * @param capacity most cells
   * @param others most other unknowns
   * @param patches number of patches of the grid
   * @param team who works
   */
  DeflationPreconditioner(int capacity, int others, int patches, WorkerPair team) {
    this.team = team;
    of = new int[capacity];
    patch = new int[capacity];
    size = new int[capacity];
    row = new int[capacity];
    at = new int[capacity];
    order = new int[patches + 1];
    crossFrom = new int[2 * capacity];
    crossTo = new int[2 * capacity];
    crossSize = new double[2 * capacity];
    ownCell = new int[capacity];
    ownSize = new double[capacity];
    int n = capacity / FEW + others + 1;
    first = new int[n];
    start = new int[n + 1];
    inverse = new double[n];
    y = new double[n + 1];
    upperY = new double[n + 1];
    z = y;
    residual = y;
  }

  void clear() {
    groups = 0;
  }

  /**
   * Takes the next cell in.
   *
   * @param cell its number
   * @param patchOfCell where it lies
   * @param before cell beside it that it is coupled to, itself for none
   * @param below likewise
   */
  void add(int cell, int patchOfCell, int before, int below) {
    int group = NONE;
    if (before != cell && patch[of[before]] == patchOfCell) {
      group = of[before];
    } else if (below != cell && patch[of[below]] == patchOfCell) {
      group = of[below];
    }
    if (group == NONE) {
      group = groups++;
      patch[group] = patchOfCell;
      size[group] = 0;
    }
    of[cell] = group;
    size[group]++;
  }

  /** Puts the groups that are large enough in the order of their patches. */
  private void rank() {
    Arrays.fill(order, 0);
    for (int g = 0; g < groups; g++) {
      if (size[g] >= FEW) {
        order[patch[g] + 1]++;
      }
    }
    for (int k = 1; k < order.length; k++) {
      order[k] += order[k - 1];
    }
    rows = order[order.length - 1];
    for (int g = 0; g < groups; g++) {
      row[g] = size[g] >= FEW ? order[patch[g]]++ : NONE;
    }
  }

  /**
   * Finds the small system of a fine one whose cells are all in.
   *
   * @param middle first cell of the upper half
   */
  void assemble(FivePointMatrix fine, int middle) {
    rank();
    rest = fine.others();
    // cells of groups that are too small all point at one row beyond the last, which stays 0
    none = rows + rest;
    cells = fine.cells();
    half = middle;
    lowerCrossings = 0;
    lowerOwns = 0;
    for (int k = 0; k < cells; k++) {
      int r = row[of[k]];
      at[k] = r == NONE ? none : r;
    }
    crossings = 0;
    owns = 0;
    int n = rows + rest;
    for (int k = 0; k < n; k++) {
      first[k] = k;
    }
    for (int k = 0; k < cells; k++) {
      if (k == half) {
        lowerCrossings = crossings;
        lowerOwns = owns;
      }
      double left = fine.diagonal[k];
      double east = fine.right[k];
      double north = fine.above[k];
      left -= east + north + (k > 0 ? fine.right[k - 1] : 0.0);
      left -= fine.below[k];
      if (at[k] != none && Math.abs(left) > OWN * fine.diagonal[k]) {
        ownCell[owns] = k;
        ownSize[owns++] = left;
      }
      cross(k, k + 1, east);
      cross(k, fine.aboveIndex[k], north);
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      int o = rows + fine.linkOther[i];
      first[o] = r == none ? first[o] : Math.min(first[o], r);
    }
    int total = 0;
    for (int k = 0; k < n; k++) {
      start[k] = total - first[k];
      total += k - first[k] + 1;
    }
    if (lower.length < total) {
      lower = new double[total + total / 2];
    }
    Arrays.fill(lower, 0, total, 0.0);
    fill(fine);
    factorise(n);
  }

  private void cross(int a, int b, double coupling) {
    if (coupling == 0.0 || of[a] == of[b]) {
      return;
    }
    int ra = at[a];
    int rb = at[b];
    if (ra == none && rb == none) {
      return;
    }
    crossFrom[crossings] = a;
    crossTo[crossings] = b;
    crossSize[crossings++] = coupling;
    if (ra != none && rb != none) {
      int high = Math.max(ra, rb);
      first[high] = Math.min(first[high], Math.min(ra, rb));
    }
  }

  private void put(int a, int b, double value) {
    lower[start[Math.max(a, b)] + Math.min(a, b)] += value;
  }

  private void fill(FivePointMatrix fine) {
    for (int i = 0; i < owns; i++) {
      int r = at[ownCell[i]];
      put(r, r, ownSize[i]);
    }
    for (int i = 0; i < crossings; i++) {
      int a = at[crossFrom[i]];
      int b = at[crossTo[i]];
      if (a != none) {
        put(a, a, crossSize[i]);
      }
      if (b != none) {
        put(b, b, crossSize[i]);
      }
      if (a != none && b != none) {
        put(a, b, -crossSize[i]);
      }
    }
    for (int o = 0; o < rest; o++) {
      put(rows + o, rows + o, fine.otherDiagonal[o]);
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      if (r != none) {
        put(r, rows + fine.linkOther[i], -fine.linkSize[i]);
      }
    }
  }

  /** Cholesky factors within the envelope; a row that rounding is all of is left out. */
  private void factorise(int n) {
    for (int i = 0; i < n; i++) {
      int from = start[i];
      for (int j = first[i]; j < i; j++) {
        double sum = lower[from + j];
        int other = start[j];
        for (int k = Math.max(first[i], first[j]); k < j; k++) {
          sum -= lower[from + k] * lower[other + k];
        }
        lower[from + j] = sum * inverse[j];
      }
      double pivot = lower[from + i];
      double least = ROUNDING * pivot;
      for (int k = first[i]; k < i; k++) {
        pivot -= lower[from + k] * lower[from + k];
      }
      inverse[i] = pivot > least ? 1.0 / Math.sqrt(pivot) : 0.0;
    }
  }

  private void solve() {
    int n = rows + rest;
    for (int i = 0; i < n; i++) {
      double sum = y[i];
      int from = start[i];
      for (int k = first[i]; k < i; k++) {
        sum -= lower[from + k] * y[k];
      }
      y[i] = sum * inverse[i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double value = y[i] * inverse[i];
      y[i] = value;
      int from = start[i];
      for (int k = first[i]; k < i; k++) {
        y[k] -= lower[from + k] * value;
      }
    }
  }

  /** Adds to a guess what the patches see of its residual. */
  void begin(int cells, double[] residual, double[] guess) {
    Arrays.fill(y, 0, none + 1, 0.0);
    for (int k = 0; k < cells; k++) {
      y[at[k]] += residual[k];
    }
    for (int o = 0; o < rest; o++) {
      y[rows + o] = residual[cells + o];
    }
    y[none] = 0.0;
    solve();
    for (int k = 0; k < cells; k++) {
      guess[k] += y[at[k]];
    }
    for (int o = 0; o < rest; o++) {
      guess[cells + o] += y[rows + o];
    }
  }

  /**
   * Takes out of a direction what the patches settle themselves.
   *
   * @return its product with the residual afterwards
   */
  double project(FivePointMatrix fine, double[] direction, double[] left) {
    z = direction;
    residual = left;
    team.run(gathers);
    for (int k = 0; k < rows; k++) {
      y[k] += upperY[k];
    }
    for (int o = 0; o < rest; o++) {
      y[rows + o] = fine.otherDiagonal[o] * z[cells + o];
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      int o = fine.linkOther[i];
      if (r != none) {
        y[r] -= fine.linkSize[i] * z[cells + o];
      }
      y[rows + o] -= fine.linkSize[i] * z[fine.linkCell[i]];
    }
    y[none] = 0.0;
    solve();
    team.run(removals);
    double product = lowerProduct + upperProduct;
    for (int o = 0; o < rest; o++) {
      z[cells + o] -= y[rows + o];
      product += z[cells + o] * residual[cells + o];
    }
    return product;
  }

  /** What a direction makes of each patch, by the cells of one half. */
  private void gather(int part) {
    double[] sum = part == 0 ? y : upperY;
    Arrays.fill(sum, 0, none + 1, 0.0);
    double[] of = z;
    int end = part == 0 ? lowerOwns : owns;
    for (int i = part == 0 ? 0 : lowerOwns; i < end; i++) {
      int k = ownCell[i];
      sum[at[k]] += ownSize[i] * of[k];
    }
    end = part == 0 ? lowerCrossings : crossings;
    for (int i = part == 0 ? 0 : lowerCrossings; i < end; i++) {
      int a = crossFrom[i];
      int b = crossTo[i];
      double flow = crossSize[i] * (of[a] - of[b]);
      sum[at[a]] += flow;
      sum[at[b]] -= flow;
    }
  }

  private void remove(int part) {
    double[] of = z;
    double[] left = residual;
    double[] settled = y;
    int[] rowOf = at;
    double even = 0.0;
    double odd = 0.0;
    int end = part == 0 ? half : cells;
    int k = part == 0 ? 0 : half;
    for (; k < end - 1; k += 2) {
      double one = of[k] - settled[rowOf[k]];
      double two = of[k + 1] - settled[rowOf[k + 1]];
      of[k] = one;
      of[k + 1] = two;
      even = Math.fma(one, left[k], even);
      odd = Math.fma(two, left[k + 1], odd);
    }
    if (k < end) {
      of[k] -= settled[rowOf[k]];
      even = Math.fma(of[k], left[k], even);
    }
    if (part == 0) {
      lowerProduct = even + odd;
    } else {
      upperProduct = even + odd;
    }
  }
}
