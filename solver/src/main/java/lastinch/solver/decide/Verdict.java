package lastinch.solver.decide;

import java.util.List;
import java.util.Optional;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;

/** The word for a pour; of those that hold, the first. */
public enum Verdict {
  /** It stops short, and so it does on a lucky day. */
  STOPS_SHORT,
  /** It stops short, but not on every day. */
  MAY_STOP_SHORT,
  /** It fills, but not on every day. */
  LIKELY_FILLS,
  /** It fills to the end, its edge does not. */
  EDGES_ROUNDED,
  /** It fills with little to spare. */
  JUST_FILLS,
  /** It fills. */
  FILLS;

  /** Least heat to spare of a pour that more than just fills [-]; our own limit, no source. */
  public static final double JUST = 0.10;

  /**
   * The verdict of one run, without its bands; empty when the run was stopped or broke down.
   *
   * @param best the run
   */
  public static Optional<Verdict> of(PourResult best) {
    return of(best, List.of());
  }

  /**
   * The verdict of a run with others from the ends of its bands; those that were stopped or broke
   * down do not count. Empty when the run itself has no verdict.
   *
   * @param best the run with the best figures
   * @param others from an unlucky and a lucky day
   */
  public static Optional<Verdict> of(PourResult best, List<PourResult> others) {
    if (!isDecided(best)) {
      return Optional.empty();
    }
    boolean anyFills = fills(best);
    boolean anyStops = !anyFills;
    double least = best.margin().heat();
    for (PourResult other : others) {
      if (isDecided(other)) {
        anyFills |= fills(other);
        anyStops |= !fills(other);
        least = Math.min(least, other.margin().heat());
      }
    }
    if (!fills(best)) {
      return Optional.of(anyFills ? MAY_STOP_SHORT : STOPS_SHORT);
    }
    if (anyStops) {
      return Optional.of(LIKELY_FILLS);
    }
    if (isEdgeRounded(best)) {
      return Optional.of(EDGES_ROUNDED);
    }
    return Optional.of(least < JUST ? JUST_FILLS : FILLS);
  }

  /** Whether metal fills the whole piece. */
  public static boolean fills(PourResult result) {
    return result.outcome() instanceof Outcome.Filled;
  }

  /** Whether some of the rim that metal passed stays rounded. */
  public static boolean isEdgeRounded(PourResult result) {
    for (EdgeStretch stretch : result.edges()) {
      if (stretch.state() == EdgeStretch.State.ROUNDED) {
        return true;
      }
    }
    return false;
  }

  private static boolean isDecided(PourResult result) {
    return result.outcome() instanceof Outcome.Filled || result.outcome() instanceof Outcome.Misrun;
  }
}
