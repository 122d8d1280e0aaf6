package lastinch.cases.plan.assembly;

import java.util.Locale;
import lastinch.cases.plan.Materials;
import lastinch.cases.units.Dimension;
import lastinch.solver.material.Band;

/**
 * From what the calipers were put on to the cavity in the mould.
 *
 * @param factor on every length [-]
 * @param perFace added on each face [m]
 */
public record CavitySizes(double factor, double perFace) {

  /** How sizes turn into the cavity's; usual figures go on the list. */
  static CavitySizes of(
      Fields piece, Fields mould, String alloy, Materials materials, Assumptions taken) {
    String are = piece.word("sizes are").orElse("of the pattern").toLowerCase(Locale.ROOT);
    if (are.equals("of the finished casting")) {
      Band usual =
          materials
              .contraction(alloy)
              .map(c -> UsualValues.contraction(alloy).at(c))
              .orElse(UsualValues.contraction(alloy));
      Band larger = taken.take(piece, "piece", "pattern is larger by", Dimension.SHARE, usual);
      return new CavitySizes(1.0 + larger.value(), piece.si("grind off").orElse(0.0));
    }
    if (are.equals("of the print")) {
      Band growth =
          taken.take(
              mould,
              "mould",
              "investment grows by",
              Dimension.SHARE,
              UsualValues.investmentGrowth());
      return new CavitySizes(1.0 + growth.value(), 0.0);
    }
    return new CavitySizes(1.0, 0.0);
  }

  double along(double typed) {
    return typed * factor;
  }

  /** A size between two faces. */
  double across(double typed) {
    return typed * factor + 2.0 * perFace;
  }

  /** A size with one free face. */
  double toFace(double typed) {
    return typed * factor + perFace;
  }
}
