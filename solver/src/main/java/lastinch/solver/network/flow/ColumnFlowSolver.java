package lastinch.solver.network.flow;

import lastinch.solver.casting.Checking;
import lastinch.solver.network.layout.ChannelGraph;

/**
 * Flows of all columns of metal for one step: each column is rigid and incompressible, its momentum
 * implicit, losses by Newton steps; joints that hold metal conserve volume, closed pockets of air
 * give way by their stiffness. Fronts held by surface tension stand exactly, found by an active set
 * that tries standing first. The surface in the sprue, stirred by falling metal, is never held.
 */
public final class ColumnFlowSolver {
  /**
   * Most passes for the flows of one step [-]; numerical: with half as many ten plans stay as they
   * are.
   */
  private static final int NEWTON = 30;

  /**
   * Passes that go the whole way; later ones go half, for pockets about to close [-]; numerical:
   * with half as many ten plans stay as they are.
   */
  private static final int STRAIGHT = 10;

  /** Change of flows over the largest under which passes end [-]; numerical, over rounding. */
  private static final double SETTLED = 1e-10;

  /**
   * Change of flows over the largest above which a step that ran out of passes counts as unsettled
   * [-]; chosen.
   */
  private static final double ROUGH = 1e-6;

  /**
   * Rounds in which fronts may change between going, standing and drawing back [-]; numerical: with
   * half as many ten plans stay as they are.
   */
  private static final int MODES = 12;

  /**
   * Rounds in which legs without metal behind them are held [-]; numerical: with half as many ten
   * plans stay as they are.
   */
  private static final int HOLDS = 4;

  private final NetworkState state;
  private final AirPockets air;
  private final LiquidColumns legs;
  private final int joints;
  private final NodePressures nodes;
  private double dt;
  private int unsettled;

  public ColumnFlowSolver(NetworkState state, AirPockets air, Checking checking) {
    this.state = state;
    this.air = air;
    legs = new LiquidColumns(state, air, checking);
    joints = state.wet.length;
    nodes = new NodePressures(state, air, legs);
  }

  /** Remembers the flows that a step, solved once or more, starts from. */
  public void keepOldFlows() {
    legs.keepOldFlows();
  }

  /** Gives the channels back the flows that the step started from. */
  void restoreOldFlows() {
    legs.restoreOldFlows();
  }

  /** A full channel has become plug B alone in the middle of a step. */
  void becamePlugB(Channel c) {
    legs.becamePlugB(c);
  }

  /** Plug B alone has filled its channel in the middle of a step. */
  void becameFull(Channel c) {
    legs.becameFull(c);
  }

  /**
   * Computes the mean flows of a step of length {@code step} [s] and stores them in the channels.
   * Losses and weight are those of half way through it, so that nothing is gained or lost by its
   * length; where that would let flows overshoot, they are those of its end.
   */
  public void solve(double step) {
    dt = step;
    legs.gather(step);
    double share = legs.shareOfStep();
    solveAll(share);
    if (share < 1.0 && !legs.carryOn()) {
      legs.letGoOfHolds();
      solveAll(1.0);
    }
    store();
  }

  /** Finds the flows reached after a share of the step [-]. */
  private void solveAll(double share) {
    legs.setShare(share);
    for (int mode = 0; mode < MODES; mode++) {
      newton();
      if (!changeModes(mode)) {
        break;
      }
    }
    for (int k = 0; k < HOLDS && holdWhatHasNoMetal(); k++) {
      newton();
    }
  }

