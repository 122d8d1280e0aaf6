package lastinch.solver.network;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.network.flow.AirPockets;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.ColumnFlowSolver;
import lastinch.solver.network.flow.ColumnTransport;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.run.SampleJob;

/** One full channel between a cup kept at its level and an open end, without the rest of a run. */
final class Bench {
  final NetworkState state;
  final ColumnFlowSolver hydraulics;
  final ColumnTransport transport;
  final Channel channel;
  final double density;

  private Bench(PourCase job, ChannelShape shape, ChannelGraph.EndLosses losses) {
    ChannelGraph graph =
        new ChannelGraph(
            List.of(shape), List.of(new ChannelGraph.Link(0, 1, losses)), 2, List.of());
    MeltProperties melt = new MeltProperties(job, 300.0);
    PouringCup cup =
        new PouringCup(job.pour(), job.gating().cup(), melt.density, 1.0, 1.0, 1e-4, 0.0);
    state = new NetworkState(job, graph, melt, cup);
    density = melt.density;
    AirPockets air = new AirPockets(state, job);
    hydraulics = new ColumnFlowSolver(state, air, job.checking());
    transport = new ColumnTransport(state);
    channel = state.channels[0];
    state.wet[ChannelGraph.CUP] = true;
    state.cupIsHeld = true;
    state.heldPressure = density * Gravity.G * job.checking().cupKeptAt().orElse(0.0);
    channel.close(0.0, 0.0);
    System.arraycopy(shape.volume, 0, channel.wet, 0, shape.cells);
  }

  /** A full channel of given sections under a head [m], without friction. */
  static Bench full(
      double length,
      double fall,
      double longest,
      double head,
      double entryLoss,
      java.util.function.DoubleFunction<SectionShape> section) {
    PourCase job =
        SampleJob.plate(1.0, 0.002)
            .checking(SampleJob.Options.bare().friction(0.0).cupKeptAt(head))
            .build();
    ChannelShape shape =
        new ChannelShape("pipe", Role.RUNNER, length, 0.0, fall, 0.0, longest, section, s -> 300.0);
    return new Bench(job, shape, new ChannelGraph.EndLosses(entryLoss, 1.0, 0.0, 0.0));
  }

  /** Solves the flows of one step [s]. */
  void flow(double dt) {
    hydraulics.keepOldFlows();
    hydraulics.solve(dt);
    hydraulics.endStep();
    state.time += dt;
  }

  /** Distance a run's front has gone when it first passes a time, or the reverse, by a line. */
  static double between(double x0, double y0, double x1, double y1, double x) {
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
  }
}
