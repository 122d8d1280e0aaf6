package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Speed above which a metal surface breaks up and folds its oxide in: speed head equal to the
 * height of a resting drop, 2 (gamma g/rho)^(1/4). All casting metals; a warning, not a law.
 */
public final class SplashLimit {
  /** Where the rule comes from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Campbell, Castings (critical velocity); drop height from Young-Laplace",
          "0.5 m/s is his rule value for all metals");

  /** The trade's figure for all metals [m/s] (Campbell, from memory). */
  public static final double TRADE = 0.5;

  private SplashLimit() {}

  /**
   * Limit speed [m/s].
   *
   * @param surfaceTension [N/m]
   * @param density [kg/m3]
   */
  public static double speed(double surfaceTension, double density) {
    Checks.within("surfaceTension", surfaceTension, 0.0, 10.0, "N/m");
    Checks.within("density", density, 1.0, 1e5, "kg/m3");
    return 2.0 * Math.sqrt(Math.sqrt(surfaceTension * Gravity.G / density));
  }

  /**
   * Free fall that gives a speed [m].
   *
   * @param speed [m/s]
   */
  public static double fallHeight(double speed) {
    Checks.within("speed", speed, 0.0, Double.MAX_VALUE, "m/s");
    return speed * speed / (2.0 * Gravity.G);
  }
}
