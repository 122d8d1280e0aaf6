package lastinch.cases.catalogue.read;

import java.util.Optional;
import lastinch.cases.format.Node;

/** What stands behind a word, if it is of the kind asked for. */
public final class TypedFact {
  private TypedFact() {}

  public static Optional<Node.Text> text(Node.Entries map, String word) {
    return map.get(word).filter(Node.Text.class::isInstance).map(Node.Text.class::cast);
  }

  public static Optional<Node.Items> items(Node.Entries map, String word) {
    return map.get(word).filter(Node.Items.class::isInstance).map(Node.Items.class::cast);
  }

  public static Optional<Node.Entries> entries(Node.Entries map, String word) {
    return map.get(word).filter(Node.Entries.class::isInstance).map(Node.Entries.class::cast);
  }
}
