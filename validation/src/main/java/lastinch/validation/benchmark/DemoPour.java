package lastinch.validation.benchmark;

import java.util.concurrent.TimeUnit;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
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

/** A whole dry pour of a demo plan, read once, from first metal to verdict. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class DemoPour {
  /** File of the demo folder. */
  @Param({"feather-sand-flat.yaml", "feather-investment-hot.yaml", "feather-sand-upright.yaml"})
  public String file;

  private PourCase pourCase;

  /** Reads the plan. */
  @Setup(Level.Trial)
  public void read() {
    pourCase = DemoPlan.read(file).plan().pourCase();
  }

  /** One dry pour. */
  @Benchmark
  public PourResult pour() {
    return DryPour.run(pourCase, RunObserver.NONE, () -> false);
  }
}
