package lastinch.cases.units;

import java.util.Objects;

/**
 * A value with the unit it was typed in.
 *
 * @param si value in the SI unit of its kind
 * @param unit as typed
 * @param typed text as it stands in the file
 */
public record Quantity(double si, Unit unit, String typed) {
  public Quantity {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(typed, "typed");
  }
}
