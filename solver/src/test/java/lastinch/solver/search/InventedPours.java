package lastinch.solver.search;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Marks;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/** An invented outcome in place of a run: heat to spare by any law, so that answers are known. */
public final class InventedPours {
  private InventedPours() {}

  /** Fills where the law is not negative, with that much heat to spare; else so much is missing. */
  public static Pourer by(ToDoubleFunction<PourCase> law) {
    return (job, stop) -> glance(law.applyAsDouble(job));
  }

  /** The same, counting runs. */
  public static Pourer counted(ToDoubleFunction<PourCase> law, AtomicInteger runs) {
    return (job, stop) -> {
      runs.incrementAndGet();
      return glance(law.applyAsDouble(job));
    };
  }

  /** Of a piece 320 mm long. */
  static Map<Measure, Double> measured(double spare, double gateSpeed) {
    boolean fills = spare >= 0.0;
    return Map.of(
        Measure.HEAT,
        fills ? Math.min(1.0, spare) : 0.0,
        Measure.REACH,
        fills ? 0.32 : 0.32 * (1.0 + Math.max(-1.0, spare)),
        Measure.MISSING,
        fills ? 0.0 : 0.32 * Math.min(1.0, -spare),
        Measure.MARGIN,
        Math.max(-1.0, spare),
        Measure.TIME,
        1.0,
        Measure.LAP,
        0.0,
        Measure.GATE_SPEED,
        gateSpeed,
        Measure.EDGE,
        0.0);
  }

  public static RunSummary glance(double spare) {
    boolean fills = spare >= 0.0;
    return new RunSummary(
        fills ? RunSummary.End.FILLED : RunSummary.End.STOPPED,
        measured(spare, 0.4),
        1200.0,
        Optional.empty(),
        FlowLimit.HAND,
        fills ? Optional.empty() : Optional.of(StopReason.SLUSH),
        EnumSet.noneOf(Finding.Kind.class));
  }

  public static double seconds(PourCase job) {
    return ((Pour.Empties) job.pour()).seconds().value();
  }

  public static double reading(PourCase job) {
    return job.metal().reading().value();
  }

  /** Whole kelvin, millimetres and tenths. */
  public static Marks marks() {
    return new Marks(SampleJob.ZERO, 1.0, 1e-3, 1e-4);
  }

  /** The sand feather: read at 1150 degC, emptied in 6 s (0.9 s to 11 s are practical). */
  public static PourCase feather() {
    return SampleJob.featherInSand(6.0).build();
  }

  public static Lever lever(PourCase job, String key) {
    return Levers.find(Levers.of(job, Owned.nothing(marks())), key, "").orElseThrow();
  }

  public static RunCache studies(Pourer pourer) {
    return new RunCache(pourer, 2, RunCache.Watch.NONE, () -> false);
  }
}
