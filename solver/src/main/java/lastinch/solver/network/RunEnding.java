package lastinch.solver.network;

import java.util.Arrays;
import java.util.Optional;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.heat.FrontMarkers;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.StopReason;

/** Decides when nothing more can come of a run, and why its leading metal stands. */
public final class RunEnding {
  /** Nothing moves for this long: the run is over [s]; chosen, halved no stop moves. */
  private static final double STILL = 0.1;

  /**
   * Overpressure of shut-in air under which it no longer drives metal on as it leaks away [Pa];
   * chosen, 0.06 mm of bronze; halved no stop moves.
   */
  private static final double LEAK = 5.0;

  /** Metal in the cup under this height is none [m]; chosen, far below what a ruler shows. */
  private static final double NO_LEVEL = 2e-4;

  /** Stops closer together than this are the same [m]; chosen, what is promised of a stop. */
  private static final double SAME_PLACE = 1e-3;

  /** The same as a share of the way [-]; chosen, what is promised of a stop. */
  private static final double SAME_SHARE = 0.01;

  private final NetworkRun run;
  private double lastTime;
  private double stillFor;
  private final boolean[] fed;

  RunEnding(NetworkRun run) {
    this.run = run;
    fed = new boolean[run.state.wet.length];
  }

  /** The outcome once it stands. */
  Optional<Outcome> outcome() {
    NetworkState state = run.state;
    double dt = state.time - lastTime;
    lastTime = state.time;
    if (isPieceFull()) {
      return Optional.of(new Outcome.Filled(state.time));
    }
    if (isBlocked()) {
      return Optional.of(new Outcome.Misrun(state.time));
    }
    stillFor = isStill() ? stillFor + dt : 0.0;
    return stillFor > STILL ? Optional.of(new Outcome.Misrun(state.time)) : Optional.empty();
  }

  private boolean isPieceFull() {
    for (Channel c : run.state.channels) {
      if (c.shape.isPiece() && !c.full) {
        return false;
      }
    }
    return true;
  }

  /** Whether nothing that could still fill the piece is on its way. */
  private boolean isBlocked() {
    boolean begun = false;
    for (Channel c : run.state.channels) {
      if (c.shape.role == Role.SPRUE || c.shape.role == Role.WELL) {
        continue;
      }
      if (c.stream.size() > 0 || (isAlive(c) && isFed(c))) {
        return false;
      }
      begun |= c.full || c.volumeA > 0.0 || c.volumeB > 0.0;
    }
    for (int j = 0; j < run.state.wet.length; j++) {
      if (!run.state.wet[j] && run.state.landedVolume[j] > 0.0) {
        return false;
      }
    }
    return begun;
  }

