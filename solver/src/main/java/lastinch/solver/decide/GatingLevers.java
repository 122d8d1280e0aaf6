package lastinch.solver.decide;

import static lastinch.solver.decide.LeverMaker.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Gate;
import lastinch.solver.casting.Gating;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Overflow;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Sprue;
import lastinch.solver.casting.Vent;
import lastinch.solver.decide.Bound.Reason;

/** Levers of the way in and out: sprue, runner, gates, vents, overflow. */
final class GatingLevers {
  /** Heights of sprue that a mould box with and without collar gives [m]; common practice. */
  private static final double LOW_SPRUE = 0.03;

  private static final double TALL_SPRUE = 0.3;

  /** Investment left over the piece's far end [m]; common practice, no source. */
  private static final double UNDER_TIP = 0.035;

  /** Sizes that are cut and carved by hand [m]; common practice, no source. */
  private static final double THIN_PIN = 8e-3;

  private static final double THICK_PIN = 25e-3;
  private static final double NARROW_GATE = 5e-3;
  private static final double WIDE_GATE = 60e-3;
  private static final double THIN_GATE = 1.5e-3;
  private static final double THICK_GATE = 8e-3;
  private static final double WIDE_VENT = 4e-3;
  private static final double MOST_OVERFLOW = 20e-6;
  private static final int MOST_GATES = 4;

