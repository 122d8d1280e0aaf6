package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import lastinch.solver.result.Accounts;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** A leak of a hundred-thousandth, made on purpose in the middle of a run, shows in the books. */
class PlantedLeakConservationTest {
  private static final double LEAK = 1e-5;

  @Test
  void soundRunShowsNone() {
    Accounts accounts = halfWay(run -> {});
    assertThat(Math.abs(accounts.metalError())).isLessThan(1e-10);
    assertThat(Math.abs(accounts.heatError())).isLessThan(1e-10);
    assertThat(Math.abs(accounts.airError())).isLessThan(1e-10);
  }

  @Test
  void lostMetalShows() {
    Accounts accounts = halfWay(run -> piece(run).wet[0] -= LEAK * run.books.metalVolume());
    assertThat(accounts.metalError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  @Test
  void lostHeatShows() {
    Accounts accounts =
        halfWay(run -> piece(run).heat[0] -= LEAK * 3e5 * 7880.0 * run.books.metalVolume());
    assertThat(accounts.heatError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  @Test
  void lostAirShows() {
    Accounts accounts =
        halfWay(run -> run.air.mass[piece(run).index + 1] -= LEAK * run.air.initial());
    assertThat(accounts.airError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  private static Channel piece(NetworkRun run) {
    Channel piece = run.state.channels[0];
    for (Channel c : run.state.channels) {
      piece = NetworkRun.isPiece(c.shape) && c.wet[0] > 0.0 ? c : piece;
    }
    return piece;
  }

  /** Books of the sand feather when its boss holds metal, after a fault. */
  private static Accounts halfWay(Consumer<NetworkRun> fault) {
    NetworkRun run = new NetworkRun(SampleJob.featherInSand(5.0).build());
    while (run.filledFraction() < 0.3) {
      run.step();
      assertThat(run.steps()).isLessThan(SeededPour.MOST_STEPS);
    }
    fault.accept(run);
    for (int k = 0; k < 50; k++) {
      run.step();
    }
    run.finishHeat();
    return run.books.close(run.forcedMass(), 0.0);
  }
}
