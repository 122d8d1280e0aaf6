package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.study.LookOut;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** Levers in words: their names, their values, which way they are moved, and back again. */
public final class LeverWords {
  private static final double DEGREE = Math.PI / 180;

  private final Sentences sentences;
  private final Figures figures;

  public LeverWords(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** The name of a lever, with its part where there are several. */
  public String name(Lever lever) {
    String name = sentences.say("lever." + lever.key());
    return lever.part().isEmpty()
        ? name
        : sentences.say("lever.part", "lever", name, "part", lever.part());
  }

  /** What a person does to take a lever to a value: pour faster. */
  public String move(Lever lever, double to) {
    if (lever.unit() == ParameterUnit.CHOICE) {
      return name(lever);
    }
    String move = sentences.say("lever." + lever.key() + (to >= lever.now() ? ".more" : ".less"));
    return lever.part().isEmpty()
        ? move
        : sentences.say("lever.part", "lever", move, "part", lever.part());
  }

  /** A value as it is read off. */
  public String value(Lever lever, double value) {
    return switch (lever.unit()) {
      case HEAT -> figures.heat(value);
      case TIME -> seconds(lever, value);
      case LENGTH ->
          lever.step() >= figures.units().unit(Dimension.LENGTH).toSi(1.0)
              ? figures.ruler(value)
              : figures.calipers(value);
      case LENGTH_CHANGE -> change(value);
      case MASS -> figures.mass(value);
      case ANGLE -> angle(value);
      case SHARE -> figures.percent(value);
      case COUNT -> figures.whole(value);
      case CHOICE -> choice(lever, value);
      default -> figures.shown(dimension(lever.unit()), value);
    };
  }

  private String seconds(Lever lever, double value) {
    return lever.step() >= 1.0 ? figures.whole(value) + " s" : figures.seconds(value);
  }

  private String change(double value) {
    if (value == 0.0) {
      return sentences.say("lever.asItIs");
    }
    return sentences.say(
        value > 0.0 ? "lever.thicker.by" : "lever.thinner.by",
        "by",
        figures.calipers(Math.abs(value)));
  }

  private String angle(double value) {
    String degrees = figures.whole(Math.abs(value) / DEGREE);
    if (degrees.equals("0")) {
      return sentences.say("choice.flat");
    }
    return sentences.say(value > 0.0 ? "lever.angle.up" : "lever.angle.down", "degrees", degrees);
  }

  private String choice(Lever lever, double value) {
    String name = lever.choices().get((int) value);
    return sentences.has("choice." + name) ? sentences.say("choice." + name) : name;
  }

  /** From where it is to another value: {@code 6.0 -> 3.1 s}. */
  public String fromTo(Lever lever, double to) {
    return switch (lever.unit()) {
      case LENGTH_CHANGE, CHOICE -> value(lever, to);
      case ANGLE ->
          sentences.say("lever.fromTo", "from", value(lever, lever.now()), "to", value(lever, to));
      default ->
          sentences.say(
              "lever.fromTo", "from", bare(value(lever, lever.now())), "to", value(lever, to));
    };
  }

  private static String bare(String value) {
    int unit = value.lastIndexOf(' ');
    return unit > 0 ? value.substring(0, unit) : value;
  }

  /** Why practice ends where it does. */
  public String reason(Bound bound) {
    return sentences.say("bound." + bound.reason().name());
  }

  /** Values between which a lever was moved; a temperature with why practice ends where it does. */
  public String reach(Lever lever, double low, double high) {
    List<String> all =
        new ArrayList<>(
            List.of("lever", name(lever), "low", value(lever, low), "high", value(lever, high)));
    if (lever.unit() != ParameterUnit.HEAT) {
      return sentences.say("slip.reach", all.toArray(new String[0]));
    }
    all.addAll(List.of("lowReason", reason(lever.practical().low())));
    all.addAll(List.of("highReason", reason(lever.practical().high())));
    return sentences.say("slip.reach.heat", all.toArray(new String[0]));
  }

  /** What to look out for, in a row; empty when there is nothing. */
  public String lookOuts(List<LookOut> all) {
    return String.join("; ", all.stream().map(l -> sentences.say("lookOut." + l.name())).toList());
  }

  /** Every spelling of the levers a plan has, folded, with the lever it means. */
  private Map<String, Lever> spellings(List<Lever> levers) {
    Map<String, Lever> all = new TreeMap<>();
    for (Lever lever : levers) {
      List<String> names = new ArrayList<>(List.of(sentences.say("lever." + lever.key())));
      String also = "lever." + lever.key() + ".also";
      if (sentences.has(also)) {
        names.addAll(List.of(sentences.say(also).split(",")));
      }
      for (String name : names) {
        all.putIfAbsent(fold(name), lever);
        if (!lever.part().isEmpty()) {
          all.put(fold(name + ":" + lever.part()), lever);
        }
      }
    }
    return all;
  }

  private static String fold(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replaceAll(" ?: ?", ":");
  }

  /** The lever a person means. */
  public Optional<Lever> find(List<Lever> levers, String typed) {
    return Optional.ofNullable(spellings(levers).get(fold(typed)));
  }

  /** What is said about a name that no lever has. */
  public String unknown(List<Lever> levers, String typed) {
    Map<String, Lever> spellings = spellings(levers);
    return NearestWord.of(fold(typed), spellings.keySet())
        .map(near -> sentences.say("lever.unknown.near", "word", typed, "near", near))
        .orElseGet(
            () ->
                sentences.say(
                    "lever.unknown",
                    "word",
                    typed,
                    "known",
                    String.join(", ", levers.stream().map(this::spelled).distinct().toList())));
  }

  /** The name as it is typed: {@code gate at:low gate}. */
  public String spelled(Lever lever) {
    String name = sentences.say("lever." + lever.key());
    return lever.part().isEmpty() ? name : name + ":" + lever.part();
  }

  /** A typed value of a lever, in its unit; empty when it is none. */
  public OptionalDouble parse(Lever lever, String typed) {
    if (lever.unit() == ParameterUnit.CHOICE) {
      return OptionalDouble.empty();
    }
    return QuantityText.quantity(typed.strip(), dimension(lever.unit())).value().stream()
        .mapToDouble(Quantity::si)
        .findFirst();
  }

  /** The same for a value that may have left its unit to another one beside it: 2..8 s. */
  public OptionalDouble parseLike(Lever lever, String typed, String beside) {
    OptionalDouble own = parse(lever, typed);
    String unit = beside.strip().replaceFirst("^[-+0-9./ ]*", "");
    return own.isPresent() ? own : parse(lever, typed.strip() + " " + unit);
  }

  /** What is practical, as it would be typed. */
  public String range(Lever lever) {
    return trimmed(lever, lever.practical().low().value())
        + ".."
        + trimmed(lever, lever.practical().high().value())
        + (unit(lever).isEmpty() ? "" : " " + unit(lever));
  }

  private String trimmed(Lever lever, double value) {
    return figures.trimmed(number(lever, value), 2);
  }

  private static Dimension dimension(ParameterUnit unit) {
    return switch (unit) {
      case LENGTH_CHANGE -> Dimension.LENGTH;
      case FACTOR, COUNT, CHOICE -> Dimension.NUMBER;
      default -> Dimension.valueOf(unit.name());
    };
  }

  /** A value of a lever as a number in the unit people see, for an axis or a table. */
  public double number(Lever lever, double si) {
    return lever.unit() == ParameterUnit.ANGLE
        ? si / DEGREE
        : figures.units().unit(dimension(lever.unit())).fromSi(si);
  }

  /** That unit. */
  public String unit(Lever lever) {
    return figures.units().unit(dimension(lever.unit())).symbol();
  }
}
