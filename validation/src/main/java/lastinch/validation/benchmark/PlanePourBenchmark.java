package lastinch.validation.benchmark;

import java.util.concurrent.TimeUnit;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Poured;
import lastinch.solver.run.DryPour;
import org.openjdk.jmh.annotations.AuxCounters;
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
 * A whole dry pour over the plane of a drawn feather with round figures, from first metal to
 * verdict; one pour an iteration. Where the time goes: {@code -prof stack}. Squares of 0.5 mm take
 * minutes and are asked for with {@code -p cell=0.5e-3}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1, time = 1, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 1, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class PlanePourBenchmark {
  /** Edge of the squares [m]. */
  @Param({"2e-3", "1e-3"})
  public double cell;

  /** Mould: cold sand stops the feather short, hot investment lets it fill. */
  @Param({"sand", "investment"})
  public String mould;

  /** Threads that share one pour. */
  @Param({"1", "2"})
  public int threads;

  private PourCase pourCase;
  private GapMap map;
  private int squares;

  /** What one pour took. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Counts {
    /** Flow steps made. */
    public long steps;

    /** Steps times open squares of the map. */
    public long squareSteps;
  }

  /** Draws the feather. */
  @Setup(Level.Trial)
  public void draw() {
    pourCase = DrawnFeather.job(mould);
    map = DrawnFeather.map(cell);
    squares = 0;
    for (int k = 0; k < map.grid().size(); k++) {
      squares += map.isOpen(k) ? 1 : 0;
    }
  }

  /** One dry pour. */
  @Benchmark
  public Poured pour(Counts counts) {
    Poured pour =
        DryPour.run(
            DryPour.plane(PlaneSettings.in(map).on(threads)),
            pourCase,
            Phase.FILLING,
            RunObserver.NONE,
            () -> false);
    counts.steps += pour.filling().record().steps();
    counts.squareSteps += (long) pour.filling().record().steps() * squares;
    return pour;
  }
}
