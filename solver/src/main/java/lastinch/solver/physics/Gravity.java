package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;

/** Pull of the earth. Holds anywhere a mould is poured to 0.3 %. */
public final class Gravity {
  /** Where the figure comes from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "Standard acceleration of free fall, 3rd General Conference on Weights and Measures 1901",
          "9.80665 there, rounded to 9.81 as in the check values");

  /** Acceleration of free fall [m/s2]; the standard value, rounded as in the check values. */
  public static final double G = 9.81;

  private Gravity() {}
}
