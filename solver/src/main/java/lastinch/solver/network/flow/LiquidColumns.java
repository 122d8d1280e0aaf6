package lastinch.solver.network.flow;

import java.util.Arrays;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.PassageRecord.Role;

/** The moving columns of metal of a step with their inertia, weight and losses. */
final class LiquidColumns {
  /**
   * Least length of a column that has inertia [m]; keeps the first step of a dry channel finite;
   * numerical: halved no stop moves.
   */
  private static final double SHORTEST = 1e-5;

  /**
   * A pool may drain in this time at the fastest [s]; chosen, twice the longest step. Halved or
   * doubled, one plan of ten, whose head only just enters, stops 2 mm earlier, the others stay.
   */
  static final double DRAIN = 10e-3;

  /**
   * Least share of a step after which its mean flows are reached [-]: the midpoint rule, second
   * order.
   */
  private static final double HALF = 0.5;

  /**
   * Flows that fit each other to this share of the largest leave nothing over [-]; numerical:
   * halved no stop moves.
   */
  private static final double BALANCED = 1e-9;

  /**
   * A fresh front drags metal round it along: this times density over the root of its area is added
   * to the inertia [-]; our own figure, no source. Halved, metal comes 1 to 7 mm less far.
   */
  private static final double OPENING = 0.8;

  private final NetworkState state;
  private final AirPockets air;
  private final OptionalDouble frictionFactor;
  private final boolean openingInertia;

  private final LiquidColumn[] legs;
  private final double[] surplus;
  private final double[] oldA;
  private final double[] oldB;
  private int legCount;
  private double dt;

  LiquidColumns(NetworkState state, AirPockets air, Checking checking) {
    this.state = state;
    this.air = air;
    frictionFactor = checking.frictionFactor();
    openingInertia = frictionFactor.isEmpty();
    legs = new LiquidColumn[2 * state.channels.length];
    for (int i = 0; i < legs.length; i++) {
      legs[i] = new LiquidColumn();
    }
    surplus = new double[state.wet.length];
    oldA = new double[state.channels.length];
    oldB = new double[state.channels.length];
  }

  int count() {
    return legCount;
  }

  LiquidColumn get(int i) {
    return legs[i];
  }

  /** Remembers the flows that a step, solved once or more, starts from. */
  void keepOldFlows() {
    for (Channel c : state.channels) {
      oldA[c.index] = c.flowA;
      oldB[c.index] = c.flowB;
    }
  }

  /** Gives the channels back the flows that the step started from. */
  void restoreOldFlows() {
    for (Channel c : state.channels) {
      c.flowA = oldA[c.index];
      c.flowB = oldB[c.index];
    }
  }

  /** A full channel has become plug B alone: the flow it started the step with is the plug's. */
  void becamePlugB(Channel c) {
    oldB[c.index] = oldA[c.index];
    oldA[c.index] = 0.0;
  }

  /** Plug B alone has filled its channel: the flow it started the step with is the channel's. */
  void becameFull(Channel c) {
    oldA[c.index] = oldB[c.index];
    oldB[c.index] = 0.0;
  }

