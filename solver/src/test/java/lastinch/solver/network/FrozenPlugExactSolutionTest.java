package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A plug that has frozen holds itself, not the metal that comes to it from the other end of the
 * channel. That one goes on as a rigid column under its head: with x dv/dt + v^2/2 = g H from rest
 * at x0, v^2 = 2 g H (x - x0)/x.
 */
class FrozenPlugExactSolutionTest {
  private static final double LENGTH = 0.4;
  private static final double HEAD = 0.24;
  private static final double START = 0.02;
  private static final double FROZEN = 0.1;

  /** A level channel under a head, with a plug at the cup's end and another at the far one. */
  private static NetworkRun channel(boolean cupAtA) {
    Vessels vessels = new Vessels();
    int far = vessels.joint();
    NetworkRun run =
        vessels
            .channel("level", LENGTH, 0.0, 0.0, SectionShape.flat(0.02, 0.004))
            .between(cupAtA ? ChannelGraph.CUP : far, cupAtA ? far : ChannelGraph.CUP)
            .run(
                SampleJob.plate(1.0, 0.002)
                    .checking(SampleJob.Options.bare().water().friction(0.0).cupKeptAt(HEAD))
                    .build());
    run.state.wet[far] = true;
    Vessels.fillFromA(run, 0, cupAtA ? START : FROZEN, 0.0);
    Vessels.fillFromB(run, 0, cupAtA ? FROZEN : START, 0.0);
    run.air.relabel();
    return run;
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void metalFromTheOtherEndGoesOn(boolean cupAtA) {
    NetworkRun run = channel(cupAtA);
    Channel c = run.state.channels[0];
    FrontMarker free = cupAtA ? c.frontA : c.frontB;
    FrontMarker frozen = cupAtA ? c.frontB : c.frontA;
    double held = cupAtA ? c.volumeB : c.volumeA;
    double x = START;
    while (x < LENGTH - FROZEN - 0.05) {
      // thin gaps of this fluid never close by themselves
      frozen.freeze(cupAtA ? c.shape.cells - 1 : 0, run.state.time);
      run.step();
      x = cupAtA ? c.positionA() : LENGTH - c.positionB();
      assertThat(run.state.time).isLessThan(1.0);
    }
    assertThat(cupAtA ? c.volumeB : c.volumeA).isEqualTo(held);
    // first order in the step, at most 5 ms of 0.2 s; a plug held by the other one stays at rest
    assertThat(free.speed)
        .isCloseTo(Math.sqrt(2.0 * Gravity.G * HEAD * (x - START) / x), withinPercentage(1.0));
  }

  @Test
  void metalThatFrozeWhileItWaitedLacksHeatAndNotHead() {
    NetworkRun run =
        new Vessels()
            .channel("down", LENGTH, HEAD, 0.0, SectionShape.flat(0.02, 0.004))
            .between(ChannelGraph.CUP, ChannelGraph.CLOSED)
            .run(
                SampleJob.plate(1.0, 0.002)
                    .checking(SampleJob.Options.bare().pushesBack().cupKeptAt(0.0))
                    .build());
    double air = run.air.mass[0];
    Channel c = Vessels.fillFromA(run, 0, 0.5 * LENGTH, 0.0);
    letAirOut(run, air);
    c.frontA.state = FrontMarker.State.STOPPED;
    c.frontA.stoodFirst = true;
    // half of 240 mm of metal over it, where a gap of 4 mm asks for some 30 mm
    assertThat(run.ending.reason(c, c.frontA)).isIn(StopReason.SLUSH, StopReason.SKIN);
    Vessels.fillFromA(run, 0, 1e-3, 0.0);
    letAirOut(run, air);
    c.frontA.state = FrontMarker.State.STOPPED;
    c.frontA.stoodFirst = true;
    assertThat(run.ending.reason(c, c.frontA)).isEqualTo(StopReason.CAPILLARITY);
  }

  /** The air ahead has gone out, it is not what stops the metal. */
  private static void letAirOut(NetworkRun run, double atFirst) {
    Channel c = run.state.channels[0];
    run.air.mass[0] = atFirst * c.emptyVolume() / c.shape.totalVolume();
    run.air.relabel();
    run.air.beginStep();
  }

  @Test
  void metalBehindTheFrozenCellStays() {
    NetworkRun run = channel(true);
    Channel c = run.state.channels[0];
    double before = c.volumeA;
    for (int k = 0; k < 20; k++) {
      c.frontA.freeze(0, run.state.time);
      run.step();
    }
    assertThat(c.volumeA).isEqualTo(before);
  }

  @Test
  void aChannelThatFillsOverAFrozenPlugIsClosed() {
    NetworkRun run = channel(true);
    Channel c = run.state.channels[0];
    int cell = c.shape.cells - 1;
    while (!c.full) {
      c.frontB.freeze(cell, run.state.time);
      run.step();
      assertThat(run.state.time).isLessThan(1.0);
    }
    assertThat(c.isFrozen()).isTrue();
    assertThat(c.frozenFront().frozenCell).isEqualTo(cell);
    assertThat(c.frontB.isFrozen()).isFalse();
  }
}
