package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Spreading of heat along a passage because metal in its middle runs ahead of metal at its walls.
 * Exact for steady laminar flow far behind a front; near a front, and above Re 2300, right in order
 * of magnitude only, so it is carried with a band of half to double.
 */
public final class TaylorArisDispersion {
  /** Where the laws come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Taylor 1953, 1954; Aris 1956",
          "1/210 on the gap for plates, 1/192 on the diameter for pipes; 5 Dh u* turbulent");

  /**
   * Reynolds number above which the turbulent law limits the laminar one [-]; common practice, no
   * source.
   */
  public static final double TURBULENT = 2300.0;

  /** Divisor of the squared Peclet number on the gap, plates [-]; Aris 1956, from memory. */
  private static final double PLATES = 210.0;

  /**
   * Divisor of the squared Peclet number on the diameter, pipe [-]; Taylor 1953, Aris 1956, from
   * memory.
   */
  private static final double PIPE = 192.0;

  /**
   * Spreading over hydraulic diameter and friction velocity in turbulent flow [-]; after Taylor
   * 1954, from memory: halved metal comes 3 mm less far at most.
   */
  private static final double TURBULENT_FACTOR = 5.0;

  private TaylorArisDispersion() {}

  /**
   * Spreading coefficient between plates [m2/s].
   *
   * @param diffusivity of heat in the metal [m2/s], above 0
   * @param speed mean, either sign [m/s]
   * @param gap [m]
   * @param reynolds on the hydraulic diameter 2 gap [-]
   * @param frictionFactor Darcy [-], used above {@link #TURBULENT} only
   */
  public static double plates(
      double diffusivity, double speed, double gap, double reynolds, double frictionFactor) {
    return spread(diffusivity, speed, gap, 2.0 * gap, PLATES, reynolds, frictionFactor);
  }

  /**
   * Spreading coefficient in a round passage [m2/s].
   *
   * @param diffusivity of heat in the metal [m2/s], above 0
   * @param speed mean, either sign [m/s]
   * @param diameter [m]
   * @param reynolds on the diameter [-]
   * @param frictionFactor Darcy [-], used above {@link #TURBULENT} only
   */
  public static double round(
      double diffusivity, double speed, double diameter, double reynolds, double frictionFactor) {
    return spread(diffusivity, speed, diameter, diameter, PIPE, reynolds, frictionFactor);
  }

  private static double spread(
      double diffusivity,
      double speed,
      double across,
      double hydraulicDiameter,
      double divisor,
      double reynolds,
      double frictionFactor) {
    Checks.within("diffusivity", diffusivity, Double.MIN_NORMAL, Double.MAX_VALUE, "m2/s");
    Checks.within("speed", speed, -Double.MAX_VALUE, Double.MAX_VALUE, "m/s");
    Checks.within("across", across, 0.0, Double.MAX_VALUE, "m");
    Checks.within("reynolds", reynolds, 0.0, Double.MAX_VALUE, "-");
    double peclet = speed * across / diffusivity;
    double laminar = diffusivity * (1.0 + peclet * peclet / divisor);
    if (reynolds <= TURBULENT) {
      return laminar;
    }
    Checks.within("frictionFactor", frictionFactor, 0.0, Double.MAX_VALUE, "-");
    double wallSpeed = Math.abs(speed) * Math.sqrt(frictionFactor / 8.0);
    return Math.min(laminar, diffusivity + TURBULENT_FACTOR * hydraulicDiameter * wallSpeed);
  }
}
