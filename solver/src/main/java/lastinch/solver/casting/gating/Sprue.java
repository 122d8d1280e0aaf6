package lastinch.solver.casting.gating;

import java.util.Optional;
import lastinch.solver.casting.Place;
import lastinch.solver.material.Checks;

/**
 * Round channel down from the cup.
 *
 * @param tall length from cup floor to foot [m]
 * @param top diameter under the cup [m]
 * @param foot diameter at the foot [m]
 * @param into what its foot opens into when there is no runner or gate between
 */
public record Sprue(double tall, double top, double foot, Optional<Place> into) {
  public Sprue {
    Checks.within("tall", tall, 1e-3, 5.0, "m");
    Checks.within("top", top, 1e-3, 0.5, "m");
    Checks.within("foot", foot, 1e-3, 0.5, "m");
  }

  public Sprue withTall(double other) {
    return new Sprue(other, top, foot, into);
  }

  public Sprue withTop(double other) {
    return new Sprue(tall, other, foot, into);
  }

  public Sprue withFoot(double other) {
    return new Sprue(tall, top, other, into);
  }

  public Sprue withInto(Optional<Place> other) {
    return new Sprue(tall, top, foot, other);
  }
}