  /** Gathers all columns that may move in a step [s]. */
  void gather(double step) {
    dt = step;
    legCount = 0;
    state.nodePressure[ChannelGraph.CUP] =
        state.cupIsHeld ? state.heldPressure : state.melt.density * Gravity.G * state.cup.level();
    for (Channel c : state.channels) {
      if (c.full) {
        if (c.isFrozen() || c.jointA == ChannelGraph.CLOSED || c.jointB == ChannelGraph.CLOSED) {
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

  /**
   * Share of a step after which its mean flows are reached [-]: half of it, more where losses stop
   * a column within a step, all of it where flows do not fit each other after an event.
   */
  double shareOfStep() {
    double share = HALF;
    for (int i = 0; i < legCount; i++) {
      share = Math.max(share, shareFor(legs[i], legs[i].oldFlow));
    }
    return isBalanced() ? share : 1.0;
  }

  /** Share of a step from which a column's losses cannot turn it round [-]. */
  private double shareFor(LiquidColumn leg, double flow) {
    double stiffness = leg.stiffness(flow, dt);
    return stiffness > 2.0 ? 1.0 - 1.0 / stiffness : HALF;
  }

  /** Whether the old flows leave nothing over at joints that hold metal. */
  private boolean isBalanced() {
    Arrays.fill(surplus, 0.0);
    double largest = 0.0;
    for (int i = 0; i < legCount; i++) {
      LiquidColumn leg = legs[i];
      largest = Math.max(largest, Math.abs(leg.oldFlow));
      if (leg.from != LiquidColumn.KNOWN && leg.from < surplus.length) {
        surplus[leg.from] -= leg.oldFlow;
      }
      if (leg.to != LiquidColumn.KNOWN && leg.to < surplus.length) {
        surplus[leg.to] += leg.oldFlow;
      }
    }
    for (double over : surplus) {
      if (Math.abs(over) > BALANCED * largest) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether all flows found as the mean of a step may carry on to its end: none is given, stops or
   * turns round.
   */
  boolean carryOn() {
    for (int i = 0; i < legCount; i++) {
      LiquidColumn leg = legs[i];
      double end = leg.carriedOn();
      boolean given = leg.drawsAtMost || leg.forced;
      boolean stops = leg.flow == 0.0 || end * leg.flow < 0.0;
      if (end != leg.flow && (given || stops || shareFor(leg, leg.flow) > leg.share)) {
        return false;
      }
    }
    return true;
  }

  void letGoOfHolds() {
    for (int i = 0; i < legCount; i++) {
      legs[i].drawsAtMost = false;
    }
  }

  /** Sets the share of the step after which the mean flows to be found are reached [-]. */
  void setShare(double share) {
    for (int i = 0; i < legCount; i++) {
      legs[i].setShare(share, dt);
    }
  }

  private void addPlug(Channel c, boolean plugA) {
    FrontMarker front = plugA ? c.frontA : c.frontB;
    int joint = plugA ? c.jointA : c.jointB;
    boolean blocked = joint == ChannelGraph.CLOSED || front.isStopped() || front.isFrozen();
    if (!front.isPresent() || blocked) {
      front.speed = 0.0;
      if (plugA) {
        c.flowA = 0.0;
      } else {
        c.flowB = 0.0;
      }
      return;
    }
    addLeg(c, plugA ? 1 : -1, front, plugA ? oldA[c.index] : oldB[c.index]);
  }

  private void addLeg(Channel c, int frontSide, FrontMarker front, double flow) {
    LiquidColumn leg = legs[legCount++];
    leg.channel = c;
    leg.frontSide = frontSide;
    leg.front = front;
    leg.oldFlow = flow;
    leg.flow = flow;
    leg.knownFrom = 0.0;
    leg.knownTo = 0.0;
    leg.head = 0.0;
    leg.dryA = false;
    leg.dryB = false;
    leg.capillary = 0.0;
    leg.drawsAtMost = false;
    leg.forced = false;
    leg.from = frontSide < 0 ? air.pocketAhead(c) : joinedAt(leg, c.jointA, -1);
    leg.to = frontSide > 0 ? air.pocketAhead(c) : joinedAt(leg, c.jointB, 1);
    measure(leg);
    if (front != null) {
      leg.setCapillary();
    }
  }

  /** A wet joint's number; known at the cup; a pocket's number where the channel opens into air. */
  private int joinedAt(LiquidColumn leg, int joint, int side) {
    if (state.wet[joint]) {
      if (joint == ChannelGraph.CUP) {
        if (side < 0) {
          leg.knownFrom = state.nodePressure[joint];
        } else {
          leg.knownTo = state.nodePressure[joint];
        }
        return LiquidColumn.KNOWN;
      }
      return joint;
    }
    Channel c = leg.channel;
    leg.dryA |= side < 0;
    leg.dryB |= side > 0;
    leg.addHead(side, c.shape.faceArea[side < 0 ? 0 : c.shape.cells], state.melt.density);
    return air.pocketAtJoint(joint);
  }

  /** Sets inertia, losses, weight and front of a leg from the channel's state. */
  private void measure(LiquidColumn leg) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    double low = leg.frontSide < 0 ? c.positionB() : 0.0;
    double high = leg.frontSide > 0 ? c.positionA() : shape.length;
    double now = shape.inertiaAt(high) - shape.inertiaAt(low);
    double landing = 0.0;
    leg.lift = 0.0;
    if (leg.frontSide > 0) {
      landing = c.fallsTowardsA() ? c.landingRate : 0.0;
      leg.lift = lift(shape, high);
      high = halfStepOn(shape, high, leg.oldFlow);
    } else if (leg.frontSide < 0) {
      landing = c.fallsTowardsB() ? c.landingRate : 0.0;
      leg.lift = -lift(shape, low);
      low = halfStepOn(shape, low, leg.oldFlow);
    }
    leg.landing = leg.frontSide * leg.lift * landing;
    leg.lift = Math.max(0.0, leg.lift);
    leg.column = density * now;
    leg.lengthening = 2.0 * density * (shape.inertiaAt(high) - shape.inertiaAt(low) - now);
    leg.least = density * SHORTEST / shape.areaAt(high);
    leg.opening = 0.0;
    leg.weight = density * Gravity.G * (shape.heightAt(high) - shape.heightAt(low)) + leg.landing;
    if (leg.frontSide != 0) {
      double at = leg.frontSide > 0 ? high : low;
      double area = shape.areaAt(at);
      leg.addHead(leg.frontSide, area, density);
      leg.capillary =
          state.melt.capillaryStrength == 0.0 || shape.role == Role.SPRUE
              ? 0.0
              : Capillary.push(
                  state.melt.capillaryStrength,
                  shape.carriedTo(shape.thickness, at),
                  shape.carriedTo(shape.width, at));
      if (openingInertia) {
        leg.opening = OPENING * density / Math.sqrt(area);
      }
    }
    leg.setShare(HALF, dt);
    double volume =
        leg.frontSide > 0 ? c.volumeA : leg.frontSide < 0 ? c.volumeB : shape.totalVolume();
    leg.most = Math.max(Math.abs(leg.oldFlow), volume / DRAIN);
    resist(leg, low, high);
  }

  /** Rise of the weight over face 0 with the flow of a front half a step on [Pa s/m3]. */
  private double lift(ChannelShape shape, double at) {
    return 0.5 * dt * state.melt.density * Gravity.G * shape.rise() / shape.areaAt(at);
  }

  private double halfStepOn(ChannelShape shape, double at, double flow) {
    double next = at + 0.5 * dt * flow / shape.areaAt(at);
    return Math.max(0.0, Math.min(shape.length, next));
  }

  private void resist(LiquidColumn leg, double low, double high) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    double headA = 0.5 * density / (shape.faceArea[0] * shape.faceArea[0]);
    double areaB = shape.faceArea[shape.cells];
    double headB = 0.5 * density / (areaB * areaB);
    boolean joinsA = leg.frontSide >= 0 && c.jointA != ChannelGraph.CLOSED && state.wet[c.jointA];
    boolean joinsB = leg.frontSide <= 0 && c.jointB != ChannelGraph.CLOSED && state.wet[c.jointB];
    leg.quadraticForward =
        (joinsA ? c.losses.intoA() * headA : 0.0) + (joinsB ? c.losses.outOfB() * headB : 0.0);
    leg.quadraticBackward =
        (joinsA ? c.losses.outOfA() * headA : 0.0) + (joinsB ? c.losses.intoB() * headB : 0.0);
    leg.linear = 0.0;
    int first = shape.cellAt(low);
    int last = shape.cellAt(high);
    for (int i = first; i <= last; i++) {
      double from = i * shape.dx;
      double to = (i + 1) * shape.dx;
      double stretch = (to < high ? to : high) - (from > low ? from : low);
      if (stretch > 0.0) {
        wallFriction(leg, i, stretch);
      }
    }
  }

  private void wallFriction(LiquidColumn leg, int i, double stretch) {
    Channel c = leg.channel;
    ChannelShape shape = c.shape;
    MeltProperties melt = state.melt;
    double open = c.middle.openShare[i];
    double area = shape.meanArea[i] * open;
    double diameter = shape.hydraulicDiameter[i] * open;
    if (frictionFactor.isPresent()) {
      double quadratic =
          frictionFactor.getAsDouble() * melt.density * stretch / (2.0 * diameter * area * area);
      leg.quadraticForward += quadratic;
      leg.quadraticBackward += quadratic;
      return;
    }
    double viscosity = melt.viscosity * c.middle.thickening[i];
    double hurry = c.hurry(i);
    double speed = hurry * Math.abs(leg.oldFlow) / area;
    double reynolds = melt.density * speed * diameter / viscosity;
    double overSpeed =
        viscosity == 0.0
            ? 0.0
            : melt.friction.overSpeed(reynolds, viscosity, diameter, shape.laminarProduct[i]);
    if (reynolds > melt.friction.laminarEnd()) {
      double quadratic = hurry * hurry * overSpeed / speed * stretch / (area * area);
      leg.quadraticForward += quadratic;
      leg.quadraticBackward += quadratic;
    } else {
      leg.linear += hurry * overSpeed * stretch / area;
    }
  }
}
