package lastinch.solver.network.flow;

import java.util.List;
import lastinch.solver.casting.Checking.StartsWet;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.result.PassageRecord.Role;

/** Metal that lies in channels before the first step, where a checking option asks for it. */
public final class MetalInPlace {
  /** Nearer than this to the end of a channel metal hangs at it [m]; numerical, over rounding. */
  private static final double NEAR = 1e-9;

  private final NetworkState state;
  private final Topology topology;
  private final FrontRecorder recorder;

  public MetalInPlace(NetworkState state, Topology topology, FrontRecorder recorder) {
    this.state = state;
    this.topology = topology;
    this.recorder = recorder;
  }

  /** Whether a stretch of metal lies in channels there are and hangs at an end of each. */
  public static boolean fits(StartsWet metal, List<ChannelShape> shapes) {
    boolean found = false;
    for (ChannelShape shape : shapes) {
      if (shape.limb.equals(metal.part()) && lies(metal, shape)) {
        boolean hangs = from(metal, shape) <= NEAR || to(metal, shape) >= shape.length - NEAR;
        if (!hangs) {
          return false;
        }
        found = true;
      }
    }
    return found;
  }

  private static boolean lies(StartsWet metal, ChannelShape shape) {
    return to(metal, shape) - from(metal, shape) > NEAR;
  }

  private static double from(StartsWet metal, ChannelShape shape) {
    return Math.max(0.0, metal.from() - offset(shape));
  }

  private static double to(StartsWet metal, ChannelShape shape) {
    return Math.min(shape.length, metal.to() - offset(shape));
  }

  /** Places of the piece are given on its ruler, others from the channel's own beginning. */
  private static double offset(ChannelShape shape) {
    return shape.role == Role.PIECE ? shape.start : 0.0;
  }

  /** Lays all metal in place and returns how much it is [kg]. */
  public double lay(List<StartsWet> stretches) {
    double volume = 0.0;
    for (StartsWet metal : stretches) {
      for (Channel c : state.channels) {
        if (c.shape.limb.equals(metal.part()) && lies(metal, c.shape)) {
          volume += lay(c, metal);
        }
      }
    }
    for (int j = 0; j < state.wet.length; j++) {
      if (!state.wet[j] && isHungAt(j)) {
        topology.makeWet(j);
      }
    }
    topology.settle();
    return volume * state.melt.density;
  }

  private double lay(Channel c, StartsWet metal) {
    ChannelShape shape = c.shape;
    double low = shape.volumeBelow(from(metal, shape));
    double high = shape.volumeBelow(to(metal, shape));
    c.deposit(low, high, state.melt.density, state.melt.enthalpyIn);
    boolean atA = from(metal, shape) <= NEAR;
    FrontMarker front = atA ? c.frontA : c.frontB;
    front.start();
    front.take(state.melt.enthalpyIn);
    if (shape.role == Role.GATE) {
      front.origin = c.index;
    }
    if (atA) {
      c.volumeA = high - low;
      c.flowA = metal.speed() * shape.faceArea[0];
    } else {
      c.volumeB = high - low;
      c.flowB = metal.speed() * shape.faceArea[shape.cells];
    }
    recorder.inPlace(c, front);
    return high - low;
  }

  private boolean isHungAt(int joint) {
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (NetworkState.isEndA(end) ? c.hasPlugA() : c.hasPlugB()) {
        return true;
      }
    }
    return false;
  }
}
