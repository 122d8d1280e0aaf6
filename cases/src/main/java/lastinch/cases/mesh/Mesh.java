package lastinch.cases.mesh;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/** Triangles between shared points, as a model file has them. Immutable. */
public final class Mesh {
  private final double[] points;
  private final int[] corners;
  private final Optional<MeshUnit> unit;

  /**
   * A mesh.
   *
   * @param points x, y, z of each point, [3 points]
   * @param corners points of each triangle, seen from outside anticlockwise, [3 triangles]
   * @param unit unit of the points when the file says it
   */
  public Mesh(double[] points, int[] corners, Optional<MeshUnit> unit) {
    this.points = points.clone();
    this.corners = corners.clone();
    this.unit = Objects.requireNonNull(unit, "unit");
    int count = points.length / 3;
    for (int c : corners) {
      if (c < 0 || c >= count) {
        throw new IllegalArgumentException("corner " + c + " of " + count + " points");
      }
    }
  }

  /** Number of triangles. */
  public int triangles() {
    return corners.length / 3;
  }

  /** Number of points. */
  public int size() {
    return points.length / 3;
  }

  /** Coordinate of a point: axis 0, 1, 2 for x, y, z [unit of the file]. */
  public double at(int point, int axis) {
    return points[3 * point + axis];
  }

  /** Point at a corner, 0 to 2, of a triangle. */
  public int corner(int triangle, int which) {
    return corners[3 * triangle + which];
  }

  /** Unit of the points, when the file says it. */
  public Optional<MeshUnit> unit() {
    return unit;
  }

  /** All coordinates, a copy. */
  public double[] points() {
    return points.clone();
  }

  /** All corners, a copy. */
  public int[] corners() {
    return corners.clone();
  }

  /** The same points with other triangles. */
  Mesh withCorners(int[] other) {
    return new Mesh(points, other, unit);
  }

  /** The same shape, every size times a factor. */
  public Mesh scaled(double factor) {
    double[] larger = points.clone();
    for (int i = 0; i < larger.length; i++) {
      larger[i] *= factor;
    }
    return new Mesh(larger, corners, unit);
  }

  /** The same shape with every point moved outwards from its faces [unit of the points]. */
  public Mesh thickened(double by) {
    if (by == 0.0) {
      return this;
    }
    double[] out = new double[points.length];
    for (int t = 0; t < corners.length; t += 3) {
      double[] n = unitNormal(t);
      for (int k = 0; k < 3; k++) {
        for (int axis = 0; axis < 3; axis++) {
          out[3 * corners[t + k] + axis] += n[axis];
        }
      }
    }
    double[] moved = points.clone();
    for (int p = 0; p < points.length; p += 3) {
      double norm = Math.sqrt(out[p] * out[p] + out[p + 1] * out[p + 1] + out[p + 2] * out[p + 2]);
      for (int axis = 0; norm > 0.0 && axis < 3; axis++) {
        moved[p + axis] += by * out[p + axis] / norm;
      }
    }
    return new Mesh(moved, corners, unit);
  }

  private double[] unitNormal(int t) {
    double[] a = new double[3];
    double[] b = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      a[axis] = points[3 * corners[t + 1] + axis] - points[3 * corners[t] + axis];
      b[axis] = points[3 * corners[t + 2] + axis] - points[3 * corners[t] + axis];
    }
    double[] n = {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    double norm = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int axis = 0; axis < 3; axis++) {
      n[axis] = norm > 0.0 ? n[axis] / norm : 0.0;
    }
    return n;
  }

  /** Size along an axis [unit of the file]. */
  public double extent(int axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int p = axis; p < points.length; p += 3) {
      low = Math.min(low, points[p]);
      high = Math.max(high, points[p]);
    }
    return points.length == 0 ? 0.0 : high - low;
  }

  /** The longest of the three extents [unit of the file]. */
  public double longest() {
    return Math.max(extent(0), Math.max(extent(1), extent(2)));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Mesh m
        && Arrays.equals(points, m.points)
        && Arrays.equals(corners, m.corners)
        && unit.equals(m.unit);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(corners);
  }
}
