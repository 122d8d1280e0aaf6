package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.levers.Bound.Reason;

/**
 * More gates like the one there is, spread along the piece from a runner beside it. A gate at the
 * thick end stays and the others share the length that is left; gates at a side each feed the same
 * length. What the longer runner and the gates hold is melted too, and poured as many kilograms a
 * second as before.
 */
final class MoreGates {
  /** A small shop cuts no more for one piece; common practice, no source. */
  private static final int MOST = 4;

  /** So many widths of a gate are left between two; common practice, no source. */
  private static final double APART = 2.0;

  private MoreGates() {}

  /** The lever, for a piece of one limb with one gate at a side or at the thick end. */
  static List<Lever> of(PourCase job) {
    List<Gate> gates = job.gating().gates();
    if (gates.size() != 1 || job.piece().limbs().size() != 1 || !runsBeside(job)) {
      return List.of();
    }
    double length = job.piece().limbs().get(0).length();
    int room = (int) Math.floor(length / (APART * gates.get(0).width()));
    int most = Math.min(MOST, room);
    if (most < 2 || places(job, 2).isEmpty()) {
      return List.of();
    }
    return List.of(
        lever(
                "gateNumber",
                ParameterUnit.COUNT,
                1.0,
                (j, v) -> v < 1.5 ? j : spread(j, v.intValue()))
            .physical(1.0, Math.max(1.0, room))
            .practical(Bound.practice(1.0, Reason.NONE), Bound.practice(most, Reason.GATES_APART))
            .effort(Effort.WHILE_MOULDING)
            .make());
  }

  /** Upright, a runner that only goes across cannot be taken along the piece. */
  private static boolean runsBeside(PourCase job) {
    Optional<Runner> runner = job.gating().runner();
    return runner.isPresent()
        && (runner.get() instanceof Runner.Alongside || !job.mould().attitude().upright());
  }

  /** Where so many gates go; empty where the one there is enters at the tip or elsewhere. */
  private static List<Place> places(PourCase job, int number) {
    Limb limb = job.piece().limbs().get(0);
    Place first = job.gating().gates().get(0).place();
    List<Place> all = new ArrayList<>();
    if (first instanceof Place.At at && (at.side() == Side.LEFT || at.side() == Side.RIGHT)) {
      for (int i = 0; i < number; i++) {
        all.add(new Place.At(at.limb(), limb.length() * (2 * i + 1) / (2.0 * number), at.side()));
      }
    } else if (first instanceof Place.Into
        || (first instanceof Place.At at && at.side() == Side.THICK_END)) {
      all.add(first);
      for (int i = 1; i < number; i++) {
        all.add(new Place.At(limb.name(), limb.length() * i / number, side(job)));
      }
    }
    return all;
  }

  private static Side side(PourCase job) {
    return job.gating().runner().orElseThrow() instanceof Runner.Alongside a ? a.side() : Side.LEFT;
  }

  private static PourCase spread(PourCase job, int number) {
    Gate first = job.gating().gates().get(0);
    List<Place> places = places(job, number);
    List<Gate> gates = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      String name = i == 0 ? first.name() : first.name() + " " + (i + 1);
      gates.add(new Gate(name, places.get(i), first.width(), first.thickness(), first.length()));
    }
    Gating now = job.gating();
    Runner runner = now.runner().orElseThrow();
    double away = first.length();
    Side side =
        first.place() instanceof Place.At at && at.side() == Side.RIGHT ? at.side() : side(job);
    Runner beside =
        runner instanceof Runner.Alongside
            ? runner
            : new Runner.Alongside(
                side,
                away,
                runner.width(),
                runner.depth(),
                Runner.FedFrom.THICK_END,
                runner.runsOn());
    double longer = reach(job, places) - (runner instanceof Runner.Straight s ? s.length() : 0.0);
    double more =
        Math.max(0.0, longer) * runner.width() * runner.depth()
            + (number - 1) * first.width() * first.thickness() * first.length();
    double melted = job.metal().melted() + more * job.metal().alloy().densityLiquid().value();
    PourCase fed = job.withGating(now.withGates(gates).withRunner(Optional.of(beside)));
    return JobParameter.MELTED.move(fed, melted);
  }

  /** Length of a runner from the first place to the last [m]. */
  private static double reach(PourCase job, List<Place> places) {
    double last = 0.0;
    double first = Double.POSITIVE_INFINITY;
    for (Place place : places) {
      double at =
          place instanceof Place.At there
              ? there.distance()
              : -0.5 * job.piece().boss().map(b -> b.length()).orElse(0.0);
      last = Math.max(last, at);
      first = Math.min(first, at);
    }
    return last - first;
  }
}
