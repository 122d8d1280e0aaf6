package lastinch.cases.catalogue.read;

import java.util.Objects;
import lastinch.cases.format.Span;

/**
 * Where a value stands.
 *
 * @param span in its file
 * @param own whether that is a person's own file, not the catalogue
 */
public record Origin(Span span, boolean own) {
  public Origin {
    Objects.requireNonNull(span, "span");
  }

  /** File and line, for print. */
  public String words() {
    return span.source().name() + ", line " + span.line();
  }
}
