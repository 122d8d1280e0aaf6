package lastinch.cases.plan.assembly;

import java.util.LinkedHashMap;
import java.util.Map;
import lastinch.cases.format.Node;

/** Every value as typed, by the words that lead to it. */
public final class TypedValues {
  private final Map<String, String> found = new LinkedHashMap<>();

  private TypedValues() {}

  public static Map<String, String> of(Node.Entries map) {
    TypedValues typed = new TypedValues();
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
