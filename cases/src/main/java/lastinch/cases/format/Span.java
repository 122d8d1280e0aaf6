package lastinch.cases.format;

import java.util.Objects;
import java.util.Optional;
import lastinch.cases.units.OneLine;
import lastinch.cases.units.Saying;

/**
 * A stretch of a file's text.
 *
 * @param source the file
 * @param start offset of its first character
 * @param end offset behind its last character
 */
public record Span(SourceText source, int start, int end) {
  private static final int MOST_SHOWN = 60;

  public Span {
    Objects.requireNonNull(source, "source");
    if (start < 0 || end < start || end > source.text().length()) {
      throw new IllegalArgumentException("span " + start + " to " + end + " outside the text");
    }
  }

  /** Line from 1. */
  public int line() {
    return source.lineOf(start);
  }

  /** Column from 1, in characters as a person counts them. */
  public int column() {
    return source.columnOf(start);
  }

  /** The text itself, as typed. */
  public String text() {
    return source.text().substring(start, end);
  }

  /** The text on one line, cut short when it is long. */
  public String shown() {
    String line = OneLine.of(text());
    int shown = Math.min(line.length(), MOST_SHOWN);
    return shown < line.length() ? line.substring(0, shown) + "..." : line;
  }

  /** A problem at this place. */
  public Problem problem(Saying said, Optional<String> suggestion) {
    return new Problem(source.name(), line(), column(), shown(), said, suggestion);
  }

  /** From the start of this to the end of another stretch of the same file. */
  public Span to(Span other) {
    return new Span(source, start, Math.max(end, other.end));
  }
}
