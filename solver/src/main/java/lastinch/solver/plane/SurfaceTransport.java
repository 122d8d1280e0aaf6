package lastinch.solver.plane;

import java.util.Arrays;

/**
 * Carries liquid through the grid with a sharp surface: the surface in a cell is a straight line
 * (normal after Youngs), the liquid that crosses a face is what the swept slab of the donor holds.
 *
 * <p>One direction after the other with the dilatation term of Weymouth and Yue, which keeps shares
 * between 0 and 1 where the speeds have no divergence and the Courant number is at most one half.
 * Both orders of directions are done and their volumes averaged, so that a turned case gives the
 * turned answer. The result is a set of face volumes; liquid is kept to rounding by construction,
 * and a last limiter never lets a cell give more than it holds.
 *
 * <p>Sources: D. L. Youngs 1982 (normal); G. D. Weymouth, D. K.-P. Yue, J. Comput. Phys. 229 (2010)
 * 2853 (dilatation). From memory.
 */
final class SurfaceTransport {
  private static final double MIXED = 1e-9;

  private final PlaneGrid grid;
  private final double[] start;
  private final double[] middle;
  private final double[] share;
  private final double[] normalX;
  private final double[] normalY;
  private final double[] firstX;
  private final double[] firstY;
  private final double[] secondX;
  private final double[] secondY;
  private final double[] scale;
  private long limited;
  private int r0;
  private int r1;
  private int[] first = new int[0];
  private int[] last = first;

  SurfaceTransport(PlaneGrid grid) {
    this.grid = grid;
    int n = grid.size;
    start = new double[n];
    middle = new double[n];
    share = new double[n];
    normalX = new double[n];
    normalY = new double[n];
    firstX = new double[n];
    firstY = new double[n];
    secondX = new double[n];
    secondY = new double[n];
    scale = new double[n];
    Arrays.fill(scale, 1.0);
  }

  /**
   * Finds the volumes that cross the faces in a step; they stand in {@code fluxX} and {@code
   * fluxY}. The liquid itself is not changed.
   *
   * @param dt step [s]
   */
  void findVolumes(FlowState s, double dt) {
    r0 = s.rowFrom;
    r1 = s.rowTo;
    first = s.first;
    last = s.last;
    System.arraycopy(s.liquid, 0, start, 0, grid.size);
    System.arraycopy(s.liquid, 0, middle, 0, grid.size);
    normals(start);
    cross(start, s.u, grid.faceX, 1, normalX, normalY, dt, firstX);
    cross(start, s.v, grid.faceY, grid.stride, normalY, normalX, dt, firstY);
    half(firstX, s.u, grid.faceX, 1, dt);
    normals(middle);
    cross(middle, s.v, grid.faceY, grid.stride, normalY, normalX, dt, secondY);
    half(firstY, s.v, grid.faceY, grid.stride, dt);
    normals(middle);
    cross(middle, s.u, grid.faceX, 1, normalX, normalY, dt, secondX);
    for (int j = r0; j <= r1 + 1; j++) {
      int end = last[j] + 1;
      for (int c = first[j]; c <= end; c++) {
        s.fluxX[c] = 0.5 * (firstX[c] + secondX[c]);
        s.fluxY[c] = 0.5 * (firstY[c] + secondY[c]);
      }
    }
    limit(s);
    limitSmall(s);
  }

  /** State after one direction, dilatation included. */
  private void half(double[] flux, double[] speed, double[] face, int step, double dt) {
    for (int j = r0; j <= r1; j++) {
      int end = last[j];
      for (int c = first[j]; c <= end; c++) {
        double m = start[c] - (flux[c + step] - flux[c]);
        if (start[c] >= 0.5 * grid.volume[c]) {
          m += dt * (face[c + step] * speed[c + step] - face[c] * speed[c]);
        }
        middle[c] = m;
      }
    }
  }

  private void normals(double[] liquid) {
    int n = grid.stride;
    for (int j = r0 - 1; j <= r1 + 1; j++) {
      int end = last[j] + 1;
      for (int c = first[j] - 1; c <= end; c++) {
        share[c] = liquid[c] * grid.perVolume[c];
      }
    }
    for (int j = r0; j <= r1; j++) {
      int end = last[j];
      for (int c = first[j]; c <= end; c++) {
        double f = share[c];
        if (f > MIXED && f < 1.0 - MIXED) {
          double sw = at(c - n - 1, f);
          double se = at(c - n + 1, f);
          double nw = at(c + n - 1, f);
          double ne = at(c + n + 1, f);
          normalX[c] = (nw - ne) + (sw - se) + 2.0 * (at(c - 1, f) - at(c + 1, f));
          normalY[c] = (sw - nw) + (se - ne) + 2.0 * (at(c - n, f) - at(c + n, f));
        }
      }
    }
  }

