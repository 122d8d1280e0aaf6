package lastinch.cases.mesh;

/**
 * What is the matter with a mesh, and the mesh with its faces turned outwards.
 *
 * @param mesh faces of each body run the same way, the outside outwards
 * @param openEdges edges with one face only
 * @param crowdedEdges sides on edges with more than two faces
 * @param turnedFaces faces that were inside out against their neighbours
 * @param insideOut whether a whole body had its inside outwards
 * @param bodies parts that share no edge; one that lies inside a larger one and has its faces
 *     inwards is a hollow and stays so
 */
public record MeshChecks(
    Mesh mesh, int openEdges, int crowdedEdges, int turnedFaces, boolean insideOut, int bodies) {

  /** Looks a mesh over and turns its faces. */
  public static MeshChecks of(Mesh mesh) {
    Edges edges = new Edges(mesh);
    int n = mesh.triangles();
    boolean[] flip = new boolean[n];
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int bodies = 0;
    int turned = 0;
    boolean insideOut = false;
    double[] centre = centre(mesh);
    double[] largest = new double[6];
    int end = 0;
    for (int seed = 0; seed < n; seed++) {
      if (seen[seed]) {
        continue;
      }
      int start = end;
      queue[end++] = seed;
      seen[seed] = true;
      end = spread(edges, queue, end, seen, flip);
      int flipped = 0;
      double volume = 0.0;
      for (int k = start; k < end; k++) {
        flipped += flip[queue[k]] ? 1 : 0;
        volume += (flip[queue[k]] ? -1.0 : 1.0) * volumeUnder(mesh, queue[k], centre);
      }
      boolean mostAsWritten = 2 * flipped <= end - start;
      turned += Math.min(flipped, end - start - flipped);
      double[] box = box(mesh, queue, start, end);
      boolean wasNegative = volume < 0.0 == mostAsWritten;
      boolean hollow = wasNegative && bodies > 0 && isWithin(box, largest);
      if (volume < 0.0 != hollow) {
        for (int k = start; k < end; k++) {
          flip[queue[k]] ^= true;
        }
      }
      insideOut |= wasNegative && !hollow && edges.open() == 0;
      largest = isWithin(largest, box) || bodies == 0 ? box : largest;
      bodies++;
    }
    return new MeshChecks(
        turn(mesh, flip), edges.open(), edges.crowded(), turned, insideOut, bodies);
  }

  /** Visits all faces joined to those in the queue; returns its new end. */
  private static int spread(Edges edges, int[] queue, int from, boolean[] seen, boolean[] flip) {
    int end = from;
    for (int at = from - 1; at < end; at++) {
      int t = queue[at];
      for (int k = 0; k < 3; k++) {
        int partner = edges.partner(3 * t + k);
        if (partner != Edges.NONE && !seen[partner / 3]) {
          int other = partner / 3;
          seen[other] = true;
          flip[other] = flip[t] ^ edges.isTurned(3 * t + k);
          queue[end++] = other;
        }
      }
    }
    return end;
  }

  /** Lowest and highest x, y, z of some faces. */
  private static double[] box(Mesh mesh, int[] faces, int start, int end) {
    double inf = Double.POSITIVE_INFINITY;
    double[] box = {inf, inf, inf, -inf, -inf, -inf};
    for (int k = start; k < end; k++) {
      for (int c = 0; c < 3; c++) {
        for (int axis = 0; axis < 3; axis++) {
          double v = mesh.at(mesh.corner(faces[k], c), axis);
          box[axis] = Math.min(box[axis], v);
          box[3 + axis] = Math.max(box[3 + axis], v);
        }
      }
    }
    return box;
  }

  private static boolean isWithin(double[] inner, double[] outer) {
    boolean within = true;
    for (int axis = 0; axis < 3; axis++) {
      within &= inner[axis] > outer[axis] && inner[3 + axis] < outer[3 + axis];
    }
    return within;
  }

  private static Mesh turn(Mesh mesh, boolean[] flip) {
    int[] corners = mesh.corners();
    for (int t = 0; t < flip.length; t++) {
      if (flip[t]) {
        int b = corners[3 * t + 1];
        corners[3 * t + 1] = corners[3 * t + 2];
        corners[3 * t + 2] = b;
      }
    }
    return mesh.withCorners(corners);
  }

  private static double[] centre(Mesh mesh) {
    double[] c = new double[3];
    for (int p = 0; p < mesh.size(); p++) {
      for (int k = 0; k < 3; k++) {
        c[k] += mesh.at(p, k) / mesh.size();
      }
    }
    return c;
  }

  /** Six times the signed volume between a face and a point. */
  private static double volumeUnder(Mesh mesh, int t, double[] from) {
    double[][] v = new double[3][3];
    for (int k = 0; k < 3; k++) {
      for (int axis = 0; axis < 3; axis++) {
        v[k][axis] = mesh.at(mesh.corner(t, k), axis) - from[axis];
      }
    }
    return v[0][0] * (v[1][1] * v[2][2] - v[1][2] * v[2][1])
        - v[0][1] * (v[1][0] * v[2][2] - v[1][2] * v[2][0])
        + v[0][2] * (v[1][0] * v[2][1] - v[1][1] * v[2][0]);
  }
}
