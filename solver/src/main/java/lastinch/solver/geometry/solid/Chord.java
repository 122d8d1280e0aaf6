package lastinch.solver.geometry.solid;

import lastinch.solver.casting.Centreline;
import lastinch.solver.geometry.cavity.SolidRegion;

/**
 * The stretch of a line across a piece that lies in it.
 *
 * @param middleX its middle [m]
 * @param middleY its middle [m]
 * @param acrossX its direction, to the left of the middle line
 * @param acrossY its direction
 * @param width its length [m]
 */
record Chord(double middleX, double middleY, double acrossX, double acrossY, double width) {
  /** Halvings of the last stretch [-]: its end is known to 2e-11 m; chosen. */
  private static final int HALVINGS = 24;

  /**
   * Stretches in which the end of the piece is looked for [m]; chosen: narrower holes are stepped
   * over.
   */
  private static final double COARSE = 2.5e-4;

  /** Most of them [-]: ten metres. */
  private static final int MOST_STEPS = 40_000;

  double xAt(double fromMiddle) {
    return middleX + fromMiddle * acrossX;
  }

  double yAt(double fromMiddle) {
    return middleY + fromMiddle * acrossY;
  }

  /**
   * The chord square to a line at a distance along it.
   *
   * @param along distance [m]
   * @param reach the direction is taken over so much on either side [m]
   */
  static Chord at(SolidRegion region, Centreline line, double along, double reach) {
    double a = Math.max(0.0, along - reach);
    double b = Math.min(line.length(), along + reach);
    double dx = line.xAt(b) - line.xAt(a);
    double dy = line.yAt(b) - line.yAt(a);
    double norm = Math.sqrt(dx * dx + dy * dy);
    double acrossX = norm > 0.0 ? -dy / norm : 0.0;
    double acrossY = norm > 0.0 ? dx / norm : 1.0;
    double x = line.xAt(along);
    double y = line.yAt(along);
    double left = exit(region, x, y, acrossX, acrossY);
    double right = exit(region, x, y, -acrossX, -acrossY);
    double shift = 0.5 * (left - right);
    return new Chord(x + shift * acrossX, y + shift * acrossY, acrossX, acrossY, left + right);
  }

  /** How far it is from a place to where the piece ends in a direction [m]; 0 from outside. */
  static double exit(SolidRegion region, double x, double y, double dx, double dy) {
    double inside = 0.0;
    int steps = 0;
    while (steps < MOST_STEPS
        && region.gapAt(x + (inside + COARSE) * dx, y + (inside + COARSE) * dy) > 0.0) {
      inside += COARSE;
      steps++;
    }
    double outside = inside + COARSE;
    for (int k = 0; k < HALVINGS; k++) {
      double half = 0.5 * (inside + outside);
      if (region.gapAt(x + half * dx, y + half * dy) > 0.0) {
        inside = half;
      } else {
        outside = half;
      }
    }
    return inside;
  }
}
