package lastinch.validation.benchmark;

import java.util.concurrent.TimeUnit;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Studies of the demo feather that stops short, with one thread and with two: the smallest change
 * over all levers (at most 6 s asked for) and a map of 20 by 20 runs with its lines (4 s). Two
 * threads are to be at least 1.7 times as fast as one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(1)
public class DemoStudy {
  private static final double SPARE = 0.2;

  /** Runs at once. */
  @Param({"1", "2"})
  public int threads;

  private DemoPlan demo;

  /** Reads the plan. */
  @Setup(Level.Trial)
  public void read() {
    demo = DemoPlan.read("feather-sand-flat.yaml");
  }

  /** The smallest change that fills, every lever tried. */
  @Benchmark
  public SmallestChange least() {
    try (RunCache studies = studies()) {
      return SmallestChange.of(studies, demo.plan().pourCase(), demo.levers(), Goal.heat(SPARE));
    }
  }

  /** Seconds of the pour against heat of the metal, 20 by 20. */
  @Benchmark
  public OperatingMap room() {
    return room(20);
  }

  /**
   * The same, 100 by 100, once in a fresh process of 512 MiB: with more than that in use it would
   * not come to its end.
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(value = 1, jvmArgsAppend = "-Xmx512m")
  public OperatingMap largeRoom() {
    return room(100);
  }

  private OperatingMap room(int steps) {
    Lever seconds = demo.lever("emptiesIn");
    Lever reads = demo.lever("reading");
    try (RunCache studies = studies()) {
      return OperatingMap.of(
          studies,
          demo.plan().pourCase(),
          new OperatingMap.Question(
              seconds,
              2.0,
              8.0,
              reads,
              heat(1080.0),
              heat(1250.0),
              steps,
              steps,
              Goal.heat(SPARE)));
    }
  }

  private static double heat(double degrees) {
    return DisplayUnits.METRIC.unit(Dimension.HEAT).toSi(degrees);
  }

  private RunCache studies() {
    return new RunCache(Pourer.DRY, threads, RunCache.Watch.NONE, () -> false);
  }
}
