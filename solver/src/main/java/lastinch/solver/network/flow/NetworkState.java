package lastinch.solver.network.flow;

import java.util.Arrays;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;

/** Everything that evolves: channels, joints, cup and clock. */
public final class NetworkState {
  final ChannelGraph graph;
  public final MeltProperties melt;
  public final Channel[] channels;

  /** By joint: whether metal fills it; its height [m]; enthalpy of what flows through [J/kg]. */
  public final boolean[] wet;

  public final double[] jointHeight;
  public final double[] jointEnthalpy;

  /**
   * Pressure above the open air [Pa], kept from the last solve: at total head by joint, then by
   * pocket of air.
   */
  public final double[] nodePressure;

  /** By joint: metal that reached it in this step without a way on yet [m3] and its heat. */
  public final double[] landedVolume;

  /** By joint: channel of the gate that metal which landed there last came through. */
  final int[] landedOrigin;

  public final double[] landedHeat;
  final double[] landedSpeed;

  /** By joint: mark and ledger of the first metal that reached it. */
  final FrontMarker[] arrived;

  private final boolean[] hasArrived;

  /** By joint: ends of channels as {@code 2 channel + (1 for the last face)}. */
  public final int[][] ends;

  public final PouringCup cup;

  /** Height of its rim over its floor [m]. */
  public final double rim;

  /** Enthalpy of the metal in the cup [J/kg]. */
  public double cupEnthalpy;

  /** Whether checking options hold the inlet, and at which pressure [Pa]. */
  public boolean cupIsHeld;

  public double heldPressure;

  /** Flow that checking options force into the first channel [m3/s]; 0 when none. */
  public double forcedFlow;

  public double time;
  public int allCells;

  /** Columns of mould along all lanes: first those of whole sections and middles, by cell. */
  public final int columns;

  public NetworkState(PourCase job, ChannelGraph graph, MeltProperties melt, PouringCup cup) {
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
    double turns = job.laws().turns().value();
    boolean parted = job.checking().rims();
    int first = 0;
    int column = allCells;
    for (int k = 0; k < count; k++) {
      ChannelShape shape = graph.channels().get(k);
      double gap = 2.0 * shape.totalVolume() / sum(shape.wall);
      boolean rims = parted && shape.hasRims();
      channels[k] =
          new Channel(
              shape,
              k,
              first,
              allCells,
              graph.links().get(k).jointA(),
              graph.links().get(k).jointB(),
              losses(graph.links().get(k), turns),
              melt.mushShare(gap, shape.mouldTemperature[shape.cells / 2]),
              rims ? column : Channel.NO_RIMS);
      first += shape.cells;
      column += rims ? shape.cells : 0;
    }
    columns = column;
    wet = new boolean[graph.joints()];
    jointHeight = new double[graph.joints()];
    jointEnthalpy = new double[graph.joints()];
    nodePressure = new double[2 * graph.joints() + count];
    landedVolume = new double[graph.joints()];
    landedOrigin = new int[graph.joints()];
    Arrays.fill(landedOrigin, FrontMarker.NO_GATE);
    landedHeat = new double[graph.joints()];
    landedSpeed = new double[graph.joints()];
    arrived = new FrontMarker[graph.joints()];
    hasArrived = new boolean[graph.joints()];
    ends = new int[graph.joints()][];
    for (int j = 0; j < graph.joints(); j++) {
      ends[j] = endsAt(j);
      jointEnthalpy[j] = melt.enthalpyIn;
      arrived[j] = new FrontMarker(allCells);
      arrived[j].take(melt.enthalpyIn);
    }
  }

  /** Losses of a channel with their factor; that of a mouth in the cup has it already. */
  private static ChannelGraph.EndLosses losses(ChannelGraph.Link link, double turns) {
    return link.jointA() == ChannelGraph.CUP ? link.losses() : link.losses().entering(turns);
  }

  /** Heat content of what has run over the cup's rim [J]. */
  public double spilledHeat;

  /** Metal [m3] with its heat over density [J m3/kg] comes back into the cup, or over its rim. */
  void returnToCup(double volume, double heat) {
    double before = cup.volume();
    double spilled = cup.spilled();
    cupEnthalpy = (cupEnthalpy * before + heat) / (before + volume);
    cup.draw(-volume);
    spilledHeat += (cup.spilled() - spilled) * cupEnthalpy;
  }

  /** Notes leading metal at a joint; the first counts. */
  void arrive(int joint, FrontMarker front) {
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
  public static boolean isEndA(int end) {
    return (end & 1) == 0;
  }

  public Channel channelOf(int end) {
    return channels[end >> 1];
  }

  /** Whether metal falls away from a joint through a channel end. */
  boolean fallsAway(int end) {
    Channel c = channelOf(end);
    return isEndA(end) ? c.fallsTowardsB() : c.fallsTowardsA();
  }
}
