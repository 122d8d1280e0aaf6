package lastinch.solver.plane.flow;

import java.util.Arrays;
import lastinch.solver.numerics.WorkerPair;

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
public final class VofAdvection {
  /** Cells nearer to empty or full than this are not cut [-]; chosen, far above rounding. */
  private static final double MIXED = 1e-9;

  private final PlaneGrid grid;
  private final double[] share;
  private final double[] afterX;
  private final double[] shareX;
  private final double[] afterY;
  private final double[] shareY;
  private final double[] normalX;
  private final double[] normalY;
  private final double[] firstX;
  private final double[] firstY;
  private final double[] secondX;
  private final double[] secondY;
  private final double[] scale;
  private double[] shareOf;
  private FlowState s;
  private double dt;
  private boolean lowerLimits;
  private boolean upperLimits;
  private long limited;
  private final WorkerPair.Work begins = this::begin;
  private final WorkerPair.Work turns = part -> normals(part, shareOf);
  private final WorkerPair.Work firsts = this::crossFirst;
  private final WorkerPair.Work seconds = this::crossSecond;
  private final WorkerPair.Work thirds = this::crossThird;
  private final WorkerPair.Work looks = this::look;

  public VofAdvection(PlaneGrid grid) {
    this.grid = grid;
    int n = grid.size;
    share = new double[n];
    afterX = new double[n];
    shareX = new double[n];
    afterY = new double[n];
    shareY = new double[n];
    normalX = new double[n];
    normalY = new double[n];
    firstX = new double[n];
    firstY = new double[n];
    secondX = new double[n];
    secondY = new double[n];
    scale = new double[n];
    Arrays.fill(scale, 1.0);
    shareOf = share;
  }

  /**
   * Finds the volumes that cross the faces in a step; they stand in {@code fluxX} and {@code
   * fluxY}. The liquid itself is not changed.
   *
   * @param step [s]
   */
  public void findVolumes(FlowState state, double step) {
    s = state;
    dt = step;
    s.team.run(begins);
    turn(share);
    s.team.run(firsts);
    turn(shareX);
    s.team.run(seconds);
    turn(shareY);
    s.team.run(thirds);
    s.team.run(looks);
    if (lowerLimits || upperLimits) {
      limit();
      limitSmall();
    }
  }

