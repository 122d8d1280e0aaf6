package lastinch.solver.shop;

import lastinch.solver.material.Band;
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

  private LipLoss() {}

  /**
   * A loss of practice, while waiting [K/s] or over the lip [K], for another mass.
   *
   * @param usual for 1 to 2 kg in the crucible
   * @param melted mass in the crucible [kg]
   */
  public static Band forMass(Band usual, double melted) {
    Checks.within("melted", melted, 1e-4, 1000.0, "kg");
    double factor = StrictMath.cbrt(USUAL_MASS / melted);
    Citation source =
        new Citation(
            usual.source().basis(),
            usual.source().reference(),
            "figures for 1.5 kg, taken to go with surface over mass");
    return new Band(usual.value() * factor, usual.low() * factor, usual.high() * factor, source);
  }
}
