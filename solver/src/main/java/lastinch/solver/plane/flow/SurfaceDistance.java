package lastinch.solver.plane.flow;

/**
 * How far the surface stands from the middle of a cell with metal, by the metal's own height in the
 * two cells on each side of the face in between. Tension, which is taken explicitly, shakes a
 * surface that is held very close; without it the true distance may stand, and metal at rest stays
 * at rest.
 */
final class SurfaceDistance {
  /**
   * Least distance of the surface with tension [cells]; chosen: held closer, explicit tension
   * shakes it and a round front is no longer round.
   */
  private static final double NEAREST = 0.05;

  /**
   * Least distance without tension [cells]; chosen: frictionless metal at rest takes up 2e-9 J in a
   * second, 1.2e-8 with 0.05.
   */
  private static final double NEAREST_SLACK = 1e-3;

  /** Greatest distance [cells]: a full cell behind and one of air ahead; chosen. */
  private static final double FARTHEST = 1.5;

  private final PlaneGrid grid;
  private final double nearest;

  SurfaceDistance(PlaneGrid grid, FlowingLiquid liquid) {
    this.grid = grid;
    nearest = liquid.tension() > 0.0 ? NEAREST : NEAREST_SLACK;
  }

  /** From the middle of a cell to the surface in the way to an empty one [cells]. */
  double of(FlowState s, int metal, int air, int step) {
    double behind = grid.volume[metal - step] > 0.0 ? s.fill(metal - step) : 1.0;
    double ahead = grid.volume[air + step] > 0.0 ? s.fill(air + step) : 0.0;
    double d = behind + s.fill(metal) + s.fill(air) + ahead - 1.5;
    return Math.max(nearest, Math.min(FARTHEST, d));
  }
}
