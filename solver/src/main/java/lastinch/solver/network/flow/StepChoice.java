package lastinch.solver.network.flow;

import java.util.LinkedHashMap;
import java.util.Map;
import lastinch.solver.casting.Checking;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.heat.FrontMarkers;
import lastinch.solver.network.layout.ChannelGraph;

/** Chooses the flow step and the heat step, and counts what limited them. */
public final class StepChoice {
  /**
   * What a plug that draws back may lose of its volume in one step [-]: with more, its inertia
   * changes so much within the step that 0.35 % of the energy of a run went astray (our own figure,
   * no source; halved, a quarter of the error is left).
   */
  private static final double DRAWN_BACK = 0.1;

  /**
   * A plug shorter than this share of a cell may go in one step [-]; our own figure: halved stops
   * move by 0.6 mm.
   */
  private static final double SHORT_PLUG = 0.05;

  /**
   * Longest step of the flows [s]; chosen. Halved, stops move by 0.6 mm and heat to spare by 1.5
   * points; one plan of ten, whose metal crawls as shut-in air leaks, then counts as still too
   * soon, 3 mm short.
   */
  private static final double LONGEST = 5e-3;

  /**
   * First step [s], and what the next may grow from at least; chosen: halved stops move by 0.2 mm.
   */
  private static final double FIRST = 1e-4;

  /** Most that a step may grow from the last [-]; chosen: 1.1 moves stops by 0.2 mm. */
  private static final double GROWTH = 1.2;

  /** A millionth of this is the least step to an event [s]; numerical, so that time goes on. */
  private static final double SHORTEST = 1e-7;

  /**
   * Share of the spendable heat that a tip may lose in a heat step [-]; chosen: halved stops move
   * by 0.7 mm.
   */
  private static final double HEAT_SHARE = 0.02;

  /** What may set a step. */
  private static final String[] LIMITS = {
    "longest", "growth", "courant", "event", "tip_stops", "cup_runs_empty"
  };

  /** Place among the limits: the longest step there is. */
  private static final int BY_LONGEST = 0;

  /** Place among the limits: growth from the last step. */
  private static final int BY_GROWTH = 1;

  /** Place among the limits: the share of a cell that metal crosses. */
  private static final int BY_COURANT = 2;

  /** Place among the limits: an event: fronts meet, a plug is used up. */
  private static final int BY_EVENT = 3;

  /** Place among the limits: leading metal that stops. */
  private static final int BY_TIP = 4;

  /** Place among the limits: a cup that runs empty. */
  private static final int BY_CUP = 5;

  private final NetworkState state;
  private final FrontMarkers tips;
  private final double courant;
  private final double longestHeat;
  private final int[] counts = new int[LIMITS.length];
  private double last = FIRST / GROWTH;
  private int limit = BY_GROWTH;

  public StepChoice(NetworkState state, Checking checking, FrontMarkers tips) {
    this.state = state;
    this.tips = tips;
    courant = checking.frontCourant().orElse(Checking.USUAL_COURANT);
    longestHeat = checking.heatStep().orElse(Checking.USUAL_HEAT_STEP);
  }

  /** Step to try [s]. */
  public double next() {
    double dt = LONGEST;
    limit = BY_LONGEST;
    if (last * GROWTH < dt) {
      dt = last * GROWTH;
      limit = BY_GROWTH;
    }
    double c = courantStep();
    if (c < dt) {
      dt = c;
      limit = BY_COURANT;
    }
    last = Math.max(dt, FIRST);
    return dt;
  }