  private void begin(int part) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        double f = s.liquid[c] * grid.perVolume[c];
        share[c] = f;
        shareX[c] = f;
        shareY[c] = f;
        afterX[c] = s.liquid[c];
        afterY[c] = s.liquid[c];
      }
    }
  }

  private void turn(double[] shares) {
    shareOf = shares;
    s.team.run(turns);
  }

  /** Across both axes from the start; what X alone leaves. */
  private void crossFirst(int part) {
    int n = grid.stride;
    cross(part, s.liquid, share, s.u, grid.faceX, 1, normalX, normalY, firstX);
    cross(part, s.liquid, share, s.v, grid.faceY, n, normalY, normalX, firstY);
    half(part, firstX, s.u, grid.faceX, 1, afterX, shareX);
  }

  /** Across Y after X; what Y alone leaves. */
  private void crossSecond(int part) {
    int n = grid.stride;
    cross(part, afterX, shareX, s.v, grid.faceY, n, normalY, normalX, secondY);
    half(part, firstY, s.v, grid.faceY, n, afterY, shareY);
  }

  /** Across X after Y, and the mean of both orders. */
  private void crossThird(int part) {
    cross(part, afterY, shareY, s.u, grid.faceX, 1, normalX, normalY, secondX);
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        s.fluxX[c] = 0.5 * (firstX[c] + secondX[c]);
        s.fluxY[c] = 0.5 * (firstY[c] + secondY[c]);
      }
    }
  }

  /** State after one direction, dilatation included. */
  private void half(
      int part,
      double[] flux,
      double[] speed,
      double[] face,
      int step,
      double[] after,
      double[] shares) {
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double m = s.liquid[c] - (flux[c + step] - flux[c]);
        if (s.liquid[c] >= 0.5 * grid.volume[c]) {
          m += dt * (face[c + step] * speed[c + step] - face[c] * speed[c]);
        }
        after[c] = m;
        shares[c] = m * grid.perVolume[c];
      }
    }
  }

  private void normals(int part, double[] shares) {
    int n = grid.stride;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double f = shares[c];
        if (f > MIXED && f < 1.0 - MIXED) {
          double sw = at(shares, c - n - 1, f);
          double se = at(shares, c - n + 1, f);
          double nw = at(shares, c + n - 1, f);
          double ne = at(shares, c + n + 1, f);
          normalX[c] = (nw - ne) + (sw - se) + 2.0 * (at(shares, c - 1, f) - at(shares, c + 1, f));
          normalY[c] = (sw - nw) + (se - ne) + 2.0 * (at(shares, c - n, f) - at(shares, c + n, f));
        }
      }
    }
  }

  private double at(double[] shares, int c, double here) {
    return grid.volume[c] > 0.0 ? shares[c] : here;
  }

  private void cross(
      int part,
      double[] liquid,
      double[] shares,
      double[] speed,
      double[] face,
      int step,
      double[] along,
      double[] across,
      double[] flux) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        double swept = face[c] * speed[c] * dt;
        if (swept == 0.0) {
          flux[c] = 0.0;
          continue;
        }
        boolean forward = swept > 0.0;
        int donor = forward ? c - step : c;
        double f = shares[donor];
        double size = Math.abs(swept);
        double out;
        if (f <= 0.0) {
          out = 0.0;
        } else if (f <= MIXED || f >= 1.0 - MIXED) {
          out = size * f;
        } else {
          double width = Math.min(1.0, size * grid.perVolume[donor]);
          double n = forward ? along[donor] : -along[donor];
          out = grid.volume[donor] * PlicCut.slab(f, n, across[donor], width);
        }
        out = Math.min(out, Math.max(0.0, liquid[donor]));
        flux[c] = forward ? out : -out;
      }
    }
  }

  /** Whether any cell would give more than it holds or take more than it has room for. */
  private void look(int part) {
    boolean any = false;
    int to = s.to(part, 0);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double out = leaving(c);
        any |= out > s.liquid[c] - s.skin[c];
        any |= isOverrun(c, out);
      }
    }
    if (part == 0) {
      lowerLimits = any;
    } else {
      upperLimits = any;
    }
  }

  private double leaving(int c) {
    int n = grid.stride;
    return Math.max(0.0, s.fluxX[c + 1])
        + Math.max(0.0, -s.fluxX[c])
        + Math.max(0.0, s.fluxY[c + n])
        + Math.max(0.0, -s.fluxY[c]);
  }

  private double arriving(int c) {
    int n = grid.stride;
    return Math.max(0.0, -s.fluxX[c + 1])
        + Math.max(0.0, s.fluxX[c])
        + Math.max(0.0, -s.fluxY[c + n])
        + Math.max(0.0, s.fluxY[c]);
  }

  private double room(int c, double out) {
    return Math.max(0.0, grid.volume[c] - s.liquid[c]) + out;
  }

  private boolean isOverrun(int c, double out) {
    boolean small = !s.active[c] && grid.volume[c] > 0.0;
    return small && arriving(c) > room(c, out) * (1.0 + 1e-12);
  }

  private void limit() {
    boolean any = false;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double out = leaving(c);
        double moves = s.liquid[c] - s.skin[c];
        if (out > moves) {
          scale[c] = Math.max(0.0, moves / out);
          any = true;
          limited++;
        }
      }
    }
    if (any) {
      scaleByDonor();
    }
  }

  private void scaleByDonor() {
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        s.fluxX[c] *= s.fluxX[c] > 0.0 ? scale[c - 1] : scale[c];
        s.fluxY[c] *= s.fluxY[c] > 0.0 ? scale[c - n] : scale[c];
      }
    }
    forgetScale();
  }

  private void forgetScale() {
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      Arrays.fill(scale, s.first[j], Math.max(s.first[j], s.last[j] + 1), 1.0);
    }
  }

  /**
   * A small cell beside a wide one may be swept over more than once in a step: it takes its fill.
   */
  private void limitSmall() {
    int n = grid.stride;
    boolean any = false;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double out = leaving(c);
        if (isOverrun(c, out)) {
          scale[c] = room(c, out) / arriving(c);
          any = true;
          limited++;
        }
      }
    }
    if (!any) {
      return;
    }
    for (int j = s.rowFrom; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        s.fluxX[c] *= s.fluxX[c] > 0.0 ? scale[c] : scale[c - 1];
        s.fluxY[c] *= s.fluxY[c] > 0.0 ? scale[c] : scale[c - n];
      }
    }
    forgetScale();
  }

  /** Moves the liquid by the volumes found; gates included. */
  public void move(FlowState state) {
    s = state;
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
