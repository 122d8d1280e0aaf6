package lastinch.solver.geometry.gating;

/**
 * A place on the rim of the piece where something joins.
 *
 * @param x place [m]
 * @param y place [m]
 * @param outX away from the piece, unit vector; both 0 where only the way along the piece counts
 * @param outY away from the piece
 */
public record Mouth(double x, double y, double outX, double outY) {
  public double xOut(double distance) {
    return x + outX * distance;
  }

  public double yOut(double distance) {
    return y + outY * distance;
  }
}
