package lastinch.solver.shop;

import lastinch.solver.casting.Flask;
import lastinch.solver.material.Curve;
import lastinch.solver.material.MouldMedium;

/** Stand-in until the real one lands. */
public final class FlaskCooling {
  private FlaskCooling() {}

  /** Profile. */
  public static Curve profile(Flask flask, MouldMedium medium, double start, double seconds) {
    return Curve.constant(start);
  }
}
