package lastinch.solver.judge;

import lastinch.solver.result.FlowLimit;

/** Adds up what held the flow back, by time, and what a full sprue could have passed. */
public final class FlowLimitTally {
  private double hand;
  private double gates;
  private double head;
  private double air;
  private double passed;
  private double could;
  private double mostStanding;
  private boolean full;

  /** A step [s] in which something held the flow back. */
  public void by(FlowLimit limit, double dt) {
    switch (limit) {
      case HAND -> hand += dt;
      case GATES -> gates += dt;
      case HEAD -> head += dt;
      case AIR -> air += dt;
    }
  }

  /**
   * A step [s] in which the sprue does not stand full: the hand holds the flow back. A full one
   * could pass more by the square root of the head.
   *
   * @param flow out of the sprue [m3/s]
   * @param standing height of metal in it [m]
   * @param tall height of the sprue [m]
   */
  public void byHand(double flow, double standing, double tall, double dt) {
    by(FlowLimit.HAND, dt);
    if (flow > 0.0 && standing > 0.0) {
      passed += flow * dt;
      could += flow * Math.sqrt(tall / standing) * dt;
    }
  }

  /** Height of metal that stands in the sprue now [m], and whether it is full. */
  public void stands(double height, boolean toTheCup) {
    mostStanding = Math.max(mostStanding, height);
    full |= toTheCup;
  }

  /** What held the flow back for most of the pour. */
  public FlowLimit limit() {
    double most = Math.max(Math.max(hand, gates), Math.max(head, air));
    if (most == hand) {
      return FlowLimit.HAND;
    }
    if (most == gates) {
      return FlowLimit.GATES;
    }
    return most == head ? FlowLimit.HEAD : FlowLimit.AIR;
  }

  /** Greatest height of standing metal in the sprue [m]. */
  public double mostStanding() {
    return mostStanding;
  }

  /** Whether metal ever stood up to the cup. */
  public boolean wasFull() {
    return full;
  }

  /** How many times the pour a full sprue could pass [-]; 1 when nothing passed. */
  public double couldPass() {
    return passed > 0.0 ? could / passed : 1.0;
  }
}
