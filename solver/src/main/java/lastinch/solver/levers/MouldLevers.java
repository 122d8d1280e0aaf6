package lastinch.solver.levers;

import static lastinch.solver.levers.LeverMaker.lever;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Bound.Reason;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** Levers of the mould: how hot, how it stands, what it is made of. */
final class MouldLevers {
  /** Oil binder smokes above about 60 degC [K]; common practice, no source. */
  private static final double BINDER_SMOKES = 333.15;

  /** Silica shrinks back and cracks a fired mould that cools under about 300 degC [K]; practice. */
  private static final double FIRED_COOLS = 573.15;

  /** A cold shop, 5 degC [K]. */
  private static final double COLD_SHOP = 278.15;

  /** A mould box is hard to pour beyond about 30 degrees [rad]; estimate. */
  private static final double BOX_TILT = Math.PI / 6;

  private static final double DEGREE = Math.PI / 180;

  /** Quickest and slowest way from the kiln worth trying [s]; common practice, no source. */
  private static final double QUICK_OUT = 20.0;

  private static final double SLOW_OUT = 300.0;

  private static final List<Orientation> STANDS =
      List.of(Orientation.FLAT, Orientation.UPRIGHT_TIP_DOWN, Orientation.UPRIGHT_TIP_UP);

  static final List<LeverEntry> ENTRIES =
      List.of(
          new LeverEntry("mouldTemperature", MouldLevers::temperature),
          new LeverEntry("outOfKiln", (job, owned) -> outOfKiln(job)),
          new LeverEntry("tipUp", (job, owned) -> tipUp(job)),
          new LeverEntry("stands", (job, owned) -> stands(job)),
          new LeverEntry("medium", MouldLevers::medium),
          new LeverEntry("contact", (job, owned) -> contact(job)));

  private MouldLevers() {}

  private static List<Lever> temperature(PourCase job, Owned owned) {
    Mould mould = job.mould();
    double now = mould.temperature().value();
    double liquidus = job.metal().alloy().liquidus();
    return List.of(
        lever("mouldTemperature", JobParameter.MOULD_TEMPERATURE, job)
            .physical(250.0, Math.max(now, liquidus - 1.0))
            .practical(coldest(mould.medium(), now), hottest(mould.medium(), now, owned))
            .marks(owned.marks().heatZero(), owned.marks().heat())
            .effort(
                mould.medium().family() == MouldFamily.SAND
                    ? Effort.WHILE_MOULDING
                    : Effort.AT_THE_FURNACE)
            .make());
  }

  private static Bound coldest(MouldMedium medium, double now) {
    return medium.family() == MouldFamily.INVESTMENT
        ? Bound.practice(Math.min(now, FIRED_COOLS), Reason.GYPSUM_CRACKS)
        : Bound.practice(Math.min(now, COLD_SHOP), Reason.SHOP_HEAT);
  }

  private static Bound hottest(MouldMedium medium, double now, Owned owned) {
    Band ceiling = medium.ceiling();
    Bound bound =
        switch (medium.family()) {
          case SAND -> Bound.practice(BINDER_SMOKES, Reason.BINDER_SMOKES);
          case INVESTMENT ->
              new Bound(
                  Math.min(
                      ceiling.value(), owned.hottestInvestment().orElse(Double.POSITIVE_INFINITY)),
                  ceiling.value() < 1100.0 ? Reason.GYPSUM_SULPHUR : Reason.MOULD_MATERIAL,
                  ceiling.source());
          case SHELL, PERMANENT ->
              new Bound(ceiling.value(), Reason.MOULD_MATERIAL, ceiling.source());
        };
    return bound.at(Math.max(now, bound.value()));
  }

  private static List<Lever> outOfKiln(PourCase job) {
    Optional<Flask> flask = job.mould().flask();
    if (flask.isEmpty()) {
      return List.of();
    }
    double now = flask.get().out().value();
    return List.of(
        lever("outOfKiln", JobParameter.OUT_OF_KILN, job)
            .physical(0.0, 7200.0)
            .practical(
                Bound.practice(Math.min(now, QUICK_OUT), Reason.WALK),
                Bound.practice(Math.max(now, SLOW_OUT), Reason.PATIENCE))
            .marks(0.0, 5.0)
            .make());
  }

  private static List<Lever> tipUp(PourCase job) {
    Orientation stands = job.mould().attitude();
    if (stands.upright()) {
      return List.of();
    }
    double now = stands.angle();
    return List.of(
        lever(
                "tipUp",
                ParameterUnit.ANGLE,
                now,
                (j, v) ->
                    j.mould().attitude().upright()
                        ? j
                        : j.withMould(j.mould().withAttitude(Orientation.tilted(v))))
            .physical(-80.0 * DEGREE, 80.0 * DEGREE)
            .practical(
                Bound.ours(Math.min(now, -BOX_TILT), Reason.BOX_TILT),
                Bound.ours(Math.max(now, BOX_TILT), Reason.BOX_TILT))
            .marks(0.0, DEGREE)
            .effort(Effort.WHILE_MOULDING)
            .make());
  }

  /** Only where no runner lies in the parting plane: its way would be another one upright. */
  private static List<Lever> stands(PourCase job) {
    int now = STANDS.indexOf(job.mould().attitude());
    if (job.gating().runner().isPresent() || now < 0) {
      return List.of();
    }
    return List.of(
        lever(
                "stands",
                ParameterUnit.CHOICE,
                now,
                (j, v) -> j.withMould(j.mould().withAttitude(STANDS.get(v.intValue()))))
            .choices(List.of("flat", "uprightTipDown", "uprightTipUp"))
            .effort(Effort.WHILE_MOULDING)
            .make());
  }

  private static List<Lever> medium(PourCase job, Owned owned) {
    Mould mould = job.mould();
    Owned.OtherMould present =
        new Owned.OtherMould(
            mould.medium().name(),
            mould.medium(),
            mould.temperature(),
            mould.wallThickness(),
            mould.partingCrack());
    List<Owned.OtherMould> moulds =
        Choices.withNow(
            owned.moulds(), m -> m.medium().name().equals(mould.medium().name()), present);
    if (moulds.size() < 2) {
      return List.of();
    }
    return List.of(
        lever(
                "medium",
                ParameterUnit.CHOICE,
                0.0,
                (j, v) -> v == 0.0 ? j : j.withMould(madeOf(j.mould(), moulds.get(v.intValue()))))
            .choices(moulds.stream().map(Owned.OtherMould::name).toList())
            .effort(Effort.OTHER_ROUTE)
            .make());
  }

  private static Mould madeOf(Mould m, Owned.OtherMould other) {
    return new Mould(
        other.medium(),
        other.usualHeat(),
        other.wall(),
        other.medium().family() == MouldFamily.INVESTMENT ? m.flask() : Optional.empty(),
        m.attitude(),
        other.partingCrack(),
        m.behindPressure());
  }

  private static List<Lever> contact(PourCase job) {
    Band band = job.mould().medium().contactLiquid();
    return List.of(
        lever("contact", JobParameter.CONTACT_LIQUID, job)
            .physical(1.0, 1e5)
            .practical(
                new Bound(band.low(), Reason.BAND, band.source()),
                new Bound(band.high(), Reason.BAND, band.source()))
            .marks(0.0, 10.0)
            .effort(Effort.NOT_BY_HAND)
            .make());
  }
}
