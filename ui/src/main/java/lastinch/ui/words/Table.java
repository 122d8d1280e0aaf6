package lastinch.ui.words;

import java.util.List;
import java.util.Objects;

/**
 * A table for a page.
 *
 * @param heading what it holds
 * @param head names of its columns
 * @param rows as many cells each
 */
public record Table(String heading, List<String> head, List<List<String>> rows) {
  public Table {
    Objects.requireNonNull(heading, "heading");
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException(row.size() + " cells under " + head.size());
      }
    }
  }
}
