package lastinch.solver.result;

import java.util.Objects;

/**
 * A dry pour over the plane.
 *
 * @param result what any solver finds
 * @param field what it left behind cell by cell
 */
public record PlanePour(PourResult result, PlaneField field) {
  public PlanePour {
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(field, "field");
  }
}
