package lastinch.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A curve of a study: what the source expects and what the product got, point by point. */
public final class StudyCurve {
  /**
   * A point.
   *
   * @param at where
   * @param expected by the source
   * @param got from the product
   */
  public record Point(double at, double expected, double got) {}

  private final String title;
  private final String across;
  private final String up;
  private final List<Point> points = new ArrayList<>();

  StudyCurve(String title, String across, String up) {
    this.title = Objects.requireNonNull(title, "title");
    this.across = Objects.requireNonNull(across, "across");
    this.up = Objects.requireNonNull(up, "up");
  }

  /** Adds a point. */
  public void point(double at, double expected, double got) {
    points.add(new Point(at, expected, got));
  }

  /** As a heading. */
  public String title() {
    return title;
  }

  /** Quantity and unit across. */
  public String across() {
    return across;
  }

  /** Quantity and unit up. */
  public String up() {
    return up;
  }

  /** The points so far. */
  public List<Point> points() {
    return List.copyOf(points);
  }
}
