package lastinch.solver.network;

import lastinch.solver.physics.Gravity;

/**
 * Mechanical work of the moving columns: what drives them against motion, height, friction, the
 * surface and the air. Found from the legs of each step; the imbalance is that of the time steps.
 */
final class WorkAccount {
  private final State state;
  private double driven;
  private double imbalance;
  private double frictionAtFront;

  WorkAccount(State state) {
    this.state = state;
  }

  /** Books a step [s] just made with these legs, whose flows are those of its end. */
  void book(Hydraulics hydraulics, double dt) {
    double friction = 0.0;
    for (int i = 0; i < hydraulics.legCount(); i++) {
      Leg leg = hydraulics.leg(i);
      double q = leg.flow;
      double from = leg.knownFrom + (leg.from == Leg.KNOWN ? 0.0 : state.nodePressure[leg.from]);
      double to = leg.knownTo + (leg.to == Leg.KNOWN ? 0.0 : state.nodePressure[leg.to]);
      double quadratic = q >= 0.0 ? leg.quadraticForward : leg.quadraticBackward;
      double resist = leg.linear * q + quadratic * q * Math.abs(q);
      friction += Math.abs(resist);
      double mean = 0.5 * (q + leg.oldFlow);
      double push = (from - to - leg.weight) * mean * dt;
      double motion = leg.inertia * (q - leg.oldFlow) * mean;
      double head = 0.0;
      if (leg.openArea > 0.0) {
        head =
            leg.openSide
                * 0.5
                * state.melt.density
                * q
                * q
                / (leg.openArea * leg.openArea)
                * mean
                * dt;
      }
      driven += Math.abs(push);
      imbalance += push - motion - head - resist * mean * dt;
    }
    frictionAtFront = friction;
  }

  /** Imbalance over the work done [-]. */
  double error() {
    return driven > 0.0 ? imbalance / driven : 0.0;
  }

  /** Losses on the whole way in the last step [Pa]. */
  double friction() {
    return frictionAtFront;
  }

  /** Weight of metal over a height [Pa]. */
  double weightOver(double height) {
    double surface = surfaceHeight();
    return state.melt.density * Gravity.G * Math.max(0.0, surface - height);
  }

  /** Height of the free surface that pushes [m]. */
  double surfaceHeight() {
    Channel sprue = state.channels[0];
    if (state.wet[Graph.CUP]) {
      return state.jointHeight[Graph.CUP] + state.cup.level();
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
