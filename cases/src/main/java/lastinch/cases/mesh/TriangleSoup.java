package lastinch.cases.mesh;

import java.util.Arrays;
import java.util.Optional;

/** Points and triangles while a file is read; refuses more than a run could use. */
final class TriangleSoup {
  /** Most triangles that are read; a piece needs a tenth of it. */
  static final int MOST_TRIANGLES = 2_000_000;

  private static final double LARGEST = 1e9;

  private double[] points = new double[3 * 1024];
  private int[] corners = new int[3 * 1024];
  private int pointCount;
  private int triangleCount;

  int points() {
    return pointCount;
  }

  int triangles() {
    return triangleCount;
  }

  double at(int point, int axis) {
    return points[3 * point + axis];
  }

  int corner(int triangle, int which) {
    return corners[3 * triangle + which];
  }

  int point(double x, double y, double z) throws MeshError {
    if (!(Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST && Math.abs(z) <= LARGEST)) {
      throw new MeshError("wrong.pointModelNotNumber");
    }
    if (pointCount >= 3 * MOST_TRIANGLES) {
      throw tooMany();
    }
    if (3 * pointCount == points.length) {
      points = Arrays.copyOf(points, 2 * points.length);
    }
    // adding 0 turns -0 into 0, so that equal places have equal bits
    points[3 * pointCount] = x + 0.0;
    points[3 * pointCount + 1] = y + 0.0;
    points[3 * pointCount + 2] = z + 0.0;
    return pointCount++;
  }

  void triangle(int a, int b, int c) throws MeshError {
    if (a < 0 || b < 0 || c < 0 || a >= pointCount || b >= pointCount || c >= pointCount) {
      throw new MeshError("wrong.faceModelNamesPoint");
    }
    if (triangleCount >= MOST_TRIANGLES) {
      throw tooMany();
    }
    if (3 * triangleCount == corners.length) {
      corners = Arrays.copyOf(corners, 2 * corners.length);
    }
    corners[3 * triangleCount] = a;
    corners[3 * triangleCount + 1] = b;
    corners[3 * triangleCount + 2] = c;
    triangleCount++;
  }

  private static MeshError tooMany() {
    return new MeshError("wrong.modelMoreThan2");
  }

  /** Welds equal points, drops faces without area and unused points. */
  Mesh weld(Optional<MeshUnit> unit) throws MeshError {
    if (triangleCount == 0) {
      throw new MeshError("wrong.noFaceModel");
    }
    Mesh welded =
        VertexMerge.of(
            Arrays.copyOf(points, 3 * pointCount), Arrays.copyOf(corners, 3 * triangleCount), unit);
    if (welded.triangles() == 0) {
      throw new MeshError("wrong.everyFaceModelShrunk");
    }
    return welded;
  }
}
