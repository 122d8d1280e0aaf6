package lastinch.solver.study;

import java.util.List;
import java.util.Optional;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;

/** The word for a pour; of those that hold, the first. */
public enum VerdictWord {
  /** It stops short, and a good pour does not come out whole either. */
  STOPS_SHORT,
  /** It stops short, but not in every pour. */
  MAY_STOP_SHORT,
  /** It is full, but streams in it do not join, in a good pour neither. */
  DOES_NOT_JOIN,
  /** It is full, but streams in it do not join; another pour comes out whole. */
  MAY_NOT_JOIN,
  /** It fills with little to spare. */
  JUST_FILLS,
  /** It fills, but not in every pour. */
  LIKELY_FILLS,
  /** It fills to the end, its edge does not. */
  EDGES_ROUNDED,
  /** It fills. */
  FILLS;

  /**
   * Least heat to spare of a pour with the best figures that more than just fills [-]; our own
   * limit, no source. With less nothing is called likely.
   */
  public static final double JUST = 0.10;

  /**
   * The verdict of one run, without its bands; empty when the run was stopped or broke down.
   *
   * @param best the run
   */
  public static Optional<VerdictWord> of(PourResult best) {
    return of(best, List.of());
  }

  /**
   * The verdict of a run with others from the ends of its bands; those that were stopped or broke
   * down do not count. Empty when the run itself has no verdict.
   *
   * @param best the run with the best figures
   * @param others from an unlucky and a lucky day
   */
  public static Optional<VerdictWord> of(PourResult best, List<PourResult> others) {
    if (!isDecided(best)) {
      return Optional.empty();
    }
    boolean anyFills = false;
    boolean allFill = true;
    for (PourResult other : others) {
      if (isDecided(other)) {
        anyFills |= fills(other);
        allFill &= fills(other);
      }
    }
    if (!isFull(best)) {
      return Optional.of(anyFills ? MAY_STOP_SHORT : STOPS_SHORT);
    }
    if (!fills(best)) {
      return Optional.of(anyFills ? MAY_NOT_JOIN : DOES_NOT_JOIN);
    }
    if (best.margin().heat() < JUST) {
      return Optional.of(JUST_FILLS);
    }
    if (!allFill) {
      return Optional.of(LIKELY_FILLS);
    }
    return Optional.of(isEdgeRounded(best) ? EDGES_ROUNDED : FILLS);
  }

  /** Whether metal fills the whole piece and comes out of the mould in one piece. */
  public static boolean fills(PourResult result) {
    return isFull(result) && coldShuts(result).isEmpty();
  }

  /** Whether metal is everywhere in the piece, joined or not. */
  public static boolean isFull(PourResult result) {
    return result.outcome() instanceof Outcome.Filled;
  }

  /** Where streams met that do not join; the casting breaks there. */
  public static List<Meeting> coldShuts(PourResult result) {
    return result.meetings().stream().filter(m -> m.kind() == Meeting.Kind.COLD_SHUT).toList();
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

  /** Whether a run came to its end: full or stopped short. */
  public static boolean isDecided(PourResult result) {
    return result.outcome() instanceof Outcome.Filled || result.outcome() instanceof Outcome.Misrun;
  }
}
