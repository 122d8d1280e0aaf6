package lastinch.solver.study;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;

/**
 * What a study keeps of a run: enough to compare and to say what to look out for, small enough to
 * keep ten thousand.
 *
 * @param end how it ended
 * @param heat to spare [-], 0 when it stopped
 * @param reach furthest metal on the piece's ruler [m]
 * @param missing length left empty [m], 0 when it is full
 * @param signed distance to spare over the piece's length when it fills, minus the share that is
 *     missing when it stops or breaks off when it does not join [-]; how sure and maps go by this
 * @param time of the end [s]
 * @param coldest leading metal on arrival anywhere in the piece [K]; 0 where none got in
 * @param worstLap lap index in the piece [-]
 * @param edgesRounded whether the rim stays rounded somewhere
 * @param gateSpeed fastest through any gate [m/s]
 * @param meeting worst meeting of two fronts
 * @param limitedBy what held the flow back
 * @param reason why it stopped
 * @param findings kinds of all that was noticed
 */
public record RunSummary(
    End end,
    double heat,
    double reach,
    double missing,
    double signed,
    double time,
    double coldest,
    double worstLap,
    boolean edgesRounded,
    double gateSpeed,
    Optional<Meeting.Kind> meeting,
    FlowLimit limitedBy,
    Optional<StopReason> reason,
    Set<Finding.Kind> findings) {
  public RunSummary {
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(meeting, "meeting");
    Objects.requireNonNull(limitedBy, "limitedBy");
    Objects.requireNonNull(reason, "reason");
    findings = Collections.unmodifiableSet(copy(findings));
  }

  private static EnumSet<Finding.Kind> copy(Set<Finding.Kind> kinds) {
    EnumSet<Finding.Kind> all = EnumSet.noneOf(Finding.Kind.class);
    all.addAll(kinds);
    return all;
  }

  /** How a run ended. */
  public enum End {
    /** Full, and in one piece. */
    FILLED,
    /** Full, but streams in it do not join. */
    APART,
    STOPPED,
    /** The numbers went wrong. */
    BROKE_DOWN,
    /** Needs a part of the solver that is not there. */
    NOT_THERE
  }

  /** What a map shows. */
  public enum Mark {
    STOPS,
    /** Full, but not in one piece. */
    APART,
    JUST,
    LAPS,
    FILLS,
    NO_ANSWER
  }

  /** Whether the piece filled and came out in one piece; see {@link VerdictWord#fills}. */
  public boolean filled() {
    return end == End.FILLED;
  }

  /** Whether it filled with so much heat to spare. */
  public boolean fillsWith(double spare) {
    return filled() && heat >= spare;
  }

  /** Whether there is an answer at all. */
  public boolean answered() {
    return end == End.FILLED || end == End.APART || end == End.STOPPED;
  }

  /**
   * Better is more: from -1 (nothing got in) to 0, from one half to 1 when it is full but does not
   * join, from 1 to 2 (fills and loses nothing).
   */
  public double goodness() {
    if (!answered()) {
      return Double.NEGATIVE_INFINITY;
    }
    if (end == End.APART) {
      return 0.5 * (1.0 + heat);
    }
    return filled() ? 1.0 + heat : Math.min(0.0, signed);
  }

  /** What a map shows. */
  public Mark mark() {
    if (!answered()) {
      return Mark.NO_ANSWER;
    }
    if (!filled()) {
      return end == End.APART ? Mark.APART : Mark.STOPS;
    }
    if (heat < VerdictWord.JUST) {
      return Mark.JUST;
    }
    return worstLap >= LapStretch.PLAIN ? Mark.LAPS : Mark.FILLS;
  }

  /** A glance at a run that gave no answer. */
  public static RunSummary none(End end) {
    return new RunSummary(
        end,
        0.0,
        0.0,
        0.0,
        -1.0,
        0.0,
        0.0,
        0.0,
        false,
        0.0,
        Optional.empty(),
        FlowLimit.HAND,
        Optional.empty(),
        EnumSet.noneOf(Finding.Kind.class));
  }

  /** What is kept of a whole result. */
  public static RunSummary of(PourCase job, PourResult result) {
    if (result.outcome() instanceof Outcome.BrokeDown
        || result.outcome() instanceof Outcome.Cancelled) {
      return none(End.BROKE_DOWN);
    }
    boolean full = VerdictWord.isFull(result);
    boolean filled = VerdictWord.fills(result);
    double length = job.piece().limbs().stream().mapToDouble(l -> l.length()).sum();
    double distance = result.margin().distance().orElse(full ? 0.0 : result.reach() - length);
    EnumSet<Finding.Kind> kinds = EnumSet.noneOf(Finding.Kind.class);
    result.findings().forEach(f -> kinds.add(f.kind()));
    return new RunSummary(
        filled ? End.FILLED : full ? End.APART : End.STOPPED,
        full ? result.margin().heat() : 0.0,
        result.reach(),
        full ? 0.0 : Math.max(0.0, -distance),
        SignedMargin.of(job, result),
        result.outcome().time(),
        coldest(result.passages()),
        result.laps().stream().mapToDouble(LapStretch::worstIndex).max().orElse(0.0),
        filled && VerdictWord.isEdgeRounded(result),
        result.gates().stream().mapToDouble(GateRecord::peakSpeed).max().orElse(0.0),
        result.meetings().stream().map(Meeting::kind).max(Enum::compareTo),
        result.flowLimitedBy(),
        result.stops().stream().findFirst().map(s -> s.reason()),
        kinds);
  }

  private static double coldest(List<PassageRecord> passages) {
    double least = Double.POSITIVE_INFINITY;
    for (PassageRecord p : passages) {
      for (int i = 0; p.role() == PassageRecord.Role.PIECE && i < p.size(); i++) {
        if (Double.isFinite(p.arrivalTime(i))) {
          least = Math.min(least, p.arrivalTemperature(i));
        }
      }
    }
    return Double.isFinite(least) ? least : 0.0;
  }
}