  private double at(int c, double here) {
    return grid.volume[c] > 0.0 ? share[c] : here;
  }

  private void cross(
      double[] liquid,
      double[] speed,
      double[] face,
      int step,
      double[] along,
      double[] across,
      double dt,
      double[] flux) {
    for (int j = r0; j <= r1 + 1; j++) {
      int end = last[j] + 1;
      for (int c = first[j]; c <= end; c++) {
        double swept = face[c] * speed[c] * dt;
        if (swept == 0.0) {
          flux[c] = 0.0;
          continue;
        }
        boolean forward = swept > 0.0;
        int donor = forward ? c - step : c;
        double f = share[donor];
        double size = Math.abs(swept);
        double part;
        if (f <= 0.0) {
          part = 0.0;
        } else if (f <= MIXED || f >= 1.0 - MIXED) {
          part = size * f;
        } else {
          double width = Math.min(1.0, size * grid.perVolume[donor]);
          double n = forward ? along[donor] : -along[donor];
          part = grid.volume[donor] * StraightCut.slab(f, n, across[donor], width);
        }
        part = Math.min(part, Math.max(0.0, liquid[donor]));
        flux[c] = forward ? part : -part;
      }
    }
  }

  private void limit(FlowState s) {
    int n = grid.stride;
    boolean any = false;
    for (int j = r0; j <= r1; j++) {
      int end = last[j];
      for (int c = first[j]; c <= end; c++) {
        double out =
            Math.max(0.0, s.fluxX[c + 1])
                + Math.max(0.0, -s.fluxX[c])
                + Math.max(0.0, s.fluxY[c + n])
                + Math.max(0.0, -s.fluxY[c]);
        double moves = s.liquid[c] - s.skin[c];
        if (out > moves) {
          scale[c] = Math.max(0.0, moves / out);
          any = true;
          limited++;
        }
      }
    }
    if (!any) {
      return;
    }
    for (int j = r0; j <= r1 + 1; j++) {
      int end = last[j] + 1;
      for (int c = first[j]; c <= end; c++) {
        s.fluxX[c] *= s.fluxX[c] > 0.0 ? scale[c - 1] : scale[c];
        s.fluxY[c] *= s.fluxY[c] > 0.0 ? scale[c - n] : scale[c];
      }
    }
    for (int j = r0; j <= r1; j++) {
      Arrays.fill(scale, first[j], Math.max(first[j], last[j] + 1), 1.0);
    }
  }

  /**
   * A small cell beside a wide one may be swept over more than once in a step: it takes its fill.
   */
  private void limitSmall(FlowState s) {
    int n = grid.stride;
    boolean any = false;
    for (int j = r0; j <= r1; j++) {
      int end = last[j];
      for (int c = first[j]; c <= end; c++) {
        if (s.active[c] || grid.volume[c] == 0.0) {
          continue;
        }
        double out =
            Math.max(0.0, s.fluxX[c + 1])
                + Math.max(0.0, -s.fluxX[c])
                + Math.max(0.0, s.fluxY[c + n])
                + Math.max(0.0, -s.fluxY[c]);
        double room = Math.max(0.0, grid.volume[c] - s.liquid[c]) + out;
        double in =
            Math.max(0.0, -s.fluxX[c + 1])
                + Math.max(0.0, s.fluxX[c])
                + Math.max(0.0, -s.fluxY[c + n])
                + Math.max(0.0, s.fluxY[c]);
        if (in > room * (1.0 + 1e-12)) {
          scale[c] = room / in;
          any = true;
          limited++;
        }
      }
    }
    if (!any) {
      return;
    }
    for (int j = r0; j <= r1 + 1; j++) {
      int end = last[j] + 1;
      for (int c = first[j]; c <= end; c++) {
        s.fluxX[c] *= s.fluxX[c] > 0.0 ? scale[c] : scale[c - 1];
        s.fluxY[c] *= s.fluxY[c] > 0.0 ? scale[c] : scale[c - n];
      }
    }
    for (int j = r0; j <= r1; j++) {
      Arrays.fill(scale, first[j], Math.max(first[j], last[j] + 1), 1.0);
    }
  }

  /** Moves the liquid by the volumes found; gates included. */
  void move(FlowState s) {
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double net = (s.fluxX[c] - s.fluxX[c + 1]) + (s.fluxY[c] - s.fluxY[c + n]);
        s.liquid[c] = Math.max(0.0, s.liquid[c] + net + s.gateFlux[c]);
      }
    }
  }

  /** Number of cells so far that would have given more than they held. */
  long limited() {
    return limited;
  }
}
