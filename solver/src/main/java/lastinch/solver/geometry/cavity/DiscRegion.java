package lastinch.solver.geometry.cavity;

import lastinch.solver.casting.GapMap.Part;

/** A round pocket of one depth. */
record DiscRegion(Part part, double x, double y, double across, double gap) implements GapRegion {
  @Override
  public double gapAt(double px, double py) {
    double square = (px - x) * (px - x) + (py - y) * (py - y);
    return 4.0 * square <= across * across ? gap : 0.0;
  }

  @Override
  public PlanBox box() {
    return PlanBox.around(x, y, 0.5 * across);
  }
}
