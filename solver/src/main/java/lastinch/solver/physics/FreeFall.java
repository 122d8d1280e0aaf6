package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * A stream of metal falling free, air drag neglected: good while it holds together, some 0.3 m for
 * a stream of 5 mm.
 */
public final class FreeFall {
  /** Where the law comes from. */
  public static final Citation SOURCE =
      new Citation(Basis.DERIVED, "Energy of a falling body; White, Fluid Mechanics", "");

  private FreeFall() {}

  /**
   * Speed after a drop [m/s].
   *
   * @param speed at the start, downward [m/s], not negative
   * @param drop height fallen [m], not negative
   */
  public static double speedAfter(double speed, double drop) {
    Checks.within("speed", speed, 0.0, Double.MAX_VALUE, "m/s");
    Checks.within("drop", drop, 0.0, Double.MAX_VALUE, "m");
    return Math.sqrt(speed * speed + 2.0 * Gravity.G * drop);
  }

  /**
   * Time taken over a distance under a steady pull [s], also for a pull of 0.
   *
   * @param speed at the start, forward [m/s], not negative; not 0 together with the pull
   * @param distance [m], not negative
   * @param pull acceleration along the way [m/s2], not negative
   */
  public static double time(double speed, double distance, double pull) {
    Checks.within("speed", speed, 0.0, Double.MAX_VALUE, "m/s");
    Checks.within("distance", distance, 0.0, Double.MAX_VALUE, "m");
    Checks.within("pull", pull, 0.0, Double.MAX_VALUE, "m/s2");
    if (distance == 0.0) {
      return 0.0;
    }
    double end = Math.sqrt(speed * speed + 2.0 * pull * distance);
    return 2.0 * distance / Checks.within("speed", speed + end, 1e-12, Double.MAX_VALUE, "m/s");
  }

  /**
   * Area of a stream after falling from a head above it to a larger one, over its area before [-]:
   * the taper of a sprue that metal just fills.
   *
   * @param headBefore height of metal above the upper place [m], above 0
   * @param headAfter height of metal above the lower place [m], not smaller
   */
  public static double areaRatio(double headBefore, double headAfter) {
    Checks.within("headBefore", headBefore, Double.MIN_NORMAL, Double.MAX_VALUE, "m");
    Checks.within("headAfter", headAfter, headBefore, Double.MAX_VALUE, "m");
    return Math.sqrt(headBefore / headAfter);
  }
}
