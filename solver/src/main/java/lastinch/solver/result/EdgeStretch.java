package lastinch.solver.result;

import java.util.Objects;

/**
 * State of the rim between two places.
 *
 * @param from [m] from the first station
 * @param to [m]
 * @param state sharp, rounded or empty
 */
public record EdgeStretch(double from, double to, State state) {
  public EdgeStretch {
    Objects.requireNonNull(state, "state");
  }

  public enum State {
    SHARP,
    ROUNDED,
    EMPTY
  }
}