  private static final double HALF_MILLI = 5e-4;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("sprueTall", GatingLevers::sprueTall),
          new LeverEntry("sprueFoot", GatingLevers::sprueFoot),
          new LeverEntry("gateWide", GatingLevers::gateWide),
          new LeverEntry("gateThick", GatingLevers::gateThick),
          new LeverEntry("gatePlace", GatingLevers::gatePlace),
          new LeverEntry("gateNumber", (job, owned) -> gateNumber(job)),
          new LeverEntry("vent", (job, owned) -> vent(job, owned)),
          new LeverEntry("overflow", (job, owned) -> overflow(job)));

  private GatingLevers() {}

  private static List<Lever> sprueTall(PourCase job, Owned owned) {
    double now = job.gating().sprue().tall();
    double room = job.mould().flask().map(f -> roomInFlask(job, f)).orElse(TALL_SPRUE);
    Reason why = job.mould().flask().isPresent() ? Reason.FLASK_HEIGHT : Reason.BOX_HEIGHT;
    return List.of(
        lever("sprueTall", LeverUnit.LENGTH, now)
            .physical(2e-3, 5.0)
            .practical(
                Bound.practice(Math.min(now, LOW_SPRUE), Reason.LEAST_HEIGHT),
                Bound.practice(Math.max(now, room), why))
            .marks(0.0, 5.0 * owned.marks().ruler())
            .effort(Effort.WHILE_MOULDING)
            .sets(
                (j, v) -> {
                  Sprue s = j.gating().sprue();
                  Sprue taller = new Sprue(v, s.top(), s.foot(), s.into());
                  return Changed.gating(j, Changed.sprue(j.gating(), taller));
                }));
  }

  /** Height that cup, boss, piece and what must stay under the tip leave in an upright flask. */
  private static double roomInFlask(PourCase job, Flask flask) {
    double piece = job.mould().attitude().upright() ? job.piece().limbs().get(0).length() : 0.0;
    double boss =
        job.mould().attitude().upright() ? job.piece().boss().map(Boss::length).orElse(0.0) : 0.0;
    return flask.tall() - job.gating().cup().depth() - piece - boss - UNDER_TIP;
  }

  private static List<Lever> sprueFoot(PourCase job, Owned owned) {
    double now = job.gating().sprue().foot();
    return List.of(
        lever("sprueFoot", LeverUnit.LENGTH, now)
            .physical(2e-3, 0.2)
            .practical(
                Bound.practice(Math.min(now, THIN_PIN), Reason.SHOP_SIZES),
                Bound.practice(Math.max(now, THICK_PIN), Reason.SHOP_SIZES))
            .marks(0.0, owned.marks().ruler())
            .effort(Effort.WHILE_MOULDING)
            .owned(owned.spruePins().stream().map(Owned.Pin::foot).toList())
            .sets(
                (j, v) -> {
                  Sprue s = j.gating().sprue();
                  double top =
                      owned.spruePins().stream()
                          .filter(p -> Math.abs(p.foot() - v) < HALF_MILLI)
                          .mapToDouble(Owned.Pin::top)
                          .findFirst()
                          .orElse(s.top() / s.foot() * v);
                  return v == s.foot()
                      ? j
                      : Changed.gating(
                          j, Changed.sprue(j.gating(), new Sprue(s.tall(), top, v, s.into())));
                }));
  }

  private static List<Lever> gateWide(PourCase job, Owned owned) {
    return eachGate(
        job,
        gate ->
            gateSize("gateWide", job, gate, gate.width())
                .practical(
                    Bound.practice(Math.min(gate.width(), NARROW_GATE), Reason.SHOP_SIZES),
                    Bound.practice(Math.max(gate.width(), WIDE_GATE), Reason.SHOP_SIZES))
                .marks(0.0, owned.marks().ruler())
                .owned(owned.gateCutters()),
        (g, v) -> new Gate(g.name(), g.place(), v, g.thickness(), g.length()));
  }

  private static List<Lever> gateThick(PourCase job, Owned owned) {
    return eachGate(
        job,
        gate ->
            gateSize("gateThick", job, gate, gate.thickness())
                .physical(3e-4, 0.1)
                .practical(
                    Bound.practice(Math.min(gate.thickness(), THIN_GATE), Reason.SHOP_SIZES),
                    Bound.practice(Math.max(gate.thickness(), THICK_GATE), Reason.SHOP_SIZES))
                .marks(0.0, 5.0 * owned.marks().calipers()),
        (g, v) -> new Gate(g.name(), g.place(), g.width(), v, g.length()));
  }

  private static LeverMaker gateSize(String key, PourCase job, Gate gate, double now) {
    return lever(key, LeverUnit.LENGTH, now)
        .part(job.gating().gates().size() > 1 ? gate.name() : "")
        .physical(3e-4, 0.5)
        .effort(Effort.WHILE_MOULDING);
  }

  private static List<Lever> eachGate(
      PourCase job, Function<Gate, LeverMaker> maker, BiFunction<Gate, Double, Gate> change) {
    List<Lever> levers = new ArrayList<>();
    for (Gate gate : job.gating().gates()) {
      levers.add(
          maker
              .apply(gate)
              .sets(
                  (j, v) ->
                      Changed.gating(
                          j,
                          Changed.gates(
                              j.gating(),
                              Changed.gate(
                                  j.gating().gates(), gate.name(), g -> change.apply(g, v))))));
    }
    return levers;
  }

  private static List<Lever> gatePlace(PourCase job, Owned owned) {
    List<Lever> levers = new ArrayList<>();
    for (Gate gate : job.gating().gates()) {
      if (gate.place() instanceof Place.At at
          && (at.side() == Side.LEFT || at.side() == Side.RIGHT)) {
        double length = lengthOf(job, at.limb());
        levers.add(
            gateSize("gatePlace", job, gate, at.distance())
                .physical(0.0, length)
                .practical(
                    Bound.practice(0.0, Reason.PIECE_END), Bound.practice(length, Reason.PIECE_END))
                .marks(0.0, 5.0 * owned.marks().ruler())
                .sets((j, v) -> moved(j, gate.name(), v)));
      }
    }
    return levers;
  }

  private static PourCase moved(PourCase job, String name, double distance) {
    List<Gate> gates =
        Changed.gate(
            job.gating().gates(),
            name,
            g ->
                g.place() instanceof Place.At at
                    ? new Gate(
                        g.name(),
                        new Place.At(at.limb(), distance, at.side()),
                        g.width(),
                        g.thickness(),
                        g.length())
                    : g);
    return Changed.gating(job, Changed.gates(job.gating(), gates));
  }

  private static double lengthOf(PourCase job, String limb) {
    return job.piece().limbs().stream()
        .filter(l -> l.name().equals(limb))
        .mapToDouble(Limb::length)
        .findFirst()
        .orElse(job.piece().limbs().get(0).length());
  }

  /** So many gates like the first, side by side where it enters. */
  private static List<Lever> gateNumber(PourCase job) {
    List<Gate> gates = job.gating().gates();
    if (gates.size() != 1) {
      return List.of();
    }
    return List.of(
        lever("gateNumber", LeverUnit.COUNT, 1.0)
            .physical(1.0, 12.0)
            .practical(
                Bound.practice(1.0, Reason.NONE), Bound.practice(MOST_GATES, Reason.SHOP_SIZES))
            .effort(Effort.WHILE_MOULDING)
            .sets(
                (j, v) -> {
                  Gate first = j.gating().gates().get(0);
                  List<Gate> all = new ArrayList<>();
                  for (int i = 1; i <= (int) v; i++) {
                    String name = i == 1 ? first.name() : first.name() + " " + i;
                    all.add(
                        new Gate(
                            name, first.place(), first.width(), first.thickness(), first.length()));
                  }
                  return Changed.gating(j, Changed.gates(j.gating(), all));
                }));
  }

  /** Width of the vent nearest to the tip of the first limb; 0 is none. */
  private static List<Lever> vent(PourCase job, Owned owned) {
    double now = tipVent(job.gating(), job).map(Vent::across).orElse(0.0);
    return List.of(
        lever("vent", LeverUnit.LENGTH, now)
            .physical(0.0, 0.05)
            .practical(
                Bound.practice(0.0, Reason.NONE),
                Bound.practice(Math.max(now, WIDE_VENT), Reason.VENT_SIZE))
            .marks(0.0, 5.0 * owned.marks().calipers())
            .effort(Effort.WHILE_MOULDING)
            .sets(GatingLevers::vented));
  }

  private static Optional<Vent> tipVent(Gating gating, PourCase job) {
    Limb limb = job.piece().limbs().get(0);
    return gating.vents().stream()
        .filter(
            v ->
                v.place() instanceof Place.At at
                    && at.limb().equals(limb.name())
                    && at.distance() > 0.75 * limb.length())
        .findFirst();
  }

  private static PourCase vented(PourCase job, double across) {
    Gating gating = job.gating();
    Optional<Vent> now = tipVent(gating, job);
    List<Vent> vents = new ArrayList<>(gating.vents());
    now.ifPresent(vents::remove);
    if (across >= 1e-4) {
      Limb limb = job.piece().limbs().get(0);
      Place place = now.map(Vent::place).orElse(new Place.At(limb.name(), limb.length(), Side.TIP));
      vents.add(new Vent(now.map(Vent::name).orElse("tip vent"), place, across));
    }
    return Changed.gating(job, Changed.vents(gating, vents));
  }

  /** Room of an overflow at the tip; 0 is none. Its neck is as the tip is. */
  private static List<Lever> overflow(PourCase job) {
    if (!job.gating().overflows().isEmpty()) {
      return List.of();
    }
    return List.of(
        lever("overflow", LeverUnit.VOLUME, 0.0)
            .physical(0.0, 1e-3)
            .practical(
                Bound.practice(0.0, Reason.NONE), Bound.practice(MOST_OVERFLOW, Reason.SHOP_SIZES))
            .marks(0.0, 1e-6)
            .effort(Effort.WHILE_MOULDING)
            .sets(
                (j, v) -> {
                  if (v < 1e-9) {
                    return j;
                  }
                  Limb limb = j.piece().limbs().get(0);
                  var tip = limb.stations().get(limb.stations().size() - 1);
                  Overflow pocket =
                      new Overflow(
                          "tip overflow",
                          new Place.At(limb.name(), limb.length(), Side.TIP),
                          0.6 * tip.width(),
                          tip.thickness(),
                          v);
                  return Changed.gating(j, Changed.overflows(j.gating(), List.of(pocket)));
                }));
  }
}
