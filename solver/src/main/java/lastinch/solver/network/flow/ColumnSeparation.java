package lastinch.solver.network.flow;

import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;

/**
 * Columns that lose hold of an end: metal draws back from an end that hangs in air, falling metal
 * pulls and lets air in at its top.
 */
public final class ColumnSeparation {
  /**
   * Pull below the air's pressure that lets air in [Pa]; chosen, 0.01 mm of bronze: halved no stop
   * moves.
   */
  private static final double PULL = 1.0;

  /**
   * A cup that lasts no longer than this at its present flow is empty [s]; numerical, a thousandth
   * of a short step.
   */
  private static final double MOMENT = 1e-6;

  private final NetworkState state;
  private final AirPockets air;

  public ColumnSeparation(NetworkState state, AirPockets air) {
    this.state = state;
    this.air = air;
  }

  /**
   * Full channels whose metal draws back from an end in air let go of it, plugs that reach such an
   * end fill theirs; flows are known. Returns whether any did.
   */
  public boolean letGoOfDryEnds(ColumnFlowSolver hydraulics) {
    boolean any = false;
    for (Channel c : state.channels) {
      if (reachesItsDryEnd(c)) {
        double whole = c.shape.inertiaTo[c.shape.cells];
        if (c.hasPlugB()) {
          hydraulics.becameFull(c);
        }
        c.close(c.hasPlugA() ? whole : 0.0, c.hasPlugB() ? whole : 0.0);
        any = true;
      } else if (startRecedingFromDryJoint(c)) {
        any = true;
        if (c.hasPlugB()) {
          hydraulics.becamePlugB(c);
        }
      }
    }
    if (any) {
      air.relabel();
      air.beginStep();
    }
    return any;
  }

  /** A channel that was full up to an end in air and whose metal pushes on again. */
  private boolean reachesItsDryEnd(Channel c) {
    if (c.full || c.stream.size() > 0 || c.hasPlugA() == c.hasPlugB() || !c.gapClosed()) {
      return false;
    }
    int open = c.hasPlugA() ? c.jointB : c.jointA;
    double ahead = c.hasPlugA() ? c.flowA : -c.flowB;
    return open != ChannelGraph.CLOSED && !state.wet[open] && ahead > 0.0;
  }

  /** A full channel whose end hangs in air lets go when its metal draws back from that end. */
  private boolean startRecedingFromDryJoint(Channel c) {
    if (!c.full) {
      return false;
    }
    boolean dryB = c.jointB != ChannelGraph.CLOSED && !state.wet[c.jointB];
    boolean dryA = c.jointA != ChannelGraph.CLOSED && !state.wet[c.jointA];
    if (dryB && c.flowA < 0.0) {
      c.full = false;
      c.frontA.start();
      c.frontA.motion = -1;
      c.frontA.takeFrom(c, c.shape.cells - 1);
      return true;
    }
    if (dryA && c.flowA > 0.0) {
      becomePlugB(c);
      return true;
    }
    return false;
  }

  private static void becomePlugB(Channel c) {
    c.full = false;
    c.volumeB = c.volumeA;
    c.volumeA = 0.0;
    c.flowB = c.flowA;
    c.flowA = 0.0;
    c.frontA.state = FrontMarker.State.ABSENT;
    c.frontB.takeFrozen(c.frontA);
    c.frontB.start();
    c.frontB.motion = -1;
    c.frontB.takeFrom(c, 0);
  }

  /**
   * Lets air into the joint whose falling column pulls hardest below the pressure of the air, or
   * into a cup that has run empty; returns whether a joint ran dry. Others that pull may no longer
   * do so then. The channels hold the flows that the step [s] started from. What a fresh front
   * drags round it does not pull at the joint.
   */
  public boolean breakPulledColumn(ColumnFlowSolver hydraulics) {
    boolean tight = air.isOn() && !air.getsIn();
    int hardest = ChannelGraph.CLOSED;
    double most = -PULL;
    for (int i = 0; i < hydraulics.legCount(); i++) {
      LiquidColumn leg = hydraulics.leg(i);
      Channel c = leg.channel;
      boolean fromA = leg.frontSide >= 0 && c.fallsTowardsB() && leg.flow > 0.0;
      boolean fromB = leg.frontSide <= 0 && c.fallsTowardsA() && leg.flow < 0.0;
      int joint = fromA ? c.jointA : fromB ? c.jointB : ChannelGraph.CLOSED;
      if (joint == ChannelGraph.CLOSED
          || !state.wet[joint]
          || (joint == ChannelGraph.CUP && state.cupIsHeld)) {
        continue;
      }
      if (joint != ChannelGraph.CUP && (tight || drawnOnTheLevel(hydraulics, joint))) {
        continue;
      }
      double area = fromA ? c.shape.faceArea[0] : c.shape.faceArea[c.shape.cells];
      double loss = fromA ? c.losses.intoA() : c.losses.intoB();
      double speed = leg.flow / area;
      double dragged = leg.dragged * (Math.abs(leg.flow) - Math.abs(leg.oldFlow)) / leg.span;
      double inside =
          state.nodePressure[joint]
              - 0.5 * state.melt.density * (1.0 + loss) * speed * speed
              - Math.min(0.0, dragged);
      boolean empty =
          joint == ChannelGraph.CUP && state.cup.volume() <= Math.abs(leg.flow) * MOMENT;
      double pull = empty ? Double.NEGATIVE_INFINITY : inside;
      if (pull < most) {
        most = pull;
        hardest = joint;
      }
    }
    if (hardest == ChannelGraph.CLOSED) {
      return false;
    }
    hydraulics.restoreOldFlows();
    makeDry(hardest);
    air.relabel();
    return true;
  }

