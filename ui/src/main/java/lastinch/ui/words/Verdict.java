package lastinch.ui.words;

import java.util.Optional;
import lastinch.solver.result.PourResult;

/** The verdict words, first that holds. */
public enum Verdict {
  STOPS_SHORT("stopsShort"),
  MAY_STOP_SHORT("mayStopShort"),
  LIKELY_FILLS("likelyFills"),
  EDGES_ROUNDED("edgesRounded"),
  JUST_FILLS("justFills"),
  FILLS("fills");

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
    return lastinch.solver.decide.Verdict.of(result).map(Verdict::named);
  }

  /**
   * Verdict of a plan, with its other days where they were worked out.
   *
   * @return empty when the run came to no verdict
   */
  public static Optional<Verdict> of(PouredPlan plan) {
    return plan.bands().isPresent() ? plan.bands().map(b -> named(b.verdict())) : of(plan.result());
  }

  private static Verdict named(lastinch.solver.decide.Verdict verdict) {
    return valueOf(verdict.name());
  }
}
