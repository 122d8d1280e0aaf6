package lastinch.ui.json;

import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.study.HowPoured;

/** Parts that the answers of all studies have in common. Units stand in the values' own objects. */
final class StudyJson {
  static final int DIGITS = 6;
  private static final double MILLI = 1e3;

  private StudyJson() {}

  /** How the runs were poured, into an object that is open. */
  static JsonText how(JsonText json, HowPoured how) {
    json.put("solver", how.solver());
    return how.isPlane()
        ? json.put("square_mm", MILLI * how.square().getAsDouble(), DIGITS)
        : json.nothing("square_mm");
  }

  /** What came of a run, into an object that is open. */
  static JsonText glance(JsonText json, RunSummary g) {
    json.put("end", ResultJson.camel(g.end())).put("mark", ResultJson.camel(g.mark()));
    if (!g.answered()) {
      return json;
    }
    for (Measure measure : Measure.ALL) {
      if (measure.unit() == ParameterUnit.CHOICE) {
        json.put(measure.key(), g.get(measure) > 0.0);
      } else {
        String key = measure.key() + suffix(measure.unit());
        json.put(key, number(measure.unit(), g.get(measure)), DIGITS);
      }
    }
    json.put("heldBackBy", ResultJson.camel(g.limitedBy()));
    if (g.meeting().isPresent()) {
      json.put("meeting", ResultJson.camel(g.meeting().get()));
    } else {
      json.nothing("meeting");
    }
    if (g.reason().isPresent()) {
      json.put("reason", ResultJson.camel(g.reason().get()));
    } else {
      json.nothing("reason");
    }
    return json;
  }

  /** Which lever, into an object that is open. */
  static JsonText lever(JsonText json, Lever lever) {
    json.put("lever", lever.key());
    if (lever.part().isEmpty()) {
      json.nothing("part");
    } else {
      json.put("part", lever.part());
    }
    return json.put("unit", unit(lever.unit()));
  }

  /** A value of a lever in the unit that {@link #lever} names; a choice by its name. */
  static JsonText value(JsonText json, String key, Lever lever, double value) {
    return lever.unit() == ParameterUnit.CHOICE
        ? json.put(key, lever.choices().get((int) value))
        : json.put(key, number(lever, value), DIGITS);
  }

  static double number(Lever lever, double value) {
    return number(lever.unit(), value);
  }

  /** A value in the unit that {@link #unit} names. */
  static double number(ParameterUnit unit, double value) {
    return switch (unit) {
      case HEAT -> DisplayUnits.METRIC.unit(Dimension.HEAT).fromSi(value);
      case LENGTH, LENGTH_CHANGE -> MILLI * value;
      case ANGLE -> Math.toDegrees(value);
      case VOLUME -> 1e6 * value;
      case SHARE -> 100.0 * value;
      default -> value;
    };
  }

  private static String suffix(ParameterUnit unit) {
    return switch (unit) {
      case SHARE -> "_percent";
      case SPEED -> "_m_per_s";
      case FACTOR, COUNT -> "";
      default -> "_" + unit(unit);
    };
  }

  static String unit(ParameterUnit unit) {
    return switch (unit) {
      case HEAT -> "degC";
      case HEAT_DIFFERENCE -> "K";
      case COOLING_RATE -> "K/s";
      case TIME -> "s";
      case LENGTH, LENGTH_CHANGE -> "mm";
      case MASS -> "kg";
      case MASS_RATE -> "kg/s";
      case SPEED -> "m/s";
      case VOLUME -> "cm3";
      case ANGLE -> "deg";
      case HEAT_PULL -> "W/m2K";
      case CONDUCTIVITY -> "W/mK";
      case DENSITY -> "kg/m3";
      case PERMEABILITY -> "m2";
      case LATENT_HEAT -> "J/kg";
      case SPECIFIC_HEAT -> "J/kgK";
      case VISCOSITY -> "Pa s";
      case SURFACE_TENSION -> "N/m";
      case SHARE -> "%";
      case FACTOR, COUNT -> "number";
      case CHOICE -> "choice";
    };
  }
}
