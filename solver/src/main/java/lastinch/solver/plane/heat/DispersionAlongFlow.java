package lastinch.solver.plane.heat;

import java.util.Arrays;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.numerics.ImplicitDiffusion;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;

/**
 * Spreads heat along the flow, because metal in the middle of the gap runs ahead of metal at its
 * faces (Taylor and Aris; the cross terms of their tensor are left out). Implicit along rows and
 * columns, each with twice the spreading and both taken in the mean, so that nothing depends on
 * which way the grid lies. Heat is kept to rounding, no new extremes.
 */
final class DispersionAlongFlow {
  /** Both cells of a face must be fuller than this for heat to spread over it [-]; chosen. */
  private static final double HALF = 0.5;

  /** One of them must be fuller than this [-]; chosen. */
  private static final double FULL = 0.95;

  /** Stands in for the metal of an empty cell [m3]; keeps a division finite. */
  private static final double LEAST = 1e-30;

  private final PlaneGrid grid;
  private final MeltProperties melt;
  private final FrontMarkerField leading;
  private final Line lower;
  private final Line upper;
  private final double[] change;
  private final int[] lowest;
  private final int[] highest;
  private FlowState s;
  private double[] content;
  private double[] enthalpy;
  private double dt;
  private final WorkerPair.Work clears = this::clear;
  private final WorkerPair.Work rows = this::rows;
  private final WorkerPair.Work columns = this::columns;
  private final WorkerPair.Work takes = this::take;

  DispersionAlongFlow(PlaneGrid grid, MeltProperties melt, FrontMarkerField leading) {
    this.grid = grid;
    this.melt = melt;
    this.leading = leading;
    int longest = Math.max(grid.nx, grid.ny) + 2 * PlaneGrid.HALO;
    lower = new Line(longest);
    upper = new Line(longest);
    change = new double[grid.size];
    lowest = new int[grid.stride];
    highest = new int[grid.stride];
    content = change;
    enthalpy = change;
  }

  /**
   * Spreads over a time.
   *
   * @param heat of a cell over density, changed [m3 J/kg]
   * @param ofMoving enthalpy of what moves [J/kg]
   * @param step [s]
   */
  void spread(FlowState state, double[] heat, double[] ofMoving, double step) {
    if (melt.spreading == 0.0) {
      return;
    }
    s = state;
    content = heat;
    enthalpy = ofMoving;
    dt = step;
    findColumns();
    s.team.run(clears);
    s.team.run(rows);
    s.team.run(columns);
    s.team.run(takes);
  }

  private void clear(int part) {
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        change[c] = 0.0;
      }
    }
  }

  private void rows(int part) {
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int length = s.last[j] - s.first[j] + 1;
      (part == 0 ? lower : upper).spread(s.u, grid.faceX, grid.gapX, s.first[j], 1, length);
    }
  }

  private void columns(int part) {
    int n = grid.stride;
    int middle = n / 2;
    for (int i = part == 0 ? 0 : middle; i < (part == 0 ? middle : n); i++) {
      if (highest[i] > 0) {
        int from = Math.max(s.rowFrom, lowest[i] - 1);
        int length = Math.min(s.rowTo, highest[i] + 1) - from + 1;
        (part == 0 ? lower : upper).spread(s.v, grid.faceY, grid.gapY, from * n + i, n, length);
      }
    }
  }

  private void take(int part) {
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        content[c] += change[c];
        enthalpy[c] += change[c] == 0.0 ? 0.0 : change[c] / moving(c);
      }
    }
  }

  /** Finds the rows that hold metal in every column. */
  private void findColumns() {
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

  private double moving(int c) {
    return Math.max(LEAST, s.liquid[c] - s.skin[c]);
  }

  private double link(double speed, double face, double gap) {
    if (face == 0.0 || speed == 0.0) {
      return 0.0;
    }
    double spread = melt.spreading * leading.carriedSpread(Math.abs(speed), gap);
    return 2.0 * dt * face * spread / grid.dx;
  }

  private boolean joined(int a, int b) {
    double fillA = s.fill(a);
    double fillB = s.fill(b);
    return Math.min(fillA, fillB) > HALF && Math.max(fillA, fillB) > FULL;
  }

  /** Room for one row or column. */
  private final class Line {
    private final double[] value;
    private final double[] capacity;
    private final double[] link;
    private final double[] scratchA;
    private final double[] scratchB;

    Line(int longest) {
      value = new double[longest];
      capacity = new double[longest];
      link = new double[longest];
      scratchA = new double[longest];
      scratchB = new double[longest];
    }

    void spread(double[] speed, double[] face, double[] gap, int first, int d, int length) {
      boolean any = false;
      for (int k = 0; k < length; k++) {
        int c = first + k * d;
        value[k] = enthalpy[c];
        capacity[k] = moving(c);
        if (k > 0) {
          link[k - 1] = joined(c, c - d) ? link(speed[c], face[c], gap[c]) : 0.0;
          any |= link[k - 1] > 0.0;
        }
      }
      if (!any) {
        return;
      }
      ImplicitDiffusion.solve(value, capacity, link, 0, length, scratchA, scratchB);
      for (int k = 0; k < length; k++) {
        int c = first + k * d;
        change[c] += 0.5 * capacity[k] * (value[k] - enthalpy[c]);
      }
    }
  }
}
