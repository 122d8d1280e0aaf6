package lastinch.solver.numerics;

/**
 * Implicit spreading of a cell-centred quantity along a line with closed ends.
 *
 * <p>Backward Euler in time (first order, unconditionally stable, no new extremes), central in
 * space. Each face moves {@code faceConductance (h[i] - h[i + 1])} with the new values, so the sum
 * of {@code capacity h} is kept to rounding.
 */
public final class ImplicitDiffusion {
  private ImplicitDiffusion() {}

  /**
   * One step in place over the cells {@code from} (inclusive) to {@code to} (exclusive).
   *
   * @param h the quantity, replaced [J/kg]
   * @param capacity of the cells, positive in the range [kg]
   * @param faceConductance between cells i and i + 1, times the time step, not negative [kg]
   * @param from first cell
   * @param to one past the last cell
   * @param scratchA working space, as long as {@code h}
   * @param scratchB working space, as long as {@code h}
   * @throws IllegalArgumentException if an array is too short for the range
   */
  public static void solve(
      double[] h,
      double[] capacity,
      double[] faceConductance,
      int from,
      int to,
      double[] scratchA,
      double[] scratchB) {
    if (to - from < 2) {
      return;
    }
    if (from < 0
        || to > h.length
        || to > capacity.length
        || to - 1 > faceConductance.length
        || to > scratchA.length
        || to > scratchB.length) {
      throw new IllegalArgumentException(
          "arrays too short for cells " + from + " to " + to + ", h has " + h.length);
    }
    int last = to - 1;
    double stiff = capacity[last];
    double known = capacity[last] * h[last];
    for (int i = last; i > from; i--) {
      double g = faceConductance[i - 1];
      double inverse = 1.0 / (stiff + g);
      scratchA[i] = known * inverse;
      scratchB[i] = g * inverse;
      known = capacity[i - 1] * h[i - 1] + g * scratchA[i];
      stiff = capacity[i - 1] + stiff * scratchB[i];
    }
    double left = known / stiff;
    double inflow = 0.0;
    for (int i = from; i < last; i++) {
      double right = scratchA[i + 1] + scratchB[i + 1] * left;
      double flux = faceConductance[i] * (left - right);
      h[i] += (inflow - flux) / capacity[i];
      inflow = flux;
      left = right;
    }
    h[last] += inflow / capacity[last];
  }
}