  /** Whether metal can still come to a channel from the sprue, or from a pool that falls to it. */
  public boolean isFed(Channel wanted) {
    if (!isAnyFrozen()) {
      return true;
    }
    Arrays.fill(fed, false);
    fed[ChannelGraph.CUP] = true;
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Channel c : run.state.channels) {
        if (!c.isFrozen() && c.jointA != ChannelGraph.CLOSED && c.jointB != ChannelGraph.CLOSED) {
          boolean either = fed[c.jointA] || fed[c.jointB];
          boolean both = fed[c.jointA] && fed[c.jointB];
          if (either && !both) {
            fed[c.jointA] = true;
            fed[c.jointB] = true;
            grows = true;
          }
        }
      }
    }
    return (wanted.jointA != ChannelGraph.CLOSED && fed[wanted.jointA])
        || (wanted.jointB != ChannelGraph.CLOSED && fed[wanted.jointB]);
  }

  /** Whether a channel's metal can still move ahead. */
  private boolean isAlive(Channel c) {
    if (c.full) {
      if (c.isFrozen()) {
        return false;
      }
      boolean outB = c.jointB != ChannelGraph.CLOSED && !run.state.wet[c.jointB] && c.flowA > 0.0;
      boolean outA = c.jointA != ChannelGraph.CLOSED && !run.state.wet[c.jointA] && c.flowA < 0.0;
      return outA || outB;
    }
    boolean a = c.hasPlugA() && canMove(c.frontA) && c.jointA != ChannelGraph.CLOSED;
    boolean b = c.hasPlugB() && canMove(c.frontB) && c.jointB != ChannelGraph.CLOSED;
    return a || b;
  }

  private static boolean canMove(FrontMarker front) {
    return !front.isStopped() && !front.isFrozen();
  }

  /** The channel furthest along that holds metal. */
  public Channel leadingChannel() {
    Channel leading = run.state.channels[0];
    for (Channel c : run.state.channels) {
      boolean metal = c.volumeA > 0.0 || c.volumeB > 0.0;
      if (metal && c.shape.role != Role.WELL) {
        leading = c;
      }
    }
    return leading;
  }

  private boolean isAnyFrozen() {
    for (Channel c : run.state.channels) {
      if (c.isFrozen() && c.shape.role != Role.WELL) {
        return true;
      }
    }
    return false;
  }

  public Optional<Channel> frozenOnTheWay() {
    for (Channel c : run.state.channels) {
      if (c.isFrozen() && c.shape.role != Role.WELL) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  private boolean isStill() {
    NetworkState state = run.state;
    boolean pouring = !state.cupIsHeld && !state.cup.crucibleEmpty() && state.cup.pouredNow() > 0.0;
    if (pouring) {
      return false;
    }
    for (Channel c : state.channels) {
      if (c.stream.size() > 0) {
        return false;
      }
      boolean movesA =
          c.hasPlugA() && !c.full && Math.abs(c.frontA.speed) > FrontMarkers.HOLDING_SPEED;
      boolean movesB = c.hasPlugB() && Math.abs(c.frontB.speed) > FrontMarkers.HOLDING_SPEED;
      if (movesA || movesB) {
        return false;
      }
    }
    return run.air.overpressure(leadingChannel()) < LEAK || isTight();
  }

  private boolean isTight() {
    return !run.air.getsIn() && run.graph.vents().isEmpty();
  }

  /** Why a front of a channel stands. */
  public StopReason reason(Channel c, FrontMarker front) {
    NetworkState state = run.state;
    boolean stiff = run.melt.enthalpyIn <= run.melt.enthalpyStop && !run.melt.water;
    if (stiff || (!c.full && front.isStopped() && !front.stoodFirst)) {
      return frozenTip(c);
    }
    if ((c.full ? c.isFrozen() : front.isFrozen()) && !front.stoodFirst) {
      return !c.full && (isAtTip(c, front) || hadNothingLeft(c, front))
          ? frozenTip(c)
          : StopReason.FROZE_UPSTREAM;
    }
    if (frozenOnTheWay().isPresent() && !isFed(c)) {
      return StopReason.FROZE_UPSTREAM;
    }
    boolean empty = state.cup.crucibleEmpty() && state.cup.level() < NO_LEVEL;
    if (empty && !state.cupIsHeld) {
      return StopReason.NO_METAL;
    }
    if (run.air.overpressure(c) > capillaryAt(c)) {
      return StopReason.AIR;
    }
    return frozeWaiting(c, front) ? frozenTip(c) : StopReason.CAPILLARITY;
  }

  /** Whether a front froze while it waited for a head that is there by now. */
  private boolean frozeWaiting(Channel c, FrontMarker front) {
    double at = front == c.frontA ? c.positionA() : c.positionB();
    double needed = capillaryAt(c) + run.air.overpressure(c);
    boolean froze = !c.full && (front.isStopped() || front.isFrozen());
    return froze && run.work.weightOver(c.shape.heightAt(at)) > needed;
  }

  private static boolean isAtTip(Channel c, FrontMarker front) {
    double at = front == c.frontA ? c.positionA() : c.positionB();
    return Math.abs(c.shape.cellAt(at) - front.frozenCell) <= 1;
  }

  /** Whether a front would have come no farther than stops are promised, had nothing frozen. */
  private static boolean hadNothingLeft(Channel c, FrontMarker front) {
    double come = front == c.frontA ? c.positionA() : c.shape.length - c.positionB();
    return front.wayLeft < Math.max(SAME_PLACE, SAME_SHARE * come);
  }

  private static StopReason frozenTip(Channel c) {
    return c.mushShare < 0.5 ? StopReason.SKIN : StopReason.SLUSH;
  }

  /** Push that the gap at the leading front asks for [Pa]. */
  public double capillaryAt(Channel c) {
    double at = c.hasPlugA() ? c.positionA() : c.positionB();
    return run.melt.capillaryStrength == 0.0
        ? 0.0
        : lastinch.solver.physics.Capillary.push(
            run.melt.capillaryStrength,
            c.shape.carriedTo(c.shape.thickness, at),
            c.shape.carriedTo(c.shape.width, at));
  }

  String place() {
    return leadingChannel().shape.name;
  }
}
