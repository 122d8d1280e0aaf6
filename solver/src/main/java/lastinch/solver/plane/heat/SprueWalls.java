package lastinch.solver.plane.heat;

import java.util.Arrays;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.wall.WallColumns;

/**
 * Walls of sprue, well and cup: one column of mould each, which takes heat from the metal that
 * stands against it and from what falls past it. Places count from the foot up; well and cup
 * follow.
 */
public final class SprueWalls {
  private final MeltProperties melt;
  private final WallColumns columns;
  private final double mouldTemperature;
  private final double depthLimit;
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
      MouldColumns mould,
      MeltProperties melt,
      double mouldTemperature,
      double[] area,
      double[] curvature) {
    this.melt = melt;
    this.mouldTemperature = mouldTemperature;
    this.area = area.clone();
    this.curvature = curvature.clone();
    share = new double[area.length];
    columns = mould.of(area.length, melt.table);
    depthLimit = mould.depthLimit;
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
        columns.open(i, mouldTemperature, curvature[i], depthLimit);
      } else {
        columns.widen(i, share[i], fill);
      }
      share[i] = fill;
    }
    double gap = 2.0 * volume / (fill * area[i]);
    double conductance = melt.contact.conductance(gap, 0.0) * fill / share[i];
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

  /** Heat that left through the outside of a shell [J]. */
  public double lostToAir() {
    double sum = 0.0;
    for (int i = 0; i < area.length; i++) {
      sum += share[i] > 0.0 ? columns.lostToAir(i) * share[i] * area[i] : 0.0;
    }
    return sum;
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
