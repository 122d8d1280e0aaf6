package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.PourCase;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SampleNetworks;
import lastinch.solver.run.SeededJobs;
import lastinch.solver.run.SeededNetworks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Steps make no objects: flows, events, freezing and falling metal included. */
class StepAllocationLimitsTest {
  private static final String NETWORK = "network ";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "flat",
        "tilted",
        "hot",
        "7",
        "8",
        "31",
        "43",
        "47",
        "54",
        "58",
        "61",
        "64",
        "network 3",
        "network 12",
        "network 37",
        "network 68",
        "network 97",
        "network 194",
        "three gates",
        "trivet"
      })
  void wholeRunAllocatesNothingInItsSteps(String name) {
    PourCase job = job(name);
    steps(new NetworkRun(job));
    long least = Long.MAX_VALUE;
    long meetings = 0;
    for (int k = 0; k < 3; k++) {
      NetworkRun run = new NetworkRun(job);
      ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
      long self = Thread.currentThread().getId();
      threads.getThreadAllocatedBytes(self);
      long before = threads.getThreadAllocatedBytes(self);
      long made = steps(run);
      // the machine itself makes objects while it compiles: the least of three runs counts
      least = Math.min(least, threads.getThreadAllocatedBytes(self) - before);
      assertThat(made).isBetween(50L, SeededPour.MOST_STEPS - 1L);
      meetings = run.recorder.meetings().size();
    }
    // the outcome itself is an object, and so is a meeting of fronts; one object at a single event
    // would be 16 bytes more
    assertThat(least).isLessThanOrEqualTo(56L + 160L * meetings);
  }

  private static PourCase job(String name) {
    if (name.startsWith(NETWORK)) {
      return SeededNetworks.job(Integer.parseInt(name.substring(NETWORK.length())));
    }
    return switch (name) {
      case "flat" -> SampleJob.featherInSand(6.0).build();
      case "tilted" -> SampleJob.featherInSand(2.8).attitude(Orientation.tilted(0.26)).build();
      case "hot" -> SampleJob.featherInGypsum(2.5).build();
      case "three gates" -> SampleNetworks.uprightThreeGates();
      case "trivet" -> SampleNetworks.trivet();
      default -> SeededJobs.job(Integer.parseInt(name)).build();
    };
  }

  private static long steps(NetworkRun run) {
    long steps = 0;
    while (run.ending.outcome().isEmpty() && steps < SeededPour.MOST_STEPS) {
      run.step();
      steps++;
    }
    return steps;
  }
}
