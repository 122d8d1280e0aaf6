package lastinch.cases.units;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Kinds of value, each with the closed list of units in which it may be written. */
public enum Dimension {
  LENGTH("a length", "m", "mm 1 1000", "cm 1 100", "m 1 1", "in,\" 254 10000", "ft 3048 10000"),
  /** A temperature on a scale. */
  HEAT(
      "a temperature",
      "K",
      "degC,\u00b0C,C,deg_C celsius",
      "degF,\u00b0F,F,deg_F fahrenheit",
      "K 1 1"),
  /** A number of degrees between two temperatures; never shifted. */
  HEAT_DIFFERENCE(
      "a number of degrees", "K", "degC,\u00b0C,C,deg_C 1 1", "degF,\u00b0F,F,deg_F 5 9", "K 1 1"),
  MASS("a weight", "kg", "kg 1 1", "g 1 1000", "lb 45359237 100000000", "oz 45359237 1600000000"),
  TIME("a time", "s", "s 1 1", "min 60 1", "h 3600 1", "ms 1 1000"),
  MASS_RATE("a weight per time", "kg/s", "kg/s 1 1", "g/s 1 1000", "lb/s 45359237 100000000"),
  VOLUME_RATE(
      "a volume per time", "m3/s", "L/s,l/s 1 1000", "cm3/s,ml/s,mL/s 1 1000000", "m3/s 1 1"),
  ANGLE("an angle", "rad", "deg,\u00b0 angle"),
  DENSITY("a weight per volume", "kg/m3", "g/cm3,g/cm\u00b3 1000 1", "kg/m3,kg/m\u00b3 1 1"),
  VOLUME(
      "a volume",
      "m3",
      "cm3,ml,mL,cm\u00b3 1 1000000",
      "L,l 1 1000",
      "mm3,mm\u00b3 1 1000000000",
      "in3,in\u00b3 16387064 1000000000000"),
  SPEED(
      "a speed",
      "m/s",
      "m/s 1 1",
      "mm/s 1 1000",
      "cm/s 1 100",
      "in/s 254 10000",
      "ft/s 3048 10000"),
  PRESSURE("a pressure", "Pa", "kPa 1000 1", "Pa 1 1", "mbar 100 1", "bar 100000 1"),
  SHARE("a percentage", "-", "% 1 100"),
  NUMBER("a plain number", "-", " 1 1"),
  HEAT_PULL(
      "how fast heat is drawn", "W/(m2 K)", "W/m2K,W/(m2_K),W/m2/K,W/(m\u00b2_K),W/m\u00b2K 1 1"),
  CONDUCTIVITY("a conductivity", "W/(m K)", "W/mK,W/(m_K),W/m/K 1 1"),
  SPECIFIC_HEAT(
      "a specific heat", "J/(kg K)", "J/kgK,J/(kg_K),J/kg/K 1 1", "kJ/kgK,kJ/(kg_K) 1000 1"),
  LATENT_HEAT("a heat per weight", "J/kg", "kJ/kg 1000 1", "J/kg 1 1"),
  VISCOSITY("a viscosity", "Pa s", "mPa_s,mPa.s 1 1000", "Pa_s,Pa.s 1 1"),
  SURFACE_TENSION("a surface tension", "N/m", "N/m 1 1", "mN/m 1 1000"),
  COOLING_RATE(
      "degrees per time", "K/s", "K/s,degC/s,C/s,\u00b0C/s 1 1", "degF/s,F/s,\u00b0F/s 5 9"),
  DENSITY_SLOPE("a weight per volume and degree", "kg/(m3 K)", "kg/m3K,kg/(m3_K),kg/m3/K 1 1"),
  EXPANSION("a growth per degree", "1/K", "1/K 1 1"),
  PERMEABILITY("a permeability", "m2", "m2,m\u00b2 1 1", "um2 1 1000000000000"),
  SLOPE("degrees per percent", "K/%", "K/%,degC/% 1 1"),
  BEND("degrees per percent squared", "K/%2", "K/%2,degC/%2 1 1"),
  POWER("a power", "W", "W 1 1", "kW 1000 1");

  /** pi to 40 figures; halves a turn. */
  private static final String PI = "3.141592653589793238462643383279502884197";

  private final String words;
  private final String siUnit;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list
  private final List<Unit> units;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable map
  private final Map<String, Unit> bySpelling;

  Dimension(String words, String siUnit, String... rows) {
    this.words = words;
    this.siUnit = siUnit;
    List<Unit> all = new ArrayList<>();
    Map<String, Unit> spelled = new LinkedHashMap<>();
    for (String row : rows) {
      String[] part = row.split(" ", -1);
      String[] spellings = part[0].split(",", -1);
      String symbol = spellings[0].replace('_', ' ');
      Unit unit;
      switch (part[1]) {
        case "celsius" -> unit = Unit.celsius(symbol);
        case "fahrenheit" -> unit = Unit.fahrenheit(symbol);
        case "angle" -> unit = Unit.scaled(symbol, PI, "180");
        default -> unit = Unit.scaled(symbol, part[1], part[2]);
      }
      all.add(unit);
      for (String spelling : spellings) {
        spelled.put(spelling.replace('_', ' '), unit);
      }
    }
    this.units = List.copyOf(all);
    this.bySpelling = Collections.unmodifiableMap(spelled);
  }

  /** What a value of this kind is, with its article. */
  public String words() {
    return words;
  }

  /** The SI unit of the converted value. */
  public String siUnit() {
    return siUnit;
  }

  /** One unit for each row, in the order in which they are offered. */
  public List<Unit> units() {
    return units;
  }

  /** The unit for an exact spelling. */
  public Optional<Unit> unit(String spelling) {
    return Optional.ofNullable(bySpelling.get(OneLine.of(spelling)));
  }

  /** All spellings, for documentation. */
  public List<String> spellings() {
    return List.copyOf(bySpelling.keySet());
  }

  /** The units as they are offered in a sentence: {@code mm, cm, m, in or ft}. */
  public String offered() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < units.size(); i++) {
      if (i > 0) {
        text.append(i == units.size() - 1 ? " or " : ", ");
      }
      text.append(units.get(i).symbol());
    }
    return text.toString();
  }

  /** The kind of band: a heat is uncertain by a number of degrees, all else by its own kind. */
  public Dimension difference() {
    return this == HEAT ? HEAT_DIFFERENCE : this;
  }
}
