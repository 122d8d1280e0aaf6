package lastinch.ui.words;

import java.util.Locale;
import java.util.Objects;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.cases.units.Unit;

/**
 * Numbers as a person reads them off a ruler, a meter or a kitchen scale. The same on every
 * machine, whatever its language.
 */
public final class Figures {
  private static final int SIXTEENTHS = 16;

  private final DisplayUnits units;

  public Figures(DisplayUnits units) {
    this.units = Objects.requireNonNull(units, "units");
  }

  public DisplayUnits units() {
    return units;
  }

  private boolean metric() {
    return units == DisplayUnits.METRIC;
  }

  /** A place or length [m] to what a ruler shows: {@code 214 mm} or {@code 8 7/16 in}. */
  public String ruler(double metres) {
    return rulerBare(metres) + " " + lengthUnit();
  }

  /** The same without its unit. */
  public String rulerBare(double metres) {
    if (metric()) {
      return whole(length(metres));
    }
    long sixteenths = Math.round(length(metres) * SIXTEENTHS);
    long inches = sixteenths / SIXTEENTHS;
    long rest = Math.abs(sixteenths % SIXTEENTHS);
    if (rest == 0) {
      return Long.toString(inches);
    }
    long under = SIXTEENTHS;
    while (rest % 2 == 0) {
      rest /= 2;
      under /= 2;
    }
    String sign = sixteenths < 0 && inches == 0 ? "-" : "";
    return sign + (inches == 0 ? "" : inches + " ") + rest + "/" + under;
  }

  /** A length [m] that is not known to the millimetre: {@code 1150 mm}. */
  public String roughly(double metres) {
    double value = length(metres);
    double step = metric() ? (value < 100.0 ? 5.0 : 10.0) : (value < 4.0 ? 0.25 : 0.5);
    return trimmed(Math.rint(value / step) * step, 2) + " " + lengthUnit();
  }

  /** A length [m] beyond which nothing was looked at: {@code 2 m}. */
  public String far(double metres) {
    return metric() ? trimmed(metres, 1) + " m" : roughly(metres);
  }

  /** Whether a length [m] is too small for a ruler to show. */
  public boolean vanishes(double metres) {
    return rulerBare(metres).equals("0");
  }

  /** A thickness or width [m] to what calipers show: {@code 2.8 mm} or {@code 0.11 in}. */
  public String calipers(double metres) {
    return metric()
        ? trimmed(length(metres), 1) + " " + lengthUnit()
        : fixed(length(metres), 2) + " " + lengthUnit();
  }

  /** A length [m] as a number in the unit people see. */
  public double length(double metres) {
    return units.unit(Dimension.LENGTH).fromSi(metres);
  }

  public String lengthUnit() {
    return units.unit(Dimension.LENGTH).symbol();
  }

  /** A temperature [K] in whole degrees: {@code 1098 degC}. */
  public String heat(double kelvin) {
    return whole(heatValue(kelvin)) + " " + units.unit(Dimension.HEAT).symbol();
  }

  /** A temperature [K] as a number in the unit people see. */
  public double heatValue(double kelvin) {
    return units.unit(Dimension.HEAT).fromSi(kelvin);
  }

  public String heatUnit() {
    return units.unit(Dimension.HEAT).symbol();
  }

  /** A mass rate [kg/s] as a number in the unit people see. */
  public double massRate(double kilogramsPerSecond) {
    return units.unit(Dimension.MASS_RATE).fromSi(kilogramsPerSecond);
  }

  public String massRateUnit() {
    return units.unit(Dimension.MASS_RATE).symbol();
  }

  /**
   * A difference of temperatures [K] in whole degrees of the chosen unit, without a word for it.
   */
  public String degrees(double kelvin) {
    return whole(units.unit(Dimension.HEAT_DIFFERENCE).fromSi(kelvin));
  }

  /** A mass [kg] to what a kitchen scale shows. */
  public String mass(double kilograms) {
    double large = units.unit(Dimension.MASS).fromSi(kilograms);
    if (large >= 0.9995) {
      return trimmed(large, metric() ? 2 : 1) + " " + units.unit(Dimension.MASS).symbol();
    }
    String small = metric() ? "g" : "oz";
    double value = Dimension.MASS.unit(small).orElseThrow().fromSi(kilograms);
    if (!metric()) {
      return trimmed(value, 1) + " " + small;
    }
    return whole(value < 20.0 ? value : Math.rint(value / 5.0) * 5.0) + " " + small;
  }

  /** A moment or span [s] to a tenth, from 20 s on whole: {@code 1.9 s}. */
  public String seconds(double seconds) {
    return seconds >= 19.95 ? whole(seconds) + " s" : fixed(seconds, 1) + " s";
  }

  /** A span [s] as one tells it beforehand: {@code 40 s}, {@code 12 min}, {@code 2.5 h}. */
  public String span(double seconds) {
    if (seconds < 10.0) {
      return whole(Math.ceil(seconds)) + " s";
    }
    if (seconds < 90.0) {
      return whole(Math.rint(seconds / 5.0) * 5.0) + " s";
    }
    return seconds < 5400.0
        ? whole(seconds / 60.0) + " min"
        : trimmed(Math.rint(seconds / 1800.0) / 2.0, 1) + " h";
  }

  /** A speed [m/s]. */
  public String speed(double metresPerSecond) {
    return speed(metresPerSecond, 1);
  }

  /** A speed [m/s] with so many decimals. */
  public String speed(double metresPerSecond, int decimals) {
    return units.show(Dimension.SPEED, metresPerSecond, decimals);
  }

  /** A share [-] in whole percent: {@code 20 %}. */
  public String percent(double share) {
    return whole(share * 1e2) + " %";
  }

  /** Any kind of value in the unit people see, to three figures. */
  public String shown(Dimension dimension, double si) {
    return (shownBare(dimension, si) + " " + unit(dimension).symbol()).strip();
  }

  /** The same without its unit. */
  public String shownBare(Dimension dimension, double si) {
    double value = unit(dimension).fromSi(si);
    double size = Math.abs(value);
    boolean degrees = dimension == Dimension.HEAT || dimension == Dimension.HEAT_DIFFERENCE;
    if (degrees || size >= 100.0 || size == 0.0) {
      return whole(value);
    }
    if (dimension == Dimension.LENGTH && !metric()) {
      return trimmed(value, size < 1e-3 ? 4 : size < 1.0 ? 3 : 2); // a shop's gauges show thou
    }
    return trimmed(value, Math.max(0, 2 - (int) Math.floor(Math.log10(size))));
  }

  private Unit unit(Dimension dimension) {
    return dimension == Dimension.COOLING_RATE && !metric()
        ? dimension.unit("degF/s").orElseThrow()
        : units.unit(dimension);
  }

  /** A whole number. */
  public String whole(double value) {
    return Long.toString(Math.round(value));
  }

  /** A number with so many decimals. */
  public String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /** A number with at most so many decimals and no useless zeros. */
  public String trimmed(double value, int decimals) {
    String text = fixed(value, decimals);
    if (text.indexOf('.') >= 0) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return text.equals("-0") ? "0" : text;
  }
}
