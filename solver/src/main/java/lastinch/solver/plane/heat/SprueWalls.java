package lastinch.solver.plane.heat;

import java.util.Arrays;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;

/**
 * Walls of sprue, well and cup: one column of mould each, which takes heat from the metal that
 * stands against it and from what falls past it. Places count from the foot up; well and cup
 * follow.
 */
public final class SprueWalls {
  private final PlaneMeltProperties melt;
  private final WallColumns columns;
  private final double mouldTemperature;
  private final double[] area;
  private final double[] curvature;
  private final double[] share;

  /**
   * Untouched walls.
   *
   * @param area of each wall [m2]
   * @param curvature of each wall, 0 for a flat one [1/m]
   */
  public SprueWalls(
      PourCase job,
      PlaneMeltProperties melt,
      double mouldTemperature,
      double[] area,
      double[] curvature) {
    this.melt = melt;
    this.mouldTemperature = mouldTemperature;
    this.area = area.clone();
    this.curvature = curvature.clone();
    share = new double[area.length];
    double hot = melt.table.temperature(melt.enthalpyIn);
    MouldTable table = MouldTable.of(job.mould().medium(), mouldTemperature - 100.0, hot + 50.0);
    WallGrid grid =
        WallGrid.usual(table.conductivityAt(mouldTemperature) / table.capacityAt(hot), 20.0);
    columns =
        job.checking().mouldStaysAtHeat()
            ? WallColumns.fixed(area.length, grid, table, melt.table)
            : new WallColumns(area.length, grid, table, melt.table);
  }

  /**
   * Enthalpy of metal after it has stood or fallen against a wall for a time [J/kg].
   *
   * @param i place
   * @param dt [s]
   * @param volume of the metal [m3]
   * @param wet share of the wall that it touches [-]
   * @param h its enthalpy before [J/kg]
   */
  public double exchange(int i, double dt, double volume, double wet, double h) {
    double fill = Math.min(1.0, wet);
    if (fill > share[i]) {
      if (share[i] == 0.0) {
        columns.open(i, mouldTemperature, curvature[i], Double.POSITIVE_INFINITY);
      } else {
        columns.widen(i, share[i], fill);
      }
      share[i] = fill;
    }
    double gap = 2.0 * volume / (fill * area[i]);
    double conductance = melt.conductance(gap, 0.0) * fill / share[i];
    return columns.exchange(i, dt, conductance, melt.density * volume / (share[i] * area[i]), h);
  }

  /**
   * A copy of all columns of mould that goes its own way.
   *
   * @param seconds how long heat is to be followed from here [s]
   */
  public WallColumns columns(double seconds) {
    return columns.continued(seconds);
  }

  /** Wall that the column of a place stands for [m2]. */
  public double wetted(int i) {
    return share[i] * area[i];
  }

  /** Share of that wall which metal touches that wets a share of the whole [-]. */
  public double touched(int i, double wet) {
    return Math.min(1.0, wet) / share[i];
  }

  /** Heat in all walls above their start [J]. */
  public double held() {
    double sum = 0.0;
    for (int i = 0; i < area.length; i++) {
      sum += share[i] > 0.0 ? columns.held(i) * share[i] * area[i] : 0.0;
    }
    return sum;
  }

  /** Walls of a round tapered channel from its foot up, then others. */
  public static double[] joined(double[] sprue, double... others) {
    double[] all = Arrays.copyOf(sprue, sprue.length + others.length);
    System.arraycopy(others, 0, all, sprue.length, others.length);
    return all;
  }
}
