package lastinch.solver.plane;

import lastinch.solver.physics.Friction;

/**
 * What the walls of the gap take from the speed, per second, by cell and then by face. Laminar
 * between plates, turbulent above; solid in the metal thickens it, skin narrows the gap (the mean
 * speed is kept per whole gap, so the law goes with the third power of the open share).
 */
final class WallFriction {
  private final PlaneGrid grid;
  private final Liquid liquid;
  private final double[] rate;

  /** By face: share of a new speed that friction leaves over a step [-]; 0 where a face is shut. */
  final double[] leavesX;

  final double[] leavesY;

  WallFriction(PlaneGrid grid, Liquid liquid) {
    this.grid = grid;
    this.liquid = liquid;
    rate = new double[grid.size];
    leavesX = new double[grid.size];
    leavesY = new double[grid.size];
  }

  /**
   * Finds what friction leaves over a step [s], implicit in the new speed.
   *
   * @param shut cells that let nothing through
   * @param halted cells whose leading metal goes no further into cells without a pressure
   */
  void find(FlowState s, boolean[] shut, boolean[] halted, double dt) {
    int n = grid.stride;
    for (int j = s.rowFrom - 1; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j] - 1; c <= end; c++) {
        rate[c] = grid.volume[c] > 0.0 && !liquid.frictionless() ? rate(s, c) : 0.0;
      }
    }
    faces(s, grid.faceX, grid.gapX, leavesX, 1, shut, halted, dt);
    faces(s, grid.faceY, grid.gapY, leavesY, n, shut, halted, dt);
  }

  /** Whether the metal on both sides of a face, taken together, carries too much solid to flow. */
  private boolean isStiff(FlowState s, int a, int b) {
    double solid = s.slurry[a] * s.liquid[a] + s.slurry[b] * s.liquid[b];
    return solid > 0.0 && solid >= liquid.flowStop() * (s.liquid[a] + s.liquid[b]);
  }

  private double rate(FlowState s, int c) {
    double b = grid.gap[c];
    double open = s.openShare[c];
    double viscosity = liquid.viscosity() * s.thickening[c];
    double laminar = 12.0 * viscosity / (liquid.density() * b * b * open * open * open);
    double uc = 0.5 * (s.u[c] + s.u[c + 1]);
    double vc = 0.5 * (s.v[c] + s.v[c + grid.stride]);
    double speed = Math.sqrt(uc * uc + vc * vc);
    double reynolds = 2.0 * liquid.density() * speed * b / viscosity;
    return reynolds <= Friction.LAMINAR_END
        ? laminar
        : laminar * (Friction.product(reynolds, Friction.SLOT) / Friction.SLOT);
  }

  private void faces(
      FlowState s,
      double[] face,
      double[] gapAt,
      double[] leaves,
      int d,
      boolean[] shut,
      boolean[] halted,
      double dt) {
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        boolean ends = s.active[c] != s.active[c - d] && (halted[c] || halted[c - d]);
        if (face[c] == 0.0 || ends || shut[c] || shut[c - d] || isStiff(s, c, c - d)) {
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
