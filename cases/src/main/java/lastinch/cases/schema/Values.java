package lastinch.cases.schema;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.units.BandedQuantity;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.OneLine;
import lastinch.cases.units.Parsed;
import lastinch.cases.units.QuantityText;
import lastinch.cases.units.Saying;

/** Reads single values; what is wrong with one is added to the problems. */
public final class Values {
  private static final int LONGEST_NAME = 80;
  private static final List<String> RESERVED =
      List.of(
          "boss",
          "cup",
          "runner",
          "sprue",
          "well",
          "piece",
          "mould",
          "flask",
          "tip",
          "thick end",
          "left",
          "right",
          "top",
          "bottom",
          "don't know");

  private Values() {}

  /** The text of a single value, which must be there. */
  public static Optional<String> text(Node node, Problems problems) {
    if (!(node instanceof Node.Text text)) {
      if (!(node instanceof Node.Entries map && map.damaged())) {
        problems.add(node.span(), "wrong.singleValueNeededNot", node.words());
      }
      return Optional.empty();
    }
    if (text.text().isBlank()) {
      problems.add(text.span(), "wrong.missingValueFillTake");
      return Optional.empty();
    }
    return Optional.of(fold(text.text()));
  }

  /** Whether a value says that it is not known. */
  public static boolean isUnknown(Node node) {
    return node instanceof Node.Text text && QuantityText.isUnknown(text.text());
  }

  /** A value with a unit, inside its limits. */
  public static Optional<BandedQuantity> amount(Node node, Kind.Amount kind, Problems problems) {
    Optional<String> text = text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (QuantityText.isUnknown(text.get())) {
      problems.add(node.span(), "wrong.knownGiveMeasuredValueIf");
      return Optional.empty();
    }
    return problems
        .taken(node.span(), QuantityText.banded(text.get(), kind.dimension()))
        .filter(got -> inside(node, kind, got, problems));
  }

  private static boolean inside(
      Node node, Kind.Amount kind, BandedQuantity got, Problems problems) {
    double si = got.best().si();
    if (!(si >= kind.low() && si <= kind.high())) {
      problems.add(
          node.span(), "wrong.allowed", Limits.show(kind.low(), kind.high(), got.best().unit()));
      return false;
    }
    if (got.banded() && !kind.bands()) {
      problems.add(node.span(), "wrong.doesNotCountGive");
      return false;
    }
    if (kind.low() >= 0.0 && got.low() < 0.0) {
      problems.add(node.span(), "wrong.widerThanValueItself");
      return false;
    }
    return true;
  }

  /**
   * How much a second.
   *
   * @param banded in kg/s, or in m3/s when {@code byVolume}
   */
  public record RateValue(BandedQuantity banded, boolean byVolume) {}

  /** A weight or volume per time. */
  public static Optional<RateValue> rate(Node node, Problems problems) {
    Optional<String> text = text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Kind.Amount byMass = Kind.Amount.of(Dimension.MASS_RATE, "0.005 kg/s", "50 kg/s").banded();
    Kind.Amount byVolume = Kind.Amount.of(Dimension.VOLUME_RATE, "0.0005 L/s", "6 L/s").banded();
    boolean volume =
        QuantityText.banded(text.get(), Dimension.VOLUME_RATE)
            instanceof Parsed.Good<BandedQuantity>;
    return amount(node, volume ? byVolume : byMass, problems)
        .map(got -> new RateValue(got, volume));
  }

  /** One of a few words, as printed. */
  public static Optional<String> choice(Node node, Kind.Choice kind, Problems problems) {
    Optional<String> text = text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String folded = text.get().toLowerCase(Locale.ROOT);
    for (String option : kind.options()) {
      if (option.equals(folded)) {
        return Optional.of(option);
      }
    }
    Saying sentence = Saying.of("wrong.oneTheseNeeded", String.join(", ", kind.options()));
    Optional<String> near = NearestWord.of(folded, kind.options());
    problems.add(node.span(), sentence, near);
    return Optional.empty();
  }

  /** A name. */
  public static Optional<String> name(Node node, Problems problems) {
    Optional<String> text = text(node, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String name = text.get();
    if (name.codePointCount(0, name.length()) > LONGEST_NAME
        || name.codePoints().anyMatch(Character::isISOControl)) {
      problems.add(node.span(), "wrong.name180Characters");
      return Optional.empty();
    }
    if (RESERVED.contains(name.toLowerCase(Locale.ROOT))) {
      problems.add(node.span(), "wrong.wordMeaningOwnTake");
      return Optional.empty();
    }
    return Optional.of(name);
  }

  /** The name of another file. */
  static Optional<Path> fileName(Node value, Problems problems) {
    Optional<String> text = text(value, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(text.get()));
    } catch (InvalidPathException e) {
      problems.add(value.span(), "wrong.cannotNameFile");
      return Optional.empty();
    }
  }

  /** Single spaces, nothing at the ends. */
  static String fold(String text) {
    return OneLine.of(text);
  }
}
