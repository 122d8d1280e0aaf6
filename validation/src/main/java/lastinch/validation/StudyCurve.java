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
   * @param low end of the range of what was got, {@code got} itself where there is none
   * @param high its other end
   */
  public record Point(double at, double expected, double got, double low, double high) {
    /** Whether what was got has a range. */
    public boolean isRange() {
      return low < high;
    }
  }

  private final String title;
  private final String across;
  private final String up;
  private final boolean byRatio;
  private final List<Point> points = new ArrayList<>();

  StudyCurve(String title, String across, String up, boolean byRatio) {
    this.title = Objects.requireNonNull(title, "title");
    this.across = Objects.requireNonNull(across, "across");
    this.up = Objects.requireNonNull(up, "up");
    this.byRatio = byRatio;
  }

  /** Adds a point. */
  public void point(double at, double expected, double got) {
    point(at, expected, got, got, got);
  }

  /** Adds a point that has a range. */
  public void point(double at, double expected, double got, double low, double high) {
    points.add(new Point(at, expected, got, low, high));
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

  /** Whether both axes go by ratio, ten times as far for ten times as much. */
  public boolean isByRatio() {
    return byRatio;
  }

  /** The points so far. */
  public List<Point> points() {
    return List.copyOf(points);
  }
}
