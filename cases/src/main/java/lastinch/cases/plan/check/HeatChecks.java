package lastinch.cases.plan.check;

import java.util.Locale;
import java.util.Optional;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.schema.Limits;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Saying;
import lastinch.cases.units.Unit;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** Whether the heats of metal and mould can be meant. */
final class HeatChecks {
  /** Above the usual pouring range nobody pours by more than this [K]; our choice. */
  private static final double FAR_TOO_HOT = 300.0;

  /** Binder of sand smokes above about 60 degC [K]; common practice, no source. */
  private static final double BINDER_SMOKES = 333.15;

  private static final Unit CELSIUS = Dimension.HEAT.unit("degC").orElseThrow();
  private static final Unit FAHRENHEIT = Dimension.HEAT.unit("degF").orElseThrow();

  private final Fields metal;
  private final Fields mould;
  private final Optional<Alloy> alloy;
  private final Optional<MouldMedium> medium;
  private final Problems problems;

  HeatChecks(
      Fields metal,
      Fields mould,
      Optional<Alloy> alloy,
      Optional<MouldMedium> medium,
      Problems problems) {
    this.metal = metal;
    this.mould = mould;
    this.alloy = alloy;
    this.medium = medium;
    this.problems = problems;
  }

  void check() {
    if (alloy.isEmpty()) {
      return;
    }
    boolean metalSound = metal();
    mould(metalSound);
    ceiling();
    binder();
  }

  private boolean metal() {
    Optional<BandedQuantity> reads = metal.amount("reads");
    if (reads.isEmpty()) {
      return false;
    }
    Alloy a = alloy.get();
    double most = a.pourTemperature().high() + FAR_TOO_HOT;
    double si = reads.get().best().si();
    String name = sentenceName(a.name());
    if (si <= a.liquidus()) {
      problem(
          "reads",
          metal,
          reads.get(),
          si <= a.freezing().endOfFreezing()
              ? Saying.of("wrong.solidBelow", name, both(a.freezing().endOfFreezing()))
              : Saying.of("wrong.startsFreeze", name, both(a.liquidus())),
          a.liquidus(),
          most);
      return false;
    }
    if (si > most) {
      problem(
          "reads",
          metal,
          reads.get(),
          Saying.of("wrong.pouredSo", name, both(a.pourTemperature().value())),
          a.liquidus(),
          most);
      return false;
    }
    return true;
  }

  private void mould(boolean metalSound) {
    Optional<BandedQuantity> heat = mould.amount("temperature");
    if (heat.isEmpty()) {
      return;
    }
    double si = heat.get().best().si();
    double reading = metal.amount("reads").map(q -> q.best().si()).orElse(Double.NaN);
    if (metalSound && si >= reading) {
      problem(
          "temperature",
          mould,
          heat.get(),
          Saying.of("wrong.mouldCannotHotterThan", metal.typed("reads").orElse("")),
          250.0,
          alloy.orElseThrow().liquidus());
    } else if (si >= alloy.orElseThrow().liquidus()) {
      problem(
          "temperature",
          mould,
          heat.get(),
          Saying.of(
              "wrong.mouldHotWouldNever",
              sentenceName(alloy.get().name()).toLowerCase(Locale.ROOT),
              both(alloy.get().liquidus())),
          250.0,
          alloy.get().liquidus());
    }
  }

  private void ceiling() {
    Optional<BandedQuantity> heat = mould.amount("temperature");
    if (heat.isPresent()
        && medium.isPresent()
        && heat.get().best().si() > medium.get().ceiling().value()
        && heat.get().best().si() < alloy.orElseThrow().liquidus()) {
      problems.note(
          mould.span("temperature"),
          "wrong.beyondUsualPracticeUsed",
          medium.get().name(),
          both(medium.get().ceiling().value()));
    }
  }

  /** Oil binder smokes in a sand that was warmed too far. */
  private void binder() {
    Optional<BandedQuantity> heat = mould.amount("temperature");
    boolean sand = medium.filter(m -> m.family() == MouldFamily.SAND).isPresent();
    if (sand
        && heat.isPresent()
        && heat.get().best().si() > BINDER_SMOKES
        && heat.get().best().si() <= medium.orElseThrow().ceiling().value()) {
      problems.note(
          mould.span("temperature"), "wrong.beyondUsualPracticeAbove", both(BINDER_SMOKES));
    }
  }

  /** Says what is the matter, and whether the other scale would make sense of it. */
  private void problem(
      String key, Fields fields, BandedQuantity typed, Saying sentence, double low, double high) {
    Unit unit = typed.best().unit();
    boolean celsius = unit.equals(CELSIUS) || unit.symbol().equals("degC");
    boolean fahrenheit = unit.symbol().equals("degF");
    Unit other = celsius ? FAHRENHEIT : CELSIUS;
    double figure = unit.fromSi(typed.best().si());
    double meant = other.toSi(figure);
    if ((celsius || fahrenheit) && meant > low && meant < high) {
      problems.add(fields.span(key), sentence, figure(figure) + " " + other.symbol());
    } else {
      problems.add(fields.span(key), sentence);
    }
  }

  private static String figure(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String both(double kelvin) {
    return Limits.show(kelvin, CELSIUS) + " (" + Limits.show(kelvin, FAHRENHEIT) + ")";
  }

  private static String sentenceName(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }
}
