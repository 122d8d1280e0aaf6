package lastinch.solver.casting;

import java.util.Objects;

/** The middle line of a limb in the parting plane: straight from point to point. Immutable. */
public final class Centreline implements LimbCourse {
  private final String limb;
  private final double[] x;
  private final double[] y;
  private final double[] at;

  /**
   * A line.
   *
   * @param limb name of the limb
   * @param x points from the thick end on [m]
   * @param y points [m]
   */
  public Centreline(String limb, double[] x, double[] y) {
    this.limb = Objects.requireNonNull(limb, "limb");
    if (x.length < 2 || x.length != y.length) {
      throw new IllegalArgumentException("a line of " + x.length + " and " + y.length + " points");
    }
    this.x = x.clone();
    this.y = y.clone();
    at = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      double dx = x[i] - x[i - 1];
      double dy = y[i] - y[i - 1];
      at[i] = at[i - 1] + Math.sqrt(dx * dx + dy * dy);
    }
  }

  @Override
  public String limb() {
    return limb;
  }

  /** Number of points. */
  public int size() {
    return x.length;
  }

  @Override
  public double length() {
    return at[at.length - 1];
  }

  @Override
  public double xAt(double along) {
    int i = stretch(along);
    return x[i] + share(i, along) * (x[i + 1] - x[i]);
  }

  @Override
  public double yAt(double along) {
    int i = stretch(along);
    return y[i] + share(i, along) * (y[i + 1] - y[i]);
  }

  @Override
  public double headingAt(double along) {
    int i = stretch(along);
    return StrictMath.atan2(y[i + 1] - y[i], x[i + 1] - x[i]);
  }

  /** Distance along the line of the place on it that is nearest to a point [m]. */
  public double nearest(double px, double py) {
    double best = Double.POSITIVE_INFINITY;
    double found = 0.0;
    for (int i = 0; i + 1 < x.length; i++) {
      double dx = x[i + 1] - x[i];
      double dy = y[i + 1] - y[i];
      double square = dx * dx + dy * dy;
      double s =
          square == 0.0
              ? 0.0
              : Math.max(0.0, Math.min(1.0, ((px - x[i]) * dx + (py - y[i]) * dy) / square));
      double ox = px - x[i] - s * dx;
      double oy = py - y[i] - s * dy;
      double off = ox * ox + oy * oy;
      if (off < best) {
        best = off;
        found = at[i] + s * (at[i + 1] - at[i]);
      }
    }
    return found;
  }

  private int stretch(double along) {
    int i = 0;
    while (i < x.length - 2 && along > at[i + 1]) {
      i++;
    }
    return i;
  }

  private double share(int i, double along) {
    double length = at[i + 1] - at[i];
    return length == 0.0 ? 0.0 : Math.max(0.0, Math.min(1.0, (along - at[i]) / length));
  }
}
