package lastinch.solver.network;

import java.util.Arrays;
import lastinch.solver.casting.PourCase;
import lastinch.solver.inlet.PouringCup;

/** Everything that evolves: channels, joints, cup and clock. */
final class State {
  final Graph graph;
  final Melt melt;
  final Channel[] channels;

  /** By joint: whether metal fills it; its height [m]; enthalpy of what flows through [J/kg]. */
  final boolean[] wet;

  final double[] jointHeight;
  final double[] jointEnthalpy;

  /**
   * Pressure above the open air [Pa], kept from the last solve: at total head by joint, then by
   * pocket of air.
   */
  final double[] nodePressure;

  /** By joint: metal that reached it in this step without a way on yet [m3] and its heat. */
  final double[] landedVolume;

  /** By joint: channel of the gate that metal which landed there last came through. */
  final int[] landedOrigin;

  final double[] landedHeat;
  final double[] landedSpeed;

  /** By joint: mark and ledger of the first metal that reached it. */
  final Front[] arrived;

  private final boolean[] hasArrived;

  /** By joint: ends of channels as {@code 2 channel + (1 for the last face)}. */
  final int[][] ends;

  final PouringCup cup;

  /** Height of its rim over its floor [m]. */
  final double rim;

  /** Enthalpy of the metal in the cup [J/kg]. */
  double cupEnthalpy;

  /** Whether checking options hold the inlet, and at which pressure [Pa]. */
  boolean cupIsHeld;

  double heldPressure;

  /** Flow that checking options force into the first channel [m3/s]; 0 when none. */
  double forcedFlow;

  double time;
  int allCells;

  State(PourCase job, Graph graph, Melt melt, PouringCup cup) {
    this.graph = graph;
    this.melt = melt;
    this.cup = cup;
    cupEnthalpy = melt.enthalpyIn;
    rim = job.gating().cup().depth();
    int count = graph.size();
    for (ChannelShape shape : graph.channels()) {
      allCells += shape.cells;
    }
    channels = new Channel[count];
    int first = 0;
    for (int k = 0; k < count; k++) {
      ChannelShape shape = graph.channels().get(k);
      double gap = 2.0 * shape.totalVolume() / sum(shape.wall);
      channels[k] =
          new Channel(
              shape,
              k,
              first,
              allCells,
              graph.links().get(k).jointA(),
              graph.links().get(k).jointB(),
              graph.links().get(k).losses(),
              melt.mushShare(gap, shape.mouldTemperature[shape.cells / 2]));
      first += shape.cells;
    }
    wet = new boolean[graph.joints()];
    jointHeight = new double[graph.joints()];
    jointEnthalpy = new double[graph.joints()];
    nodePressure = new double[2 * graph.joints() + count];
    landedVolume = new double[graph.joints()];
    landedOrigin = new int[graph.joints()];
    Arrays.fill(landedOrigin, Front.NO_GATE);
    landedHeat = new double[graph.joints()];
    landedSpeed = new double[graph.joints()];
    arrived = new Front[graph.joints()];
    hasArrived = new boolean[graph.joints()];
    ends = new int[graph.joints()][];
    for (int j = 0; j < graph.joints(); j++) {
      ends[j] = endsAt(j);
      jointEnthalpy[j] = melt.enthalpyIn;
      arrived[j] = new Front(allCells);
      arrived[j].enthalpy = melt.enthalpyIn;
    }
  }

  /** Heat content of what has run over the cup's rim [J]. */
  double spilledHeat;

  /** Metal [m3] with its heat over density [J m3/kg] comes back into the cup, or over its rim. */
  void returnToCup(double volume, double heat) {
    double before = cup.volume();
    double spilled = cup.spilled();
    cupEnthalpy = (cupEnthalpy * before + heat) / (before + volume);
    cup.draw(-volume);
    spilledHeat += (cup.spilled() - spilled) * cupEnthalpy;
  }

  /** Notes leading metal at a joint; the first counts. */
  void arrive(int joint, Front front) {
    if (!hasArrived[joint]) {
      hasArrived[joint] = true;
      arrived[joint].copyFrom(front);
    }
  }

  private int[] endsAt(int joint) {
    int count = 0;
    for (Channel c : channels) {
      count += (c.jointA == joint ? 1 : 0) + (c.jointB == joint ? 1 : 0);
    }
    int[] found = new int[count];
    int at = 0;
    for (Channel c : channels) {
      if (c.jointA == joint) {
        found[at++] = 2 * c.index;
        jointHeight[joint] = c.shape.heightA;
      }
      if (c.jointB == joint) {
        found[at++] = 2 * c.index + 1;
        jointHeight[joint] = c.shape.heightB;
      }
    }
    return found;
  }

  private static double sum(double[] values) {
    double total = 0.0;
    for (double v : values) {
      total += v;
    }
    return total;
  }

  /** Whether a channel end is at face 0. */
  static boolean isEndA(int end) {
    return (end & 1) == 0;
  }

  Channel channelOf(int end) {
    return channels[end >> 1];
  }

  /** Whether metal falls away from a joint through a channel end. */
  boolean fallsAway(int end) {
    Channel c = channelOf(end);
    return isEndA(end) ? c.fallsTowardsB() : c.fallsTowardsA();
  }
}
