package lastinch.solver.result;

import java.util.Objects;

/**
 * State of the rim between two places.
 *
 * @param passage limb it belongs to
 * @param from [m] from the first station
 * @param to [m]
 * @param state full, rounded or empty
 * @param cause what rounded it
 */
public record EdgeStretch(String passage, double from, double to, State state, Cause cause) {
  public EdgeStretch {
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(cause, "cause");
  }

  /** A stretch of a piece that has one limb, given by plain stations. */
  public EdgeStretch(double from, double to, State state) {
    this("piece", from, to, state, state == State.ROUNDED ? Cause.HEAT : Cause.NONE);
  }

  public enum State {
    FULL,
    ROUNDED,
    EMPTY
  }

  /** What keeps a rim from filling. */
  public enum Cause {
    NONE,
    /** The metal in the rim turns to mush on its way. */
    HEAT,
    /** Too little metal stands above so thin a rim while it can still move. */
    PUSH
  }
}
