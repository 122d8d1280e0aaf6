package lastinch.solver.study;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;

/**
 * What a study keeps of a run: enough to compare and to say what to look out for, small enough to
 * keep ten thousand.
 *
 * @param end how it ended
 * @param measured value of each measure that it was asked for
 * @param coldest leading metal on arrival anywhere in the piece [K]; 0 where none got in
 * @param meeting worst meeting of two fronts
 * @param limitedBy what held the flow back
 * @param reason why it stopped
 * @param findings kinds of all that was noticed
 */
public record RunSummary(
    End end,
    Map<Measure, Double> measured,
    double coldest,
    Optional<Meeting.Kind> meeting,
    FlowLimit limitedBy,
    Optional<StopReason> reason,
    Set<Finding.Kind> findings) {
  public RunSummary {
    Objects.requireNonNull(end, "end");
    measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
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

  /**
   * The value of a measure; of a run without an answer 0, but the least {@link Measure#MARGIN}.
   *
   * @throws IllegalArgumentException when the run was not asked for it
   */
  public double get(Measure measure) {
    Double value = measured.get(measure);
    if (value == null && answered()) {
      throw new IllegalArgumentException("the run was not asked for " + measure.key());
    }
    return value == null ? 0.0 : value;
  }

  /** Heat to spare [-], 0 when it stopped. */
  public double heat() {
    return get(Measure.HEAT);
  }

  /** Furthest metal on the piece's ruler [m]. */
  public double reach() {
    return get(Measure.REACH);
  }

  /** Length left empty [m], 0 when it is full. */
  public double missing() {
    return get(Measure.MISSING);
  }

  /** See {@link SignedMargin} [-]. */
  public double signed() {
    return get(Measure.MARGIN);
  }

  /** Worst lap index in the piece [-]. */
  public double worstLap() {
    return get(Measure.LAP);
  }

  /** Fastest through any gate [m/s]. */
  public double gateSpeed() {
    return get(Measure.GATE_SPEED);
  }

  /** Whether the rim stays rounded somewhere. */
  public boolean edgesRounded() {
    return get(Measure.EDGE) > 0.0;
  }

  /** Whether the piece filled and came out in one piece; see {@link VerdictWord#fills}. */
  public boolean filled() {
    return end == End.FILLED;
  }

  /** Whether it filled with so much heat to spare. */
  public boolean fillsWith(double spare) {
    return filled() && heat() >= spare;
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
      return 0.5 * (1.0 + heat());
    }
    return filled() ? 1.0 + heat() : Math.min(0.0, signed());
  }

  /** What a map shows. */
  public Mark mark() {
    if (!answered()) {
      return Mark.NO_ANSWER;
    }
    if (!filled()) {
      return end == End.APART ? Mark.APART : Mark.STOPS;
    }
    if (heat() < VerdictWord.JUST) {
      return Mark.JUST;
    }
    return worstLap() >= LapStretch.PLAIN ? Mark.LAPS : Mark.FILLS;
  }

  /** A glance at a run that gave no answer. */
  public static RunSummary none(End end) {
    return new RunSummary(
        end,
        Collections.singletonMap(Measure.MARGIN, -1.0),
        0.0,
        Optional.empty(),
        FlowLimit.HAND,
        Optional.empty(),
        EnumSet.noneOf(Finding.Kind.class));
  }

  /** The same with another value of a measure. */
  public RunSummary with(Measure measure, double value) {
    Map<Measure, Double> all = new LinkedHashMap<>(measured);
    all.put(measure, value);
    return new RunSummary(end, all, coldest, meeting, limitedBy, reason, findings);
  }

  /**
   * What is kept of a whole result.
   *
   * @param also measures that it is asked for besides {@link Measure#ALL}
   */
  public static RunSummary of(PourCase job, PourResult result, Measure... also) {
    if (!VerdictWord.isDecided(result)) {
      return none(End.BROKE_DOWN);
    }
    Map<Measure, Double> measured = new LinkedHashMap<>();
    Stream.concat(Measure.ALL.stream(), Stream.of(also))
        .forEach(m -> measured.put(m, m.value().applyAsDouble(job, result)));
    EnumSet<Finding.Kind> kinds = EnumSet.noneOf(Finding.Kind.class);
    result.findings().forEach(f -> kinds.add(f.kind()));
    boolean full = VerdictWord.isFull(result);
    return new RunSummary(
        VerdictWord.fills(result) ? End.FILLED : full ? End.APART : End.STOPPED,
        measured,
        coldest(result.passages()),
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
