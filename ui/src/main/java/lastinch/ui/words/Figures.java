package lastinch.ui.words;

import java.util.Locale;

/**
 * Numbers as a person reads them off a ruler, a meter or a kitchen scale. The same on every
 * machine, whatever its language.
 */
public final class Figures {
  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final double OUNCE = POUND / 16.0;
  private static final double FOOT = 0.3048;
  private static final double ICE_POINT = 273.15;
  private static final double DEGREE_F = 5.0 / 9.0;
  private static final int SIXTEENTHS = 16;

  private final UnitChoice units;

  public Figures(UnitChoice units) {
    this.units = units;
  }

  public UnitChoice units() {
    return units;
  }

  /** A place or length [m] to what a ruler shows: {@code 214 mm} or {@code 8 7/16 in}. */
  public String ruler(double metres) {
    return rulerBare(metres) + " " + lengthUnit();
  }

  /** The same without its unit. */
  public String rulerBare(double metres) {
    if (units == UnitChoice.MM) {
      return whole(metres * 1e3);
    }
    long sixteenths = Math.round(metres / INCH * SIXTEENTHS);
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

  /** Whether a length [m] is too small for a ruler to show. */
  public boolean vanishes(double metres) {
    return rulerBare(metres).equals("0") || rulerBare(metres).equals("-0");
  }

  /** A thickness or width [m] to what calipers show: {@code 2.8 mm} or {@code 0.11 in}. */
  public String calipers(double metres) {
    return units == UnitChoice.MM
        ? trimmed(metres * 1e3, 1) + " mm"
        : fixed(metres / INCH, 2) + " in";
  }

  public String lengthUnit() {
    return units == UnitChoice.MM ? "mm" : "in";
  }

  /** A temperature [K] in whole degrees: {@code 1098 degC}. */
  public String heat(double kelvin) {
    return heatBare(kelvin) + " " + heatUnit();
  }

  /** The same without its unit. */
  public String heatBare(double kelvin) {
    return whole(heatValue(kelvin));
  }

  /** A temperature [K] as a number in the unit people see. */
  public double heatValue(double kelvin) {
    double celsius = kelvin - ICE_POINT;
    return units == UnitChoice.MM ? celsius : celsius / DEGREE_F + 32.0;
  }

  public String heatUnit() {
    return units == UnitChoice.MM ? "degC" : "degF";
  }

  /**
   * A difference of temperatures [K] in whole degrees of the chosen unit, without a word for it.
   */
  public String degrees(double kelvin) {
    return whole(units == UnitChoice.MM ? kelvin : kelvin / DEGREE_F);
  }

  /** A mass [kg] to what a kitchen scale shows. */
  public String mass(double kilograms) {
    if (units == UnitChoice.MM) {
      return kilograms >= 0.9995
          ? trimmed(kilograms, 2) + " kg"
          : whole(Math.abs(kilograms) < 0.02 ? kilograms * 1e3 : round(kilograms * 1e3, 5)) + " g";
    }
    return kilograms >= POUND
        ? trimmed(kilograms / POUND, 1) + " lb"
        : trimmed(kilograms / OUNCE, 1) + " oz";
  }

  /** A moment or span [s] to a tenth, from 20 s on whole: {@code 1.9 s}. */
  public String seconds(double seconds) {
    return seconds >= 19.95 ? whole(seconds) + " s" : fixed(seconds, 1) + " s";
  }

  /** A speed [m/s]. */
  public String speed(double metresPerSecond) {
    return units == UnitChoice.MM
        ? fixed(metresPerSecond, 1) + " m/s"
        : fixed(metresPerSecond / FOOT, 1) + " ft/s";
  }

  /** A share [-] in whole percent: {@code 20 %}. */
  public String percent(double share) {
    return whole(share * 1e2) + " %";
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

  private static double round(double value, double to) {
    return Math.rint(value / to) * to;
  }
}
