package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/**
 * Three gates off one runner under 0.25 m of head, losses only: 13.4404919, 12.9219210 and
 * 19.0985206 mL/s, by the algebra of the losses.
 */
class ManifoldExactSolutionTest {
  private static final double[] FLOWS = {13.4404919e-6, 12.9219210e-6, 19.0985206e-6};

  private static SectionShape area(double squareMillimetres) {
    return SectionShape.flat(squareMillimetres * 1e-6 / 0.005, 0.005);
  }

  private static ChannelGraph.EndLosses entry(double coefficient) {
    return new ChannelGraph.EndLosses(coefficient, 1.0, 0.0, 0.0);
  }

  /** Feed, runner and gates, each gate over a sink that never fills. */
  private static NetworkRun manifold(double tee) {
    Vessels vessels = new Vessels();
    int[] along = {vessels.joint(), vessels.joint(), vessels.joint()};
    int[] mouths = {vessels.joint(), vessels.joint(), vessels.joint()};
    double[] areas = {10.0, 10.0, 15.0};
    vessels
        .channel("feed", 0.05, 0.0, 0.0, area(50.0))
        .between(ChannelGraph.CUP, along[0], entry(2.0));
    for (int k = 0; k < 2; k++) {
      vessels
          .channel("runner " + k, 0.1, 0.0, 0.0, area(50.0))
          .between(along[k], along[k + 1], entry(tee));
    }
    for (int k = 0; k < 3; k++) {
      // of its 1.8 the last velocity head leaves with the metal
      vessels
          .channel("gate " + k, 0.02, 0.0, 0.0, area(areas[k]))
          .between(along[k], mouths[k], entry(0.8));
      vessels
          .channel("sink " + k, 1.0, 0.0, -1.0, SectionShape.flat(0.3, 0.3))
          .between(mouths[k], ChannelGraph.CLOSED);
    }
    return vessels.run(
        SampleJob.plate(1.0, 0.002)
            .checking(SampleJob.Options.bare().water().friction(0.0).cupKeptAt(0.25))
            .build());
  }

  private static double[] atRest(NetworkRun run) {
    while (run.state.time < 3.0) {
      run.step();
    }
    double[] flows = new double[3];
    for (int k = 0; k < 3; k++) {
      flows[k] = run.state.channels[3 + 2 * k].flowA;
    }
    return flows;
  }

  @Test
  void dryManifoldComesToItsSteadyFlows() {
    double[] flows = atRest(manifold(0.6));
    for (int k = 0; k < 3; k++) {
      // steady algebra, no step left in it: the run has three seconds for it
      assertThat(flows[k]).isCloseTo(FLOWS[k], withinPercentage(0.001));
    }
  }

  @Test
  void runnerWithoutLossesFails() {
    assertThat(atRest(manifold(0.0))[2]).isNotCloseTo(FLOWS[2], withinPercentage(1.0));
  }
}
