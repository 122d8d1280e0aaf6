package lastinch.solver.plane.flow;

import lastinch.solver.numerics.VanLeerFlux;
import lastinch.solver.numerics.WorkerPair;

/**
 * Carries momentum with the same liquid volumes as the liquid itself, conservatively, on the
 * staggered control volumes of the faces. Upwind with a limited slope inside the metal, plain
 * upwind where it is partly empty. Because no control volume gives more than it holds, new speeds
 * lie between old ones: thin wisps need no special treatment, and the loss of a sudden widening
 * comes out by itself. A gate that comes straight out of a wall is a mouth: its metal enters
 * through the wall's face with all its momentum.
 */
final class FaceMomentum {
  /**
   * From this filled share of a control volume on a face counts as inside the metal [-]; chosen, as
   * in the heat.
   */
  private static final double FULL = 0.95;

  /** Less moving metal than this share of a control volume is dust and lies still [-]; chosen. */
  static final double DUST = 1e-6;

  private final PlaneGrid grid;
  private final Axis alongX;
  private final Axis alongY;
  private FlowState s;
  private final WorkerPair.Work readings = this::read;
  private final WorkerPair.Work carries = this::carry;

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
    private final boolean[] full;
    private final double[] dust;
    private final double[] perRoom;
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
      full = new boolean[grid.size];
      dust = new double[grid.size];
      perRoom = new double[grid.size];
      for (int c = d; c < grid.size; c++) {
        double room = grid.volume[c - d] + grid.volume[c];
        dust[c] = DUST * room;
        perRoom[c] = face[c] > 0.0 ? 1.0 / room : 0.0;
      }
      w = before;
      fluxAlong = before;
      fluxAcross = before;
      gateSpeed = before;
    }

    void begin(double[] speed, double[] along, double[] across, double[] ofGates) {
      w = speed;
      fluxAlong = along;
      fluxAcross = across;
      gateSpeed = ofGates;
    }

    void read(int part) {
      double[] held = s.liquid;
      double[] room = perRoom;
      double[] from = w;
      int to = s.to(part, 2);
      for (int j = s.from(part, 1); j <= to; j++) {
        int end = s.last[j] + 2;
        for (int c = s.first[j] - 1; c <= end; c++) {
          before[c] = from[c];
          full[c] = (held[c - d] + held[c]) * room[c] > FULL;
        }
      }
    }

    void carry(int part) {
      double[] along = fluxAlong;
      double[] across = fluxAcross;
      double[] held = s.liquid;
      double[] fast = s.skin;
      double[] gates = s.gateFlux;
      double[] old = before;
      double[] result = w;
      boolean[] wet = full;
      int to = s.to(part, 0);
      for (int j = s.from(part, 0); j <= to; j++) {
        int end = s.last[j];
        for (int c = s.first[j]; c <= end; c++) {
          if (face[c] == 0.0) {
            continue;
          }
          int l = c - d;
          if (gates[l] != 0.0 || gates[c] != 0.0) {
            result[c] = besideGate(c);
            continue;
          }
          double right = 0.5 * (along[c] + along[c + d]);
          double left = 0.5 * (along[l] + along[c]);
          double top = 0.5 * (across[l + t] + across[c + t]);
          double bottom = 0.5 * (across[l] + across[c]);
          double here = 0.5 * (held[l] + held[c]);
          double after = here + ((left - right) + (bottom - top));
          if (after - 0.5 * (fast[l] + fast[c]) < dust[c]) {
            result[c] = 0.0;
            continue;
          }
          double per = here > 0.0 ? 1.0 / here : 0.0;
          double ins =
              carried(old, wet, left, c, -d, left < 0.0, per)
                  - carried(old, wet, right, c, d, right > 0.0, per);
          double over =
              carried(old, wet, bottom, c, -t, bottom < 0.0, per)
                  - carried(old, wet, top, c, t, top > 0.0, per);
          result[c] = (here * old[c] + ins + over) / after;
        }
      }
    }

    private double besideGate(int c) {
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
      double held = 0.5 * (s.liquid[l] + s.liquid[c]);
      double after = held + ((left - right) + (bottom - top)) + (gateL + gateR);
      if (after - 0.5 * (s.skin[l] + s.skin[c]) < dust[c]) {
        return 0.0;
      }
      double per = held > 0.0 ? 1.0 / held : 0.0;
      double in =
          behind ? left * gateSpeed[l] : carried(before, full, left, c, -d, left < 0.0, per);
      double out =
          ahead ? right * gateSpeed[c] : carried(before, full, right, c, d, right > 0.0, per);
      double over =
          carried(before, full, bottom, c, -t, bottom < 0.0, per)
              - carried(before, full, top, c, t, top > 0.0, per);
      double momentum = held * before[c] + (in - out) + over;
      return (momentum + (gateL * gateSpeed[l] + gateR * gateSpeed[c])) / after;
    }
  }

  /**
   * Momentum over density that goes over with a volume between a face and its neighbour.
   *
   * @param volume that goes over, either sign [m3]
   * @param c face
   * @param e step to the neighbour, negative towards lower indices
   * @param outwards whether the flow goes from the face to the neighbour
   * @param perHeld one over the liquid of the face [1/m3]
   */
  private static double carried(
      double[] before,
      boolean[] full,
      double volume,
      int c,
      int e,
      boolean outwards,
      double perHeld) {
    if (volume == 0.0) {
      return 0.0;
    }
    int up = outwards ? c : c + e;
    int down = outwards ? c + e : c;
    int behind = outwards ? c - e : c + 2 * e;
    if (full[up] && full[down] && full[behind]) {
      double share = Math.min(1.0, Math.abs(volume * perHeld));
      return volume * VanLeerFlux.face(before[behind], before[up], before[down], share);
    }
    return volume * before[up];
  }
}
