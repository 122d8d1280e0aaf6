package lastinch.solver.charge;

import lastinch.solver.material.MouldMedium;
import lastinch.solver.physics.ContactLaw;

/** Heat passed from metal to the mould face per degree, for one metal in one mould. */
public final class WallContact {
  /**
   * Biot number above which metal is resolved through the gap [-]; common practice for a lump, no
   * source: halved stops move by 0.06 mm.
   */
  private static final double THICK = 0.1;

  /** Solid share up to which contact is that of liquid [-]. */
  public final double skinFrees;

  /** With liquid at the wall [W/(m2 K)]. */
  public final double liquid;

  private final double gap;
  private final double gapOpen;
  private final double conductivity;
  private final boolean perfect;

  /**
   * Contact of a metal.
   *
   * @param medium of the mould
   * @param conductivity of the liquid metal [W/(m K)]
   * @param perfect whether nothing lies between (a checking option)
   */
  WallContact(MouldMedium medium, double conductivity, boolean perfect) {
    liquid = medium.contactLiquid().value();
    gap = medium.contactGap().value();
    skinFrees = medium.skinFrees().value();
    gapOpen = medium.gapOpen().value();
    this.conductivity = conductivity;
    this.perfect = perfect;
  }

  /** Whether metal in a gap [m] has to be resolved through it. */
  public boolean isThick(double fullGap) {
    return !perfect && liquid * (0.5 * fullGap) / conductivity > THICK;
  }

  /**
   * From the mean of the metal to the face [W/(m2 K)].
   *
   * @param fullGap [m]; 0 where metal is resolved through the gap
   * @param mostSolid largest solid share the place has had [-]
   */
  public double conductance(double fullGap, double mostSolid) {
    double plate = ContactLaw.plateResistance(fullGap, conductivity);
    if (perfect) {
      return plate > 0.0 ? 1.0 / plate : Double.POSITIVE_INFINITY;
    }
    double share = ContactLaw.gapShare(mostSolid, skinFrees, gapOpen);
    return ContactLaw.inSeries(
        share == 0.0 ? liquid : ContactLaw.conductance(share, liquid, gap), plate);
  }
}
