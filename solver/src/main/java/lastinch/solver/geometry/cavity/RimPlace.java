package lastinch.solver.geometry.cavity;

/**
 * A place on the rim of the piece where something joins.
 *
 * @param x place [m]
 * @param y place [m]
 * @param outX outwards, unit vector
 * @param outY outwards, unit vector
 */
record RimPlace(double x, double y, double outX, double outY) {
  double xOut(double distance) {
    return x + outX * distance;
  }

  double yOut(double distance) {
    return y + outY * distance;
  }
}
