package lastinch.solver.network.flow;

import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.physics.Gravity;

/**
 * Mechanical energy of the metal, from where it stands and how fast it moves before and after every
 * step. What cup and columns have less after a step must have gone into losses, against air and
 * surface, out of open ends, or into damping by the step itself; what happens at once at events and
 * on landing may lose energy but never make any. The sum of what this leaves unexplained is the
 * error, over the energy that the metal brought in.
 */
public final class EnergyBudget {
  private final NetworkState state;

  /** Lowest place that metal can reach: energy of height counts from there [m]. */
  private final double lowest;

  private double before;
  private double flyingBefore;

  /** Motion of stopped columns within the last sum over columns [J]. */
  private double resting;

  /** Whether columns have frozen or thawed since the last sum. */
  private boolean outdated = true;

  private double settledColumns;
  private double settledFlying;

  /**
   * Energy over density of what falls, as last summed up; it stays while columns move [J m3/kg].
   */
  private double falling;

  private double moved;

  /** What metal that lands in a step has done as part of the columns before it is booked [J]. */
  private double lent;

  private double poured;
  private double spilledBefore;
  private double brought;
  private double unexplained;
  private double made;
  private double damped;
  private double friction;

  public EnergyBudget(NetworkState state) {
    this.state = state;
    double least = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      least = Math.min(least, Math.min(c.shape.heightA, c.shape.heightB));
    }
    lowest = least;
  }

  /** Notes the energy that a step starts from. */
  public void beginStep() {
    if (outdated) {
      sumUp();
    }
    before = settledColumns - resting;
    flyingBefore = settledFlying;
    poured = 0.0;
    spilledBefore = state.cup.spilled();
  }

  /** Columns have frozen or thawed after events had settled: those that stopped are at rest. */
  public void columnsFroze() {
    outdated = true;
  }

  private void sumUp() {
    settledColumns = columnEnergy();
    settledFlying = flyingEnergy();
    outdated = false;
  }

  /** Books columns that let go and became falling metal before the step was made. */
  public void columnsBroke() {
    double columns = columnEnergy() - resting;
    double flying = flyingEnergy();
    made += Math.max(0.0, columns + flying - before - flyingBefore);
    before = columns;
    flyingBefore = flying;
  }

  /** Called before and after the hand has poured. */
  public void handPours(boolean done) {
    poured += done ? cupEnergy() : -cupEnergy();
    if (done) {
      brought += poured - lowest * Gravity.G * state.cup.pouredNow();
      spilledBefore = state.cup.spilled();
    }
  }

  /** Books a step [s] of the columns, whose flows were those of the legs at its end. */
  public void columnsMoved(ColumnFlowSolver hydraulics, double dt) {
    friction = 0.0;
    lent = 0.0;
    double spent = 0.0;
    for (int i = 0; i < hydraulics.legCount(); i++) {
      spent += spent(hydraulics.leg(i), dt);
    }
    double rim = state.jointHeight[ChannelGraph.CUP] + state.rim;
    spent += (state.cup.spilled() - spilledBefore) * Gravity.G * rim;
    double after = columnEnergy();
    unexplained += after - before - poured + spent;
    moved = after + withLanded(falling) - lent;
  }

  /** Books what happened at once after the columns moved. */
  public void eventsSettled() {
    sumUp();
    made += Math.max(0.0, settledColumns + settledFlying - moved);
  }

  /** Where a leg's energy went in a step [s], [J]. */
  private double spent(LiquidColumn leg, double dt) {
    double q = leg.flow;
    double quadratic = q >= 0.0 ? leg.quadraticForward : leg.quadraticBackward;
    double resist = leg.linear * q + quadratic * q * Math.abs(q);
    friction += Math.abs(resist);
    double jump = leg.carriedOn() - leg.oldFlow;
    double damping = (leg.share - 0.5) * (leg.inertia - leg.dragged) * jump * jump;
    damped += damping;
    double held = leg.drawsAtMost ? heldBack(leg, resist) * q * dt : 0.0;
    double landed = leg.landing * q * dt;
    lent -= landed;
    return landed + resist * q * dt + atEnds(leg, q * dt) + leg.dragged * jump * q + damping + held;
  }

  /** What holds a leg back whose pool gives no more [Pa]. */
  private double heldBack(LiquidColumn leg, double resist) {
    double q = leg.flow;
    double push = pressure(leg.from, leg.knownFrom) - pressure(leg.to, leg.knownTo);
    double motion = leg.inertia * (q - leg.oldFlow) / leg.span;
    double lifted = leg.weight + leg.lift * (q - leg.oldFlow);
    return push - lifted - resist - leg.head * q * q - motion;
  }

  private double pressure(int node, double known) {
    return known + (node == LiquidColumn.KNOWN ? 0.0 : state.nodePressure[node]);
  }

  /** Work done at a leg's ends on surface, air and what leaves, for a volume moved [J]. */
  private double atEnds(LiquidColumn leg, double volume) {
    double work = leg.knownTo * volume - leg.knownFrom * volume;
    if (leg.from >= state.wet.length) {
      work -= state.nodePressure[leg.from] * volume;
    }
    if (leg.to >= state.wet.length) {
      work += state.nodePressure[leg.to] * volume;
    }
    work += leg.dryB ? leavingAt(leg, leg.channel.shape.cells) * volume : 0.0;
    work -= leg.dryA ? leavingAt(leg, 0) * volume : 0.0;
    return work + atCup(leg, volume);
  }

  /** Energy per volume of metal that leaves a channel at a face [J/m3]. */
  private double leavingAt(LiquidColumn leg, int face) {
    ChannelShape shape = leg.channel.shape;
    double height = face == 0 ? shape.heightA : shape.heightB;
    double speed = leg.flow / shape.faceArea[face];
    return state.melt.density * (Gravity.G * height + 0.5 * speed * speed);
  }

  /**
   * Corrects the work at an end in the cup: the cup's own metal is part of the account, a cup that
   * is kept full is not and lifts what it gives to its height.
   */
  private double atCup(LiquidColumn leg, double volume) {
    if (!state.wet[ChannelGraph.CUP]) {
      return 0.0;
    }
    boolean cupA = leg.channel.jointA == ChannelGraph.CUP && leg.frontSide >= 0;
    boolean cupB = leg.channel.jointB == ChannelGraph.CUP && leg.frontSide <= 0;
    if (!cupA && !cupB) {
      return 0.0;
    }
    double drawn = cupA ? volume : -volume;
    double pressure = cupA ? leg.knownFrom : leg.knownTo;
    if (!state.cupIsHeld) {
      return pressure * drawn;
    }
    double height = state.melt.density * Gravity.G * state.jointHeight[ChannelGraph.CUP];
    brought += Math.abs(pressure * drawn);
    return -height * drawn;
  }

  /** Energy of motion and height of cup and columns, stopped ones moving on as they did [J]. */
  private double columnEnergy() {
    resting = 0.0;
    double density = state.melt.density;
    double sum = state.cupIsHeld ? 0.0 : cupEnergy();
    for (Channel c : state.channels) {
      ChannelShape shape = c.shape;
      double whole = shape.heightMoment();
      if (c.full) {
        sum += density * Gravity.G * whole;
        sum += motion(shape.inertiaTo[shape.cells], c.flowA, c.isFrozen());
        continue;
      }
      if (c.volumeA > 0.0) {
        double at = c.positionA();
        sum += density * Gravity.G * shape.heightMoment(at);
        boolean rests = c.frontA.isFrozen() || c.frontA.isStopped();
        sum += motion(shape.inertiaAt(at), c.flowA, rests);
      }
      if (c.volumeB > 0.0) {
        double at = c.positionB();
        sum += density * Gravity.G * (whole - shape.heightMoment(at));
        boolean rests = c.frontB.isFrozen() || c.frontB.isStopped();
        sum += motion(shape.inertiaFrom(at), c.flowB, rests);
      }
    }
    return sum;
  }

  private double motion(double inertia, double flow, boolean rests) {
    double energy = 0.5 * state.melt.density * inertia * flow * flow;
    resting += rests ? energy : 0.0;
    return energy;
  }

  private double cupEnergy() {
    double height = state.jointHeight[ChannelGraph.CUP] + 0.5 * state.cup.level();
    return state.melt.density * Gravity.G * state.cup.volume() * height;
  }

  /** Energy of falling metal and of what has landed at a joint without a way on yet [J]. */
  private double flyingEnergy() {
    double sum = 0.0;
    for (Channel c : state.channels) {
      FallingStream stream = c.stream;
      boolean down = c.fallsTowardsB();
      for (int p = 0; p < stream.size(); p++) {
        double s = down ? stream.middle(p) : c.shape.length - stream.middle(p);
        double motion = 0.5 * stream.squareOfSpeed(p);
        sum += stream.volume(p) * (Gravity.G * c.shape.heightAt(s) + motion);
      }
    }
    falling = sum;
    return withLanded(falling);
  }

  private double withLanded(double inFlight) {
    double sum = inFlight;
    for (int j = 0; j < state.wet.length; j++) {
      double speed = state.landedSpeed[j];
      sum += state.landedVolume[j] * (Gravity.G * state.jointHeight[j] + 0.5 * speed * speed);
    }
    return state.melt.density * sum;
  }

  /**
   * What stays unexplained and what events and steps made of nothing, over the energy brought in
   * [-].
   */
  public double error() {
    double nothing = made + Math.max(0.0, -damped);
    return brought > 0.0 ? (Math.abs(unexplained) + nothing) / brought : 0.0;
  }

  /** Losses on the whole way in the last step [Pa]. */
  public double friction() {
    return friction;
  }

  /** Weight of metal over a height [Pa]. */
  public double weightOver(double height) {
    double surface = surfaceHeight();
    return state.melt.density * Gravity.G * Math.max(0.0, surface - height);
  }

  /** Height of the free surface that pushes [m]. */
  double surfaceHeight() {
    Channel sprue = state.channels[0];
    if (state.wet[ChannelGraph.CUP]) {
      return state.jointHeight[ChannelGraph.CUP] + state.cup.level();
    }
    if (sprue.hasPlugB()) {
      return sprue.shape.heightAt(sprue.positionB());
    }
    double highest = Double.NEGATIVE_INFINITY;
    for (Channel c : state.channels) {
      if (c.hasPlugA() || c.hasPlugB()) {
        highest = Math.max(highest, Math.max(c.shape.heightA, c.shape.heightB));
      }
    }
    return highest;
  }
}
