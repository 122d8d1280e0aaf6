package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Metal in legs that hang together at their feet swings in its own period and comes to rest. */
class CommunicatingLegsExactSolutionTest {
  private static final SectionShape ROUND = SectionShape.ellipse(0.02, 0.02);

  /** The usual steps: 5 ms in so slow a swing. */
  private static PourCase water(double friction) {
    return SampleJob.plate(1.0, 0.002)
        .checking(SampleJob.Options.bare().water().friction(friction).cupKeptAt(0.0))
        .build();
  }

  /** Two upright legs with metal to 0.15 m in the mean, 20 mm apart in height. */
  private static NetworkRun uTube(double friction) {
    Vessels vessels = new Vessels();
    int foot = vessels.joint();
    NetworkRun run =
        vessels
            .channel("left", 0.4, 0.0, 0.4, ROUND)
            .between(foot, ChannelGraph.CLOSED)
            .channel("right", 0.4, 0.0, 0.4, ROUND)
            .between(foot, ChannelGraph.CLOSED)
            .run(water(friction));
    Vessels.fillFromA(run, 0, 0.16, 0.0);
    Vessels.fillFromA(run, 1, 0.14, 0.0);
    run.state.wet[foot] = true;
    run.air.relabel();
    return run;
  }

  /** Times and heights at which the left leg turns at the top. */
  private static List<double[]> tops(NetworkRun run, double seconds) {
    List<double[]> tops = new ArrayList<>();
    double[] before = {0.0, 0.16};
    double[] now = before;
    while (run.state.time < seconds) {
      run.step();
      double[] next = {run.state.time, run.state.channels[0].positionA()};
      if (now[1] > before[1] && now[1] >= next[1]) {
        tops.add(top(before, now, next));
      }
      before = now;
      now = next;
    }
    return tops;
  }

  /** Vertex of the parabola through three points. */
  private static double[] top(double[] a, double[] b, double[] c) {
    double left = (b[1] - a[1]) / (b[0] - a[0]);
    double right = (c[1] - b[1]) / (c[0] - b[0]);
    double curve = (right - left) / (c[0] - a[0]);
    double time = 0.5 * (a[0] + b[0]) - 0.5 * left / curve;
    double height = b[1] + (time - b[0]) * (left + curve * (time - a[0]));
    return new double[] {time, height};
  }

  @Test
  void frictionlessLegsSwingInTheirPeriodAndKeepTheirSwing() {
    List<double[]> tops = tops(uTube(0.0), 4.0);
    assertThat(tops).hasSizeGreaterThan(3);
    double period = (tops.get(3)[0] - tops.get(0)[0]) / 3.0;
    // 0.2 %, a tenth of what a foot without its share of length would shift
    assertThat(period)
        .isCloseTo(2.0 * Math.PI * Math.sqrt(0.3 / (2.0 * Gravity.G)), withinPercentage(0.2));
    double kept = (tops.get(3)[1] - 0.15) / (tops.get(0)[1] - 0.15);
    // cells with a mean fill lost more than half in every period
    assertThat(StrictMath.cbrt(kept)).isBetween(0.99, 1.0 + 1e-6);
  }

  @Test
  void legsWithFrictionDoNotKeepTheirSwing() {
    List<double[]> tops = tops(uTube(2.0), 4.0);
    double kept = (tops.get(2)[1] - 0.15) / (tops.get(0)[1] - 0.15);
    assertThat(kept).isLessThan(0.9);
  }

  private static NetworkRun threeLegs(double first, double second, double third) {
    PourCase job =
        SampleJob.plate(1.0, 0.002)
            .checking(SampleJob.Options.bare().water().cupKeptAt(0.0))
            .build();
    Vessels vessels = new Vessels();
    int foot = vessels.joint();
    NetworkRun run =
        vessels
            .channel("upright", 0.4, 0.0, 0.4, SectionShape.flat(0.03, 0.002))
            .between(foot, ChannelGraph.CLOSED)
            .channel("leaning", 0.6, 0.0, 0.4, SectionShape.flat(0.02, 0.0015))
            .between(foot, ChannelGraph.CLOSED)
            .channel("steep", 0.5, 0.0, 0.4, SectionShape.flat(0.02, 0.003))
            .between(foot, ChannelGraph.CLOSED)
            .run(job);
    Vessels.fillFromA(run, 0, first, 0.0);
    Vessels.fillFromA(run, 1, second * 1.5, 0.0);
    Vessels.fillFromA(run, 2, third * 1.25, 0.0);
    run.state.wet[foot] = true;
    run.air.relabel();
    return run;
  }

  private static double fastest(NetworkRun run) {
    double fastest = 0.0;
    for (Channel c : run.state.channels) {
      fastest = Math.max(fastest, Math.abs(c.flowA) / c.shape.faceArea[0]);
    }
    return fastest;
  }

  @Test
  void legsOfOneHeightStayAtRest() {
    NetworkRun run = threeLegs(0.15, 0.15, 0.15);
    double fastest = 0.0;
    while (run.state.time < 1.0) {
      run.step();
      fastest = Math.max(fastest, fastest(run));
    }
    assertThat(fastest).isLessThan(1e-9);
  }

  @Test
  void unequalLegsComeToRestAtOneHeight() {
    NetworkRun run = threeLegs(0.25, 0.1, 0.05);
    run.step();
    assertThat(fastest(run)).isGreaterThan(1e-4);
    while (run.state.time < 60.0) {
      run.step();
    }
    assertThat(fastest(run)).isLessThan(1e-9);
    double height = run.state.channels[0].positionA();
    assertThat(run.state.channels[1].positionA() / 1.5).isCloseTo(height, withinPercentage(1e-6));
    assertThat(run.state.channels[2].positionA() / 1.25).isCloseTo(height, withinPercentage(1e-6));
  }
}
