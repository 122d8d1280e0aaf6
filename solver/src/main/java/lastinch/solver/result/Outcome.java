package lastinch.solver.result;

import java.util.Objects;

/** How a run ended. Not filling is an answer, not an error. */
public sealed interface Outcome
    permits Outcome.Filled, Outcome.Misrun, Outcome.Cancelled, Outcome.BrokeDown {
  /** Time of the end since first metal in the cup [s]. */
  double time();

  /** The whole piece holds metal. */
  record Filled(double time) implements Outcome {}

  /** Metal stopped before the piece was full. */
  record Misrun(double time) implements Outcome {}

  /** Somebody asked it to stop. */
  record Cancelled(double time) implements Outcome {}

  /**
   * The numbers went wrong; what stands in the result is the last good state.
   *
   * @param place channel and distance, as text keys
   * @param quantity what went wrong
   * @param reason how
   */
  record BrokeDown(double time, String place, String quantity, String reason) implements Outcome {
    public BrokeDown {
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(quantity, "quantity");
      Objects.requireNonNull(reason, "reason");
    }
  }
}
