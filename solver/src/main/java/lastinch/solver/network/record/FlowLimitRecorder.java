package lastinch.solver.network.record;

import lastinch.solver.judge.FlowLimitTally;
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

  /** What held the flow back, by time. */
  public final FlowLimitTally tally = new FlowLimitTally();

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
      tally.stands(standing, state.wet[ChannelGraph.CUP]);
      if (!state.wet[ChannelGraph.CUP]) {
        double flow = hydraulics.legCount() > 0 && first.hasPlugB() ? first.flowB : 0.0;
        tally.byHand(flow, standing, first.shape.length, dt);
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
      tally.by(FlowLimit.AIR, dt);
    } else {
      tally.by(gates > other ? FlowLimit.GATES : FlowLimit.HEAD, dt);
    }
  }
}
