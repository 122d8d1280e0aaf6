package lastinch.solver.study;

import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleBiFunction;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.PourResult;

/**
 * One number that studies ask of a run: goals want it, maps part by it, spreads are split by it.
 *
 * @param key its name
 * @param unit of its values; {@link ParameterUnit#CHOICE} where it is 0 for no and 1 for yes
 * @param moreIsBetter whether a larger value is the better one
 * @param value of a run that came to its end, full or stopped short
 */
public record Measure(
    String key,
    ParameterUnit unit,
    boolean moreIsBetter,
    ToDoubleBiFunction<PourCase, PourResult> value) {
  /** Heat to spare [-], 0 when it stopped. */
  public static final Measure HEAT =
      new Measure(
          "heat",
          ParameterUnit.SHARE,
          true,
          (job, r) -> VerdictWord.isFull(r) ? r.margin().heat() : 0.0);

  /** Furthest metal on the piece's ruler [m]. */
  public static final Measure REACH =
      new Measure("reach", ParameterUnit.LENGTH, true, (job, r) -> r.reach());

  /** Length left empty [m], 0 when it is full. */
  public static final Measure MISSING =
      new Measure("missing", ParameterUnit.LENGTH, false, Measure::missing);

  /** How sure and maps go by this: {@link SignedMargin}. */
  public static final Measure MARGIN =
      new Measure("margin", ParameterUnit.FACTOR, true, SignedMargin::of);

  /** Of the end [s]. */
  public static final Measure TIME =
      new Measure("time", ParameterUnit.TIME, false, (job, r) -> r.outcome().time());

  /** Worst lap index in the piece [-]. */
  public static final Measure LAP =
      new Measure(
          "worstLap",
          ParameterUnit.FACTOR,
          false,
          (job, r) -> r.laps().stream().mapToDouble(LapStretch::worstIndex).max().orElse(0.0));

  /** Fastest through any gate [m/s]. */
  public static final Measure GATE_SPEED =
      new Measure(
          "gate",
          ParameterUnit.SPEED,
          false,
          (job, r) -> r.gates().stream().mapToDouble(GateRecord::peakSpeed).max().orElse(0.0));

  /** Whether the rim stays rounded somewhere of a piece that fills. */
  public static final Measure EDGE =
      new Measure(
          "edgesRounded",
          ParameterUnit.CHOICE,
          false,
          (job, r) -> VerdictWord.fills(r) && VerdictWord.isEdgeRounded(r) ? 1.0 : 0.0);

  /** What every run is asked for. */
  public static final List<Measure> ALL =
      List.of(HEAT, REACH, MISSING, MARGIN, TIME, LAP, GATE_SPEED, EDGE);

  public Measure {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(value, "value");
  }

  /** A value turned so that more is better. */
  public double goodness(double of) {
    return moreIsBetter ? of : -of;
  }

  private static double missing(PourCase job, PourResult result) {
    if (VerdictWord.isFull(result)) {
      return 0.0;
    }
    double length = job.piece().limbs().stream().mapToDouble(Limb::length).sum();
    return Math.max(0.0, -result.margin().distance().orElse(result.reach() - length));
  }
}
