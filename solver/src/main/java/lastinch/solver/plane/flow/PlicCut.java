package lastinch.solver.plane.flow;

/**
 * A unit square cut by a straight line: liquid lies where {@code mx x + my y <= alpha}. Textbook
 * geometry; used to find how much liquid a slab of a cell holds.
 */
final class PlicCut {
  private PlicCut() {}

  /**
   * Liquid share of a square for a line with non-negative normal, {@code mx + my = 1}.
   *
   * @param small the lesser of both [-]
   * @param alpha offset of the line [-]
   */
  private static double share(double small, double alpha) {
    if (alpha <= 0.0) {
      return 0.0;
    }
    if (alpha >= 1.0) {
      return 1.0;
    }
    double big = 1.0 - small;
    double a = Math.min(alpha, 1.0 - alpha);
    double part = a < small ? a * a / (2.0 * small * big) : (a - 0.5 * small) / big;
    return alpha <= 0.5 ? part : 1.0 - part;
  }

  /**
   * Offset of the line that leaves a given liquid share, the inverse of {@link #share}.
   *
   * @param small lesser component of the normal [-]
   * @param liquid share [-]
   */
  private static double offset(double small, double liquid) {
    double big = 1.0 - small;
    double v = Math.min(liquid, 1.0 - liquid);
    double a = v < small / (2.0 * big) ? Math.sqrt(2.0 * small * big * v) : big * v + 0.5 * small;
    return liquid <= 0.5 ? a : 1.0 - a;
  }

  /**
   * Liquid in a slab at one side of a cell, as a share of the cell's volume.
   *
   * @param liquid share of the cell [-], 0 to 1
   * @param along component of the normal across the slab, positive when the liquid thins out
   *     towards the slab's side, any length
   * @param across the other component
   * @param width of the slab as a share of the cell [-], above 0 to 1
   */
  static double slab(double liquid, double along, double across, double width) {
    double sum = Math.abs(along) + Math.abs(across);
    if (sum < 1e-12) {
      return liquid * width;
    }
    double mx = Math.abs(along) / sum;
    double my = Math.abs(across) / sum;
    double alpha = offset(Math.min(mx, my), liquid);
    double start = along >= 0.0 ? 1.0 - width : 0.0;
    double left = alpha - mx * start;
    double scaled = mx * width;
    double total = scaled + my;
    return width * share(Math.min(scaled, my) / total, left / total);
  }
}
