package lastinch.solver.plane.flow;

import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.physics.Friction;

/**
 * What the walls of the gap take from the speed, per second, by cell and then by face. Laminar
 * between plates, turbulent above; solid in the metal thickens it, skin narrows the gap (the mean
 * speed is kept per whole gap, so the law goes with the third power of the open share).
 */
final class WallFriction {
  private final PlaneGrid grid;
  private final FlowingLiquid liquid;
  private final double[] rate;

  /** By face: share of a new speed that friction leaves over a step [-]; 0 where a face is shut. */
  final double[] leavesX;

  final double[] leavesY;

  private FlowState s;
  private boolean[] shut;
  private boolean[] halted;
  private double dt;
  private final WorkerPair.Work rates = this::rates;
  private final WorkerPair.Work faces = this::faces;

  WallFriction(PlaneGrid grid, FlowingLiquid liquid) {
    this.grid = grid;
    this.liquid = liquid;
    rate = new double[grid.size];
    leavesX = new double[grid.size];
    leavesY = new double[grid.size];
    shut = new boolean[0];
    halted = shut;
  }

  /**
   * Finds what friction leaves over a step [s], implicit in the new speed.
   *
   * @param closed cells that let nothing through
   * @param stopped cells whose leading metal goes no further into cells without a pressure
   */
  void find(FlowState state, boolean[] closed, boolean[] stopped, double step) {
    s = state;
    shut = closed;
    halted = stopped;
    dt = step;
    s.team.run(rates);
    s.team.run(faces);
  }

  private void rates(int part) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 1); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        rate[c] = grid.volume[c] > 0.0 && !liquid.frictionless() ? rate(c) : 0.0;
      }
    }
  }

  private void faces(int part) {
    faces(part, grid.faceX, grid.gapX, leavesX, 1);
    faces(part, grid.faceY, grid.gapY, leavesY, grid.stride);
  }

  /** Whether the metal on both sides of a face, taken together, carries too much solid to flow. */
  private boolean isStiff(int a, int b) {
    double solid = s.slurry[a] * s.liquid[a] + s.slurry[b] * s.liquid[b];
    return solid > 0.0 && solid >= liquid.flowStop() * (s.liquid[a] + s.liquid[b]);
  }

  private double rate(int c) {
    double b = grid.gap[c];
    double open = s.openShare[c];
    double viscosity = liquid.viscosity() * s.thickening[c];
    double laminar = 12.0 * viscosity / (liquid.density() * b * b * open * open * open);
    double uc = 0.5 * (s.u[c] + s.u[c + 1]);
    double vc = 0.5 * (s.v[c] + s.v[c + grid.stride]);
    double speed = Math.sqrt(uc * uc + vc * vc);
    double reynolds = 2.0 * liquid.density() * speed * b / viscosity;
    return reynolds <= liquid.friction().laminarEnd()
        ? laminar
        : laminar * (liquid.friction().product(reynolds, Friction.SLOT, 2.0 * b) / Friction.SLOT);
  }

  private void faces(int part, double[] face, double[] gapAt, double[] leaves, int d) {
    int to = s.to(part, 1);
    for (int j = s.from(part, 0); j <= to; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        boolean ends = s.active[c] != s.active[c - d] && (halted[c] || halted[c - d]);
        if (face[c] == 0.0 || ends || shut[c] || shut[c - d] || isStiff(c, c - d)) {
          leaves[c] = 0.0;
        } else {
          double b = gapAt[c];
          double k = 0.5 * (rate[c] * b / grid.gap[c] + rate[c - d] * b / grid.gap[c - d]);
          leaves[c] = 1.0 / (1.0 + dt * k);
        }
      }
    }
  }
}
