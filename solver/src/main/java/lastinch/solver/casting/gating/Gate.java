package lastinch.solver.casting.gating;

import java.util.Objects;
import lastinch.solver.casting.Place;
import lastinch.solver.material.Checks;

/**
 * Channel cut from runner, sprue or cup into the piece.
 *
 * @param name unique
 * @param place where it enters the piece
 * @param width [m]
 * @param thickness [m]
 * @param length [m]
 */
public record Gate(String name, Place place, double width, double thickness, double length) {
  public Gate {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(place, "place");
    Checks.within("width", width, 2e-4, 0.5, "m");
    Checks.within("thickness", thickness, 2e-4, 0.1, "m");
    Checks.within("length", length, 5e-4, 1.0, "m");
  }

  public Gate withPlace(Place other) {
    return new Gate(name, other, width, thickness, length);
  }

  public Gate withWidth(double other) {
    return new Gate(name, place, other, thickness, length);
  }

  public Gate withThickness(double other) {
    return new Gate(name, place, width, other, length);
  }
}
