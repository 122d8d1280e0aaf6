package lastinch.cases.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers, values with units and bands from the text of a file. */
public final class QuantityText {
  private static final MathContext FIGURES = new MathContext(40);
  private static final int MOST_CHARACTERS = 200;
  private static final int MOST_EXPONENT = 400;
  private static final Pattern NUMBER =
      Pattern.compile(
          "([+-]?)(?:(\\d+)"
              + " (\\d+)/(\\d+)|(\\d+)/(\\d+)|((?:\\d+\\.?\\d*|\\.\\d+)(?:[eE]([+-]?\\d+))?))");
  private static final Pattern COMMA = Pattern.compile("^([+-]?\\d+),(\\d+)(.*)$");
  private static final Pattern BAND = Pattern.compile("\\+-|\u00b1|\\+/-");
  private static final Pattern PER = Pattern.compile("(.+?) (?:per|to the|in a) (.+)");
  private static final Pattern POUNDS = Pattern.compile("^(.+?) ?lb,? (.+?) ?oz$");

  private static final Map<String, String> LONG_NAMES =
      Map.ofEntries(
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("''", "in"),
          Map.entry("millimetre", "mm"),
          Map.entry("millimetres", "mm"),
          Map.entry("millimeters", "mm"),
          Map.entry("feet", "ft"),
          Map.entry("foot", "ft"),
          Map.entry("sec", "s"),
          Map.entry("secs", "s"),
          Map.entry("second", "s"),
          Map.entry("seconds", "s"),
          Map.entry("minute", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hour", "h"),
          Map.entry("hours", "h"),
          Map.entry("hr", "h"),
          Map.entry("hrs", "h"),
          Map.entry("lbs", "lb"),
          Map.entry("pound", "lb"),
          Map.entry("pounds", "lb"),
          Map.entry("ounce", "oz"),
          Map.entry("ounces", "oz"),
          Map.entry("kilo", "kg"),
          Map.entry("kilos", "kg"),
          Map.entry("gram", "g"),
          Map.entry("grams", "g"),
          Map.entry("celsius", "degC"),
          Map.entry("fahrenheit", "degF"),
          Map.entry("degrees c", "degC"),
          Map.entry("degrees f", "degF"),
          Map.entry("degrees", "deg"),
          Map.entry("degree", "deg"),
          Map.entry("percent", "%"),
          Map.entry("per cent", "%"),
          Map.entry("kelvin", "K"));

  private QuantityText() {}

  /** Whether a text says that the value is not known. */
  public static boolean isUnknown(String text) {
    String plain = tidy(text).toLowerCase(Locale.ROOT).replace('\u2019', '\'');
    return plain.equals("don't know") || plain.equals("dont know") || plain.equals("do not know");
  }

  /** A number without a unit. */
  public static Parsed<BigDecimal> number(String text) {
    String plain = tidy(text);
    Head head = head(plain);
    if (head.refusal.isPresent()) {
      return head.refusal.get();
    }
    if (!head.rest.isEmpty()) {
      return Parsed.bad(
          Saying.of("wrong.plainNumberNeededWithout", head.rest),
          plain.substring(0, plain.length() - head.rest.length()).strip());
    }
    return Parsed.good(head.value);
  }

  /** A value of a kind; a unit is required where the kind has one. */
  public static Parsed<Quantity> quantity(String text, Dimension dimension) {
    String plain = tidy(text);
    if (dimension == Dimension.MASS) {
      Matcher pounds = POUNDS.matcher(plain);
      if (pounds.matches()) {
        return pounds(text, pounds.group(1), pounds.group(2));
      }
    }
    if (dimension == Dimension.SHARE) {
      Matcher per = PER.matcher(plain);
      if (per.matches()) {
        return ratio(text, per.group(1), per.group(2));
      }
    }
    Head head = head(plain);
    if (head.refusal.isPresent()) {
      return refusedQuantity(head.refusal.get());
    }
    return withUnit(text, plain, head, dimension);
  }

  /** A share given as one length on another, as on a shrink rule: 1/8 in per ft. */
  private static Parsed<Quantity> ratio(String text, String part, String whole) {
    String named = LONG_NAMES.getOrDefault(whole.toLowerCase(Locale.ROOT), whole);
    boolean one = Dimension.LENGTH.unit(named).isPresent();
    Parsed<Quantity> of = quantity(one ? "1 " + named : whole, Dimension.LENGTH);
    Parsed<Quantity> top = quantity(part, Dimension.LENGTH);
    if (top instanceof Parsed.Bad<Quantity> || of instanceof Parsed.Bad<Quantity>) {
      return top instanceof Parsed.Bad<Quantity> ? top : of;
    }
    double length = of.value().orElseThrow().si();
    if (!(length > 0.0)) {
      return Parsed.bad("wrong.nothingCanDivided0");
    }
    Unit percent = Dimension.SHARE.unit("%").orElseThrow();
    return Parsed.good(
        new Quantity(top.value().orElseThrow().si() / length, percent, text.strip()));
  }

  /** A value of a kind, with or without a band after it. */
  public static Parsed<BandedQuantity> banded(String text, Dimension dimension) {
    String plain = tidy(text);
    Matcher sign = BAND.matcher(plain);
    if (!sign.find()) {
      Parsed<Quantity> bare = quantity(text, dimension);
      if (bare instanceof Parsed.Bad<Quantity> bad) {
        return bad.as();
      }
      Quantity q = bare.value().orElseThrow();
      return Parsed.good(new BandedQuantity(q, q.si(), q.si(), false));
    }
    Parsed<Quantity> best = quantity(plain.substring(0, sign.start()), dimension);
    if (best instanceof Parsed.Bad<Quantity> bad) {
      return bad.as();
    }
    String halfText = plain.substring(sign.end()).strip();
    Quantity q = best.value().orElseThrow();
    Parsed<Double> half = halfWidth(halfText, q, dimension);
    if (half instanceof Parsed.Bad<Double> bad) {
      return bad.as();
    }
    double width = half.value().orElseThrow();
    if (width < 0.0) {
      return Parsed.bad(Saying.of("wrong.howSureYouCannot"), halfText.replaceFirst("^-\\s*", ""));
    }
    return Parsed.good(
        new BandedQuantity(
            new Quantity(q.si(), q.unit(), text.strip()), q.si() - width, q.si() + width, true));
  }

  private static Parsed<Double> halfWidth(String text, Quantity q, Dimension dimension) {
    Head head = head(text);
    if (head.refusal.isPresent()) {
      Parsed.Bad<BigDecimal> bad = (Parsed.Bad<BigDecimal>) head.refusal.get();
      return bad.as();
    }
    if (head.rest.equals("%") && dimension != Dimension.SHARE) {
      if (dimension == Dimension.HEAT) {
        return Parsed.bad(
            Saying.of("wrong.temperatureUncertainDegreesNot"), "+- 15 " + q.unit().symbol());
      }
      return Parsed.good(
          Math.abs(q.si()) * head.value.divide(BigDecimal.valueOf(100), FIGURES).doubleValue());
    }
    Parsed<Quantity> width = withUnit(text, text, head, dimension.difference());
    if (width instanceof Parsed.Bad<Quantity> bad) {
      return bad.as();
    }
    return Parsed.good(width.value().orElseThrow().si());
  }

  private static Parsed<Quantity> pounds(String text, String poundText, String ounceText) {
    Parsed<BigDecimal> pounds = number(poundText);
    if (pounds instanceof Parsed.Bad<BigDecimal> bad) {
      return bad.as();
    }
    Parsed<BigDecimal> ounces = number(ounceText);
    if (ounces instanceof Parsed.Bad<BigDecimal> bad) {
      return bad.as();
    }
    Unit lb = Dimension.MASS.unit("lb").orElseThrow();
    BigDecimal sum =
        pounds
            .value()
            .orElseThrow()
            .add(ounces.value().orElseThrow().divide(BigDecimal.valueOf(16), FIGURES));
    return Parsed.good(new Quantity(lb.toSi(sum), lb, text.strip()));
  }

  private static Parsed<Quantity> withUnit(
      String text, String plain, Head head, Dimension dimension) {
    Optional<Unit> unit = dimension.unit(head.rest);
    if (unit.isPresent()) {
      double si = unit.get().toSi(head.value);
      if (!Double.isFinite(si)) {
        return Parsed.bad("wrong.numberFarTooLarge");
      }
      return Parsed.good(new Quantity(si, unit.get(), text.strip()));
    }
    String numberText = plain.substring(0, plain.length() - head.rest.length()).strip();
    if (head.rest.isEmpty()) {
      return missingUnit(numberText, dimension);
    }
    if (dimension == Dimension.NUMBER) {
      return Parsed.bad(Saying.of("wrong.plainNumberNeededWithout", head.rest), numberText);
    }
    for (Dimension other : Dimension.values()) {
      if (other != Dimension.NUMBER && other.unit(head.rest).isPresent()) {
        return Parsed.bad(
            "wrong.neededUnitUnitsFit",
            capital(dimension.words()),
            head.rest,
            other.words(),
            dimension.offered());
      }
    }
    Optional<String> nearest = nearestUnit(head.rest, dimension);
    Saying sentence = Saying.of("wrong.notUnitKnownUnits", head.rest, dimension.offered());
    return new Parsed.Bad<>(sentence, nearest.map(n -> numberText + " " + n));
  }

  private static Parsed<Quantity> missingUnit(String number, Dimension dimension) {
    List<Unit> units = dimension.units();
    if (dimension == Dimension.LENGTH) {
      return Parsed.bad("wrong.millimetresInchesWriteMm", number, number);
    }
    if (dimension == Dimension.HEAT || dimension == Dimension.HEAT_DIFFERENCE) {
      return Parsed.bad("wrong.degcDegfWriteDegc", number, number);
    }
    if (units.size() == 1) {
      return Parsed.bad(Saying.of("wrong.unitMissing"), number + " " + units.get(0).symbol());
    }
    return Parsed.bad(
        "wrong.unitMissingWrite", number, units.get(0).symbol(), number, units.get(1).symbol());
  }

  private static Optional<String> nearestUnit(String typed, Dimension dimension) {
    String lower = typed.toLowerCase(Locale.ROOT).replace(".", "");
    return dimension.spellings().stream()
        .filter(s -> s.toLowerCase(Locale.ROOT).equals(lower) || s.equals(LONG_NAMES.get(lower)))
        .findFirst();
  }

  /** A number at the start of a text, what follows it, or why there is none. */
  private record Head(BigDecimal value, String rest, Optional<Parsed<BigDecimal>> refusal) {
    static Head refused(Saying said, Optional<String> suggestion) {
      return new Head(BigDecimal.ZERO, "", Optional.of(new Parsed.Bad<>(said, suggestion)));
    }
  }

  private static Head head(String plain) {
    if (plain.isEmpty()) {
      return Head.refused(Saying.of("wrong.missingValue"), Optional.empty());
    }
    if (plain.length() > MOST_CHARACTERS) {
      return Head.refused(Saying.of("wrong.farTooLongValue"), Optional.empty());
    }
    Matcher comma = COMMA.matcher(plain);
    if (comma.matches()) {
      return Head.refused(
          Saying.of("wrong.useDecimalPointNot"),
          Optional.of(comma.group(1) + "." + comma.group(2) + comma.group(3)));
    }
    Matcher m = NUMBER.matcher(plain);
    if (!m.lookingAt()) {
      return Head.refused(notANumber(plain), Optional.empty());
    }
    String rest = plain.substring(m.end()).strip();
    if (!rest.isEmpty() && rest.charAt(0) == ':') {
      return Head.refused(Saying.of("wrong.clockTimeRatioCannot"), Optional.empty());
    }
    String exponent = m.group(8);
    if (exponent != null
        && (exponent.length() > 5 || Math.abs(Integer.parseInt(exponent)) > MOST_EXPONENT)) {
      return Head.refused(Saying.of("wrong.numberFarOutsideAnything"), Optional.empty());
    }
    return value(m, rest);
  }

  private static Head value(Matcher m, String rest) {
    BigDecimal value;
    if (m.group(7) != null) {
      value = new BigDecimal(m.group(7));
    } else {
      boolean mixed = m.group(2) != null;
      BigDecimal top = new BigDecimal(m.group(mixed ? 3 : 5));
      BigDecimal bottom = new BigDecimal(m.group(mixed ? 4 : 6));
      if (bottom.signum() == 0) {
        return Head.refused(Saying.of("wrong.nothingCanDivided0"), Optional.empty());
      }
      value = top.divide(bottom, FIGURES);
      if (mixed) {
        value = value.add(new BigDecimal(m.group(2)));
      }
    }
    if (m.group(1).equals("-")) {
      value = value.negate();
    }
    return new Head(value, rest, Optional.empty());
  }

  private static Saying notANumber(String plain) {
    String lower = plain.toLowerCase(Locale.ROOT);
    return switch (lower) {
      case "yes", "no", "on", "off", "true", "false" ->
          Saying.of("wrong.numberUnitNeededNot", lower);
      case "nan", ".nan", "inf", ".inf", "-inf", "-.inf", "infinity", "-infinity" ->
          Saying.of("wrong.noNumberAnyoneCan");
      case "unknown", "not known", "not sure", "no idea", "?", "-", "none", "any", "n/a", "tbd" ->
          Saying.of("wrong.numberNeededIfYou");
      default -> Saying.of("wrong.numberNeeded");
    };
  }

  private static Parsed<Quantity> refusedQuantity(Parsed<BigDecimal> refusal) {
    return ((Parsed.Bad<BigDecimal>) refusal).as();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Single spaces, plain minus signs, nothing at the ends. */
  private static String tidy(String text) {
    return OneLine.of(text.replace('\u2212', '-'));
  }
}
