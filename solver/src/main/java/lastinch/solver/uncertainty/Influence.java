package lastinch.solver.uncertainty;

import java.util.Objects;

/**
 * How much of the spread of an outcome comes from one figure.
 *
 * @param unknown the figure
 * @param alone share that it explains by itself [-]
 * @param low lower end of where that share lies nine times in ten [-]
 * @param high upper end [-]
 */
public record Influence(UncertainInput unknown, double alone, double low, double high) {
  public Influence {
    Objects.requireNonNull(unknown, "unknown");
  }
}
