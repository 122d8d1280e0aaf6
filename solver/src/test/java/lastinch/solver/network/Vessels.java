package lastinch.solver.network;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.run.SampleJob;

/** Channels put together by hand, with metal in them from the start where a check asks for it. */
final class Vessels {
  static final ChannelGraph.EndLosses NO_LOSS = new ChannelGraph.EndLosses(0.0, 0.0, 0.0, 0.0);

  private final List<ChannelShape> shapes = new ArrayList<>();
  private final List<ChannelGraph.Link> links = new ArrayList<>();
  private int joints = 1;

  int joint() {
    return joints++;
  }

  /** A channel of one section between two heights [m]. */
  Vessels channel(
      String name, double length, double fromHeight, double toHeight, SectionShape section) {
    return channel(name, Role.RUNNER, length, fromHeight, toHeight, section);
  }

  Vessels channel(
      String name,
      Role role,
      double length,
      double fromHeight,
      double toHeight,
      SectionShape section) {
    shapes.add(
        new ChannelShape(
            name,
            role,
            length,
            0.0,
            fromHeight,
            toHeight,
            0.01,
            s -> section,
            s -> 500.0 + SampleJob.ZERO));
    return this;
  }

  Vessels between(int jointA, int jointB) {
    return between(jointA, jointB, NO_LOSS);
  }

  Vessels between(int jointA, int jointB, ChannelGraph.EndLosses losses) {
    links.add(new ChannelGraph.Link(jointA, jointB, losses));
    return this;
  }

  NetworkRun run(PourCase job) {
    return new NetworkRun(
        job, new ChannelGraph(List.copyOf(shapes), List.copyOf(links), joints, List.of()));
  }

  /** Puts a plug at face 0 up to a length [m], flowing [m3/s]. */
  static Channel fillFromA(NetworkRun run, int index, double length, double flow) {
    Channel c = run.state.channels[index];
    double volume = c.shape.totalVolume() * length / c.shape.length;
    c.deposit(0.0, volume, run.melt.density, run.melt.enthalpyIn);
    c.volumeA = volume;
    c.flowA = flow;
    c.frontA.start();
    c.frontA.enthalpy = run.melt.enthalpyIn;
    return c;
  }

  /** Puts a plug of a length [m] at the last face, flowing [m3/s]. */
  static Channel fillFromB(NetworkRun run, int index, double length, double flow) {
    Channel c = run.state.channels[index];
    double total = c.shape.totalVolume();
    double volume = total * length / c.shape.length;
    c.deposit(total - volume, total, run.melt.density, run.melt.enthalpyIn);
    c.volumeB = volume;
    c.flowB = flow;
    c.frontB.start();
    c.frontB.enthalpy = run.melt.enthalpyIn;
    return c;
  }
}
