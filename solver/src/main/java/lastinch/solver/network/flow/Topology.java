package lastinch.solver.network.flow;

import java.util.Arrays;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.result.PassageRecord.Role;

/**
 * What hangs together: joints fill and run dry, plugs begin, meet and fill their channels; see
 * {@link ColumnSeparation} for the reverse. Everything here happens between steps.
 */
public final class Topology {
  private final NetworkState state;
  private final AirPockets air;
  private final FallingMetal falls;
  private final FrontRecorder recorder;
  private boolean changed;

  /** By joint: when a front last came to it through a channel [s]. */
  private final double[] arrivedAt;

  public Topology(NetworkState state, AirPockets air, FallingMetal falls, FrontRecorder recorder) {
    this.state = state;
    this.air = air;
    this.falls = falls;
    this.recorder = recorder;
    arrivedAt = new double[state.wet.length];
    Arrays.fill(arrivedAt, Double.NEGATIVE_INFINITY);
  }

  /** Opens the inlet of a run whose checking options feed the first channel themselves. */
  public void openInlet() {
    makeWet(ChannelGraph.CUP);
    air.relabel();
  }

  /** Settles everything that happened in the step just made. */
  public void settle() {
    changed = false;
    for (int round = 0; round < 4 + state.channels.length; round++) {
      boolean again = false;
      for (Channel c : state.channels) {
        again |= closeIfMet(c);
      }
      again |= wetJoints();
      again |= restLanded();
      if (!again) {
        break;
      }
      changed = true;
    }
    if (changed) {
      air.relabel();
    }
  }

  private boolean closeIfMet(Channel c) {
    if (c.full || !c.gapClosed()) {
      return false;
    }
    boolean a = c.hasPlugA();
    boolean b = c.hasPlugB();
    double inertiaA = a ? c.shape.inertiaAt(c.positionA()) : 0.0;
    double inertiaB = b ? c.shape.inertiaFrom(c.positionB()) : 0.0;
    if (a && b) {
      recorder.meeting(c);
    }
    if (a && !b && c.jointB != ChannelGraph.CLOSED) {
      arrive(c.jointB, c, c.frontA);
    }
    if (b && !a && c.jointA != ChannelGraph.CLOSED) {
      arrive(c.jointA, c, c.frontB);
    }
    recorder.filled(c, a, b);
    falls.settleBetweenPlugs(c);
    c.close(a ? inertiaA : 0.0, b ? inertiaB : 0.0);
    changed = true;
    return true;
  }

  /** A front comes to a joint; one that came there in the same step meets it. */
  private void arrive(int joint, Channel c, FrontMarker front) {
    if (arrivedAt[joint] == state.time && !state.wet[joint]) {
      recorder.meetingAtEnd(c, front, state.arrived[joint]);
    }
    arrivedAt[joint] = state.time;
    state.arrive(joint, front);
  }

  /** Joints that metal has reached and cannot leave by falling, or not all of it, fill up. */
  private boolean wetJoints() {
    boolean any = false;
    for (int j = 0; j < state.wet.length; j++) {
      boolean passesOn = hasFallingOutlet(j) && !falls.overwhelms(j);
      if (state.wet[j] || !isReached(j) || passesOn) {
        continue;
      }
      makeWet(j);
      any = true;
    }
    return any;
  }

  private boolean isReached(int joint) {
    if (state.landedVolume[joint] > 0.0) {
      return true;
    }
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (c.full) {
        double out = NetworkState.isEndA(end) ? -c.flowA : c.flowA;
        boolean risesHere = !state.fallsAway(end) && out > 0.0;
        boolean poolToTheTop = state.fallsAway(end) && closedBelow(end);
        if (risesHere || poolToTheTop || joint == ChannelGraph.CUP) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether metal in a channel cannot leave at the end opposite to {@code end} by falling. */
  private boolean closedBelow(int end) {
    Channel c = state.channelOf(end);
    int other = NetworkState.isEndA(end) ? c.jointB : c.jointA;
    return other == ChannelGraph.CLOSED || state.wet[other] || c.isFrozen();
  }

  private boolean hasFallingOutlet(int joint) {
    for (int end : state.ends[joint]) {
      if (falls.outletArea(end) > 0.0) {
        return true;
      }
    }
    return false;
  }

  /** Metal fills a joint and starts into whatever opens there. */
  void makeWet(int joint) {
    state.wet[joint] = true;
    changed = true;
    double flow = 0.0;
    double area = 0.0;
    FrontMarker leading = state.arrived[joint];
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (hangs(c, end)) {
        flow += Math.max(0.0, NetworkState.isEndA(end) ? -flowAtA(c) : flowAtB(c));
      } else if (!isSupply(c, end)) {
        area += endArea(c, end);
      }
    }
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (!hangs(c, end)) {
        double share = isSupply(c, end) || area == 0.0 ? 0.0 : endArea(c, end) / area;
        begin(c, end, leading, flow * share);
      }
    }
    if (state.landedVolume[joint] > 0.0) {
      state.jointEnthalpy[joint] = state.landedHeat[joint] / state.landedVolume[joint];
    } else {
      state.jointEnthalpy[joint] = leading.enthalpy;
    }
  }

