package lastinch.solver.network;

import lastinch.solver.result.PassageRecord.Role;

/**
 * What hangs together: joints fill and run dry, plugs begin, meet, fill their channels and break
 * off. Everything here happens between steps.
 */
final class Topology {
  /** Pull below the air's pressure that lets air in [Pa]. */
  private static final double PULL = 1.0;

  private final State state;
  private final Air air;
  private final Recorder recorder;
  private boolean changed;

  Topology(State state, Air air, Recorder recorder) {
    this.state = state;
    this.air = air;
    this.recorder = recorder;
  }

  /** Opens the inlet of a run whose checking options feed the first channel themselves. */
  void openInlet() {
    makeWet(Graph.CUP);
    air.relabel();
  }

  /** Settles everything that happened in the step just made. */
  void settle() {
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
    if (a && !b && c.jointB != Graph.CLOSED) {
      state.arrive(c.jointB, c.frontA);
    }
    if (b && !a && c.jointA != Graph.CLOSED) {
      state.arrive(c.jointA, c.frontB);
    }
    recorder.filled(c, a, b);
    c.close(a ? inertiaA : 0.0, b ? inertiaB : 0.0);
    changed = true;
    return true;
  }

  /** Full channels whose metal draws back from an end in air let go of it; flows are known. */
  void letGoOfDryEnds() {
    boolean any = false;
    for (Channel c : state.channels) {
      any |= startRecedingFromDryJoint(c);
    }
    if (any) {
      air.relabel();
      air.beginStep();
    }
  }

