package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Losses at entries, bends and changes of section: total head lost = K u^2/(2 g). Measured on
 * turbulent water in pipes; in laminar metal (Re below 2000) true losses are larger.
 */
public final class Losses {
  /** Where the figures come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Crane TP-410; Idelchik, Handbook of Hydraulic Resistance; White, Fluid Mechanics",
          "check before citing; sudden expansion is Borda-Carnot and exact");

  /** Sharp-edged inlet [-]. */
  public static final double SHARP_INLET = 0.5;

  /** Right-angle bend cut square [-], 1.1 to 1.3. */
  public static final double MITRE_BEND = 1.1;

  /** Right-angle branch of a tee, on the speed in the branch [-], 0.8 to 1.3. */
  public static final double TEE_BRANCH = 1.0;

  /** Straight run of a tee [-], 0.1 to 0.4. */
  public static final double TEE_RUN = 0.2;

  /** Into a pool: all of the speed head is lost [-]. */
  public static final double EXIT = 1.0;

  private Losses() {}

  /**
   * Coefficient of a sudden widening on the speed before it [-].
   *
   * @param before area before [m2]
   * @param after area after [m2], not smaller than {@code before}
   */
  public static double suddenExpansion(double before, double after) {
    Checks.within("before", before, Double.MIN_NORMAL, Double.MAX_VALUE, "m2");
    Checks.within("after", after, before, Double.MAX_VALUE, "m2");
    double lost = 1.0 - before / after;
    return lost * lost;
  }

  /**
   * Coefficient of a sudden narrowing on the speed after it [-].
   *
   * @param before area before [m2]
   * @param after area after [m2], not larger than {@code before}
   */
  public static double suddenContraction(double before, double after) {
    Checks.within("after", after, Double.MIN_NORMAL, Double.MAX_VALUE, "m2");
    Checks.within("before", before, after, Double.MAX_VALUE, "m2");
    return 0.5 * (1.0 - after / before);
  }

  /**
   * The same coefficient on another speed of the chain, K u1^2 = K' u2^2 with u1 a1 = u2 a2 [-].
   *
   * @param coefficient on the speed where the area is {@code own} [-]
   * @param own area the coefficient belongs to [m2]
   * @param other area of the speed wanted [m2]
   */
  public static double referredTo(double coefficient, double own, double other) {
    Checks.within("coefficient", coefficient, 0.0, Double.MAX_VALUE, "-");
    Checks.within("own", own, Double.MIN_NORMAL, Double.MAX_VALUE, "m2");
    Checks.within("other", other, Double.MIN_NORMAL, Double.MAX_VALUE, "m2");
    double ratio = other / own;
    return coefficient * ratio * ratio;
  }

  /**
   * Steady speed under a head that is all spent on losses [m/s].
   *
   * @param head [m], not negative
   * @param coefficient sum of all losses, the exit included, on this speed [-], above 0
   */
  public static double steadySpeed(double head, double coefficient) {
    Checks.within("head", head, 0.0, Double.MAX_VALUE, "m");
    Checks.within("coefficient", coefficient, Double.MIN_NORMAL, Double.MAX_VALUE, "-");
    return Math.sqrt(2.0 * Gravity.G * head / coefficient);
  }
}
