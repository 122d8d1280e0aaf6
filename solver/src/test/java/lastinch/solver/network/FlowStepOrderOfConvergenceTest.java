package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import org.junit.jupiter.api.Test;

/**
 * How fast errors fall with the flow step: start-up of a full pipe, v = V tanh(t V (1 + K)/(2 L))
 * with V^2 = 2 g H/(1 + K) (White, Fluid Mechanics, from memory).
 */
class FlowStepOrderOfConvergenceTest {
  private static final double LENGTH = 0.5;
  private static final double HEAD = 0.2;
  private static final double SECONDS = 0.4;
  private static final SectionShape ROUND = SectionShape.ellipse(0.01, 0.01);

  private static double error(double loss, int steps) {
    Bench pipe = Bench.full(LENGTH, 0.0, 0.05, HEAD, loss, s -> ROUND);
    for (int k = 0; k < steps; k++) {
      pipe.flow(SECONDS / steps);
    }
    double most = Math.sqrt(2.0 * Gravity.G * HEAD / (1.0 + loss));
    double exact = most * Math.tanh(SECONDS * most * (1.0 + loss) / (2.0 * LENGTH));
    return Math.abs(pipe.channel.flowA / ROUND.area() - exact);
  }

  private static double order(double coarse, double fine) {
    return Math.log(coarse / fine) / Math.log(2.0);
  }

  @Test
  void flowAsTheMeanOfItsStepIsSecondOrder() {
    // a step taken wholly at its end gives 1
    assertThat(order(error(1.5, 20), error(1.5, 40))).isBetween(1.9, 2.1);
    assertThat(order(error(1.5, 40), error(1.5, 80))).isBetween(1.9, 2.1);
  }

  @Test
  void lossesThatWouldStopTheColumnWithinAStepLetItComeToItsSpeedWithoutOvershooting() {
    // at full speed these would stop the column six times over in a step
    double loss = 6000.0;
    double most = Math.sqrt(2.0 * Gravity.G * HEAD / (1.0 + loss));
    Bench pipe = Bench.full(LENGTH, 0.0, 0.05, HEAD, loss, s -> ROUND);
    double before = 0.0;
    for (int k = 0; k < 20; k++) {
      pipe.flow(SECONDS / 20);
      double speed = pipe.channel.flowA / ROUND.area();
      assertThat(speed).isBetween(before, most * (1.0 + 1e-9));
      before = speed;
    }
    assertThat(before).isGreaterThan(0.999 * most);
  }
}
