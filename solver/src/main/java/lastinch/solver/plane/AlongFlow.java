package lastinch.solver.plane;

import java.util.Arrays;
import lastinch.solver.numerics.AxialSpread;

/**
 * Spreads heat along the flow, because metal in the middle of the gap runs ahead of metal at its
 * faces (Taylor and Aris; the cross terms of their tensor are left out). Implicit along rows and
 * columns, each with twice the spreading and both taken in the mean, so that nothing depends on
 * which way the grid lies. Heat is kept to rounding, no new extremes.
 */
final class AlongFlow {
  private static final double HALF = 0.5;
  private static final double FULL = 0.95;
  private static final double LEAST = 1e-30;

  private final PlaneGrid grid;
  private final PlaneMelt melt;
  private final LeadingMetal leading;
  private final double[] value;
  private final double[] capacity;
  private final double[] link;
  private final double[] scratchA;
  private final double[] scratchB;
  private final double[] change;
  private final int[] lowest;
  private final int[] highest;

  AlongFlow(PlaneGrid grid, PlaneMelt melt, LeadingMetal leading) {
    this.grid = grid;
    this.melt = melt;
    this.leading = leading;
    int longest = Math.max(grid.nx, grid.ny) + 2 * PlaneGrid.HALO;
    value = new double[longest];
    capacity = new double[longest];
    link = new double[longest];
    scratchA = new double[longest];
    scratchB = new double[longest];
    change = new double[grid.size];
    lowest = new int[grid.stride];
    highest = new int[grid.stride];
  }

  /**
   * Spreads over a time.
   *
   * @param content heat of a cell over density, changed [m3 J/kg]
   * @param enthalpy of what moves [J/kg]
   * @param dt [s]
   */
  void spread(FlowState s, double[] content, double[] enthalpy, double dt) {
    if (melt.spreading == 0.0) {
      return;
    }
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        change[c] = 0.0;
      }
    }
    findColumns(s);
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int length = s.last[j] - s.first[j] + 1;
      line(s, s.u, grid.faceX, grid.gapX, enthalpy, s.first[j], 1, length, dt);
    }
    for (int i = 0; i < n; i++) {
      if (highest[i] > 0) {
        int from = Math.max(s.rowFrom, lowest[i] - 1);
        int length = Math.min(s.rowTo, highest[i] + 1) - from + 1;
        line(s, s.v, grid.faceY, grid.gapY, enthalpy, from * n + i, n, length, dt);
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        content[c] += change[c];
        enthalpy[c] += change[c] == 0.0 ? 0.0 : change[c] / moving(s, c);
      }
    }
  }

  /** Finds the rows that hold metal in every column. */
  private void findColumns(FlowState s) {
    Arrays.fill(lowest, 1);
    Arrays.fill(highest, 0);
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int from = j * grid.stride;
      for (int i = s.first[j] - from; i <= s.last[j] - from; i++) {
        lowest[i] = highest[i] == 0 ? j : lowest[i];
        highest[i] = j;
      }
    }
  }

  private static double moving(FlowState s, int c) {
    return Math.max(LEAST, s.liquid[c] - s.skin[c]);
  }

  private void line(
      FlowState s,
      double[] speed,
      double[] face,
      double[] gap,
      double[] enthalpy,
      int first,
      int d,
      int length,
      double dt) {
    boolean any = false;
    for (int k = 0; k < length; k++) {
      int c = first + k * d;
      value[k] = enthalpy[c];
      capacity[k] = moving(s, c);
      if (k == 0) {
        continue;
      }
      link[k - 1] = joined(s, c, c - d) ? link(speed[c], face[c], gap[c], dt) : 0.0;
      any |= link[k - 1] > 0.0;
    }
    if (!any) {
      return;
    }
    AxialSpread.solve(value, capacity, link, 0, length, scratchA, scratchB);
    for (int k = 0; k < length; k++) {
      int c = first + k * d;
      change[c] += 0.5 * capacity[k] * (value[k] - enthalpy[c]);
    }
  }

  private double link(double speed, double face, double gap, double dt) {
    if (face == 0.0 || speed == 0.0) {
      return 0.0;
    }
    double spread = melt.spreading * leading.carriedSpread(Math.abs(speed), gap);
    return 2.0 * dt * face * spread / grid.dx;
  }

  private boolean joined(FlowState s, int a, int b) {
    double fillA = s.fill(a);
    double fillB = s.fill(b);
    return Math.min(fillA, fillB) > HALF && Math.max(fillA, fillB) > FULL;
  }
}
