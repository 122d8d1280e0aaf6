package lastinch.validation;

import java.util.ArrayList;
import java.util.List;

/** Collects the lines of a study. */
public final class Rows {
  private final List<Row> rows = new ArrayList<>();
  private final List<StudyCurve> curves = new ArrayList<>();

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
  public StudyCurve curve(String title, String across, String up) {
    return add(new StudyCurve(title, across, up, false));
  }

  /** A curve whose axes both go by ratio; quantities and units as above. */
  public StudyCurve ratioCurve(String title, String across, String up) {
    return add(new StudyCurve(title, across, up, true));
  }

  private StudyCurve add(StudyCurve curve) {
    curves.add(curve);
    return curve;
  }

  /** The curves so far. */
  public List<StudyCurve> curves() {
    return List.copyOf(curves);
  }

  /** The lines so far. */
  public List<Row> list() {
    return List.copyOf(rows);
  }
}
