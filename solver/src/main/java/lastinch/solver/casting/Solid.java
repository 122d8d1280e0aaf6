package lastinch.solver.casting;

/**
 * The cavity of a piece as a closed surface of triangles in the frame of the piece: x along it from
 * the thick end, y to the left, z up along the draw, the parting plane at z = 0. Immutable.
 */
public final class Solid {
  private final double[] points;
  private final int[] corners;

  /**
   * A surface.
   *
   * @param points x, y, z of each point [m], [3 points]
   * @param corners points of each triangle, anticlockwise from outside, [3 triangles]
   */
  public Solid(double[] points, int[] corners) {
    if (corners.length == 0) {
      throw new IllegalArgumentException("a solid needs faces");
    }
    this.points = points.clone();
    this.corners = corners.clone();
  }

  /** Number of triangles. */
  public int triangles() {
    return corners.length / 3;
  }

  /** Number of points. */
  public int size() {
    return points.length / 3;
  }

  /** Coordinate of a point [m]; axis 0, 1, 2 for x, y, z. */
  public double at(int point, int axis) {
    return points[3 * point + axis];
  }

  /** Point at a corner, 0 to 2, of a triangle. */
  public int corner(int triangle, int which) {
    return corners[3 * triangle + which];
  }

  /** Coordinate of a corner of a triangle [m]. */
  public double cornerAt(int triangle, int which, int axis) {
    return points[3 * corners[3 * triangle + which] + axis];
  }

  /** Lowest coordinate [m]. */
  public double low(int axis) {
    double low = Double.POSITIVE_INFINITY;
    for (int p = axis; p < points.length; p += 3) {
      low = Math.min(low, points[p]);
    }
    return low;
  }

  /** Highest coordinate [m]. */
  public double high(int axis) {
    double high = Double.NEGATIVE_INFINITY;
    for (int p = axis; p < points.length; p += 3) {
      high = Math.max(high, points[p]);
    }
    return high;
  }

  /** Volume inside [m3]: the sum of the prisms under the faces. */
  public double volume() {
    double sum = 0.0;
    for (int t = 0; t < triangles(); t++) {
      double x1 = cornerAt(t, 1, 0) - cornerAt(t, 0, 0);
      double y1 = cornerAt(t, 1, 1) - cornerAt(t, 0, 1);
      double x2 = cornerAt(t, 2, 0) - cornerAt(t, 0, 0);
      double y2 = cornerAt(t, 2, 1) - cornerAt(t, 0, 1);
      double z = cornerAt(t, 0, 2) + cornerAt(t, 1, 2) + cornerAt(t, 2, 2);
      sum += (x1 * y2 - x2 * y1) * z / 6.0;
    }
    return sum;
  }

  /** Area of all faces [m2]. */
  public double area() {
    double sum = 0.0;
    for (int t = 0; t < triangles(); t++) {
      double[] n = normal(t);
      sum += 0.5 * Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    }
    return sum;
  }

  /** Outward normal of a triangle, its length twice the area [m2]. */
  public double[] normal(int t) {
    double x1 = cornerAt(t, 1, 0) - cornerAt(t, 0, 0);
    double y1 = cornerAt(t, 1, 1) - cornerAt(t, 0, 1);
    double z1 = cornerAt(t, 1, 2) - cornerAt(t, 0, 2);
    double x2 = cornerAt(t, 2, 0) - cornerAt(t, 0, 0);
    double y2 = cornerAt(t, 2, 1) - cornerAt(t, 0, 1);
    double z2 = cornerAt(t, 2, 2) - cornerAt(t, 0, 2);
    return new double[] {y1 * z2 - z1 * y2, z1 * x2 - x1 * z2, x1 * y2 - y1 * x2};
  }
}
