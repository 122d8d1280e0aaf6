package lastinch.solver.decide;

import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;

/**
 * One figure for how a pour came out: length to spare when it fills, minus the length that stays
 * empty when it stops, over the length of the piece [-].
 */
public final class SignedMargin {
  private SignedMargin() {}

  /**
   * The signed margin [-]. A piece without any closed end has no distance to spare; its heat to
   * spare stands in for it.
   *
   * @param job the case
   * @param result of it, filled or stopped short
   */
  public static double of(PourCase job, PourResult result) {
    double length = 0.0;
    for (Limb limb : job.piece().limbs()) {
      length += limb.length();
    }
    if (!Verdict.fills(result)) {
      return result.margin().distance().orElse(-length) / length;
    }
    return result.margin().distance().isPresent()
        ? result.margin().distance().getAsDouble() / length
        : result.margin().heat();
  }
}
