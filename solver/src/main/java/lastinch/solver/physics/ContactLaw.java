package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Heat passed per degree between metal and mould: that of liquid against the wall until a skin
 * carries itself, that of a gap once it has drawn back, and a smooth step in the logarithm between.
 * Solid share 0 to 1; the thresholds are estimates of the catalogue.
 */
public final class ContactLaw {
  /** Where the law comes from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.ESTIMATE,
          "form is ours; plate correction from the mean of a parabola, Carslaw & Jaeger",
          "thresholds and both conductances stand in the catalogue with their bands");

  private ContactLaw() {}

  /**
   * How far the gap has opened [-], 0 to 1.
   *
   * @param mostSolid largest solid share the place has had [-]
   * @param skinFrees share up to which contact is that of liquid [-]
   * @param gapOpen share from which the gap is fully open [-], not below {@code skinFrees}
   */
  public static double gapShare(double mostSolid, double skinFrees, double gapOpen) {
    Checks.within("mostSolid", mostSolid, 0.0, 1.0, "-");
    Checks.within("skinFrees", skinFrees, 0.0, 1.0, "-");
    Checks.within("gapOpen", gapOpen, skinFrees, 1.0, "-");
    if (mostSolid <= skinFrees) {
      return 0.0;
    }
    if (mostSolid >= gapOpen) {
      return 1.0;
    }
    double x = (mostSolid - skinFrees) / (gapOpen - skinFrees);
    return x * x * (3.0 - 2.0 * x);
  }

  /**
   * Heat passed per degree [W/(m2 K)].
   *
   * @param gapShare from {@link #gapShare} [-]
   * @param liquid with liquid at the wall [W/(m2 K)], above 0
   * @param gap with the gap open [W/(m2 K)], not negative
   */
  public static double conductance(double gapShare, double liquid, double gap) {
    Checks.within("gapShare", gapShare, 0.0, 1.0, "-");
    Checks.within("liquid", liquid, Double.MIN_NORMAL, Double.MAX_VALUE, "W/(m2 K)");
    Checks.within("gap", gap, 0.0, Double.MAX_VALUE, "W/(m2 K)");
    if (gapShare == 0.0) {
      return liquid;
    }
    if (gapShare == 1.0) {
      return gap;
    }
    return liquid * StrictMath.exp(gapShare * StrictMath.log(gap / liquid));
  }

  /**
   * Resistance between the mean of a plate cooled on both faces and a face [m2 K/W].
   *
   * @param gap thickness of the plate [m]
   * @param conductivity of the metal [W/(m K)]
   */
  public static double plateResistance(double gap, double conductivity) {
    Checks.within("gap", gap, 0.0, Double.MAX_VALUE, "m");
    Checks.within("conductivity", conductivity, 1e-3, Double.MAX_VALUE, "W/(m K)");
    return gap / (6.0 * conductivity);
  }

  /**
   * Contact and plate in series, mean of the metal to face of the mould [W/(m2 K)].
   *
   * @param conductance of the contact [W/(m2 K)], not negative
   * @param resistance from {@link #plateResistance} [m2 K/W]
   */
  public static double inSeries(double conductance, double resistance) {
    Checks.within("conductance", conductance, 0.0, Double.MAX_VALUE, "W/(m2 K)");
    Checks.within("resistance", resistance, 0.0, Double.MAX_VALUE, "m2 K/W");
    return conductance / (1.0 + conductance * resistance);
  }
}