  /** A full channel whose end hangs in air lets go when its metal draws back from that end. */
  private boolean startRecedingFromDryJoint(Channel c) {
    if (!c.full) {
      return false;
    }
    boolean dryB = c.jointB != Graph.CLOSED && !state.wet[c.jointB];
    boolean dryA = c.jointA != Graph.CLOSED && !state.wet[c.jointA];
    if (dryB && c.flowA < 0.0) {
      c.full = false;
      c.frontA.start();
      c.frontA.motion = -1;
      c.frontA.enthalpy = c.mobile[c.shape.cells - 1];
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
    c.frontA.state = Front.State.ABSENT;
    c.frontB.start();
    c.frontB.motion = -1;
    c.frontB.enthalpy = c.mobile[0];
  }

  /** Joints that metal has reached and cannot leave by falling fill up. */
  private boolean wetJoints() {
    boolean any = false;
    for (int j = 0; j < state.wet.length; j++) {
      if (state.wet[j] || !isReached(j) || hasFallingOutlet(j)) {
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
        double out = State.isEndA(end) ? -c.flowA : c.flowA;
        boolean risesHere = !state.fallsAway(end) && out > 0.0;
        boolean poolToTheTop = state.fallsAway(end) && closedBelow(end);
        if (risesHere || poolToTheTop || joint == Graph.CUP) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether metal in a channel cannot leave at the end opposite to {@code end} by falling. */
  private boolean closedBelow(int end) {
    Channel c = state.channelOf(end);
    int other = State.isEndA(end) ? c.jointB : c.jointA;
    return other == Graph.CLOSED || state.wet[other] || c.frozen;
  }

  private boolean hasFallingOutlet(int joint) {
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (!state.fallsAway(end)) {
        continue;
      }
      boolean hanging = c.full || (State.isEndA(end) ? c.hasPlugA() : c.hasPlugB());
      if (!hanging) {
        return true;
      }
    }
    return false;
  }

  private void makeWet(int joint) {
    state.wet[joint] = true;
    changed = true;
    double flow = 0.0;
    double area = 0.0;
    Front leading = state.arrived[joint];
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (hangs(c, end)) {
        flow += Math.max(0.0, State.isEndA(end) ? -flowAtA(c) : flowAtB(c));
      } else if (!state.fallsAway(end) && !isSupply(c, end)) {
        area += endArea(c, end);
      }
    }
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (!hangs(c, end)) {
        boolean supply = isSupply(c, end);
        double share = supply || state.fallsAway(end) || area == 0.0 ? 0.0 : endArea(c, end) / area;
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
    return c.full || (State.isEndA(end) ? c.hasPlugA() : c.hasPlugB());
  }

  /** Whether metal comes down to this end. */
  private static boolean isSupply(Channel c, int end) {
    boolean downHere = State.isEndA(end) ? c.fallsTowardsA() : c.fallsTowardsB();
    return (downHere && c.stream.size() > 0) || c.shape.role == Role.SPRUE;
  }

  private static double flowAtA(Channel c) {
    return c.flowA;
  }

  private static double flowAtB(Channel c) {
    return c.full ? c.flowA : c.flowB;
  }

  private static double endArea(Channel c, int end) {
    return State.isEndA(end) ? c.shape.faceArea[0] : c.shape.faceArea[c.shape.cells];
  }

  private static void begin(Channel c, int end, Front leading, double flow) {
    Front front = State.isEndA(end) ? c.frontA : c.frontB;
    front.start();
    front.copyFrom(leading);
    if (c.shape.role == Role.GATE) {
      front.origin = c.index;
    }
    if (State.isEndA(end)) {
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
      double rest = volume;
      for (int pass = 0; pass < 2 && rest > 0.0; pass++) {
        for (int end : state.ends[j]) {
          Channel c = state.channelOf(end);
          boolean down = State.isEndA(end) ? c.fallsTowardsA() : c.fallsTowardsB();
          if (rest > 0.0 && !c.full && hangs(c, end) && (down || pass == 1)) {
            rest -= rest(c, end, rest, h);
            any |= c.gapClosed();
          }
        }
      }
      state.landedVolume[j] = rest;
      state.landedHeat[j] = rest * h;
    }
    return any;
  }

  private double rest(Channel c, int end, double volume, double h) {
    double taken = Math.min(volume, c.emptyVolume());
    double total = c.shape.totalVolume();
    if (State.isEndA(end)) {
      c.deposit(c.volumeA, c.volumeA + taken, state.melt.density, h);
      c.volumeA += taken;
    } else {
      c.deposit(total - c.volumeB - taken, total - c.volumeB, state.melt.density, h);
      c.volumeB += taken;
    }
    return taken;
  }

  /**
   * Lets air into joints whose falling columns pull below the pressure of the air; returns whether
   * any joint ran dry.
   */
  boolean breakPulledColumns(Hydraulics hydraulics) {
    if (air.isOn() && !air.getsIn()) {
      return false;
    }
    boolean any = false;
    for (int i = 0; i < hydraulics.legCount(); i++) {
      Leg leg = hydraulics.leg(i);
      Channel c = leg.channel;
      boolean fromA = leg.frontSide >= 0 && c.fallsTowardsB() && leg.flow > 0.0;
      boolean fromB = leg.frontSide <= 0 && c.fallsTowardsA() && leg.flow < 0.0;
      int joint = fromA ? c.jointA : fromB ? c.jointB : Graph.CLOSED;
      if (joint == Graph.CLOSED || !state.wet[joint] || (joint == Graph.CUP && state.cupIsHeld)) {
        continue;
      }
      double area = fromA ? c.shape.faceArea[0] : c.shape.faceArea[c.shape.cells];
      double loss = fromA ? c.losses.intoA() : c.losses.intoB();
      double speed = leg.flow / area;
      double inside =
          state.nodePressure[joint] - 0.5 * state.melt.density * (1.0 + loss) * speed * speed;
      if (inside < -PULL) {
        makeDry(joint);
        any = true;
      }
    }
    if (any) {
      air.relabel();
    }
    return any;
  }

  private void makeDry(int joint) {
    state.wet[joint] = false;
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      if (!state.fallsAway(end)) {
        continue;
      }
      if (c.full) {
        if (State.isEndA(end)) {
          becomePlugB(c);
        } else {
          c.full = false;
          c.frontA.start();
          c.frontA.motion = -1;
          c.frontA.enthalpy = c.mobile[c.shape.cells - 1];
        }
      } else {
        fallApart(c, State.isEndA(end));
      }
    }
  }

  /** A hanging plug whose top lets go becomes falling metal. */
  private void fallApart(Channel c, boolean atA) {
    Front front = atA ? c.frontA : c.frontB;
    if (!front.isPresent()) {
      return;
    }
    double tip = atA ? c.positionA() : c.positionB();
    int n = c.shape.cells;
    int tipCell = c.shape.cellAt(tip);
    c.stream.first.copyFrom(front);
    c.stream.firstInFlight = true;
    for (int k = 0; k < n; k++) {
      int i = atA ? tipCell - k : tipCell + k;
      if (i < 0 || i >= n) {
        break;
      }
      if (c.wet[i] > 0.0) {
        double middle = (i + 0.5) * c.shape.dx;
        double fallen = atA ? middle : c.shape.length - middle;
        double h = c.heat[i] / (state.melt.density * c.wet[i]);
        double speed = Math.abs(atA ? c.flowA : c.flowB) / c.shape.areaAt(middle);
        c.stream.add(c.wet[i], h, speed, fallen);
        c.wet[i] = 0.0;
        c.heat[i] = 0.0;
        c.skin[i] = 0.0;
        c.slurry[i] = 0.0;
      }
    }
    front.state = Front.State.ABSENT;
    if (atA) {
      c.volumeA = 0.0;
      c.flowA = 0.0;
    } else {
      c.volumeB = 0.0;
      c.flowB = 0.0;
    }
  }
}
