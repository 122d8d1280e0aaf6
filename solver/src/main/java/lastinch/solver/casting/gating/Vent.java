package lastinch.solver.casting.gating;

import java.util.Objects;
import lastinch.solver.casting.Place;
import lastinch.solver.material.Checks;

/**
 * Open hole that lets air out.
 *
 * @param name unique
 * @param place where it leaves the piece
 * @param across diameter [m]
 */
public record Vent(String name, Place place, double across) {
  public Vent {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(place, "place");
    Checks.within("across", across, 1e-4, 0.1, "m");
  }

  public Vent withAcross(double other) {
    return new Vent(name, place, other);
  }
}
