package lastinch.cases.plan.assembly;

import java.util.Locale;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.material.MouldFamily;

/** Usual figures for what a person does not know, in SI units, each with where it comes from. */
public final class UsualValues {
  private static final Citation PRACTICE =
      new Citation(Basis.PRACTICE, "common practice, no source", "");
  private static final Citation ESTIMATE = new Citation(Basis.ESTIMATE, "estimate", "");
  private static final Citation CONTRACTION =
      new Citation(
          Basis.PRACTICE,
          "common practice, no source",
          "patternmaker's tables give 1.3 to 2.2 % and do not agree");
  private static final Citation EXPANSION =
      new Citation(
          Basis.ESTIMATE,
          "estimate",
          "jewellery powders grow about 0.7 %, dental ones up to twice that");

  /** Standard atmosphere [Pa]; ISO 2533:1975. */
  static final double ATMOSPHERE = 101325.0;

  /** How far two views of one quantity may lie apart before it is said: 20 %, our choice. */
  static final double APART = 0.20;

  /** Metal to melt over what mould and gating take [-]. */
  static final Band SPARE_METAL = new Band(1.15, 1.10, 1.20, PRACTICE);

  static final Band WAITING = new Band(20.0, 5.0, 45.0, PRACTICE);
  static final Band RATE =
      new Band(
          0.45,
          0.3,
          0.6,
          new Citation(Basis.PRACTICE, "common practice, no source", "a careful pour by hand"));
  static final Band OUT_OF_KILN = new Band(60.0, 30.0, 120.0, PRACTICE);
  static final Band EDGE_TO_WALL = new Band(0.018, 0.010, 0.025, PRACTICE);
  public static final Band FLASK_WALL = new Band(0.002, 0.001, 0.003, PRACTICE);
  public static final Band SHELL_WALL = new Band(0.008, 0.005, 0.012, PRACTICE);

  /** Share of a time of pouring by which a hand is off [-]. */
  static final double HAND = 0.30;

  /** Seconds by which a walk with the crucible or the flask is off. */
  static final double WALK = 5.0;

  /** A sand mould hotter than any shop has been warmed [K]; 40 degC, our choice. */
  private static final double WARMED = 313.15;

  private UsualValues() {}

  /** Where a spread around a typed value comes from. */
  static Citation spread() {
    return PRACTICE;
  }

  /** How far a reading may be off [K]. */
  public static double readingSpread(String read) {
    return switch (read) {
      case "dipped" -> 15.0;
      case "optical" -> 40.0;
      case "by eye" -> 60.0;
      default -> 50.0;
    };
  }

  /** Heat of a mould nobody measured [K]; the typed scale is Celsius. */
  public static Band mouldHeat(MouldFamily family, CelsiusScale scale) {
    return switch (family) {
      case SAND -> scale.band(20.0, 5.0, 35.0, PRACTICE);
      case INVESTMENT -> scale.band(480.0, 430.0, 620.0, PRACTICE);
      case SHELL -> scale.band(500.0, 200.0, 900.0, ESTIMATE);
      case PERMANENT -> scale.band(200.0, 100.0, 350.0, PRACTICE);
    };
  }

  /** How far the heat of a mould may be off when only a number is given [K]. */
  static double mouldSpread(MouldFamily family, double heat) {
    return family == MouldFamily.SAND && heat < WARMED ? 5.0 : 15.0;
  }

  /** Turns degrees Celsius into kelvin. */
  public interface CelsiusScale {
    double kelvin(double celsius);

    /** A band given in degrees Celsius. */
    default Band band(double value, double low, double high, Citation source) {
      return new Band(kelvin(value), kelvin(low), kelvin(high), source);
    }
  }

  /** Linear contraction from freezing to room temperature [-]. */
  static Band contraction(String alloy) {
    String name = alloy.toLowerCase(Locale.ROOT);
    if (name.contains("brass") && !name.contains("red")) {
      return new Band(0.016, 0.013, 0.0185, CONTRACTION);
    }
    if (name.contains("alumin") && !name.contains("bronze")) {
      return new Band(0.018, 0.0125, 0.022, CONTRACTION);
    }
    if (name.contains("bronze") || name.contains("gunmetal") || name.contains("red brass")) {
      return new Band(0.014, 0.013, 0.016, CONTRACTION);
    }
    return new Band(0.015, 0.010, 0.020, CONTRACTION);
  }

  /** Growth of investment from print to hot mould [-]. */
  static Band investmentGrowth() {
    return new Band(0.0072, 0.007, 0.0145, EXPANSION);
  }
}
