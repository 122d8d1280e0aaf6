package lastinch.validation;

import java.util.List;
import java.util.Objects;

/**
 * A study with its lines.
 *
 * @param study what was compared
 * @param rows its lines
 */
public record Outcome(Study study, List<Row> rows) {
  public Outcome {
    Objects.requireNonNull(study, "study");
    rows = List.copyOf(rows);
  }

  /** Runs a study. */
  public static Outcome of(Study study) {
    Rows rows = new Rows();
    study.compare(rows);
    return new Outcome(study, rows.list());
  }

  /** Whether every line agrees. */
  public boolean agrees() {
    return rows.stream().allMatch(Row::agrees);
  }
}
