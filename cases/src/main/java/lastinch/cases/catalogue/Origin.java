package lastinch.cases.catalogue;

import java.util.Objects;
import lastinch.cases.format.Span;

/**
 * Where a value stands.
 *
 * @param span in its file
 * @param own whether that is a person's own file, not the catalogue
 */
record Origin(Span span, boolean own) {
  Origin {
    Objects.requireNonNull(span, "span");
  }

  /** File and line, for print. */
  String words() {
    return span.source().name() + ", line " + span.line();
  }
}
