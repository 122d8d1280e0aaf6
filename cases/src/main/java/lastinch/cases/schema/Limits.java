package lastinch.cases.schema;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import lastinch.cases.units.Unit;

/** Prints limits in the unit a person typed. */
public final class Limits {
  private static final MathContext FIGURES = new MathContext(4, RoundingMode.HALF_EVEN);

  private Limits() {}

  /** {@code 0.2 to 60 mm}. */
  public static String show(double low, double high, Unit unit) {
    return figure(low, unit) + " to " + figure(high, unit) + suffix(unit);
  }

  /** {@code 999 degC}: an SI value in a unit, four figures at most. */
  public static String show(double si, Unit unit) {
    return figure(si, unit) + suffix(unit);
  }

  private static String suffix(Unit unit) {
    return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
  }

  private static String figure(double si, Unit unit) {
    BigDecimal rounded = BigDecimal.valueOf(unit.fromSi(si)).round(FIGURES).stripTrailingZeros();
    if (rounded.signum() == 0) {
      return "0";
    }
    boolean plain = Math.abs(rounded.precision() - rounded.scale()) < 7;
    return plain ? rounded.toPlainString() : rounded.toString();
  }
}
