package lastinch.solver.plane.heat;

import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Mould;
import lastinch.solver.material.Curve;
import lastinch.solver.shop.FlaskCooling;

/**
 * Mould temperature before metal: the same everywhere, or under a flask wall by depth. The map does
 * not say where it lies in the flask, so all of it takes the temperature of the edge nearest to the
 * wall, the coldest there is.
 */
public final class InitialMouldTemperature {
  /** Air in the shop, 20 degC [K]. */
  private static final double AIR = 293.15;

  private InitialMouldTemperature() {}

  /** Temperature at the nearest edge [K]. */
  public static double atNearestEdge(Mould mould) {
    Optional<Flask> flask = mould.flask();
    double start = mould.temperature().value();
    Curve byDepth =
        flask
            .map(f -> FlaskCooling.profile(f, mould.medium(), start, f.out().value(), AIR))
            .orElse(Curve.constant(start));
    return byDepth.at(flask.map(f -> f.edgeToWall().value()).orElse(0.0));
  }
}
