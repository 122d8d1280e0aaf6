package lastinch.solver.network;

import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Friction;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.PassageRecord.Role;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Flows of all columns of metal for one step: each column is rigid and incompressible, its momentum
 * implicit, losses by Newton steps; joints that hold metal conserve volume. Fronts held by surface
 * tension stand exactly, found by an active set that tries standing first. The surface in the
 * sprue, stirred by falling metal, is never held.
 */
final class Hydraulics {
  private static final int NEWTON = 30;
  private static final int MODES = 12;

  /**
   * Least length of a column that has inertia [m]; keeps the first step of a dry channel finite.
   */
  private static final double SHORTEST = 1e-5;

  /** A pool may drain in this time at the fastest [s]; twice the longest step. */
  private static final double DRAIN = 10e-3;

  /** A fresh front drags the metal round it along [Pa s2/m2 over the root of the area]. */
  private static final double OPENING = 0.8;

  private final State state;
  private final Air air;
  private final OptionalDouble frictionFactor;
  private final boolean openingInertia;
  private final Leg[] legs;
  private int legCount;
  private final double[] oldA;
  private final double[] oldB;
  private final int[] row;
  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj unknown;
  private final LinearSolverDense<DMatrixRMaj> solver;
  private double dt;
  private int shallowHolds;

  Hydraulics(State state, Air air, Checking checking) {
    this.state = state;
    this.air = air;
    frictionFactor = checking.frictionFactor();
    openingInertia = frictionFactor.isEmpty();
    legs = new Leg[2 * state.channels.length];
    for (int i = 0; i < legs.length; i++) {
      legs[i] = new Leg();
    }
    oldA = new double[state.channels.length];
    oldB = new double[state.channels.length];
    int joints = state.wet.length;
    row = new int[joints];
    matrix = new DMatrixRMaj(joints, joints);
    right = new DMatrixRMaj(joints, 1);
    unknown = new DMatrixRMaj(joints, 1);
    solver = LinearSolverFactory_DDRM.chol(joints);
  }

  /** Remembers the flows that a step, solved once or more, starts from. */
  void keepOldFlows() {
    for (Channel c : state.channels) {
      oldA[c.index] = c.flowA;
      oldB[c.index] = c.flowB;
    }
  }

  /** Computes the flows of a step of length {@code step} [s] and stores them in the channels. */
  void solve(double step) {
    dt = step;
    gatherLegs();
    for (int mode = 0; mode < MODES; mode++) {
      newton();
      if (!changeModes(mode)) {
        break;
      }
    }
    if (holdShallowPools()) {
      newton();
    }
    store();
  }

  /** A pool gives no more than it holds over a short time, so that it never runs out in a step. */
  private boolean holdShallowPools() {
    boolean any = false;
    for (int i = 0; i < legCount; i++) {
      Leg leg = legs[i];
      if (leg.front == null || leg.front.motion >= 0) {
        continue;
      }
      double most = plugVolume(leg) / DRAIN;
      double drawn = leg.frontSide > 0 ? -leg.flow : leg.flow;
      if (drawn > most) {
        leg.drawsAtMost = true;
        leg.held = leg.frontSide > 0 ? -most : most;
        any = true;
        shallowHolds++;
      }
    }
    return any;
  }

  /** How often a shallow pool limited a flow. */
  int shallowHolds() {
    return shallowHolds;
  }

  private void gatherLegs() {
    legCount = 0;
    state.jointPressure[Graph.CUP] =
        state.cupIsHeld ? state.heldPressure : state.melt.density * Gravity.G * state.cup.level();
    for (Channel c : state.channels) {
      if (c.frozen) {
        c.flowA = 0.0;
        c.flowB = 0.0;
      } else if (c.full) {
        if (c.jointA == Graph.CLOSED || c.jointB == Graph.CLOSED) {
          c.flowA = 0.0;
        } else {
          addLeg(c, 0, null, oldA[c.index]);
        }
      } else {
        addPlug(c, true);
        addPlug(c, false);
      }
    }
  }

  private void addPlug(Channel c, boolean plugA) {
    Front front = plugA ? c.frontA : c.frontB;
    int joint = plugA ? c.jointA : c.jointB;
    boolean blocked = joint == Graph.CLOSED || front.isStopped();
    if (!front.isPresent() || blocked) {
      if (plugA) {
        c.flowA = 0.0;
      } else {
        c.flowB = 0.0;
      }
      return;
    }
    addLeg(c, plugA ? 1 : -1, front, plugA ? oldA[c.index] : oldB[c.index]);
  }

