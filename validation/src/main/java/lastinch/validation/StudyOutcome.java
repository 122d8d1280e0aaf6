package lastinch.validation;

import java.util.List;
import java.util.Objects;

/**
 * A study with its lines.
 *
 * @param study what was compared
 * @param rows its lines
 * @param curves its curves
 */
public record StudyOutcome(Study study, List<Row> rows, List<StudyCurve> curves) {
  public StudyOutcome {
    Objects.requireNonNull(study, "study");
    rows = List.copyOf(rows);
    curves = List.copyOf(curves);
  }

  /** Runs a study. */
  public static StudyOutcome of(Study study) {
    Rows rows = new Rows();
    study.compare(rows);
    return new StudyOutcome(study, rows.list(), rows.curves());
  }

  /** Whether every line agrees. */
  public boolean agrees() {
    return rows.stream().allMatch(Row::agrees);
  }
}
