package lastinch.cases.plan.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.plan.Assumed;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.solver.material.Band;
import lastinch.solver.material.Citation;

/** Takes values from a case and usual figures where there are none, and keeps a list of those. */
final class Assumptions {
  private final List<Assumed> list = new ArrayList<>();

  List<Assumed> list() {
    return list;
  }

  /** The typed value, else the usual figure, which is put on the list. */
  Band take(Fields fields, String lead, String key, Dimension of, Band usual) {
    return take(fields, lead, key, of, usual, 0.0);
  }

  /**
   * The typed value, else the usual figure. A value typed without a band gets the usual spread.
   *
   * @param spread half-width round a typed value without its own [SI unit], 0 for none
   */
  Band take(Fields fields, String lead, String key, Dimension of, Band usual, double spread) {
    Optional<BandedQuantity> typed = fields.amount(key);
    String path = lead + "/" + key;
    if (typed.isEmpty()) {
      list.add(new Assumed(path, of, usual, fields.saidUnknown(key), false));
      return usual;
    }
    BandedQuantity got = typed.get();
    if (got.banded() || spread == 0.0) {
      return new Band(got.best().si(), got.low(), got.high(), Citation.TYPED);
    }
    double low = got.best().si() - spread;
    if (of != Dimension.HEAT) {
      low = Math.max(0.0, low);
    }
    Band spreadBand =
        new Band(got.best().si(), low, got.best().si() + spread, UsualValues.spread());
    list.add(new Assumed(path, of, spreadBand, false, true));
    return spreadBand;
  }

  /** A usual figure, or the usual spread of a typed one, that was taken. */
  void taken(String path, Dimension of, Band usual, boolean said, boolean spread) {
    list.add(new Assumed(path, of, usual, said, spread));
  }
}
