package lastinch.solver.plane.record;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.physics.LapIndex;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.heat.PlaneHeat;

/** What the front leaves behind in every cell as it passes. */
public final class PlaneRecorder {
  /** Share of a piece that the last holes to close may have [-]; our own limit, no source. */
  private static final double SQUIRTS = 0.02;

  /**
   * Filled share from which metal has reached a cell [-]; chosen, that at which it carries a
   * pressure.
   */
  private static final double REACHED = 0.5;

  private final PlaneGrid grid;
  private final MeltProperties melt;
  private final PlaneHeat heat;
  private final GateTracer origins;
  private final double mouldTemperature;

  /** First metal [s], infinite where none came. */
  public final double[] time;

  /** Of the metal that came first, the newest of its moment [J/kg]. */
  public final double[] enthalpy;

  public final double[] speed;

  /** Gate that most of the metal that came first had come through. */
  public final int[] gate;

  public final double[] lap;
  private int beyondTable;

  public PlaneRecorder(
      PlaneGrid grid,
      MeltProperties melt,
      PlaneHeat heat,
      GateTracer origins,
      double mouldTemperature) {
    this.origins = origins;
    gate = new int[grid.size];
    Arrays.fill(gate, GateTracer.NONE);
    this.grid = grid;
    this.melt = melt;
    this.heat = heat;
    this.mouldTemperature = mouldTemperature;
    time = new double[grid.size];
    enthalpy = new double[grid.size];
    speed = new double[grid.size];
    lap = new double[grid.size];
    Arrays.fill(time, Double.POSITIVE_INFINITY);
  }

  /** Notes the cells that metal has reached at a moment [s]. */
  public void note(FlowState s, double now, boolean[] piece) {
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (s.liquid[c] >= REACHED * grid.volume[c]
            && grid.volume[c] > 0.0
            && time[c] == Double.POSITIVE_INFINITY) {
          arrive(s, c, now);
        }
      }
    }
  }

  private void arrive(FlowState s, int c, double now) {
    int n = grid.stride;
    double u = Math.max(Math.abs(s.u[c]), Math.abs(s.u[c + 1]));
    double v = Math.max(Math.abs(s.v[c]), Math.abs(s.v[c + n]));
    time[c] = now;
    gate[c] = origins.of(c);
    enthalpy[c] = melt.water ? melt.enthalpyIn : heat.leading().enthalpy[c];
    speed[c] = Math.sqrt(u * u + v * v);
    if (!melt.water) {
      beyondTable += melt.table.covers(enthalpy[c]) ? 0 : 1;
      double t = melt.table.temperature(enthalpy[c]);
      double tau = LapIndex.tau(grid.gap[c], melt.capillaryLength, speed[c], 0.0);
      double drop =
          LapIndex.surfaceDrop(
              melt.contact.liquid * Math.max(0.0, t - mouldTemperature),
              tau,
              melt.conductivity,
              melt.density,
              melt.alloy.specificHeatLiquid().value());
      double surface =
          LapIndex.surfaceEnthalpy(enthalpy[c], melt.alloy.specificHeatLiquid().value(), drop);
      lap[c] = LapIndex.index(melt.table.solid(surface), melt.flowStop, melt.alloy.film());
    }
  }

  /** Cells to which metal came with more or less heat than its table has. */
  int beyondTable() {
    return beyondTable;
  }

  public boolean reached(int c) {
    return time[c] < Double.POSITIVE_INFINITY;
  }

  /**
   * Cell of the piece to which metal came fastest, squirts into closing holes left out: the first
   * of the fastest cells that together hold more than those.
   *
   * @param piece whether a cell belongs to the piece
   * @return its index, -1 where no metal came
   */
  int fastestCell(boolean[] piece) {
    int[] cells =
        IntStream.range(0, grid.size)
            .filter(c -> piece[c] && grid.volume[c] > 0.0 && reached(c))
            .boxed()
            .sorted(Comparator.comparingDouble((Integer c) -> -speed[c]))
            .mapToInt(Integer::intValue)
            .toArray();
    double all = 0.0;
    for (int c : cells) {
      all += grid.volume[c];
    }
    double sum = 0.0;
    for (int c : cells) {
      sum += grid.volume[c];
      if (sum > SQUIRTS * all) {
        return c;
      }
    }
    return -1;
  }
}
