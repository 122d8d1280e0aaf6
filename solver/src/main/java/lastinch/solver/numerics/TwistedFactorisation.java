package lastinch.solver.numerics;

/**
 * Modified incomplete factorisation without fill of the cells of {@link FivePointMatrix}
 * (Gustafsson 1978; share of dropped fill kept on the diagonal {@value #KEPT}), from the first cell
 * upwards and from the last one downwards at the same time, towards about one row of cells in the
 * middle, which comes last. Both ends have nothing to do with each other, so that neither waits for
 * the other's sums. The middle is found by the number of cells alone.
 */
final class TwistedFactorisation {
  /**
   * Share of dropped fill that is kept on the diagonal [-]; chosen between none and all (Gustafsson
   * 1978 keeps all).
   */
  private static final double KEPT = 0.5;

  /** A pivot under this share of its diagonal is replaced by the diagonal [-]; numerical. */
  private static final double LEAST = 0.25;

  private final FivePointMatrix s;
  private final double[] inverse;
  private final double[] fromWest;
  private final double[] fromSouth;
  private final double[] fromEast;
  private final double[] fromNorth;

  /** One past the cells that are eliminated upwards. */
  private int lower;

  /** First of the cells that are eliminated downwards. */
  private int upper;

  private double[] r = new double[0];
  private double[] z = r;
  private final WorkerPair.Work factors = this::factoriseEnd;
  private final WorkerPair.Work ins = this::inwardsEnd;
  private final WorkerPair.Work outs = this::outwardsEnd;

  TwistedFactorisation(FivePointMatrix s, int capacity) {
    this.s = s;
    inverse = new double[capacity];
    fromWest = new double[capacity];
    fromSouth = new double[capacity];
    fromEast = new double[capacity];
    fromNorth = new double[capacity];
  }

  /** Finds the middle of the cells; returns the first cell of it. */
  int split() {
    int n = s.cells();
    lower = n / 2;
    upper = lower;
    for (int k = 0; k < lower; k++) {
      upper = Math.max(upper, s.aboveIndex[k] + 1);
    }
    upper = lower > 0 && s.right[lower - 1] != 0.0 ? Math.max(upper, lower + 1) : upper;
    return lower;
  }

  void factorise(WorkerPair team) {
    team.run(factors);
    for (int k = lower; k < upper; k++) {
      double e = s.diagonal[k] - fromBefore(k);
      if (k == upper - 1 && upper < s.cells()) {
        e -= east(k);
      }
      if (s.aboveIndex[k] >= upper) {
        e -= north(k);
      }
      keep(k, e);
    }
  }

  private void factoriseEnd(int part) {
    if (part == 0) {
      for (int k = 0; k < lower; k++) {
        keep(k, s.diagonal[k] - fromBefore(k));
      }
    } else {
      int last = s.cells() - 1;
      for (int k = last; k >= upper; k--) {
        double e = s.diagonal[k] - (k < last ? east(k) : 0.0);
        keep(k, s.aboveIndex[k] == k ? e : e - north(k));
      }
    }
  }

  private double fromBefore(int k) {
    double west = k > 0 ? s.right[k - 1] : 0.0;
    double sum = 0.0;
    if (west != 0.0) {
      double fill = s.aboveIndex[k - 1] < upper ? s.above[k - 1] : 0.0;
      sum = west * (west + KEPT * fill) * inverse[k - 1];
    }
    int b = s.belowIndex[k];
    double south = s.below[k];
    return south == 0.0 ? sum : sum + south * (south + KEPT * s.right[b]) * inverse[b];
  }

  private double east(int k) {
    double east = s.right[k];
    return east == 0.0 ? 0.0 : east * (east + KEPT * s.below[k + 1]) * inverse[k + 1];
  }

  private double north(int k) {
    int a = s.aboveIndex[k];
    double north = s.above[k];
    double west = a > 0 ? s.right[a - 1] : 0.0;
    return north * (north + KEPT * west) * inverse[a];
  }

  private void keep(int k, double e) {
    double one = 1.0 / (e < LEAST * s.diagonal[k] ? s.diagonal[k] : e);
    inverse[k] = one;
    fromWest[k] = k > 0 ? s.right[k - 1] * one : 0.0;
    fromSouth[k] = s.below[k] * one;
    fromEast[k] = s.right[k] * one;
    fromNorth[k] = s.above[k] * one;
  }

  /** Applies the factors to a residual. */
  void apply(WorkerPair team, double[] residual, double[] result) {
    r = residual;
    z = result;
    if (team.isHelped()) {
      team.run(ins);
      middle();
      team.run(outs);
    } else {
      inwards();
      middle();
      outwards();
    }
  }

