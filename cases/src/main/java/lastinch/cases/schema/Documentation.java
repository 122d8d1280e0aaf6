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
      word.kind().under().ifPresent(p -> collect(path + "/", p, rows));
    }
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

  /**
   * The rows that a typed word means, each with all that may stand under it.
   *
   * @param typed a key, or a word that is taken for it
   */
  public static List<Row> about(Part part, String typed) {
    String key = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    List<Row> all = rows(part);
    List<Row> about = new ArrayList<>();
    for (Row row : all) {
      boolean means =
          row.word().key().equals(key)
              || row.word().twins().contains(key)
              || isColumn(row.word().kind(), key);
      boolean under = about.stream().anyMatch(r -> row.path().startsWith(r.path() + "/"));
      if (means || under) {
        about.add(row);
      }
    }
    return about;
  }

  private static boolean isColumn(Kind kind, String key) {
    return kind instanceof Kind.Table table
        && table.columns().stream().anyMatch(c -> c.key().equals(key) || c.twins().contains(key));
  }

  /** How a word is written, in plain words; empty where other words stand under it. */
  public static String how(Word word) {
    String how = word.kind().under().isPresent() ? "" : word.kind().words();
    String tail = tail(word);
    return how.isEmpty() && !tail.isEmpty() ? tail.substring(2) : how + tail;
  }

  private static String tail(Word word) {
    String tail = word.required() ? "; required" : "";
    if (word.unknown()) {
      tail += "; may be: don't know";
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
      text.append("| `")
          .append(row.path().replace("/", ": "))
          .append("` | ")
          .append(word.help())
          .append(" | ")
          .append(how(word))
          .append(" |\n");
    }
    return text.toString();
  }
}