  /** Whether a column that does not fall draws on a joint; it would be left hanging in air. */
  private boolean drawnOnTheLevel(ColumnFlowSolver hydraulics, int joint) {
    for (int i = 0; i < hydraulics.legCount(); i++) {
      LiquidColumn leg = hydraulics.leg(i);
      Channel c = leg.channel;
      boolean atA = leg.frontSide >= 0 && c.jointA == joint && leg.flow > 0.0;
      boolean atB = leg.frontSide <= 0 && c.jointB == joint && leg.flow < 0.0;
      if ((atA && !c.fallsTowardsB()) || (atB && !c.fallsTowardsA())) {
        return true;
      }
    }
    return false;
  }

  private void makeDry(int joint) {
    state.wet[joint] = false;
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (!state.fallsAway(end)) {
        continue;
      }
      if (c.full) {
        if (NetworkState.isEndA(end)) {
          becomePlugB(c);
        } else {
          c.full = false;
          c.frontA.start();
          c.frontA.motion = -1;
          c.frontA.takeFrom(c, c.shape.cells - 1);
        }
      } else {
        fallApart(c, NetworkState.isEndA(end));
      }
    }
  }

  /** A hanging plug whose top lets go becomes falling metal. */
  private void fallApart(Channel c, boolean atA) {
    FrontMarker front = atA ? c.frontA : c.frontB;
    if (!front.isPresent()) {
      return;
    }
    double tip = atA ? c.positionA() : c.positionB();
    double total = c.shape.totalVolume();
    double low = atA ? 0.0 : total - c.volumeB;
    double high = atA ? c.volumeA : total;
    int n = c.shape.cells;
    int tipCell = c.shape.cellAt(tip);
    c.stream.first.copyFrom(front);
    c.stream.source = front.origin;
    c.stream.firstInFlight = true;
    for (int k = 0; k < n; k++) {
      int i = atA ? tipCell - k : tipCell + k;
      if (i < 0 || i >= n) {
        break;
      }
      double part = Math.min(high, c.shape.volumeTo[i + 1]) - Math.max(low, c.shape.volumeTo[i]);
      if (part > 0.0 && c.wet[i] > 0.0) {
        double middle = (i + 0.5) * c.shape.dx;
        double fallen = atA ? middle : c.shape.length - middle;
        double speed = Math.abs(atA ? c.flowA : c.flowB) / c.shape.areaAt(middle);
        loosen(c, i, part, speed, fallen);
      }
    }
    front.state = FrontMarker.State.ABSENT;
    front.thaw();
    if (atA) {
      c.volumeA = 0.0;
      c.flowA = 0.0;
    } else {
      c.volumeB = 0.0;
      c.flowB = 0.0;
    }
  }

  /** The share of a cell that belongs to a plug falls; what another plug has in it stays. */
  private void loosen(Channel c, int i, double part, double speed, double fallen) {
    double h = c.enthalpy(i, state.melt.density);
    boolean whole = part > 0.999999 * c.wet[i];
    double volume = whole ? c.wet[i] : part;
    double half = 0.5 * c.shape.dx * part / c.shape.volume[i];
    c.stream.add(volume, h, speed, fallen - half, fallen + half);
    double kept = whole ? 0.0 : 1.0 - part / c.wet[i];
    c.wet[i] = whole ? 0.0 : c.wet[i] - part;
    for (Lane lane : c.lanes) {
      lane.heat[i] *= kept;
      lane.skin[i] *= kept;
      if (whole) {
        lane.slurry[i] = 0.0;
        lane.thickening[i] = 1.0;
        lane.openShare[i] = 1.0;
      }
    }
    if (whole) {
      c.rimEase[i] = 1.0;
    }
  }
}