  private void inwardsEnd(int part) {
    if (part == 0) {
      upwards(0, 0.0);
    } else {
      downwards(s.cells() - 1, 0.0);
    }
  }

  private void outwardsEnd(int part) {
    if (part == 0) {
      backDown(lower - 1, lower < s.cells() ? z[lower] : 0.0);
    } else {
      backUp(upper, upper > 0 ? z[upper - 1] : 0.0);
    }
  }

  private void upwards(int start, double before) {
    double last = before;
    int[] below = s.belowIndex;
    double[] to = z;
    for (int k = start; k < lower; k++) {
      last = Math.fma(fromWest[k], last, Math.fma(fromSouth[k], to[below[k]], r[k] * inverse[k]));
      to[k] = last;
    }
  }

  private void downwards(int start, double before) {
    double last = before;
    int[] above = s.aboveIndex;
    double[] to = z;
    for (int k = start; k >= upper; k--) {
      last = Math.fma(fromEast[k], last, Math.fma(fromNorth[k], to[above[k]], r[k] * inverse[k]));
      to[k] = last;
    }
  }

  /** Both ends in one loop, so that the sums of one fill the waits of the other. */
  private void inwards() {
    double[] to = z;
    double[] from = r;
    double[] one = inverse;
    double[] west = fromWest;
    double[] south = fromSouth;
    double[] east = fromEast;
    double[] north = fromNorth;
    int[] below = s.belowIndex;
    int[] above = s.aboveIndex;
    double up = 0.0;
    double down = 0.0;
    int last = s.cells() - 1;
    int both = Math.min(lower, last + 1 - upper);
    for (int k = 0; k < both; k++) {
      int d = last - k;
      up = Math.fma(west[k], up, Math.fma(south[k], to[below[k]], from[k] * one[k]));
      down = Math.fma(east[d], down, Math.fma(north[d], to[above[d]], from[d] * one[d]));
      to[k] = up;
      to[d] = down;
    }
    upwards(both, up);
    downwards(last - both, down);
  }

  private void middle() {
    for (int k = lower; k < upper; k++) {
      double sum = Math.fma(fromSouth[k], z[s.belowIndex[k]], r[k] * inverse[k]);
      sum = k > 0 ? Math.fma(fromWest[k], z[k - 1], sum) : sum;
      int a = s.aboveIndex[k];
      sum = a >= upper ? Math.fma(fromNorth[k], z[a], sum) : sum;
      sum = k == upper - 1 && upper < s.cells() ? Math.fma(fromEast[k], z[k + 1], sum) : sum;
      z[k] = sum;
    }
    for (int k = upper - 1; k >= lower; k--) {
      double sum = z[k];
      sum = k < upper - 1 ? Math.fma(fromEast[k], z[k + 1], sum) : sum;
      int a = s.aboveIndex[k];
      z[k] = a != k && a < upper ? Math.fma(fromNorth[k], z[a], sum) : sum;
    }
  }

  private void backDown(int start, double after) {
    double last = after;
    int[] above = s.aboveIndex;
    double[] to = z;
    for (int k = start; k >= 0; k--) {
      last = Math.fma(fromEast[k], last, Math.fma(fromNorth[k], to[above[k]], to[k]));
      to[k] = last;
    }
  }

  private void backUp(int start, double after) {
    double last = after;
    int[] below = s.belowIndex;
    double[] to = z;
    int end = s.cells();
    for (int k = start; k < end; k++) {
      last = Math.fma(fromWest[k], last, Math.fma(fromSouth[k], to[below[k]], to[k]));
      to[k] = last;
    }
  }

  private void outwards() {
    double[] to = z;
    double[] west = fromWest;
    double[] south = fromSouth;
    double[] east = fromEast;
    double[] north = fromNorth;
    int[] below = s.belowIndex;
    int[] above = s.aboveIndex;
    int end = s.cells();
    double down = lower < end ? to[lower] : 0.0;
    double up = upper > 0 ? to[upper - 1] : 0.0;
    int both = Math.min(lower, end - upper);
    for (int k = 0; k < both; k++) {
      int d = lower - 1 - k;
      int u = upper + k;
      down = Math.fma(east[d], down, Math.fma(north[d], to[above[d]], to[d]));
      up = Math.fma(west[u], up, Math.fma(south[u], to[below[u]], to[u]));
      to[d] = down;
      to[u] = up;
    }
    backDown(lower - 1 - both, down);
    backUp(upper + both, up);
  }
}
