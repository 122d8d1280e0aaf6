package lastinch.solver.shop;

import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Heat a melt loses between the reading in the crucible and the cup: so much per second while it
 * waits, and a fixed loss over the lip and in the stream.
 *
 * <p>Common practice, no source, for 1 to 2 kg. When the mass is known the losses go with surface
 * over mass, that is with mass to the power -1/3 from 1.5 kg.
 */
public final class LipLoss {
  /** Mass for which the figures of practice hold [kg]. */
  private static final double USUAL_MASS = 1.5;

  private static final Citation PRACTICE =
      new Citation(Basis.PRACTICE, "common practice, no source", "for 1 to 2 kg in the crucible");
  private static final Citation SCALED =
      new Citation(
          Basis.PRACTICE,
          "common practice, no source",
          "figures for 1.5 kg, taken to go with surface over mass");

  private LipLoss() {}

  /** Loss while waiting, melt of a usual size [K/s]. */
  public static Band coolingRate() {
    return new Band(2.0, 1.5, 3.0, PRACTICE);
  }

  /** Loss over the lip and in the stream, melt of a usual size [K]. */
  public static Band overLip() {
    return new Band(15.0, 10.0, 20.0, PRACTICE);
  }

  /**
   * Loss while waiting [K/s].
   *
   * @param melted mass in the crucible [kg]
   */
  public static Band coolingRate(double melted) {
    return scaled(coolingRate(), melted);
  }

  /**
   * Loss over the lip and in the stream [K].
   *
   * @param melted mass in the crucible [kg]
   */
  public static Band overLip(double melted) {
    return scaled(overLip(), melted);
  }

  private static Band scaled(Band usual, double melted) {
    Checks.within("melted", melted, 1e-4, 1000.0, "kg");
    double factor = StrictMath.cbrt(USUAL_MASS / melted);
    return new Band(usual.value() * factor, usual.low() * factor, usual.high() * factor, SCALED);
  }
}
