package lastinch.solver.study;

import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PourResult;

/**
 * One figure for how a pour came out: length to spare when it fills, minus the length that stays
 * empty when it stops or that breaks off when streams do not join, over the length of the piece
 * [-].
 */
public final class SignedMargin {
  /** A piece that breaks in its boss or at its very end lacks this share at least [-]; our own. */
  private static final double LEAST = 0.01;

  private SignedMargin() {}

  /**
   * The signed margin [-]. A piece without any closed end has no distance to spare; its heat to
   * spare stands in for it.
   *
   * @param job the case
   * @param result of it, full or stopped short
   */
  public static double of(PourCase job, PourResult result) {
    double length = 0.0;
    for (Limb limb : job.piece().limbs()) {
      length += limb.length();
    }
    if (VerdictWord.isFull(result) && !VerdictWord.fills(result)) {
      return -Math.max(LEAST, brokenOff(job, result) / length);
    }
    if (!VerdictWord.fills(result)) {
      return result.margin().distance().orElse(-length) / length;
    }
    return result.margin().distance().isPresent()
        ? result.margin().distance().getAsDouble() / length
        : result.margin().heat();
  }

  /** Length of the limbs that does not hang together with the longest part of each [m]. */
  private static double brokenOff(PourCase job, PourResult result) {
    double broken = 0.0;
    for (Limb limb : job.piece().limbs()) {
      double from = 0.0;
      double longest = 0.0;
      double[] cuts =
          VerdictWord.coldShuts(result).stream()
              .filter(m -> m.passage().equals(limb.name()))
              .mapToDouble(Meeting::at)
              .sorted()
              .toArray();
      for (double cut : cuts) {
        longest = Math.max(longest, cut - from);
        from = cut;
      }
      broken += limb.length() - Math.max(longest, limb.length() - from);
    }
    return broken;
  }
}
