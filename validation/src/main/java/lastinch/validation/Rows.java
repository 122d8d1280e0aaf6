package lastinch.validation;

import java.util.ArrayList;
import java.util.List;

/** Collects the lines of a study. */
public final class Rows {
  private final List<Row> rows = new ArrayList<>();

  /** A figure that may be off by a share of what is expected. */
  public void share(String what, String unit, double expected, double got, double share) {
    rows.add(new Row.Figure(what, unit, expected, got, share * Math.abs(expected)));
  }

  /** A figure that may be off by an amount of its own unit. */
  public void within(String what, String unit, double expected, double got, double tolerance) {
    rows.add(new Row.Figure(what, unit, expected, got, tolerance));
  }

  /** A direction that must hold. */
  public void trend(String what, String expected, String got, boolean holds) {
    rows.add(new Row.Trend(what, expected, got, holds));
  }

  /** The lines so far. */
  public List<Row> list() {
    return List.copyOf(rows);
  }
}