  private void addLeg(Channel c, int frontSide, Front front, double flow) {
    Leg leg = legs[legCount++];
    leg.channel = c;
    leg.frontSide = frontSide;
    leg.front = front;
    leg.oldFlow = flow;
    leg.flow = flow;
    leg.knownFrom = 0.0;
    leg.knownTo = 0.0;
    leg.openArea = 0.0;
    leg.openSide = 0;
    leg.capillary = 0.0;
    leg.drawsAtMost = false;
    leg.from = frontSide < 0 ? Leg.KNOWN : joinedAt(leg, c.jointA, -1);
    leg.to = frontSide > 0 ? Leg.KNOWN : joinedAt(leg, c.jointB, 1);
    measure(leg);
  }

  /** A wet joint's number, or a known pressure where the channel opens into air. */
  private int joinedAt(Leg leg, int joint, int side) {
    if (state.wet[joint]) {
      if (joint == Graph.CUP) {
        if (side < 0) {
          leg.knownFrom = state.jointPressure[joint];
        } else {
          leg.knownTo = state.jointPressure[joint];
        }
        return Leg.KNOWN;
      }
      return joint;
    }
    double pressure = air.pressureAtJoint(joint);
    Channel c = leg.channel;
    leg.openSide = side;
    if (side < 0) {
      leg.knownFrom = pressure;
      leg.openArea = c.shape.faceArea[0];
    } else {
      leg.knownTo = pressure;
      leg.openArea = c.shape.faceArea[c.shape.cells];
    }
    return Leg.KNOWN;
  }

