package lastinch.solver.casting;

import java.util.OptionalDouble;
import lastinch.solver.material.Checks;

/**
 * A place where the piece was measured. Sizes are those of the cavity in the mould.
 *
 * @param at distance from the first station towards the tip [m]
 * @param width full width [m]
 * @param thickness full thickness in the middle [m]
 * @param edge thickness 2 mm in from the rim [m], absent when not measured
 */
public record Station(double at, double width, double thickness, OptionalDouble edge) {
  public Station {
    Checks.within("at", at, 0.0, 10.0, "m");
    Checks.within("width", width, 1e-4, 2.0, "m");
    Checks.within("thickness", thickness, 1e-4, 0.2, "m");
    if (edge.isPresent()) {
      Checks.within("edge", edge.getAsDouble(), 1e-5, thickness, "m");
    }
  }
}
