package lastinch.cases.plan.assembly;

import java.util.List;
import java.util.Optional;
import lastinch.cases.plan.Materials;
import lastinch.cases.plan.ShopFile;
import lastinch.cases.schema.Tables;
import lastinch.cases.schema.Values;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Pour;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Citation;
import lastinch.solver.material.Curve;
import lastinch.solver.shop.LipLoss;

/** Builds what is in the crucible and what the hand does. */
final class MetalAssembly {
  private final Fields metal;
  private final Alloy alloy;
  private final Optional<ShopFile> shop;
  private final Materials.Common common;
  private final Assumptions taken;

  MetalAssembly(
      Fields metal,
      Alloy alloy,
      Materials.Common common,
      Optional<ShopFile> shop,
      Assumptions taken) {
    this.metal = metal;
    this.alloy = alloy;
    this.common = common;
    this.shop = shop;
    this.taken = taken;
  }

  /**
   * The metal.
   *
   * @param massToRim what mould, gating and cup take [kg]
   */
  Metal build(double massToRim) {
    Band spare = UsualValues.SPARE_METAL;
    Band toMelt =
        new Band(
            spare.value() * massToRim,
            spare.low() * massToRim,
            spare.high() * massToRim,
            spare.source());
    Band melted = taken.take(metal, "metal", "melted", Dimension.MASS, toMelt);
    Band reading = reading();
    Band usualWait =
        shop.filter(s -> s.usualSkim().isPresent())
            .map(s -> Band.typed(s.usualSkim().getAsDouble(), UsualValues.WALK))
            .orElse(UsualValues.WAITING);
    Band waiting =
        taken.take(
            metal,
            "metal",
            "from reading to first metal",
            Dimension.TIME,
            usualWait,
            UsualValues.WALK);
    Band rate =
        taken.take(
            metal,
            "metal",
            "loses while waiting",
            Dimension.COOLING_RATE,
            loss(common.coolingRate(), reading.value()));
    Band lip =
        taken.take(
            metal,
            "metal",
            "loses over the lip",
            Dimension.HEAT_DIFFERENCE,
            loss(common.lipLoss(), reading.value()));
    return new Metal(withStop(), melted.value(), reading, waiting, rate, lip);
  }

  /** A loss on the way to the cup, for what is in the crucible; of usual mass when not said. */
  private Band loss(Band usual, double reading) {
    Band own = LipLoss.forMetal(usual, alloy, reading);
    return metal.amount("melted").map(q -> LipLoss.forMass(own, q.best().si())).orElse(own);
  }

  private Band reading() {
    Optional<ShopFile.Thermocouple> own = shop.flatMap(ShopFile::thermocouple);
    String read =
        metal.word("read").or(() -> own.map(ShopFile.Thermocouple::kind)).orElse("not said");
    Optional<ShopFile.Thermocouple> used = own.filter(t -> t.kind().equals(read));
    double spread =
        used.map(t -> (t.readsHighBy().high() - t.readsHighBy().low()) / 2)
            .filter(half -> half > 0.0)
            .orElse(UsualValues.readingSpread(read));
    Band typed =
        taken.take(metal, "metal", "reads", Dimension.HEAT, alloy.pourTemperature(), spread);
    double off = used.map(t -> t.readsHighBy().value()).orElse(0.0);
    if (off == 0.0 || metal.amount("reads").isEmpty()) {
      return typed;
    }
    taken.taken(
        "shop/thermocouple/reads high by",
        Dimension.HEAT_DIFFERENCE,
        used.orElseThrow().readsHighBy(),
        false,
        false);
    return new Band(typed.value() - off, typed.low() - off, typed.high() - off, typed.source());
  }

  private Alloy withStop() {
    Optional<BandedQuantity> own = metal.amount("mush that stops it");
    if (own.isEmpty()) {
      return alloy;
    }
    return alloy.with(Alloy.Figure.FLOW_STOP, band(own.get(), 1.0));
  }

  private static Band band(BandedQuantity q, double factor) {
    return new Band(q.best().si() * factor, q.low() * factor, q.high() * factor, Citation.TYPED);
  }

  /** What the hand does; a careful pour where nothing is said. */
  Pour pour(Optional<Fields> said) {
    if (said.isEmpty()) {
      return usualPour(false);
    }
    Fields pour = said.get();
    Optional<Values.RateValue> rate = pour.rate("pours at");
    if (rate.isPresent()) {
      double factor = rate.get().byVolume() ? alloy.density(alloy.pourTemperature().value()) : 1.0;
      return new Pour.AtRate(
          hand(pour, "pours at", band(rate.get().banded(), factor), rate.get().banded().banded()));
    }
    Optional<List<Tables.Row>> rows = pour.table("pours as filmed");
    if (rows.isPresent()) {
      return curve(rows.get());
    }
    Optional<Band> empties = seconds(pour, "crucible empties in");
    Optional<Band> full = seconds(pour, "cup is full after");
    if (empties.isPresent() && full.isPresent()) {
      return new Pour.Both(empties.get(), full.get());
    }
    if (empties.isPresent()) {
      return new Pour.Empties(empties.get());
    }
    if (full.isPresent()) {
      return new Pour.CupFull(full.get());
    }
    boolean unknown =
        pour.saidUnknown("crucible empties in")
            || pour.saidUnknown("cup is full after")
            || pour.saidUnknown("pours at");
    return usualPour(unknown);
  }

  private Pour usualPour(boolean said) {
    taken.taken("pour", Dimension.MASS_RATE, UsualValues.RATE, said, false);
    return new Pour.AtRate(UsualValues.RATE);
  }

  private Optional<Band> seconds(Fields pour, String key) {
    return pour.amount(key).map(q -> hand(pour, key, band(q, 1.0), q.banded()));
  }

  /** A typed pour without its own band gets that of a hand. */
  private Band hand(Fields pour, String key, Band typed, boolean banded) {
    if (banded) {
      return typed;
    }
    double half = UsualValues.HAND * typed.value();
    Band spread =
        new Band(typed.value(), typed.value() - half, typed.value() + half, UsualValues.spread());
    Dimension of = key.equals("pours at") ? Dimension.MASS_RATE : Dimension.TIME;
    taken.taken("pour/" + key, of, spread, pour.saidUnknown(key), true);
    return spread;
  }

  private static Pour curve(List<Tables.Row> rows) {
    double[] at = new double[rows.size()];
    double[] rate = new double[rows.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = rows.get(i).cells().get("at").best().si();
      rate[i] = rows.get(i).cells().get("rate").best().si();
    }
    return new Pour.ByCurve(Curve.of(at, rate));
  }
}