  /** Sets inertia, losses, weight and front of a leg from the channel's state. */
  private void measure(Leg leg) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    double low = leg.frontSide < 0 ? c.positionB() : 0.0;
    double high = leg.frontSide > 0 ? c.positionA() : shape.length;
    if (leg.frontSide > 0 && leg.oldFlow > 0.0) {
      high = Math.min(shape.length, high + 0.5 * dt * leg.oldFlow / shape.areaAt(high));
    } else if (leg.frontSide < 0 && leg.oldFlow < 0.0) {
      low = Math.max(0.0, low + 0.5 * dt * leg.oldFlow / shape.areaAt(low));
    }
    double inertia = shape.inertiaAt(high) - shape.inertiaAt(low);
    leg.weight = density * Gravity.G * (shape.heightAt(high) - shape.heightAt(low));
    leg.inertia = density * Math.max(inertia, SHORTEST / shape.areaAt(high));
    if (leg.frontSide != 0) {
      double at = leg.frontSide > 0 ? high : low;
      double area = shape.areaAt(at);
      leg.openArea = area;
      leg.openSide = leg.frontSide;
      leg.capillary =
          state.melt.capillaryStrength == 0.0 || shape.role == Role.SPRUE
              ? 0.0
              : Capillary.push(
                  state.melt.capillaryStrength,
                  shape.carriedTo(shape.thickness, at),
                  shape.carriedTo(shape.width, at));
      if (openingInertia) {
        leg.inertia += OPENING * density / Math.sqrt(area);
      }
    }
    resist(leg, low, high);
  }

  private void resist(Leg leg, double low, double high) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    double headA = 0.5 * density / (shape.faceArea[0] * shape.faceArea[0]);
    double areaB = shape.faceArea[shape.cells];
    double headB = 0.5 * density / (areaB * areaB);
    boolean joinsA = leg.frontSide >= 0 && c.jointA != Graph.CLOSED && state.wet[c.jointA];
    boolean joinsB = leg.frontSide <= 0 && c.jointB != Graph.CLOSED && state.wet[c.jointB];
    leg.quadraticForward =
        (joinsA ? c.losses.intoA() * headA : 0.0) + (joinsB ? c.losses.outOfB() * headB : 0.0);
    leg.quadraticBackward =
        (joinsA ? c.losses.outOfA() * headA : 0.0) + (joinsB ? c.losses.intoB() * headB : 0.0);
    leg.linear = 0.0;
    int first = shape.cellAt(low);
    int last = shape.cellAt(high);
    for (int i = first; i <= last; i++) {
      double stretch = Math.min(high, (i + 1) * shape.dx) - Math.max(low, i * shape.dx);
      if (stretch > 0.0) {
        wallFriction(leg, i, stretch);
      }
    }
  }

  private void wallFriction(Leg leg, int i, double stretch) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    Melt melt = state.melt;
    double open = c.openShare[i];
    double area = 0.5 * (shape.faceArea[i] + shape.faceArea[i + 1]) * open;
    double diameter = shape.hydraulicDiameter[i] * open;
    if (frictionFactor.isPresent()) {
      double quadratic =
          frictionFactor.getAsDouble() * melt.density * stretch / (2.0 * diameter * area * area);
      leg.quadraticForward += quadratic;
      leg.quadraticBackward += quadratic;
      return;
    }
    double viscosity = melt.viscosity * c.thickening[i];
    double speed = Math.abs(leg.oldFlow) / area;
    double overSpeed =
        Friction.gradientOverSpeed(
            melt.density, viscosity, speed, diameter, shape.laminarProduct[i]);
    double reynolds = melt.density * speed * diameter / viscosity;
    if (reynolds > Friction.LAMINAR_END) {
      double quadratic = overSpeed / speed * stretch / (area * area);
      leg.quadraticForward += quadratic;
      leg.quadraticBackward += quadratic;
    } else {
      leg.linear += overSpeed * stretch / area;
    }
  }

  private boolean stands(Leg leg) {
    return leg.front != null && leg.front.motion == 0;
  }

  private void newton() {
    for (int i = 0; i < legCount; i++) {
      Leg leg = legs[i];
      leg.flow = stands(leg) ? 0.0 : leg.oldFlow;
    }
    for (int k = 0; k < NEWTON; k++) {
      for (int i = 0; i < legCount; i++) {
        Leg leg = legs[i];
        if (!stands(leg)) {
          setFrontPressure(leg);
          if (leg.drawsAtMost) {
            leg.alpha = leg.held;
            leg.beta = 0.0;
          } else if (isForced(leg)) {
            leg.alpha = leg.channel.jointA == Graph.CUP ? state.forcedFlow : -state.forcedFlow;
            leg.beta = 0.0;
          } else {
            leg.linearise(dt, state.melt.density);
            addAirStiffness(leg);
          }
        }
      }
      solveJoints();
      double change = 0.0;
      double scale = 1e-12;
      for (int i = 0; i < legCount; i++) {
        Leg leg = legs[i];
        if (stands(leg)) {
          continue;
        }
        double q = leg.alpha;
        q += leg.from == Leg.KNOWN ? 0.0 : leg.beta * state.jointPressure[leg.from];
        q -= leg.to == Leg.KNOWN ? 0.0 : leg.beta * state.jointPressure[leg.to];
        change = Math.max(change, Math.abs(q - leg.flow));
        scale = Math.max(scale, Math.abs(q));
        leg.flow = q;
      }
      if (change < 1e-10 * scale + 1e-14) {
        return;
      }
    }
  }

  private boolean isForced(Leg leg) {
    return state.forcedFlow > 0.0
        && (leg.channel.jointA == Graph.CUP || leg.channel.jointB == Graph.CUP);
  }

  private void setFrontPressure(Leg leg) {
    if (leg.front == null) {
      return;
    }
    double inflow = leg.frontSide > 0 ? leg.flow : -leg.flow;
    double pressure = air.pressureAhead(leg.channel, inflow, dt);
    if (leg.front.motion > 0) {
      pressure += leg.capillary;
    }
    if (leg.frontSide > 0) {
      leg.knownTo = pressure;
    } else {
      leg.knownFrom = pressure;
    }
  }

  /** Air ahead grows stiffer as it is pressed together. */
  private void addAirStiffness(Leg leg) {
    if (leg.front == null) {
      return;
    }
    double stiffness = air.stiffnessAhead(leg.channel);
    if (stiffness > 0.0) {
      double slope = 1.0 / leg.beta;
      double residual = (leg.flow - leg.alpha) * slope;
      leg.beta = 1.0 / (slope + stiffness);
      leg.alpha = leg.flow - residual * leg.beta;
    }
  }

  private void solveJoints() {
    int n = 0;
    for (int j = 0; j < row.length; j++) {
      row[j] = -1;
    }
    for (int i = 0; i < legCount; i++) {
      Leg leg = legs[i];
      if (stands(leg)) {
        continue;
      }
      if (leg.from != Leg.KNOWN && row[leg.from] < 0) {
        row[leg.from] = n++;
      }
      if (leg.to != Leg.KNOWN && row[leg.to] < 0) {
        row[leg.to] = n++;
      }
    }
    if (n == 0) {
      return;
    }
    matrix.reshape(n, n);
    right.reshape(n, 1);
    unknown.reshape(n, 1);
    matrix.zero();
    right.zero();
    double largest = 0.0;
    for (int i = 0; i < legCount; i++) {
      if (!stands(legs[i])) {
        assemble(legs[i]);
        largest = Math.max(largest, legs[i].beta);
      }
    }
    for (int r = 0; r < n; r++) {
      matrix.add(r, r, 1e-13 * largest);
    }
    if (!solver.setA(matrix)) {
      throw new Breakdown(state.time, "joints", "pressure", "the pressure system has no solution");
    }
    solver.solve(right, unknown);
    for (int j = 0; j < row.length; j++) {
      if (row[j] >= 0) {
        state.jointPressure[j] = unknown.get(row[j], 0);
      }
    }
  }

  private void assemble(Leg leg) {
    int a = leg.from == Leg.KNOWN ? -1 : row[leg.from];
    int b = leg.to == Leg.KNOWN ? -1 : row[leg.to];
    if (a >= 0) {
      matrix.add(a, a, leg.beta);
      right.add(a, 0, -leg.alpha);
    }
    if (b >= 0) {
      matrix.add(b, b, leg.beta);
      right.add(b, 0, leg.alpha);
    }
    if (a >= 0 && b >= 0) {
      matrix.add(a, b, -leg.beta);
      matrix.add(b, a, -leg.beta);
    }
  }

  /** Lets fronts stand or go by the pressures found; returns whether any changed. */
  private boolean changeModes(int round) {
    boolean changed = false;
    for (int i = 0; i < legCount; i++) {
      Leg leg = legs[i];
      if (leg.front == null) {
        continue;
      }
      int motion = leg.front.motion;
      double ahead = leg.frontSide > 0 ? leg.flow : -leg.flow;
      if (motion != 0) {
        if (motion * ahead < 0.0) {
          boolean usedUp = motion > 0 && plugVolume(leg) <= 0.0;
          leg.front.motion = usedUp || (leg.capillary > 0.0 && round < MODES / 2) ? 0 : -motion;
          changed = true;
        }
      } else {
        int next = pushedTo(leg);
        if (next != 0) {
          leg.front.motion = next;
          changed = true;
        }
      }
    }
    return changed;
  }

  /** Where the pressure behind a standing front sends it. */
  private int pushedTo(Leg leg) {
    int joint = leg.frontSide > 0 ? leg.from : leg.to;
    double behind;
    if (joint == Leg.KNOWN) {
      behind = leg.frontSide > 0 ? leg.knownFrom : leg.knownTo;
    } else if (row[joint] >= 0) {
      behind = state.jointPressure[joint];
    } else {
      return leg.capillary == 0.0 ? 1 : 0;
    }
    double atFront = behind - (leg.frontSide > 0 ? leg.weight : -leg.weight);
    double over = atFront - air.pressureAhead(leg.channel, 0.0, dt);
    if (over > leg.capillary) {
      return 1;
    }
    return over < 0.0 && plugVolume(leg) > 0.0 ? -1 : 0;
  }

  private static double plugVolume(Leg leg) {
    return leg.frontSide > 0 ? leg.channel.volumeA : leg.channel.volumeB;
  }

  private void store() {
    for (int i = 0; i < legCount; i++) {
      Leg leg = legs[i];
      if (!Double.isFinite(leg.flow)) {
        throw new Breakdown(state.time, leg.channel.shape.name, "flow", "a flow is not a number");
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
  double drawnFromCup() {
    double sum = 0.0;
    for (int end : state.ends[Graph.CUP]) {
      Channel c = state.channelOf(end);
      sum += State.isEndA(end) ? c.flowA : -(c.full ? c.flowA : c.flowB);
    }
    return sum;
  }

  /** Legs of the last solve, for push and work accounts. */
  int legCount() {
    return legCount;
  }

  Leg leg(int i) {
    return legs[i];
  }
}
