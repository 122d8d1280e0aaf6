package lastinch.solver.casting.gating;

import java.util.Objects;
import lastinch.solver.casting.Place;
import lastinch.solver.material.Checks;

/**
 * Pocket that takes the first cold metal.
 *
 * @param name unique
 * @param place where it leaves the piece
 * @param width of its neck [m]
 * @param thickness of its neck [m]
 * @param volume of the pocket [m3]
 */
public record Overflow(String name, Place place, double width, double thickness, double volume) {
  public Overflow {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(place, "place");
    Checks.within("width", width, 2e-4, 0.5, "m");
    Checks.within("thickness", thickness, 2e-4, 0.1, "m");
    Checks.within("volume", volume, 1e-9, 1e-2, "m3");
  }

  /** Edge length of the pocket as a cube [m]. */
  public double side() {
    return StrictMath.cbrt(volume);
  }
}
