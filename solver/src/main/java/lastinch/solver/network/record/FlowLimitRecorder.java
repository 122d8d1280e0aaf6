package lastinch.solver.network.record;

import lastinch.solver.network.flow.AirPockets;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.ColumnFlowSolver;
import lastinch.solver.network.flow.LiquidColumn;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.PassageRecord.Role;

/** Adds up what held the flow back, by time. */
public final class FlowLimitRecorder {
  private final NetworkState state;
  private final AirPockets air;
  private double byHand;
  private double byGates;
  private double byHead;
  private double byAir;
  private double mostStanding;
  private double passedVolume;
  private double passedTime;
  private double couldPass;

  public FlowLimitRecorder(NetworkState state, AirPockets air) {
    this.state = state;
    this.air = air;
  }

  /** Books one step [s]. */
  public void book(ColumnFlowSolver hydraulics, double dt) {
    Channel first = state.channels[0];
    if (first.shape.role == Role.SPRUE) {
      double standing =
          state.wet[ChannelGraph.CUP]
              ? first.shape.length
              : first.hasPlugB() ? first.shape.length - first.positionB() : 0.0;
      mostStanding = Math.max(mostStanding, standing);
      if (!state.wet[ChannelGraph.CUP]) {
        byHand += dt;
        noteCapacity(hydraulics, first, standing, dt);
        return;
      }
    }
    double gates = 0.0;
    double other = 0.0;
    double pressed = 0.0;
    for (int i = 0; i < hydraulics.legCount(); i++) {
      LiquidColumn leg = hydraulics.leg(i);
      double q = leg.flow;
      double quadratic = q >= 0.0 ? leg.quadraticForward : leg.quadraticBackward;
      double loss = Math.abs(leg.linear * q + quadratic * q * Math.abs(q));
      if (leg.channel.shape.role == Role.GATE) {
        gates += loss;
      } else {
        other += loss;
      }
      pressed = Math.max(pressed, air.overpressure(leg.channel));
    }
    if (pressed > gates + other) {
      byAir += dt;
    } else if (gates > other) {
      byGates += dt;
    } else {
      byHead += dt;
    }
  }

  /** How much a full sprue could pass against what it passes: by the square root of the head. */
  private void noteCapacity(
      ColumnFlowSolver hydraulics, Channel sprue, double standing, double dt) {
    double flow = hydraulics.legCount() > 0 && sprue.hasPlugB() ? sprue.flowB : 0.0;
    if (flow > 0.0 && standing > 0.0) {
      passedVolume += flow * dt;
      passedTime += dt;
      couldPass += flow * Math.sqrt(sprue.shape.length / standing) * dt;
    }
  }

  public FlowLimit limit() {
    double most = Math.max(Math.max(byHand, byGates), Math.max(byHead, byAir));
    if (most == byHand) {
      return FlowLimit.HAND;
    }
    if (most == byGates) {
      return FlowLimit.GATES;
    }
    return most == byHead ? FlowLimit.HEAD : FlowLimit.AIR;
  }

  /** Greatest height of standing metal in the sprue [m]. */
  public double mostStanding() {
    return mostStanding;
  }

  /** How many times the pour a full sprue could pass [-]; 1 when it ran full. */
  double couldPass() {
    return passedTime > 0.0 && passedVolume > 0.0 ? couldPass / passedVolume : 1.0;
  }
}
