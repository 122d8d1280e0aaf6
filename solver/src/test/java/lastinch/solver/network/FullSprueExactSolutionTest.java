package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.casting.Pour;
import lastinch.solver.material.Band;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.physics.Losses;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A sprue over a gate fills when more is poured than the gate passes under the sprue's whole
 * height, and never does when less is: the flow of a full sprue is algebra.
 */
class FullSprueExactSolutionTest {
  private static final double TALL = 0.2;
  private static final double SPRUE = 200e-6;
  private static final double GATE = 20e-6;

  /** Flow under the sprue's height, entries of sprue and gate and one velocity head lost [m3/s]. */
  private static double capacity() {
    double gate = (1.0 + Losses.SHARP_INLET) / (GATE * GATE);
    double sprue = Losses.SHARP_INLET / (SPRUE * SPRUE);
    return Math.sqrt(2.0 * Gravity.G * TALL / (gate + sprue));
  }

  private static boolean fills(double share) {
    double density = 8000.0;
    Vessels vessels = new Vessels();
    int foot = vessels.joint();
    int mouth = vessels.joint();
    ChannelGraph.EndLosses entry = new ChannelGraph.EndLosses(Losses.SHARP_INLET, 1.0, 0.0, 0.0);
    NetworkRun run =
        vessels
            .channel("sprue", Role.SPRUE, TALL, TALL, 0.0, SectionShape.flat(SPRUE / 0.01, 0.01))
            .between(ChannelGraph.CUP, foot, entry)
            .channel("gate", Role.GATE, 0.02, 0.0, 0.0, SectionShape.flat(GATE / 0.004, 0.004))
            .between(foot, mouth, entry)
            .channel("sink", 1.0, 0.0, -1.0, SectionShape.flat(0.3, 0.3))
            .between(mouth, ChannelGraph.CLOSED)
            .run(
                SampleJob.plate(1.0, 0.002)
                    .alloy(SampleFoundry.neverFreezesNorHolds())
                    .cup(0.05, 0.05)
                    .melted(200.0)
                    .pour(new Pour.AtRate(Band.typed(share * capacity() * density)))
                    .checking(
                        SampleJob.Options.bare()
                            .mouldStays()
                            .friction(0.0)
                            .entryLoss(Losses.SHARP_INLET))
                    .build());
    while (run.state.time < 15.0 && !run.state.wet[ChannelGraph.CUP]) {
      run.step();
    }
    return run.state.wet[ChannelGraph.CUP];
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.7, 0.9, 0.99})
  void pourThatTheGatePassesNeverFillsTheSprue(double share) {
    assertThat(fills(share)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.01, 1.1, 1.5})
  void pourThatTheGateCannotPassFillsTheSprue(double share) {
    assertThat(fills(share)).isTrue();
  }
}
