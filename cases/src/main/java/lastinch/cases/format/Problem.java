package lastinch.cases.format;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.units.Saying;

/**
 * Something in a file that a person has to put right, or a note about it.
 *
 * @param file as it was named, with its folder as far as needed to find it
 * @param line from 1; 0 when the whole file is meant
 * @param column from 1, in characters; 0 when the whole file is meant
 * @param shown the words of the file that are meant, on one line; may be empty
 * @param said what is the matter
 * @param suggestion what to write instead, when it is known
 */
public record Problem(
    String file, int line, int column, String shown, Saying said, Optional<String> suggestion)
    implements Comparable<Problem> {
  private static final Comparator<Problem> BY_PLACE =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column)
          .thenComparing(p -> p.said().toString())
          .thenComparing(Problem::shown)
          .thenComparing(p -> p.suggestion().orElse(""));

  public Problem {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(shown, "shown");
    Objects.requireNonNull(said, "said");
    Objects.requireNonNull(suggestion, "suggestion");
  }

  /** A problem of a whole file. */
  public static Problem ofFile(String file, Saying said) {
    return new Problem(file, 0, 0, "", said, Optional.empty());
  }

  /** A problem of a whole file, told by the name of a sentence and what stands in its places. */
  public static Problem ofFile(String file, String key, Object... values) {
    return ofFile(file, Saying.of(key, values));
  }

  /** Place as {@code line:column}, or nothing for a whole file. */
  public String place() {
    return line == 0 ? "" : line + ":" + column;
  }

  @Override
  public int compareTo(Problem other) {
    return BY_PLACE.compare(this, other);
  }
}