  private static boolean hangs(Channel c, int end) {
    return c.full || (NetworkState.isEndA(end) ? c.hasPlugA() : c.hasPlugB());
  }

  /** Whether metal comes down to this end. */
  private static boolean isSupply(Channel c, int end) {
    boolean downHere = NetworkState.isEndA(end) ? c.fallsTowardsA() : c.fallsTowardsB();
    return (downHere && c.stream.size() > 0) || c.shape.role == Role.SPRUE;
  }

  private static double flowAtA(Channel c) {
    return c.flowA;
  }

  private static double flowAtB(Channel c) {
    return c.full ? c.flowA : c.flowB;
  }

  private static double endArea(Channel c, int end) {
    return NetworkState.isEndA(end) ? c.shape.faceArea[0] : c.shape.faceArea[c.shape.cells];
  }

  private static void begin(Channel c, int end, FrontMarker leading, double flow) {
    FrontMarker front = NetworkState.isEndA(end) ? c.frontA : c.frontB;
    front.thaw();
    front.start();
    front.copyFrom(leading);
    if (c.shape.role == Role.GATE) {
      front.origin = c.index;
    }
    if (NetworkState.isEndA(end)) {
      c.volumeA = 0.0;
      c.flowA = flow;
    } else {
      c.volumeB = 0.0;
      c.flowB = -flow;
    }
  }

  /** Metal that landed at a joint which is full by now joins a plug that hangs there. */
  private boolean restLanded() {
    boolean any = false;
    for (int j = 1; j < state.wet.length; j++) {
      double volume = state.landedVolume[j];
      if (!state.wet[j] || volume <= 0.0) {
        continue;
      }
      double h = state.landedHeat[j] / volume;
      double speed = state.landedSpeed[j];
      double rest = volume;
      for (int turn = 0; turn < 3 && rest > 0.0; turn++) {
        for (int end : state.ends[j]) {
          Channel c = state.channelOf(end);
          if (rest > 0.0 && !c.full && hangs(c, end) && turnOf(c, end) == turn) {
            rest -= rest(c, end, rest, h, speed);
            any |= c.gapClosed();
          }
        }
      }
      state.landedVolume[j] = rest;
      state.landedHeat[j] = rest * h;
    }
    return any;
  }

  /** Metal goes on down first, then onto the pool it fell through, then anywhere. */
  private int turnOf(Channel c, int end) {
    if (state.fallsAway(end)) {
      return 0;
    }
    boolean above = NetworkState.isEndA(end) ? c.fallsTowardsA() : c.fallsTowardsB();
    return above ? 1 : 2;
  }

  /** Metal that joins a plug takes its own momentum along and is carried by the plug's. */
  private double rest(Channel c, int end, double volume, double h, double speed) {
    double taken = Math.min(volume, c.emptyVolume());
    double total = c.shape.totalVolume();
    if (NetworkState.isEndA(end)) {
      double from = c.positionA();
      double before = c.shape.inertiaAt(from);
      c.deposit(c.volumeA, c.volumeA + taken, state.melt.density, h);
      c.volumeA += taken;
      double to = c.positionA();
      c.flowA = carried(c.flowA, before, speed * (to - from), c.shape.inertiaAt(to));
    } else {
      double from = c.positionB();
      double before = c.shape.inertiaFrom(from);
      c.deposit(total - c.volumeB - taken, total - c.volumeB, state.melt.density, h);
      c.volumeB += taken;
      double to = c.positionB();
      c.flowB = carried(c.flowB, before, speed * (from - to), c.shape.inertiaFrom(to));
    }
    return taken;
  }

  /** Flow of a plug that has taken metal up, no more than both brought [m3/s]. */
  private static double carried(double flow, double before, double brought, double after) {
    double most = after > 0.0 ? (before * Math.abs(flow) + brought) / after : 0.0;
    return Math.signum(flow) * Math.min(Math.abs(flow), most);
  }
}
