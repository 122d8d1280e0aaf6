package lastinch.solver.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkBreakdown;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.ToppedUp;

/**
 * After the verdict: the same steps go on, with the hand as it was, until the crucible is empty or
 * the cup full, nothing falls and no surface moves. Channels that are frozen stay out.
 */
final class NetworkToppingUp {
  private final NetworkRun run;
  private final NetworkState state;

  NetworkToppingUp(NetworkRun run) {
    this.run = run;
    state = run.state;
  }

  ToppedUp run(RunObserver observer, BooleanSupplier stop) {
    double begun = state.time;
    double told = begun;
    double filled = run.filledFraction();
    ToppedUp.Ended ended = ToppedUp.Ended.AT_REST;
    try {
      boolean rest = run.isFedDirectly();
      while (!rest && ended == ToppedUp.Ended.AT_REST) {
        double before = state.time;
        double level = state.cup.level();
        run.step();
        rest = handStops() && isAtRest() && isAtRest(level, state.time - before);
        if (stop.getAsBoolean()) {
          ended = ToppedUp.Ended.CANCELLED;
        } else if (!rest && state.time - begun > ToppedUp.LONGEST) {
          ended = ToppedUp.Ended.TOO_LONG;
        }
        if (state.time - told > ToppedUp.TOLD_EVERY) {
          told = state.time;
          observer.onStep(state.time, filled);
        }
      }
    } catch (NetworkBreakdown b) {
      ended = ToppedUp.Ended.BROKE_DOWN;
    }
    run.finishHeat();
    return result(ended);
  }

  private boolean handStops() {
    return state.cup.crucibleEmpty() || state.cup.isFull();
  }

  private boolean isAtRest(double levelBefore, double dt) {
    return Math.abs(state.cup.level() - levelBefore) <= ToppedUp.AT_REST * dt;
  }

  /** Metal that has landed where no way leads on lies still. */
  private boolean isAtRest() {
    for (Channel c : state.channels) {
      if (c.stream.size() > 0 || moves(c, c.frontA) || moves(c, c.frontB)) {
        return false;
      }
    }
    return true;
  }

  private static boolean moves(Channel c, FrontMarker front) {
    return !c.full && front.isPresent() && Math.abs(front.speed) > ToppedUp.AT_REST;
  }

  private ToppedUp result(ToppedUp.Ended ended) {
    List<ToppedUp.Level> levels = new ArrayList<>();
    double standing = 0.0;
    for (Channel c : state.channels) {
      double share = c.full ? 1.0 : (c.volumeA + c.volumeB) / c.shape.totalVolume();
      if (c.shape.role == Role.SPRUE) {
        standing += c.full ? c.shape.length : c.shape.length - c.positionB();
      }
      if (c.shape.role == Role.FEEDER
          || (c.shape.role == Role.OVERFLOW && c.jointB == ChannelGraph.CLOSED)) {
        double length = c.full ? c.shape.length : c.positionA();
        double height = length * Math.max(0.0, c.shape.rise());
        levels.add(new ToppedUp.Level(c.shape.name, height, share));
      }
    }
    PouringCup cup = state.cup;
    return new ToppedUp(
        state.time,
        ended,
        cup.fullAt(),
        cup.level(),
        standing,
        levels,
        cup.poured(),
        cup.left(),
        cup.spilled());
  }
}
