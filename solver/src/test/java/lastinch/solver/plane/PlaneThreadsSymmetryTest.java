package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lastinch.solver.casting.PourCase;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SampleNetworks;
import org.junit.jupiter.api.Test;

/**
 * Runs side by side have nothing in common: each gives the bits it gives alone. One run gives the
 * same bits on one thread and on two.
 */
class PlaneThreadsSymmetryTest {
  private static final double END = 0.5;

  private static PlaneRun poured(PourCase job) {
    return poured(job, 1);
  }

  private static PlaneRun poured(PourCase job, int threads) {
    try (WorkerPair team = WorkerPair.of(threads)) {
      PlaneRun run = new PlaneRun(job, CavityMap.of(job, 4e-3), team);
      run.run((time, filled) -> {}, () -> run.flow.time() > END);
      return run;
    }
  }

  private static void areTheSame(PlaneRun one, PlaneRun other) {
    assertThat(other.flow.steps()).isEqualTo(one.flow.steps());
    assertThat(other.flow.state.liquid).containsExactly(one.flow.state.liquid);
    assertThat(other.flow.state.u).containsExactly(one.flow.state.u);
    assertThat(other.flow.state.pressure).containsExactly(one.flow.state.pressure);
    assertThat(other.heat.content).containsExactly(one.heat.content);
    assertThat(other.recorder.enthalpy).containsExactly(one.recorder.enthalpy);
    assertThat(other.melt.clamps()).isEqualTo(one.melt.clamps());
  }

  @Test
  void oneRunGivesTheSameBitsOnTwoThreads() {
    for (PourCase job :
        List.of(SampleJob.featherInSand(6.0).build(), SampleNetworks.uprightThreeGates())) {
      areTheSame(poured(job, 1), poured(job, 2));
    }
  }

  @Test
  void twoRunsAtTheSameTimeGiveTheBitsOfOneAlone() throws Exception {
    PourCase flat = SampleJob.featherInSand(6.0).build();
    PourCase upright = SampleNetworks.uprightThreeGates();
    PlaneRun flatAlone = poured(flat);
    PlaneRun uprightAlone = poured(upright);
    CyclicBarrier start = new CyclicBarrier(2);
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      List<Future<PlaneRun>> both =
          threads.invokeAll(List.of(together(start, flat), together(start, upright)));
      areTheSame(flatAlone, both.get(0).get());
      areTheSame(uprightAlone, both.get(1).get());
    } finally {
      threads.shutdown();
    }
  }

  private static Callable<PlaneRun> together(CyclicBarrier start, PourCase job) {
    return () -> {
      start.await();
      return poured(job);
    };
  }
}
