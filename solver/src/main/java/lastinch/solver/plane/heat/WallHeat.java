package lastinch.solver.plane.heat;

import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.material.MetalTable;
import lastinch.solver.physics.Slurry;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.wall.WallColumns;

/**
 * Heat that the wetted cells of one half of the grid give to their columns of mould, and what of
 * the new solid becomes slurry and what skin. The halves are fixed and have nothing in common.
 */
public final class WallHeat {
  /** Less metal than this share of a cell gives no heat to the wall [-]; chosen. */
  private static final double TRACE = 1e-5;

  /**
   * From this long after its first metal a cell takes its steps of heat less often [s]; chosen, as
   * in the network.
   */
  private static final double OLD = 0.25;

  /** What a cell that is no longer new waits for between its steps of heat [s]; chosen. */
  private static final double WAITS = 6e-3;

  private final PlaneGrid grid;
  private final MeltProperties melt;
  private final PlaneHeat heat;
  private final MetalTable table;
  private final WallColumns columns;
  private final double mouldTemperature;
  private final double depthLimit;
  private final double[] curvature;
  private final boolean[] shut;
  private final int rowFrom;
  private final int rowTo;
  private final int firstCell;
  private double leastStop = 1.0;

  /**
   * One half.
   *
   * @param heat of all cells
   * @param part 0 for the lower half, 1 for the upper one
   * @param curvature of the outline by cell [1/m]
   * @param shut cells that let no metal through, changed
   */
  WallHeat(
      PlaneHeat heat,
      int part,
      MouldColumns mould,
      double mouldTemperature,
      double[] curvature,
      boolean[] shut) {
    grid = heat.grid;
    melt = heat.melt;
    this.heat = heat;
    this.mouldTemperature = mouldTemperature;
    this.curvature = curvature;
    this.shut = shut;
    table = melt.table(part);
    depthLimit = mould.depthLimit;
    int middle = middleRow(grid);
    int rows = grid.ny + 2 * PlaneGrid.HALO;
    rowFrom = part == 0 ? 0 : middle;
    rowTo = part == 0 ? middle - 1 : rows - 1;
    firstCell = rowFrom * grid.stride;
    int cells = (rowTo - rowFrom + 1) * grid.stride;
    columns = mould.of(cells, table);
  }

  /** First row of the upper half: as many open cells lie below it as above. */
  static int middleRow(PlaneGrid grid) {
    int open = 0;
    for (int c = 0; c < grid.size; c++) {
      open += grid.volume[c] > 0.0 ? 1 : 0;
    }
    int below = 0;
    int c = 0;
    while (2 * below < open) {
      below += grid.volume[c] > 0.0 ? 1 : 0;
      c++;
    }
    return Math.max(1, c / grid.stride);
  }

  /** One heat step [s] for the wetted cells of this half. */
  void step(FlowState s, double dt, boolean last) {
    int to = Math.min(rowTo, s.rowTo);
    for (int j = Math.max(rowFrom, s.rowFrom); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (s.liquid[c] <= TRACE * grid.volume[c]) {
          continue;
        }
        heat.due[c] += heat.wetted[c] == 0.0 ? 0.5 * dt : dt;
        boolean turn = last || heat.age[c] < OLD || heat.due[c] > WAITS;
        if (turn && heat.due[c] > 0.0) {
          stepCell(s, c, heat.due[c]);
          heat.due[c] = 0.0;
        }
      }
    }
  }

  boolean isThick(int c) {
    return melt.contact.isThick(grid.gap[c]);
  }

  private void wetWall(int c, double fill, double h) {
    if (fill <= heat.wetted[c]) {
      return;
    }
    if (heat.wetted[c] == 0.0) {
      double k = curvature[c];
      if (isThick(c)) {
        columns.openThick(c - firstCell, mouldTemperature, k, depthLimit, 0.5 * grid.gap[c], h);
      } else {
        columns.open(c - firstCell, mouldTemperature, k, depthLimit);
      }
    } else {
      columns.widen(c - firstCell, heat.wetted[c], fill);
    }
    heat.wetted[c] = fill;
  }

  private void stepCell(FlowState s, int c, double dt) {
    double liquid = s.liquid[c];
    double h = heat.content[c] / liquid;
    double before = table.solid(h);
    double fill = Math.min(1.0, liquid * grid.perVolume[c]);
    wetWall(c, fill, h);
    double plateGap = isThick(c) ? 0.0 : grid.gap[c];
    double conductance =
        melt.contact.conductance(plateGap, heat.mostSolid[c]) * fill / heat.wetted[c];
    double perArea = melt.density * liquid / (heat.wetted[c] * grid.wall[c]);
    h = columns.exchange(c - firstCell, dt, conductance, perArea, h);
    heat.age[c] += dt;
    heat.content[c] = h * liquid;
    settle(s, c, before, table.solid(h));
    heat.refresh(s, c, liquid);
  }

  /** Shares new solid between skin and slurry. */
  private void settle(FlowState s, int c, double before, double after) {
    double liquid = s.liquid[c];
    double change = after - before;
    double skin = Slurry.skin(s.skin[c], change, liquid, heat.mushShare[c], after);
    s.skin[c] = skin;
    heat.mostSolid[c] = after <= 0.0 ? 0.0 : Math.max(heat.mostSolid[c], after);
    double part = skin / liquid;
    s.openShare[c] = Slurry.openShare(part);
    s.slurry[c] = Slurry.carried(after, part);
    s.thickening[c] = Slurry.viscosityFactor(Math.min(1.0, s.slurry[c]), melt.flowStop);
    shut[c] = isShut(s, c);
  }

  private boolean isShut(FlowState s, int c) {
    if (s.liquid[c] < 0.5 * grid.volume[c]) {
      return false;
    }
    double gap = grid.gap[c];
    double stop = Slurry.openGapStop(gap);
    double open = gap * s.openShare[c];
    if (!shut[c]) {
      leastStop = Math.min(leastStop, gap > stop ? (open - stop) / (gap - stop) : 1.0);
    }
    return Slurry.isShut(shut[c], s.slurry[c], melt.flowStop, open, stop);
  }

  /** A copy of all columns that goes its own way for a time [s]. */
  WallColumns columns(double seconds) {
    return columns.continued(seconds);
  }

  /** Number of a cell's column. */
  int columnOf(int c) {
    return c - firstCell;
  }

  /** Mould face of a wetted cell [K]. */
  double faceTemperature(int c) {
    return columns.faceTemperature(c - firstCell);
  }

  /** Heat in the mould above its start, from the stored profiles [J]. */
  double held() {
    double sum = 0.0;
    for (int c = firstCell; c < (rowTo + 1) * grid.stride; c++) {
      double area = heat.wetted[c] * grid.wall[c];
      sum += heat.wetted[c] > 0.0 ? columns.held(c - firstCell) * area : 0.0;
    }
    return sum;
  }

  /** Heat that left through the outside of a shell [J]. */
  double lostToAir() {
    double sum = 0.0;
    for (int c = firstCell; c < (rowTo + 1) * grid.stride; c++) {
      double area = heat.wetted[c] * grid.wall[c];
      sum += heat.wetted[c] > 0.0 ? columns.lostToAir(c - firstCell) * area : 0.0;
    }
    return sum;
  }

  /** Least open gap over what stops it, as a share of what there was, so far [-]. */
  double leastStop() {
    return leastStop;
  }
}
