package lastinch.cases.units;

import java.util.Locale;
import java.util.Optional;

/** The two sets of units in which answers are printed. */
public enum DisplayUnits {
  METRIC("mm", "degC", "kg"),
  INCH("in", "degF", "lb");

  private final String length;
  private final String heat;
  private final String mass;

  DisplayUnits(String length, String heat, String mass) {
    this.length = length;
    this.heat = heat;
    this.mass = mass;
  }

  /** The set for a word a person typed: {@code metric}, {@code mm}, {@code inch}, {@code in}. */
  public static Optional<DisplayUnits> named(String word) {
    return switch (word.strip().toLowerCase(Locale.ROOT)) {
      case "metric", "mm" -> Optional.of(METRIC);
      case "inch", "in", "imperial" -> Optional.of(INCH);
      default -> Optional.empty();
    };
  }

  /** The unit in which a kind of value is printed. */
  public Unit unit(Dimension dimension) {
    String symbol =
        switch (dimension) {
          case LENGTH -> length;
          case HEAT, HEAT_DIFFERENCE -> heat;
          case MASS -> mass;
          case MASS_RATE -> mass + "/s";
          case SPEED -> this == METRIC ? "m/s" : "ft/s";
          case VOLUME -> this == METRIC ? "cm3" : "in3";
          default -> dimension.units().get(0).symbol();
        };
    return dimension.unit(symbol).orElseThrow();
  }

  /** An SI value with its unit, rounded to so many decimals. */
  public String show(Dimension dimension, double si, int decimals) {
    Unit unit = unit(dimension);
    return String.format(Locale.ROOT, "%." + decimals + "f", unit.fromSi(si))
        + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
  }
}
