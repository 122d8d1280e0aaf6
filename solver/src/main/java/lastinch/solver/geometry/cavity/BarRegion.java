package lastinch.solver.geometry.cavity;

import lastinch.solver.casting.GapMap.Part;

/**
 * A straight channel of one width, its gap running straight from one end to the other.
 *
 * @param part what it is
 * @param x start [m]
 * @param y start [m]
 * @param alongX direction, unit vector
 * @param alongY direction, unit vector
 * @param length [m]
 * @param width [m]
 * @param gapFrom gap at the start [m]
 * @param gapTo gap at the end [m]
 */
record BarRegion(
    Part part,
    double x,
    double y,
    double alongX,
    double alongY,
    double length,
    double width,
    double gapFrom,
    double gapTo)
    implements GapRegion {

  static BarRegion between(
      Part part, double xa, double ya, double xb, double yb, double width, double gap) {
    double length = Math.sqrt((xb - xa) * (xb - xa) + (yb - ya) * (yb - ya));
    return new BarRegion(
        part, xa, ya, (xb - xa) / length, (yb - ya) / length, length, width, gap, gap);
  }

  @Override
  public double gapAt(double px, double py) {
    double s = (px - x) * alongX + (py - y) * alongY;
    double t = (py - y) * alongX - (px - x) * alongY;
    if (s < 0.0 || s > length || Math.abs(t) > 0.5 * width) {
      return 0.0;
    }
    return gapFrom + (gapTo - gapFrom) * s / length;
  }

  @Override
  public PlanBox box() {
    double reach = 0.5 * width;
    return PlanBox.around(x, y, reach)
        .with(PlanBox.around(x + alongX * length, y + alongY * length, reach));
  }
}
