package lastinch.solver.plane;

import lastinch.solver.numerics.LimitedFace;
import lastinch.solver.numerics.Team;

/**
 * Carries momentum with the same liquid volumes as the liquid itself, conservatively, on the
 * staggered control volumes of the faces. Upwind with a limited slope inside the metal, plain
 * upwind where it is partly empty. Because no control volume gives more than it holds, new speeds
 * lie between old ones: thin wisps need no special treatment, and the loss of a sudden widening
 * comes out by itself. A gate that comes straight out of a wall is a mouth: its metal enters
 * through the wall's face with all its momentum.
 */
final class FaceMomentum {
  private static final double FULL = 0.95;

  /** Less moving metal than this share of a control volume is dust and lies still [-]. */
  static final double DUST = 1e-6;

  private final PlaneGrid grid;
  private final Axis alongX;
  private final Axis alongY;
  private FlowState s;
  private final Team.Work readings = this::read;
  private final Team.Work carries = this::carry;

  FaceMomentum(PlaneGrid grid) {
    this.grid = grid;
    alongX = new Axis(grid.faceX, 1, grid.stride);
    alongY = new Axis(grid.faceY, grid.stride, 1);
  }

  /** Replaces both speeds by what momentum alone would make of them; liquid is not yet moved. */
  void carry(FlowState state) {
    s = state;
    alongX.begin(s.u, s.fluxX, s.fluxY, s.gateU);
    alongY.begin(s.v, s.fluxY, s.fluxX, s.gateV);
    s.team.run(readings);
    s.team.run(carries);
  }

  private void read(int part) {
    alongX.read(part);
    alongY.read(part);
  }

  private void carry(int part) {
    alongX.carry(part);
    alongY.carry(part);
  }

  /** Speeds along one axis. */
  private final class Axis {
    private final double[] face;
    private final int d;
    private final int t;
    private final double[] before;
    private final double[] fillOfFace;
    private double[] w;
    private double[] fluxAlong;
    private double[] fluxAcross;
    private double[] gateSpeed;

    /**
     * An axis.
     *
     * @param face open areas across it
     * @param d step to the next cell along it
     * @param t step to the next cell across it
     */
    Axis(double[] face, int d, int t) {
      this.face = face;
      this.d = d;
      this.t = t;
      before = new double[grid.size];
      fillOfFace = new double[grid.size];
    }

    void begin(double[] speed, double[] along, double[] across, double[] ofGates) {
      w = speed;
      fluxAlong = along;
      fluxAcross = across;
      gateSpeed = ofGates;
    }

    void read(int part) {
      int to = s.to(part, 2);
      for (int j = s.from(part, 1); j <= to; j++) {
        int end = s.last[j] + 2;
        for (int c = s.first[j] - 1; c <= end; c++) {
          before[c] = w[c];
          fillOfFace[c] =
              face[c] > 0.0
                  ? (s.liquid[c - d] + s.liquid[c]) / (grid.volume[c - d] + grid.volume[c])
                  : 0.0;
        }
      }
    }

    void carry(int part) {
      int to = s.to(part, 0);
      for (int j = s.from(part, 0); j <= to; j++) {
        int end = s.last[j];
        for (int c = s.first[j]; c <= end; c++) {
          if (face[c] > 0.0) {
            w[c] = carried(c);
          }
        }
      }
    }

    private double carried(int c) {
      int l = c - d;
      double right = 0.5 * (fluxAlong[c] + fluxAlong[c + d]);
      double left = 0.5 * (fluxAlong[l] + fluxAlong[c]);
      double top = 0.5 * (fluxAcross[l + t] + fluxAcross[c + t]);
      double bottom = 0.5 * (fluxAcross[l] + fluxAcross[c]);
      boolean behind = face[l] == 0.0 && s.gateFlux[l] != 0.0 && gateSpeed[l] > 0.0;
      boolean ahead = face[c + d] == 0.0 && s.gateFlux[c] != 0.0 && gateSpeed[c] < 0.0;
      double gateL = 0.5 * s.gateFlux[l];
      double gateR = 0.5 * s.gateFlux[c];
      left += behind ? gateL : 0.0;
      right -= ahead ? gateR : 0.0;
      gateL = behind ? 0.0 : gateL;
      gateR = ahead ? 0.0 : gateR;
      double gate = gateL + gateR;
      double held = 0.5 * (s.liquid[l] + s.liquid[c]);
      double after = held + ((left - right) + (bottom - top)) + gate;
      double fast = 0.5 * (s.skin[l] + s.skin[c]);
      if (after - fast < DUST * (grid.volume[l] + grid.volume[c])) {
        return 0.0;
      }
      double perHeld = held > 0.0 ? 1.0 / held : 0.0;
      double momentum =
          held * before[c]
              + (carried(behind, gateSpeed[l], left, c, -d, left < 0.0, perHeld)
                  - carried(ahead, gateSpeed[c], right, c, d, right > 0.0, perHeld))
              + (carried(false, 0.0, bottom, c, -t, bottom < 0.0, perHeld)
                  - carried(false, 0.0, top, c, t, top > 0.0, perHeld));
      momentum += gateL * gateSpeed[l] + gateR * gateSpeed[c];
      return momentum / after;
    }

    /** Momentum over density that goes over with a volume; metal at a mouth brings its own speed. */
    private double carried(
        boolean mouth, double own, double volume, int c, int e, boolean outwards, double perHeld) {
      if (volume == 0.0) {
        return 0.0;
      }
      return volume * (mouth ? own : value(c, e, outwards, volume * perHeld));
    }

    /**
     * Speed carried between a face and its neighbour in a direction.
     *
     * @param c face
     * @param e step to the neighbour, negative towards lower indices
     * @param outwards whether the flow goes from the face to the neighbour
     * @param courant share of the face's liquid that goes [-]
     */
    private double value(int c, int e, boolean outwards, double courant) {
      int up = outwards ? c : c + e;
      int down = outwards ? c + e : c;
      int behind = outwards ? c - e : c + 2 * e;
      if (fillOfFace[up] > FULL && fillOfFace[down] > FULL && fillOfFace[behind] > FULL) {
        double share = Math.min(1.0, Math.abs(courant));
        return LimitedFace.face(before[behind], before[up], before[down], share);
      }
      return before[up];
    }
  }
}
