package lastinch.solver.plane.flow;

import lastinch.solver.numerics.WorkerPair;

/**
 * Speeds on wet faces outside the metal that carries a pressure. In the first cells beside it they
 * are the mean of the nearest corrected ones, or the surface would never come to rest; thin remains
 * one cell further out follow those. Drops and streams farther away keep their own flight.
 */
final class VelocityExtrapolation {
  /**
   * Faces less wet than this follow in the second layer; fuller ones fly on their own [-]; chosen.
   */
  private static final double THIN = 0.2;

  private final PlaneGrid grid;
  private final byte[] layer;
  private FlowState s;
  private final WorkerPair.Work firsts = this::firstLayer;
  private final WorkerPair.Work seconds = this::secondLayer;
  private final WorkerPair.Work besides = part -> extend(part, 1);
  private final WorkerPair.Work beyonds = part -> extend(part, 2);

  VelocityExtrapolation(PlaneGrid grid) {
    this.grid = grid;
    layer = new byte[grid.size];
  }

  /** Extends both speeds of a state whose metal is corrected. */
  void extend(FlowState state) {
    s = state;
    s.team.run(firsts);
    s.team.run(seconds);
    s.team.run(besides);
    s.team.run(beyonds);
  }

  private void firstLayer(int part) {
    int n = grid.stride;
    int to = s.to(part, 1);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        boolean beside = s.active[c - 1] || s.active[c + 1] || s.active[c - n] || s.active[c + n];
        layer[c] = (byte) (s.active[c] ? 0 : beside ? 1 : 3);
      }
    }
  }

  private void secondLayer(int part) {
    int n = grid.stride;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        if (layer[c] == 3 && s.liquid[c] > 0.0) {
          boolean near =
              layer[c - 1] == 1 || layer[c + 1] == 1 || layer[c - n] == 1 || layer[c + n] == 1;
          layer[c] = (byte) (near ? 2 : 3);
        }
      }
    }
  }

  private void extend(int part, int wanted) {
    int n = grid.stride;
    extend(part, s.u, grid.faceX, 1, n, wanted);
    extend(part, s.v, grid.faceY, n, 1, wanted);
  }

  private int layerOf(int face, int d) {
    return Math.min(layer[face], layer[face - d]);
  }

  private void extend(int part, double[] w, double[] face, int d, int t, int wanted) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        double wet = s.liquid[c] + s.liquid[c - d];
        double room = grid.volume[c] + grid.volume[c - d];
        if (face[c] == 0.0 || wet < FaceMomentum.DUST * room || layerOf(c, d) != wanted) {
          continue;
        }
        if (wanted == 2 && wet > THIN * room) {
          continue;
        }
        double along = taken(w, face, c - d, d, wanted) + taken(w, face, c + d, d, wanted);
        double across = taken(w, face, c - t, d, wanted) + taken(w, face, c + t, d, wanted);
        int count =
            counted(face, c - d, d, wanted)
                + counted(face, c + d, d, wanted)
                + counted(face, c - t, d, wanted)
                + counted(face, c + t, d, wanted);
        if (count > 0) {
          w[c] = (along + across) / count;
        }
      }
    }
  }

  private int counted(double[] face, int c, int d, int wanted) {
    return face[c] > 0.0 && layerOf(c, d) < wanted ? 1 : 0;
  }

  private double taken(double[] w, double[] face, int c, int d, int wanted) {
    return counted(face, c, d, wanted) == 1 ? w[c] : 0.0;
  }
}
