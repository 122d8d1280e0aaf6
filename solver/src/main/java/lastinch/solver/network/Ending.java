package lastinch.solver.network;

import java.util.Optional;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.StopReason;

/** Decides when nothing more can come of a run, and why its leading metal stands. */
final class Ending {
  private static final double STILL = 0.1;
  private static final double LEAK = 5.0;
  private static final double NO_LEVEL = 2e-4;

  private final NetworkRun run;
  private double lastTime;
  private double stillFor;

  Ending(NetworkRun run) {
    this.run = run;
  }

  /** The outcome once it stands. */
  Optional<Outcome> outcome() {
    State state = run.state;
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
      if (NetworkRun.isPiece(c.shape) && !c.full) {
        return false;
      }
    }
    return true;
  }

  /** Whether freezing has ended the way of the leading metal. */
  private boolean isBlocked() {
    boolean inFlight = false;
    for (Channel c : run.state.channels) {
      inFlight |= c.stream.size() > 0 && c.shape.role != Role.SPRUE;
    }
    Channel leading = leadingChannel();
    boolean stopped =
        !leading.full
            && (leading.hasPlugA()
                ? leading.frontA.isStopped()
                : leading.hasPlugB() && leading.frontB.isStopped());
    return !inFlight && (stopped || frozenOnTheWay().isPresent());
  }

  /** The channel furthest along that holds metal. */
  Channel leadingChannel() {
    Channel leading = run.state.channels[0];
    for (Channel c : run.state.channels) {
      boolean metal = c.volumeA > 0.0 || c.volumeB > 0.0;
      if (metal && c.shape.role != Role.WELL) {
        leading = c;
      }
    }
    return leading;
  }

  Optional<Channel> frozenOnTheWay() {
    for (Channel c : run.state.channels) {
      if (c.frozen && c.shape.role != Role.WELL) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  private boolean isStill() {
    State state = run.state;
    boolean pouring = !state.cupIsHeld && !state.cup.crucibleEmpty() && state.cup.pouredNow() > 0.0;
    if (pouring) {
      return false;
    }
    for (Channel c : state.channels) {
      if (c.stream.size() > 0) {
        return false;
      }
      boolean movesA = c.hasPlugA() && !c.full && Math.abs(c.frontA.speed) > Tips.HOLDING_SPEED;
      boolean movesB = c.hasPlugB() && Math.abs(c.frontB.speed) > Tips.HOLDING_SPEED;
      if (movesA || movesB) {
        return false;
      }
    }
    return run.air.overpressure(leadingChannel()) < LEAK || isTight();
  }

  private boolean isTight() {
    return !run.air.getsIn() && run.graph.vents().isEmpty();
  }

  /** Why the leading metal stands. */
  StopReason reason() {
    State state = run.state;
    Channel leading = leadingChannel();
    Front front = leading.hasPlugA() ? leading.frontA : leading.frontB;
    if (!leading.full && front.isStopped()) {
      return leading.mushShare < 0.5 ? StopReason.SKIN : StopReason.SLUSH;
    }
    Optional<Channel> frozen = frozenOnTheWay();
    if (frozen.isPresent()) {
      boolean atTip =
          frozen.get() == leading
              && !leading.full
              && leading.shape.cellAt(leading.positionA()) - leading.frozenCell <= 1;
      return atTip
          ? (leading.mushShare < 0.5 ? StopReason.SKIN : StopReason.SLUSH)
          : StopReason.FROZE_UPSTREAM;
    }
    boolean empty = state.cup.crucibleEmpty() && state.cup.level() < NO_LEVEL;
    if (empty && !state.cupIsHeld) {
      return StopReason.NO_METAL;
    }
    double capillary = capillaryAt(leading);
    return run.air.overpressure(leading) > capillary ? StopReason.AIR : StopReason.CAPILLARITY;
  }

  /** Push that the gap at the leading front asks for [Pa]. */
  double capillaryAt(Channel c) {
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
