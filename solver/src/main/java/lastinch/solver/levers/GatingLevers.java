package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.levers.Bound.Reason;

/** Levers of the way in and out: sprue, vents, overflow. */
final class GatingLevers {
  /** Heights of sprue that a mould box with and without collar gives [m]; common practice. */
  private static final double LOW_SPRUE = 0.03;

  private static final double TALL_SPRUE = 0.3;

  /** Investment left over the piece's far end [m]; common practice, no source. */
  private static final double UNDER_TIP = 0.035;

  /** Sizes that are cut and carved by hand [m]; common practice, no source. */
  private static final double THIN_PIN = 8e-3;

  private static final double THICK_PIN = 25e-3;
  private static final double WIDE_VENT = 4e-3;
  private static final double MOST_OVERFLOW = 20e-6;

  private static final double HALF_MILLI = 5e-4;

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("sprueTall", GatingLevers::sprueTall),
          new LeverEntry("sprueFoot", GatingLevers::sprueFoot),
          new LeverEntry("vent", (job, owned) -> vent(job, owned)),
          new LeverEntry("overflow", (job, owned) -> overflow(job)));

  private GatingLevers() {}

  private static List<Lever> sprueTall(PourCase job, Owned owned) {
    double now = job.gating().sprue().tall();
    double room = job.mould().flask().map(f -> roomInFlask(job, f)).orElse(TALL_SPRUE);
    Reason why = job.mould().flask().isPresent() ? Reason.FLASK_HEIGHT : Reason.BOX_HEIGHT;
    return List.of(
        lever(
                "sprueTall",
                ParameterUnit.LENGTH,
                now,
                (j, v) -> j.withGating(j.gating().withSprue(j.gating().sprue().withTall(v))))
            .physical(2e-3, 5.0)
            .practical(
                Bound.practice(Math.min(now, LOW_SPRUE), Reason.LEAST_HEIGHT),
                Bound.practice(Math.max(now, room), why))
            .marks(0.0, 5.0 * owned.marks().ruler())
            .effort(Effort.WHILE_MOULDING)
            .make());
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
        lever(
                "sprueFoot",
                ParameterUnit.LENGTH,
                now,
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
                      : j.withGating(j.gating().withSprue(s.withTop(top).withFoot(v)));
                })
            .physical(2e-3, 0.2)
            .practical(
                Bound.practice(Math.min(now, THIN_PIN), Reason.SHOP_SIZES),
                Bound.practice(Math.max(now, THICK_PIN), Reason.SHOP_SIZES))
            .marks(0.0, owned.marks().ruler())
            .effort(Effort.WHILE_MOULDING)
            .owned(owned.spruePins().stream().map(Owned.Pin::foot).toList())
            .make());
  }

  /** Width of the vent nearest to the tip of the first limb; 0 is none. */
  private static List<Lever> vent(PourCase job, Owned owned) {
    double now = tipVent(job.gating(), job).map(Vent::across).orElse(0.0);
    return List.of(
        lever("vent", ParameterUnit.LENGTH, now, GatingLevers::vented)
            .physical(0.0, 0.05)
            .practical(
                Bound.practice(0.0, Reason.NONE),
                Bound.practice(Math.max(now, WIDE_VENT), Reason.VENT_SIZE))
            .marks(0.0, 5.0 * owned.marks().calipers())
            .effort(Effort.WHILE_MOULDING)
            .make());
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
    return job.withGating(gating.withVents(vents));
  }

  /** Room of an overflow at the tip; 0 is none. Its neck is as the tip is. */
  private static List<Lever> overflow(PourCase job) {
    if (!job.gating().overflows().isEmpty()) {
      return List.of();
    }
    return List.of(
        lever(
                "overflow",
                ParameterUnit.VOLUME,
                0.0,
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
                  return j.withGating(j.gating().withOverflows(List.of(pocket)));
                })
            .physical(0.0, 1e-3)
            .practical(
                Bound.practice(0.0, Reason.NONE), Bound.practice(MOST_OVERFLOW, Reason.SHOP_SIZES))
            .marks(0.0, 1e-6)
            .effort(Effort.WHILE_MOULDING)
            .make());
  }
}
