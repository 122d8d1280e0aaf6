package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.run.SeededNetworks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A gate that closes while metal runs through it and opens again loses no metal and no heat. */
class FrozenGateConservationTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 12, 24, 48, 61, 68, 97})
  void gateFrozenAndThawedInFlightKeepsTheMetal(int number) {
    NetworkRun run = new NetworkRun(SeededNetworks.job(number));
    Channel gate = flowingGate(run);
    gate.frontA.freeze(0, run.state.time);
    run.work.columnsFroze();
    run.air.relabel();
    double passed = gate.passed;
    for (int k = 0; k < 5; k++) {
      run.step();
      gate.frontA.freeze(0, run.state.time);
    }
    assertThat(gate.passed).isEqualTo(passed);
    gate.frontA.thaw();
    run.air.relabel();
    for (int k = 0; k < 300 && run.ending.outcome().isEmpty(); k++) {
      run.step();
    }
    run.finishHeat();
    ConservationFigures accounts = run.books.close(run.forcedMass(), run.work.error());
    // rounding only; one step of the gate's flow gone astray would be 1e-4 of the metal
    assertThat(Math.abs(accounts.metalError())).isLessThan(1e-12);
    assertThat(Math.abs(accounts.heatError())).isLessThan(1e-9);
    assertThat(accounts.workError()).isLessThan(1e-3);
  }

  private static Channel flowingGate(NetworkRun run) {
    while (run.steps() < SeededPour.MOST_STEPS) {
      run.step();
      for (Channel c : run.state.channels) {
        double speed = Math.abs(c.flowA) / c.shape.faceArea[0];
        if (c.shape.role == Role.GATE && c.full && speed > 0.1) {
          return c;
        }
      }
    }
    throw new IllegalStateException("no gate runs");
  }
}
