package lastinch.solver.numerics;

import java.util.Arrays;

/**
 * The coarse half of {@link CellRows}: joined cells of one patch of the grid move up and down
 * together, and the small system of the patches and the other unknowns is solved exactly. What the
 * fine half of the preconditioner cannot do, to carry a change from one end of the metal to the
 * other, is taken out of its hands, so that its iterations do not grow with the number of cells.
 *
 * <p>Projected ("deflated") conjugate gradients: R. A. Nicolaides, SIAM J. Numer. Anal. 24 (1987)
 * 355; with an incomplete factorisation for flow, C. Vuik, A. Segal, J. A. Meijerink, J. Comput.
 * Phys. 152 (1999) 385; the order of steps is that of "A-DEF2" without its last term, J. M. Tang,
 * R. Nabben, C. Vuik, Y. A. Erlangga, J. Sci. Comput. 39 (2009) 340. From memory.
 */
final class PatchRows {
  /** Fewer cells than this are left to the fine half. */
  private static final int FEW = 4;

  /** A cell gives or takes on its own account from this share of its diagonal on [-]. */
  private static final double OWN = 1e-12;

  /** A pivot under this share of its diagonal is one of rounding [-]. */
  private static final double ROUNDING = 1e-13;

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
  private double[] lower = new double[1024];

  /**
   * Room for a system.
   *
   * @param capacity most cells
   * @param others most other unknowns
   * @param patches number of patches of the grid
   */
  PatchRows(int capacity, int others, int patches) {
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
    y = new double[n];
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

  /** Finds the small system of a fine one whose cells are all in. */
  void assemble(CellRows fine) {
    rank();
    for (int k = 0; k < fine.cells(); k++) {
      at[k] = row[of[k]];
    }
    rest = fine.others();
    crossings = 0;
    owns = 0;
    int n = rows + rest;
    for (int k = 0; k < n; k++) {
      first[k] = k;
    }
    for (int k = 0; k < fine.cells(); k++) {
      double left = fine.diagonal[k];
      double east = fine.right[k];
      double north = fine.above[k];
      left -= east + north + (k > 0 ? fine.right[k - 1] : 0.0);
      int below = fine.belowIndex[k];
      left -= below == k ? 0.0 : fine.above[below];
      if (at[k] != NONE && Math.abs(left) > OWN * fine.diagonal[k]) {
        ownCell[owns] = k;
        ownSize[owns++] = left;
      }
      cross(k, k + 1, east);
      cross(k, fine.aboveIndex[k], north);
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      int o = rows + fine.linkOther[i];
      first[o] = r == NONE ? first[o] : Math.min(first[o], r);
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
    if (ra == NONE && rb == NONE) {
      return;
    }
    crossFrom[crossings] = a;
    crossTo[crossings] = b;
    crossSize[crossings++] = coupling;
    if (ra != NONE && rb != NONE) {
      int high = Math.max(ra, rb);
      first[high] = Math.min(first[high], Math.min(ra, rb));
    }
  }

  private void put(int a, int b, double value) {
    lower[start[Math.max(a, b)] + Math.min(a, b)] += value;
  }

  private void fill(CellRows fine) {
    for (int i = 0; i < owns; i++) {
      int r = at[ownCell[i]];
      put(r, r, ownSize[i]);
    }
    for (int i = 0; i < crossings; i++) {
      int a = at[crossFrom[i]];
      int b = at[crossTo[i]];
      if (a != NONE) {
        put(a, a, crossSize[i]);
      }
      if (b != NONE) {
        put(b, b, crossSize[i]);
      }
      if (a != NONE && b != NONE) {
        put(a, b, -crossSize[i]);
      }
    }
    for (int o = 0; o < rest; o++) {
      put(rows + o, rows + o, fine.otherDiagonal[o]);
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      if (r != NONE) {
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
    Arrays.fill(y, 0, rows + rest, 0.0);
    for (int k = 0; k < cells; k++) {
      int r = at[k];
      if (r != NONE) {
        y[r] += residual[k];
      }
    }
    for (int o = 0; o < rest; o++) {
      y[rows + o] = residual[cells + o];
    }
    solve();
    for (int k = 0; k < cells; k++) {
      int r = at[k];
      guess[k] += r == NONE ? 0.0 : y[r];
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
  double project(CellRows fine, double[] z, double[] residual) {
    int cells = fine.cells();
    Arrays.fill(y, 0, rows + rest, 0.0);
    for (int i = 0; i < owns; i++) {
      y[at[ownCell[i]]] += ownSize[i] * z[ownCell[i]];
    }
    for (int i = 0; i < crossings; i++) {
      double flow = crossSize[i] * (z[crossFrom[i]] - z[crossTo[i]]);
      int a = at[crossFrom[i]];
      int b = at[crossTo[i]];
      if (a != NONE) {
        y[a] += flow;
      }
      if (b != NONE) {
        y[b] -= flow;
      }
    }
    for (int o = 0; o < rest; o++) {
      y[rows + o] = fine.otherDiagonal[o] * z[cells + o];
    }
    for (int i = 0; i < fine.links(); i++) {
      int r = at[fine.linkCell[i]];
      int o = fine.linkOther[i];
      if (r != NONE) {
        y[r] -= fine.linkSize[i] * z[cells + o];
      }
      y[rows + o] -= fine.linkSize[i] * z[fine.linkCell[i]];
    }
    solve();
    double product = 0.0;
    for (int k = 0; k < cells; k++) {
      int r = at[k];
      double value = r == NONE ? z[k] : z[k] - y[r];
      z[k] = value;
      product += value * residual[k];
    }
    for (int o = 0; o < rest; o++) {
      z[cells + o] -= y[rows + o];
      product += z[cells + o] * residual[cells + o];
    }
    return product;
  }
}
