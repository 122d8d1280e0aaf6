package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import lastinch.solver.casting.PourCase;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SampleNetworks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Steps of the plane make no objects: jets, air, freezing and sprue included. */
class PlaneStepAllocationLimitsTest {
  private static final double CELL = 4e-3;
  private static final double LONG_ENOUGH = 1.5;

  @ParameterizedTest
  @ValueSource(strings = {"flat", "three gates", "held"})
  void wholeRunAllocatesNothingInItsSteps(String name) {
    PourCase job = job(name);
    steps(run(job));
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    long least = Long.MAX_VALUE;
    for (int k = 0; k < 3; k++) {
      PlaneRun run = run(job);
      threads.getThreadAllocatedBytes(self);
      long before = threads.getThreadAllocatedBytes(self);
      int made = steps(run);
      // the machine itself makes objects while it compiles: the least of three runs counts
      least = Math.min(least, threads.getThreadAllocatedBytes(self) - before);
      assertThat(made).isGreaterThan(200);
      assertThat(run.filledFraction()).isGreaterThan(0.1);
    }
    // one object a step would be 16 bytes times hundreds of steps
    assertThat(least).isLessThan(1024L);
  }

  private static PourCase job(String name) {
    return switch (name) {
      case "flat" -> SampleJob.featherInSand(6.0).build();
      case "three gates" -> SampleNetworks.uprightThreeGates();
      default ->
          SampleJob.featherInSand(6.0)
              .checking(SampleJob.Options.ordinary().cupKeptAt(0.08))
              .build();
    };
  }

  private static PlaneRun run(PourCase job) {
    return new PlaneRun(job, CavityMap.of(job, CELL));
  }

  private static int steps(PlaneRun run) {
    int steps = 0;
    while (run.flow.time() < LONG_ENOUGH && run.filledFraction() < 0.999) {
      run.step();
      steps++;
    }
    return steps;
  }
}
