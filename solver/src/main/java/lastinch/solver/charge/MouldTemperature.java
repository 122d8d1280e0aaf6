package lastinch.solver.charge;

import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Mould;
import lastinch.solver.material.Curve;
import lastinch.solver.physics.DryAir;
import lastinch.solver.shop.FlaskCooling;

/**
 * Mould temperature before metal by depth under the flask wall; the same everywhere in a mould
 * without flask. A place of the piece takes the temperature at its own edge, the coldest it has.
 */
public final class MouldTemperature {
  private final Optional<Flask> flask;
  private final Curve byDepth;

  public MouldTemperature(Mould mould) {
    flask = mould.flask();
    double start = mould.temperature().value();
    byDepth =
        flask
            .map(f -> FlaskCooling.profile(f, mould.medium(), start, f.out().value(), DryAir.SHOP))
            .orElse(Curve.constant(start));
  }

  /** Temperature at a depth under the flask wall [K]. */
  public double at(double depth) {
    return byDepth.at(depth);
  }

  /** Depth of the edge of something in the middle of the flask [m]. */
  public double depthUnderWall(double width) {
    return flask.map(f -> Math.max(0.0, f.inside() / 2.0 - width / 2.0)).orElse(0.0);
  }

  /** Depth of the edge of the piece where it is narrower than at its widest [m]. */
  public double depthUnderWall(double width, double widest) {
    return flask.map(f -> f.edgeToWall().value() + (widest - width) / 2.0).orElse(0.0);
  }

  /** Temperature at the edge nearest to the wall [K]. */
  public double atNearestEdge() {
    return at(flask.map(f -> f.edgeToWall().value()).orElse(0.0));
  }
}
