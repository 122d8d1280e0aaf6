package lastinch.cases.catalogue;

import java.util.Optional;
import lastinch.cases.format.Node;

/** What stands behind a word, if it is of the kind asked for. */
final class Under {
  private Under() {}

  static Optional<Node.Text> text(Node.Entries map, String word) {
    return map.get(word).filter(Node.Text.class::isInstance).map(Node.Text.class::cast);
  }

  static Optional<Node.Items> items(Node.Entries map, String word) {
    return map.get(word).filter(Node.Items.class::isInstance).map(Node.Items.class::cast);
  }

  static Optional<Node.Entries> entries(Node.Entries map, String word) {
    return map.get(word).filter(Node.Entries.class::isInstance).map(Node.Entries.class::cast);
  }
}
