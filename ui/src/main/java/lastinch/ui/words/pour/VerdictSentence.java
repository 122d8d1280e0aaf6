package lastinch.ui.words.pour;

import static lastinch.solver.study.VerdictWord.fills;
import static lastinch.solver.study.VerdictWord.isEdgeRounded;

import java.util.Optional;
import lastinch.solver.result.PourResult;
import lastinch.ui.words.PouredPlan;

/** The verdict words, first that holds. */
public enum VerdictSentence {
  STOPS_SHORT("stopsShort"),
  MAY_STOP_SHORT("mayStopShort"),
  DOES_NOT_JOIN("doesNotJoin"),
  MAY_NOT_JOIN("mayNotJoin"),
  JUST_FILLS("justFills"),
  LIKELY_FILLS("likelyFills"),
  EDGES_ROUNDED("edgesRounded"),
  FILLS("fills");

  private final String key;

  VerdictSentence(String key) {
    this.key = key;
  }

  /** Word in machine-readable output and in the names of sentences. */
  public String key() {
    return key;
  }

  /**
   * Whether a caster who expects a plan to fill gets what he expects: in one piece, with its edge,
   * in all pours that were calculated.
   */
  public static boolean meetsFills(PouredPlan plan) {
    Optional<VerdictSentence> verdict = of(plan);
    if (verdict.isEmpty() || isEdgeRounded(plan.result())) {
      return false;
    }
    return verdict.get() == FILLS
        || (verdict.get() == JUST_FILLS
            && plan.bands().stream().allMatch(b -> fills(b.unlucky()) && fills(b.lucky())));
  }

  /**
   * Verdict of the best run alone.
   *
   * @return empty when the run came to no verdict
   */
  public static Optional<VerdictSentence> of(PourResult result) {
    return lastinch.solver.study.VerdictWord.of(result).map(VerdictSentence::named);
  }

  /**
   * Verdict of a plan, with its other days where they were worked out.
   *
   * @return empty when the run came to no verdict
   */
  public static Optional<VerdictSentence> of(PouredPlan plan) {
    return plan.bands().isPresent() ? plan.bands().map(b -> named(b.verdict())) : of(plan.result());
  }

  private static VerdictSentence named(lastinch.solver.study.VerdictWord verdict) {
    return valueOf(verdict.name());
  }
}
