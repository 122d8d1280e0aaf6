package lastinch.validation;

import java.util.ArrayList;
import java.util.List;

/** Collects the lines of a study. */
public final class Rows {
  private final List<Row> rows = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();

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

  /** Something that is only told, with nothing to meet. */
  public void told(String what, String got) {
    rows.add(new Row.Told(what, got));
  }

  /**
   * A curve to be filled with points.
   *
   * @param across quantity and unit
   * @param up quantity and unit
   */
  public Curve curve(String title, String across, String up) {
    Curve curve = new Curve(title, across, up);
    curves.add(curve);
    return curve;
  }

  /** The curves so far. */
  public List<Curve> curves() {
    return List.copyOf(curves);
  }

  /** The lines so far. */
  public List<Row> list() {
    return List.copyOf(rows);
  }
}
