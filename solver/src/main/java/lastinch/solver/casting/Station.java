package lastinch.solver.casting;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.material.Checks;

/**
 * A place where the piece was measured. Sizes are those of the cavity in the mould.
 *
 * @param at distance from the first station towards the tip [m]
 * @param width full width [m]
 * @param thickness full thickness in the middle [m]
 * @param edge thickness 2 mm in from the rim [m], absent when not measured
 * @param cut the section as it was cut through a drawn shape; absent when it follows from width,
 *     thickness and the form of the limb
 */
public record Station(
    double at, double width, double thickness, OptionalDouble edge, Optional<Cut> cut) {
  /**
   * A section cut through a drawn shape.
   *
   * @param area [m2]
   * @param perimeter wetted by metal [m]
   */
  public record Cut(double area, double perimeter) {
    public Cut {
      Checks.within("area", area, 1e-9, 1.0, "m2");
      Checks.within("perimeter", perimeter, 1e-5, 10.0, "m");
    }
  }

  /** Thicker is no thin metal and no place of a piece [m]; chosen, no source. */
  public static final double MOST_THICK = 0.2;

  public Station {
    Checks.within("at", at, 0.0, 10.0, "m");
    Checks.within("width", width, 1e-4, 2.0, "m");
    Checks.within("thickness", thickness, 1e-4, MOST_THICK, "m");
    Objects.requireNonNull(cut, "cut");
    if (edge.isPresent()) {
      Checks.within("edge", edge.getAsDouble(), 1e-5, thickness, "m");
    }
  }

  /** A place measured with calipers. */
  public Station(double at, double width, double thickness, OptionalDouble edge) {
    this(at, width, thickness, edge, Optional.empty());
  }

  /** The same place at another thickness and edge; a cut section changes in proportion. */
  public Station with(double otherThickness, OptionalDouble otherEdge) {
    double ratio = otherThickness / thickness;
    return new Station(
        at,
        width,
        otherThickness,
        otherEdge,
        cut.map(c -> new Cut(c.area() * ratio, c.perimeter())));
  }
}
