package lastinch.solver.plane.flow;

/** How cells that are over or under full find back, over a fixed time whatever the step. */
final class VolumeRelaxation {
  /**
   * Time over which a cell finds back [s]; chosen, and fixed: one that follows the step runs away.
   */
  private static final double TIME = 5e-3;

  /** Share of what is over or under that a step may take back [-]; chosen. */
  private static final double SHARE = 0.15;

  private final PlaneGrid grid;

  VolumeRelaxation(PlaneGrid grid) {
    this.grid = grid;
  }

  /**
   * Flow that a cell with a pressure gives up; under-full cells take in only inside the metal
   * [m3/s].
   *
   * @param dt step [s]
   */
  double of(FlowState s, int c, double dt) {
    double excess = s.liquid[c] - grid.volume[c];
    return excess < 0.0 && !isInside(s, c) ? 0.0 : excess / Math.max(dt / SHARE, TIME);
  }

  private boolean isInside(FlowState s, int c) {
    int n = grid.stride;
    return metalOrWall(s, c - 1)
        && metalOrWall(s, c + 1)
        && metalOrWall(s, c - n)
        && metalOrWall(s, c + n);
  }

  private boolean metalOrWall(FlowState s, int c) {
    return s.active[c] || grid.volume[c] == 0.0;
  }
}
