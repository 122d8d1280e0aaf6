package lastinch.solver.network.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;

/** Where metal stands for good at the edge of what stays empty. */
public final class FinalStops {
  private final NetworkRun run;
  private final NetworkState state;

  public FinalStops(NetworkRun run) {
    this.run = run;
    this.state = run.state;
  }

  /** Length of the piece's limbs that stays empty [m]. */
  public double missing() {
    double sum = 0.0;
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE) {
        sum += gap(c);
      }
    }
    return sum;
  }

  private static double gap(Channel c) {
    if (c.full) {
      return 0.0;
    }
    double from = c.hasPlugA() ? c.positionA() : 0.0;
    double to = c.hasPlugB() ? c.positionB() : c.shape.length;
    return Math.max(0.0, to - from);
  }

  /** Stops in the piece, or the one that kept metal out of it. */
  public List<Stop> list(double time) {
    List<Stop> stops = new ArrayList<>();
    List<Stop> waiting = new ArrayList<>();
    for (Channel c : state.channels) {
      if (!c.shape.isPiece() || c.full) {
        continue;
      }
      boolean a = c.hasPlugA() && (c.volumeA > 0.0 || !c.hasPlugB());
      boolean b = c.hasPlugB() && c.volumeB > 0.0;
      if (c.hasPlugA()) {
        double missing = a || !b ? ahead(c) : 0.0;
        (a ? stops : waiting).add(stop(c, c.frontA, Stop.Way.UP, missing, time));
      }
      if (c.hasPlugB()) {
        double missing = c.hasPlugA() && (a || !b) ? 0.0 : behind(c);
        (b ? stops : waiting).add(stop(c, c.frontB, Stop.Way.DOWN, missing, time));
      }
    }
    // metal at the mouth of a channel that none went into
    stops.addAll(waiting);
    if (stops.isEmpty()) {
      Channel c = run.ending.leadingChannel();
      boolean up = c.full || c.hasPlugA();
      stops.add(stop(c, c.leadingFront(), up ? Stop.Way.UP : Stop.Way.DOWN, missing(), time));
    }
    return stops;
  }

  /** Empty length from a channel's plug A on, through empty channels behind its far end [m]. */
  private double ahead(Channel c) {
    return gap(c) + (c.hasPlugB() ? 0.0 : emptyBeyond(c, c.jointB));
  }

  private double behind(Channel c) {
    return gap(c) + (c.hasPlugA() ? 0.0 : emptyBeyond(c, c.jointA));
  }

  /** Length of the empty channels of the piece that hang together from a dry joint on [m]. */
  private double emptyBeyond(Channel from, int joint) {
    if (joint == ChannelGraph.CLOSED || state.wet[joint]) {
      return 0.0;
    }
    boolean[] seen = new boolean[state.channels.length];
    boolean[] at = new boolean[state.wet.length];
    seen[from.index] = true;
    at[joint] = true;
    double sum = 0.0;
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Channel c : state.channels) {
        boolean empty = !c.full && !c.hasPlugA() && !c.hasPlugB();
        boolean next = isAt(at, c.jointA) || isAt(at, c.jointB);
        if (next && empty && c.shape.role == Role.PIECE && !seen[c.index]) {
          seen[c.index] = true;
          mark(at, c.jointA);
          mark(at, c.jointB);
          sum += c.shape.length;
          grows = true;
        }
      }
    }
    return sum;
  }

  private static boolean isAt(boolean[] at, int joint) {
    return joint != ChannelGraph.CLOSED && at[joint];
  }

  private void mark(boolean[] at, int joint) {
    if (joint != ChannelGraph.CLOSED && !state.wet[joint]) {
      at[joint] = true;
    }
  }

  private Stop stop(Channel c, FrontMarker front, Stop.Way way, double missing, double time) {
    double at = way == Stop.Way.UP ? c.positionA() : c.positionB();
    StopReason reason = run.ending.reason(c, front);
    Optional<Spot> closed = Optional.empty();
    if (reason == StopReason.FROZE_UPSTREAM) {
      Optional<Channel> frozen = c.isFrozen() ? Optional.of(c) : run.ending.frozenOnTheWay();
      closed =
          frozen.map(
              f ->
                  new Spot(
                      f.shape.limb,
                      run.recorder.offset(f) + (f.frozenFront().frozenCell + 0.5) * f.shape.dx));
    }
    return new Stop(
        c.shape.limb,
        run.recorder.offset(c) + at,
        way,
        missing,
        time,
        reason,
        closed,
        state.melt.table.temperature(front.enthalpy),
        state.melt.table.solid(front.enthalpy),
        new PushBalance(
            run.work.weightOver(c.shape.heightAt(at)),
            run.work.friction(),
            run.ending.capillaryAt(c),
            run.air.overpressure(c)));
  }
}
