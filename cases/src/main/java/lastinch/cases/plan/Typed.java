package lastinch.cases.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import lastinch.cases.format.Node;

/** Every value as typed, by the words that lead to it. */
final class Typed {
  private final Map<String, String> found = new LinkedHashMap<>();

  private Typed() {}

  static Map<String, String> of(Node.Entries map) {
    Typed typed = new Typed();
    typed.collect("", map);
    return typed.found;
  }

  private void collect(String lead, Node node) {
    if (node instanceof Node.Text text) {
      found.put(lead, text.text());
    } else if (node instanceof Node.Entries map) {
      for (Node.Entry entry : map.entries()) {
        collect(lead.isEmpty() ? entry.key() : lead + "/" + entry.key(), entry.value());
      }
    } else if (node instanceof Node.Items items) {
      for (int i = 0; i < items.items().size(); i++) {
        Node item = items.items().get(i);
        String name =
            item instanceof Node.Entries map && map.get("name").orElse(item) instanceof Node.Text t
                ? t.text()
                : Integer.toString(i + 1);
        collect(lead + "/" + name, item);
      }
    }
  }
}
