package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import lastinch.solver.casting.PourCase;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SampleNetworks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A leak of a hundred-thousandth, made on purpose in the middle of a run, shows in the books: on a
 * single way, with three gates one above the other, and where limbs part and meet again.
 */
class PlantedLeakConservationTest {
  private static final double LEAK = 1e-5;
  private static final String WAY = "one way";
  private static final String GATES = "three gates";
  private static final String LIMBS = "trivet";

  @ParameterizedTest
  @ValueSource(strings = {WAY, GATES, LIMBS})
  void soundRunShowsNone(String name) {
    ConservationFigures accounts = halfWay(name, run -> {});
    assertThat(Math.abs(accounts.metalError())).isLessThan(1e-10);
    assertThat(Math.abs(accounts.heatError())).isLessThan(1e-10);
    assertThat(Math.abs(accounts.airError())).isLessThan(1e-10);
  }

  @ParameterizedTest
  @ValueSource(strings = {WAY, GATES, LIMBS})
  void lostMetalShows(String name) {
    ConservationFigures accounts =
        halfWay(
            name,
            run -> {
              Channel c = piece(run);
              c.wet[wettest(c)] -= LEAK * run.books.metalVolume();
            });
    assertThat(accounts.metalError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  @ParameterizedTest
  @ValueSource(strings = {WAY, GATES, LIMBS})
  void lostHeatShows(String name) {
    ConservationFigures accounts =
        halfWay(
            name,
            run -> {
              Channel c = piece(run);
              c.middle.heat[wettest(c)] -= LEAK * 3e5 * 7880.0 * run.books.metalVolume();
            });
    assertThat(accounts.heatError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  @ParameterizedTest
  @ValueSource(strings = {WAY, GATES, LIMBS})
  void lostAirShows(String name) {
    ConservationFigures accounts =
        halfWay(
            name,
            run -> {
              double[] mass = run.air.mass;
              int most = 0;
              for (int k = 0; k < mass.length; k++) {
                boolean shutIn = run.state.channels[k].shape.isPiece();
                most = shutIn && mass[k] > mass[most] ? k : most;
              }
              mass[most] -= LEAK * run.air.initial();
            });
    assertThat(accounts.airError()).isBetween(0.1 * LEAK, 10.0 * LEAK);
  }

  /** The channel of the piece that metal last came into. */
  private static Channel piece(NetworkRun run) {
    Channel piece = run.state.channels[0];
    for (Channel c : run.state.channels) {
      piece = c.shape.isPiece() && c.wet[wettest(c)] > 0.0 ? c : piece;
    }
    assertThat(piece.shape.isPiece()).isTrue();
    return piece;
  }

  private static int wettest(Channel c) {
    int wettest = 0;
    for (int i = 0; i < c.wet.length; i++) {
      wettest = c.wet[i] > c.wet[wettest] ? i : wettest;
    }
    return wettest;
  }

  private static PourCase job(String name) {
    return switch (name) {
      case GATES -> SampleNetworks.uprightThreeGates();
      case LIMBS -> SampleNetworks.trivet();
      default -> SampleJob.featherInSand(5.0).build();
    };
  }

  /** Books of a run with the piece three tenths full, after a fault. */
  private static ConservationFigures halfWay(String name, Consumer<NetworkRun> fault) {
    NetworkRun run = new NetworkRun(job(name));
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
