package lastinch.cases.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes down what may stand in a file, from the rows that also check it. */
public final class Documentation {
  /**
   * A word with the words that lead to it.
   *
   * @param path keys joined by {@code /}
   */
  public record Row(String path, Word word) {}

  private Documentation() {}

  /** All words of a part and of the parts under it, in the order of the day. */
  public static List<Row> rows(Part part) {
    List<Row> rows = new ArrayList<>();
    collect("", part, rows);
    return rows;
  }

  private static void collect(String lead, Part part, List<Row> rows) {
    for (Word word : part.words()) {
      String path = lead + word.key();
      rows.add(new Row(path, word));
      under(word.kind()).ifPresent(p -> collect(path + "/", p, rows));
    }
  }

  /** The part that stands under a word of this kind. */
  static Optional<Part> under(Kind kind) {
    if (kind instanceof Kind.Group group) {
      return Optional.of(group.part());
    }
    if (kind instanceof Kind.Named named) {
      return Optional.of(named.part());
    }
    if (kind instanceof Kind.ListOf list) {
      return under(list.item());
    }
    return Optional.empty();
  }

  /** The words under which a key of a case file belongs, in plain words. */
  static Optional<String> homeOf(String key) {
    for (Row row : rows(Vocabulary.CASE)) {
      if (row.word().key().equals(key)) {
        int slash = row.path().lastIndexOf('/');
        return slash < 0
            ? Optional.of("no other word, at the left edge")
            : Optional.of(row.path().substring(0, slash).replace("/", ", "));
      }
    }
    return Optional.empty();
  }

  /** Plain text for a terminal: every word, indented under the one it belongs to. */
  public static String text(Part part) {
    StringBuilder text = new StringBuilder();
    for (Row row : rows(part)) {
      int depth = (int) row.path().chars().filter(c -> c == '/').count();
      Word word = row.word();
      String indent = "  ".repeat(depth);
      text.append(String.format(Locale.ROOT, "%-34s%s\n", indent + word.key() + ":", word.help()));
      boolean nested = under(word.kind()).isPresent();
      if (!nested) {
        text.append(
            String.format(Locale.ROOT, "%-34s  %s%s\n", "", word.kind().words(), tail(word)));
      }
    }
    return text.toString();
  }

  private static String tail(Word word) {
    String tail = word.required() ? "; must be there" : "";
    if (word.unknown()) {
      tail += "; don't know allowed";
    }
    if (word.applies() != Applies.ALWAYS) {
      tail += "; only " + word.applies().words();
    }
    return tail;
  }

  /** A table for a page. */
  public static String markdown(Part part) {
    StringBuilder text =
        new StringBuilder("| word | what it is | how it is written |\n|---|---|---|\n");
    for (Row row : rows(part)) {
      Word word = row.word();
      String how = under(word.kind()).isPresent() ? "words or lists below" : word.kind().words();
      text.append("| `")
          .append(row.path().replace("/", ": "))
          .append("` | ")
          .append(word.help())
          .append(" | ")
          .append(how)
          .append(tail(word))
          .append(" |\n");
    }
    return text.toString();
  }
}
