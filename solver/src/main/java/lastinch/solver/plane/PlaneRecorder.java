package lastinch.solver.plane;

import java.util.Arrays;
import lastinch.solver.physics.LapIndex;

/** What the front leaves behind in every cell as it passes. */
final class PlaneRecorder {
  private static final double REACHED = 0.5;

  private final PlaneGrid grid;
  private final PlaneMelt melt;
  private final PlaneHeat heat;
  private final Origins origins;
  private final double mouldTemperature;

  /** First metal [s], infinite where none came. */
  final double[] time;

  /** Of the metal that came first, the newest of its moment [J/kg]. */
  final double[] enthalpy;

  final double[] speed;

  /** Gate that most of the metal that came first had come through. */
  final int[] gate;

  final double[] lap;

  /** Where metal fell faster than the splash limit: greatest speed of arrival [m/s]. */
  private double fastest;

  private int fastestCell;

  PlaneRecorder(
      PlaneGrid grid, PlaneMelt melt, PlaneHeat heat, Origins origins, double mouldTemperature) {
    this.origins = origins;
    gate = new int[grid.size];
    Arrays.fill(gate, Origins.NONE);
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
  void note(FlowState s, double now, boolean[] piece) {
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (s.liquid[c] >= REACHED * grid.volume[c]
            && grid.volume[c] > 0.0
            && time[c] == Double.POSITIVE_INFINITY) {
          arrive(s, c, now);
          if (piece[c] && speed[c] > fastest) {
            fastest = speed[c];
            fastestCell = c;
          }
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
      double t = melt.table.temperature(enthalpy[c]);
      double tau = LapIndex.tau(grid.gap[c], melt.capillaryLength, speed[c], 0.0);
      double drop =
          LapIndex.surfaceDrop(
              melt.contactLiquid * Math.max(0.0, t - mouldTemperature),
              tau,
              melt.conductivity,
              melt.density,
              melt.alloy.specificHeatLiquid().value());
      double surface =
          LapIndex.surfaceEnthalpy(enthalpy[c], melt.alloy.specificHeatLiquid().value(), drop);
      lap[c] = LapIndex.index(melt.table.solid(surface), melt.flowStop, melt.alloy.film());
    }
  }

  boolean reached(int c) {
    return time[c] < Double.POSITIVE_INFINITY;
  }

  /** Greatest speed at which metal came to a cell of the piece [m/s]. */
  double fastest() {
    return fastest;
  }

  int fastestCell() {
    return fastestCell;
  }
}
