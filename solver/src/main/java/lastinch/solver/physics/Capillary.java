package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Pressure that metal which does not wet its mould needs to enter a gap (Laplace). Sections of any
 * width; at rest or slow against the capillary speed; a section much thicker than the capillary
 * length is not filled through its thickness and the law then means little.
 */
public final class Capillary {
  /** Where the law comes from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Young-Laplace; Campbell, Castings (oxide film as a factor on the pressure)",
          "film factor is an estimate of the catalogue");

  private Capillary() {}

  /**
   * Twice surface tension times cosine, film included [N/m]: what a time loop keeps.
   *
   * @param surfaceTension [N/m]
   * @param wettingAngle [rad], a right angle (no push needed) to straight (no wetting at all)
   * @param filmFactor what an oxide film multiplies the push by [-], 1 = no film
   */
  public static double strength(double surfaceTension, double wettingAngle, double filmFactor) {
    Checks.within("surfaceTension", surfaceTension, 0.0, 10.0, "N/m");
    Checks.within("wettingAngle", wettingAngle, Math.PI / 2, Math.PI, "rad");
    Checks.within("filmFactor", filmFactor, 1.0, 10.0, "-");
    return 2.0 * surfaceTension * Math.abs(StrictMath.cos(wettingAngle)) * filmFactor;
  }

  /**
   * Push needed to advance [Pa]: {@code strength (1/gap + 1/width)}. A round hole has its diameter
   * for both; a slot without ends has infinite width.
   *
   * @param strength from {@link #strength} [N/m]
   * @param gap thickness of the section [m]
   * @param width of the section [m], at least the gap, may be infinite
   */
  public static double push(double strength, double gap, double width) {
    Checks.within("strength", strength, 0.0, 200.0, "N/m");
    Checks.within("gap", gap, 1e-9, Double.MAX_VALUE, "m");
    Checks.within("width", width, 1e-9, Double.POSITIVE_INFINITY, "m");
    return strength * (1.0 / gap + 1.0 / width);
  }

  /**
   * Push needed to advance [Pa], all in one call.
   *
   * @param surfaceTension [N/m]
   * @param wettingAngle [rad]
   * @param filmFactor [-]
   * @param gap thickness of the section [m]
   * @param width of the section [m], may be infinite
   */
  public static double push(
      double surfaceTension, double wettingAngle, double filmFactor, double gap, double width) {
    return push(strength(surfaceTension, wettingAngle, filmFactor), gap, width);
  }

  /**
   * Thinnest slot that a pressure can enter [m].
   *
   * @param strength from {@link #strength} [N/m]
   * @param pressure [Pa], above 0
   */
  public static double thinnestSlot(double strength, double pressure) {
    Checks.within("strength", strength, 0.0, 200.0, "N/m");
    Checks.within("pressure", pressure, Double.MIN_NORMAL, Double.MAX_VALUE, "Pa");
    return strength / pressure;
  }

  /**
   * Capillary length, square root of surface tension over weight per volume [m].
   *
   * @param surfaceTension [N/m]
   * @param density [kg/m3]
   */
  public static double length(double surfaceTension, double density) {
    Checks.within("surfaceTension", surfaceTension, 0.0, 10.0, "N/m");
    Checks.within("density", density, 1.0, 1e5, "kg/m3");
    return Math.sqrt(surfaceTension / (density * Gravity.G));
  }
}
