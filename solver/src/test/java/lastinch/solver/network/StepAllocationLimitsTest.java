package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import lastinch.solver.casting.Attitude;
import lastinch.solver.casting.PourCase;
import lastinch.solver.run.SampleJob;
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
        "network 194"
      })
  void wholeRunAllocatesNothingInItsSteps(String name) {
    PourCase job = job(name);
    long steps = 0;
    for (int k = 0; k < 2; k++) {
      steps = steps(new NetworkRun(job));
    }
    NetworkRun run = new NetworkRun(job);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    threads.getThreadAllocatedBytes(self);
    long before = threads.getThreadAllocatedBytes(self);
    long made = steps(run);
    long bytes = threads.getThreadAllocatedBytes(self) - before;
    assertThat(made).isEqualTo(steps).isGreaterThan(50);
    // the end of the run, every meeting of fronts in the piece and asking cost some; one object a
    // step would be 16 bytes times the steps
    long meetings = run.recorder.meetings().size();
    assertThat(bytes).isLessThan(Math.min(3500L + 500L * meetings, 8L * steps));
  }

  private static PourCase job(String name) {
    if (name.startsWith(NETWORK)) {
      return SeededNetworks.job(Integer.parseInt(name.substring(NETWORK.length())));
    }
    return switch (name) {
      case "flat" -> SampleJob.featherInSand(6.0).build();
      case "tilted" -> SampleJob.featherInSand(2.8).attitude(Attitude.tilted(0.26)).build();
      case "hot" -> SampleJob.featherInGypsum(2.5).build();
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