  /** Gives the channels the flows at the end of the step whose mean flows they had. */
  public void endStep() {
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      double end = leg.carriedOn();
      if (leg.frontSide < 0) {
        leg.channel.flowB = end;
      } else {
        leg.channel.flowA = end;
      }
    }
  }

  /**
   * A pool gives no more than it holds over a short time, so that it never runs out in a step; a
   * plug behind which there is only air does not move on. Returns whether any leg was held anew.
   */
  private boolean holdWhatHasNoMetal() {
    boolean any = false;
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (leg.front == null || leg.drawsAtMost) {
        continue;
      }
      double ahead = leg.frontSide > 0 ? leg.flow : -leg.flow;
      double most = mostFromPool(leg);
      if (ahead > 0.0 && hangsInAir(leg)) {
        hold(leg, 0.0);
        any = true;
      } else if (-ahead > most) {
        hold(leg, leg.frontSide > 0 ? -most : most);
        any = true;
      }
    }
    return any;
  }

  /** What a pool gives in the mean of a step: by its volume half way, with what lands on it. */
  private double mostFromPool(LiquidColumn leg) {
    double volume = plugVolume(leg);
    double half = 0.5 * dt;
    double most = (volume + half * leg.channel.landingRate) / (LiquidColumns.DRAIN + half);
    return Math.min(most, volume / dt);
  }

  private void hold(LiquidColumn leg, double flow) {
    leg.drawsAtMost = true;
    leg.held = flow;
  }

  private boolean hangsInAir(LiquidColumn leg) {
    int joint = leg.frontSide > 0 ? leg.channel.jointA : leg.channel.jointB;
    return !state.wet[joint];
  }

  private void newton() {
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      leg.flow = leg.stands() ? 0.0 : leg.oldFlow;
    }
    nodes.number();
    double change = 0.0;
    for (int k = 0; k < NEWTON; k++) {
      lineariseAll();
      nodes.solve(dt);
      change = updateFlows(k < STRAIGHT ? 1.0 : 0.5);
      if (change < SETTLED) {
        return;
      }
    }
    unsettled += change > ROUGH ? 1 : 0;
  }

  /** How often flows still changed by more than a millionth when the passes ran out. */
  public int unsettled() {
    return unsettled;
  }

  private void lineariseAll() {
    nodes.forgetInflow();
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (leg.stands()) {
        continue;
      }
      if (leg.drawsAtMost) {
        leg.alpha = leg.held;
        leg.beta = 0.0;
      } else if (isForced(leg)) {
        leg.forced = true;
        leg.alpha = leg.channel.jointA == ChannelGraph.CUP ? state.forcedFlow : -state.forcedFlow;
        leg.beta = 0.0;
      } else {
        leg.linearise();
      }
      nodes.noteInflow(leg);
    }
  }

  /**
   * Takes the new flows, or goes a share of the way to them; joints stay balanced either way.
   * Returns their largest change over the largest flow [-].
   */
  private double updateFlows(double share) {
    double change = 0.0;
    double scale = 1e-12;
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (leg.stands()) {
        continue;
      }
      double q = leg.alpha;
      q += leg.from == LiquidColumn.KNOWN ? 0.0 : leg.beta * state.nodePressure[leg.from];
      q -= leg.to == LiquidColumn.KNOWN ? 0.0 : leg.beta * state.nodePressure[leg.to];
      change = Math.max(change, Math.abs(q - leg.flow));
      scale = Math.max(scale, Math.abs(q));
      leg.flow += share * (q - leg.flow);
    }
    return Math.max(0.0, change - 1e-14) / scale;
  }

  private boolean isForced(LiquidColumn leg) {
    boolean atA = leg.channel.jointA == ChannelGraph.CUP && leg.frontSide >= 0;
    boolean atB = leg.channel.jointB == ChannelGraph.CUP && leg.frontSide <= 0;
    return state.forcedFlow > 0.0 && (atA || atB);
  }

  /** Lets fronts stand or go by the pressures found; returns whether any changed. */
  private boolean changeModes(int round) {
    boolean changed = false;
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (leg.front == null) {
        continue;
      }
      int motion = leg.front.motion;
      double ahead = leg.frontSide > 0 ? leg.flow : -leg.flow;
      if (motion != 0) {
        if (motion * ahead < 0.0) {
          boolean usedUp = motion > 0 && plugVolume(leg) <= 0.0;
          boolean hold = leg.capillary > 0.0 && round < MODES / 2;
          setMotion(leg, usedUp || hold ? 0 : -motion);
          changed = true;
        }
      } else {
        int next = pushedTo(leg);
        if (next != 0) {
          setMotion(leg, next);
          changed = true;
        }
      }
    }
    return changed;
  }

  private static void setMotion(LiquidColumn leg, int motion) {
    leg.front.motion = motion;
    leg.setCapillary();
  }

  /** Where the pressure behind a standing front sends it. */
  private int pushedTo(LiquidColumn leg) {
    int behindNode = leg.frontSide > 0 ? leg.from : leg.to;
    double behind;
    if (behindNode == LiquidColumn.KNOWN) {
      behind = leg.frontSide > 0 ? leg.knownFrom : leg.knownTo;
    } else if (nodes.isNumbered(behindNode)) {
      behind = state.nodePressure[behindNode];
    } else {
      return leg.capillary == 0.0 ? 1 : 0;
    }
    int aheadNode = leg.frontSide > 0 ? leg.to : leg.from;
    double ahead =
        aheadNode == LiquidColumn.KNOWN
            ? 0.0
            : nodes.isNumbered(aheadNode)
                ? state.nodePressure[aheadNode]
                : air.pressureWith(aheadNode - joints, 0.0, dt);
    double over = behind - (leg.frontSide > 0 ? leg.weight : -leg.weight) - ahead;
    if (over > leg.capillary) {
      return 1;
    }
    return over < 0.0 && plugVolume(leg) > 0.0 ? -1 : 0;
  }

  private static double plugVolume(LiquidColumn leg) {
    return leg.frontSide > 0 ? leg.channel.volumeA : leg.channel.volumeB;
  }

  private void store() {
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (!Double.isFinite(leg.flow)) {
        throw new NetworkBreakdown(
            state.time, leg.channel.shape.name, "flow", "a flow is not a number");
      }
      if (leg.frontSide < 0) {
        leg.channel.flowB = leg.flow;
      } else {
        leg.channel.flowA = leg.flow;
      }
      if (leg.front != null) {
        double at = leg.frontSide > 0 ? leg.channel.positionA() : leg.channel.positionB();
        double ahead = leg.frontSide > 0 ? leg.flow : -leg.flow;
        leg.front.speed = ahead / leg.channel.shape.areaAt(at);
      }
    }
  }

  /** Flow out of the cup in the last solve [m3/s]. */
  public double drawnFromCup() {
    double sum = 0.0;
    for (int end : state.ends[ChannelGraph.CUP]) {
      Channel c = state.channelOf(end);
      sum += NetworkState.isEndA(end) ? c.flowA : -(c.full ? c.flowA : c.flowB);
    }
    return sum;
  }

  /** Legs of the last solve, for push and work accounts. */
  public int legCount() {
    return legs.count();
  }

  public LiquidColumn leg(int i) {
    return legs.get(i);
  }
}