  /** Longest step in which nothing crosses more than its share of a cell [s]. */
  private double courantStep() {
    double dt = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      double flow = Math.max(Math.abs(c.flowA), Math.abs(c.flowB));
      if (flow > 0.0) {
        dt = Math.min(dt, courant * smallestCell(c) / flow);
      }
    }
    return dt;
  }

  private double smallestCell(Channel c) {
    double density = state.melt.density;
    double least = Double.POSITIVE_INFINITY;
    double[] volume = c.shape.volume;
    for (int i = 0; i < volume.length; i++) {
      if (c.wet[i] > 0.0 || c.full) {
        double skin = c.middle.skin[i];
        double room = volume[i] / c.lead(i);
        double open = skin == 0.0 ? room : room - skin / density;
        least = open < least ? open : least;
      }
    }
    double ahead = volumeAhead(c);
    return Math.max(0.05 * ahead, Math.min(least, ahead));
  }

  /** Volume of the smallest cell that a front of a channel comes to next [m3]. */
  private static double volumeAhead(Channel c) {
    double[] volume = c.shape.volume;
    double ahead = volume[Math.min(c.shape.cells - 1, c.shape.cellAt(c.positionA()) + 1)];
    return c.flowB == 0.0
        ? ahead
        : Math.min(ahead, volume[Math.max(0, c.shape.cellAt(c.positionB()) - 1)]);
  }

  /** Shortens a step so that it ends at the first event [s]; flows are known. */
  public double trim(double dt) {
    double trimmed = dt;
    for (Channel c : state.channels) {
      trimmed = Math.min(trimmed, untilEvent(c, trimmed));
    }
    trimmed = untilCupEmpty(trimmed);
    double share = tips.shareToStop(trimmed);
    if (share < 1.0) {
      trimmed *= Math.max(share, 1e-9);
      limit = BY_TIP;
    }
    counts[limit]++;
    return trimmed;
  }

  private double untilEvent(Channel c, double dt) {
    if (c.full) {
      return dt;
    }
    double until = dt;
    double closing = c.flowA - c.flowB;
    if (closing > 0.0) {
      until = Math.min(until, c.gapVolume() / closing);
    }
    if (c.flowA < 0.0) {
      until = Math.min(until, mostOf(c, c.volumeA) / -c.flowA);
    }
    if (c.flowB > 0.0) {
      until = Math.min(until, mostOf(c, c.volumeB) / c.flowB);
    }
    if (until < dt) {
      limit = BY_EVENT;
      return Math.max(until, SHORTEST * 1e-6);
    }
    return dt;
  }

  /** What a plug that draws back may lose of its volume in one step [m3]. */
  private static double mostOf(Channel c, double volume) {
    double few = SHORT_PLUG * c.shape.volume[0];
    return volume < few ? volume : Math.max(few, DRAWN_BACK * volume);
  }

  private double untilCupEmpty(double dt) {
    if (!state.wet[ChannelGraph.CUP] || state.cupIsHeld) {
      return dt;
    }
    Channel sprue = state.channelOf(state.ends[ChannelGraph.CUP][0]);
    double flow = sprue.flowA;
    if (flow * dt > state.cup.volume()) {
      limit = BY_CUP;
      return Math.max(state.cup.volume() / flow, SHORTEST * 1e-6);
    }
    return dt;
  }

  /** Heat step now [s]: shorter while some leading metal cools fast. */
  public double heatStep() {
    double spendable = state.melt.enthalpyIn - state.melt.enthalpyStop;
    double step = longestHeat;
    if (state.melt.water || spendable <= 0.0) {
      return step;
    }
    for (Channel c : state.channels) {
      step = Math.min(step, heatStep(c, c.frontA, c.positionA(), spendable));
      step = Math.min(step, heatStep(c, c.frontB, c.positionB(), spendable));
    }
    return Math.max(step, Math.min(longestHeat, 2e-3));
  }

  private double heatStep(Channel c, FrontMarker front, double at, double spendable) {
    if (c.full || !front.isPresent() || front.isStopped()) {
      return longestHeat;
    }
    double rate = tips.lossRate(c, at, front.enthalpy, false);
    return rate > 0.0 ? HEAT_SHARE * spendable / rate : longestHeat;
  }

  /** How often each limit set the step. */
  public Map<String, Integer> counts() {
    Map<String, Integer> named = new LinkedHashMap<>();
    for (int i = 0; i < LIMITS.length; i++) {
      named.put(LIMITS[i], counts[i]);
    }
    return named;
  }
}
