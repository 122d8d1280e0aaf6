package lastinch.ui.words;

import java.util.Optional;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;

/** The verdict words, first that holds. */
public enum Verdict {
  STOPS_SHORT("stopsShort"),
  MAY_STOP_SHORT("mayStopShort"),
  LIKELY_FILLS("likelyFills"),
  EDGES_ROUNDED("edgesRounded"),
  JUST_FILLS("justFills"),
  FILLS("fills");

  /** Least heat to spare of a pour that more than just fills [-]; our own limit, no source. */
  static final double ENOUGH_HEAT = 0.10;

  private final String key;

  Verdict(String key) {
    this.key = key;
  }

  /** Word in machine-readable output and in the names of sentences. */
  public String key() {
    return key;
  }

  /** Whether a caster who expects it to fill gets what he expects. */
  public boolean meetsFills() {
    return this == FILLS || this == JUST_FILLS;
  }

  /**
   * Verdict of the best run alone.
   *
   * @return empty when the run came to no verdict
   */
  public static Optional<Verdict> of(PourResult result) {
    if (result.outcome() instanceof Outcome.Misrun) {
      return Optional.of(STOPS_SHORT);
    }
    if (!(result.outcome() instanceof Outcome.Filled)) {
      return Optional.empty();
    }
    if (result.edges().stream().anyMatch(e -> e.state() != EdgeStretch.State.SHARP)) {
      return Optional.of(EDGES_ROUNDED);
    }
    return Optional.of(result.margin().heat() < ENOUGH_HEAT ? JUST_FILLS : FILLS);
  }
}
