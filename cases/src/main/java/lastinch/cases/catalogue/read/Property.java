package lastinch.cases.catalogue.read;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.units.Dimension;

/**
 * One word of a materials file: what may stand behind it.
 *
 * @param word as written, also the trade word that is printed
 * @param kind of value
 * @param dimension of a figure or of the second column of a table
 * @param low lowest value that is accepted [SI]
 * @param high highest value that is accepted [SI]
 * @param choices words that are accepted where it is no figure
 * @param required whether a new material cannot do without it
 * @param help one line of explanation
 */
public record Property(
    String word,
    Kind kind,
    Dimension dimension,
    double low,
    double high,
    List<String> choices,
    boolean required,
    String help) {

  enum Kind {
    FIGURE,
    CHOICE,
    CHOICES,
    TEXT,
    TABLE,
    FREEZING
  }

  public Property {
    Objects.requireNonNull(word, "word");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(dimension, "dimension");
    choices = List.copyOf(choices);
    Objects.requireNonNull(help, "help");
  }

  static Property needed(String word, Dimension dimension, double low, double high, String help) {
    return new Property(word, Kind.FIGURE, dimension, low, high, List.of(), true, help);
  }

  static Property extra(String word, Dimension dimension, double low, double high, String help) {
    return new Property(word, Kind.FIGURE, dimension, low, high, List.of(), false, help);
  }

  static Property choice(String word, List<String> choices, String help) {
    return new Property(word, Kind.CHOICE, Dimension.NUMBER, 0.0, 0.0, choices, true, help);
  }

  /** Some of the words, with commas between them. */
  static Property choices(String word, List<String> choices, String help) {
    return new Property(word, Kind.CHOICES, Dimension.NUMBER, 0.0, 0.0, choices, true, help);
  }

  static Property text(String word, String help) {
    return new Property(word, Kind.TEXT, Dimension.NUMBER, 0.0, 0.0, List.of(), false, help);
  }

  static Property table(String word, Dimension dimension, double low, double high, String help) {
    return new Property(word, Kind.TABLE, dimension, low, high, List.of(), false, help);
  }

  static Property freezing(String word, String help) {
    return new Property(word, Kind.FREEZING, Dimension.NUMBER, 0.0, 0.0, List.of(), true, help);
  }

  static Optional<Property> find(List<Property> schema, String word) {
    return schema.stream().filter(p -> p.word().equals(word)).findFirst();
  }
}
