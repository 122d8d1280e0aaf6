package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.levers.Bound.Reason;

/** Levers of single gates: how wide, how thick, where. */
final class GateLevers {
  /** Sizes that are cut by hand [m]; common practice, no source. */
  private static final double NARROW_GATE = 5e-3;

  private static final double WIDE_GATE = 60e-3;
  private static final double THIN_GATE = 1.5e-3;
  private static final double THICK_GATE = 8e-3;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("gateWide", GateLevers::gateWide),
          new LeverEntry("gateThick", GateLevers::gateThick),
          new LeverEntry("gatePlace", GateLevers::gatePlace),
          new LeverEntry("gateNumber", (job, owned) -> MoreGates.of(job)));

  private GateLevers() {}

  private static List<Lever> gateWide(PourCase job, Owned owned) {
    return eachGate(
        job,
        gate ->
            gateSize("gateWide", job, gate, Gate::width, Gate::withWidth)
                .practical(
                    Bound.practice(Math.min(gate.width(), NARROW_GATE), Reason.SHOP_SIZES),
                    Bound.practice(Math.max(gate.width(), WIDE_GATE), Reason.SHOP_SIZES))
                .marks(0.0, owned.marks().ruler())
                .owned(owned.gateCutters()));
  }

  private static List<Lever> gateThick(PourCase job, Owned owned) {
    return eachGate(
        job,
        gate ->
            gateSize("gateThick", job, gate, Gate::thickness, Gate::withThickness)
                .physical(3e-4, 0.1)
                .practical(
                    Bound.practice(Math.min(gate.thickness(), THIN_GATE), Reason.SHOP_SIZES),
                    Bound.practice(Math.max(gate.thickness(), THICK_GATE), Reason.SHOP_SIZES))
                .marks(0.0, 5.0 * owned.marks().calipers()));
  }

  private static LeverMaker gateSize(
      String key,
      PourCase job,
      Gate gate,
      Function<Gate, Double> reader,
      BiFunction<Gate, Double, Gate> writer) {
    return lever(key, JobParameter.gate(gate.name(), reader, writer), job)
        .part(job.gating().gates().size() > 1 ? gate.name() : "")
        .physical(3e-4, 0.5)
        .effort(Effort.WHILE_MOULDING);
  }

  private static List<Lever> eachGate(PourCase job, Function<Gate, LeverMaker> maker) {
    return job.gating().gates().stream().map(gate -> maker.apply(gate).make()).toList();
  }

  private static List<Lever> gatePlace(PourCase job, Owned owned) {
    List<Lever> levers = new ArrayList<>();
    for (Gate gate : job.gating().gates()) {
      if (gate.place() instanceof Place.At at && isSide(at)) {
        double length = lengthOf(job, at.limb());
        levers.add(
            gateSize("gatePlace", job, gate, g -> at.distance(), GateLevers::moved)
                .physical(0.0, length)
                .practical(
                    neighbour(job, gate, at, -1, Math.min(at.distance(), 0.5 * gate.width())),
                    neighbour(
                        job, gate, at, 1, Math.max(at.distance(), length - 0.5 * gate.width())))
                .marks(0.0, 5.0 * owned.marks().ruler())
                .make());
      }
    }
    return levers;
  }

  private static boolean isSide(Place.At at) {
    return at.side() == Side.LEFT || at.side() == Side.RIGHT;
  }

  /** How far a gate can go one way: up to the next gate on its side, or to the piece's end. */
  private static Bound neighbour(PourCase job, Gate gate, Place.At at, int way, double end) {
    Bound bound = Bound.practice(end, Reason.PIECE_END);
    for (Gate other : job.gating().gates()) {
      if (!other.name().equals(gate.name())
          && other.place() instanceof Place.At there
          && there.limb().equals(at.limb())
          && there.side() == at.side()
          && way * (there.distance() - at.distance()) >= 0.0) {
        double apart = 0.5 * (gate.width() + other.width());
        double closest = there.distance() - way * apart;
        boolean holds = way * (closest - at.distance()) >= 0.0;
        double nearest = holds ? closest : at.distance();
        if (way * (nearest - bound.value()) < 0.0) {
          bound = Bound.practice(nearest, Reason.NEXT_GATE);
        }
      }
    }
    return bound;
  }

  private static Gate moved(Gate gate, double distance) {
    return gate.place() instanceof Place.At at
        ? gate.withPlace(new Place.At(at.limb(), distance, at.side()))
        : gate;
  }

  private static double lengthOf(PourCase job, String limb) {
    return job.piece().limbs().stream()
        .filter(l -> l.name().equals(limb))
        .mapToDouble(Limb::length)
        .findFirst()
        .orElse(job.piece().limbs().get(0).length());
  }
}
