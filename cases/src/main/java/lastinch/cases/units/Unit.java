package lastinch.cases.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * A unit as it may be written. SI value = (typed + shift) x numerator / denominator + zero.
 *
 * @param symbol as printed
 * @param shift added to the typed figure before scaling
 * @param numerator of the scale
 * @param denominator of the scale
 * @param zero SI value of the shifted figure 0
 */
public record Unit(
    String symbol,
    BigDecimal shift,
    BigDecimal numerator,
    BigDecimal denominator,
    BigDecimal zero) {
  private static final MathContext FIGURES = new MathContext(40);

  /** Where the Celsius scale starts [K]. The International System of Units, 9th edition, 2.3.1. */
  private static final BigDecimal ICE = new BigDecimal("273.15");

  public Unit {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(shift, "shift");
    Objects.requireNonNull(numerator, "numerator");
    Objects.requireNonNull(denominator, "denominator");
    Objects.requireNonNull(zero, "zero");
  }

  static Unit scaled(String symbol, String numerator, String denominator) {
    return new Unit(
        symbol,
        BigDecimal.ZERO,
        new BigDecimal(numerator),
        new BigDecimal(denominator),
        BigDecimal.ZERO);
  }

  static Unit celsius(String symbol) {
    return new Unit(symbol, BigDecimal.ZERO, BigDecimal.ONE, BigDecimal.ONE, ICE);
  }

  static Unit fahrenheit(String symbol) {
    return new Unit(symbol, new BigDecimal("-32"), new BigDecimal("5"), new BigDecimal("9"), ICE);
  }

  /** The SI value of a typed figure, rounded once at the very end. */
  public double toSi(BigDecimal typed) {
    return typed
        .add(shift)
        .multiply(numerator)
        .divide(denominator, FIGURES)
        .add(zero)
        .doubleValue();
  }

  /** The SI value of a figure in this unit. */
  public double toSi(double typed) {
    return toSi(BigDecimal.valueOf(typed));
  }

  /** What would have to be typed in this unit to mean an SI value. */
  public double fromSi(double si) {
    return BigDecimal.valueOf(si)
        .subtract(zero)
        .multiply(denominator)
        .divide(numerator, FIGURES)
        .subtract(shift)
        .doubleValue();
  }
}
