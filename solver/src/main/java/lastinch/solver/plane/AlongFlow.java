package lastinch.solver.plane;

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
      for (int c = j * n + s.columnFrom; c <= j * n + s.columnTo; c++) {
        change[c] = 0.0;
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      line(s, s.u, grid.faceX, grid.gapX, enthalpy, j * n + s.columnFrom, 1, columns(s), dt);
    }
    for (int i = s.columnFrom; i <= s.columnTo; i++) {
      line(s, s.v, grid.faceY, grid.gapY, enthalpy, s.rowFrom * n + i, n, rows(s), dt);
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      for (int c = j * n + s.columnFrom; c <= j * n + s.columnTo; c++) {
        content[c] += change[c];
        enthalpy[c] += change[c] == 0.0 ? 0.0 : change[c] / moving(s, c);
      }
    }
  }

  private static int columns(FlowState s) {
    return s.columnTo - s.columnFrom + 1;
  }

  private static int rows(FlowState s) {
    return s.rowTo - s.rowFrom + 1;
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
