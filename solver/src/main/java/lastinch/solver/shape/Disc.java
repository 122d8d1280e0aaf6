package lastinch.solver.shape;

import lastinch.solver.casting.GapMap.Part;

/** A round pocket of one depth. */
record Disc(Part part, double x, double y, double across, double gap) implements Region {
  @Override
  public double gapAt(double px, double py) {
    double square = (px - x) * (px - x) + (py - y) * (py - y);
    return 4.0 * square <= across * across ? gap : 0.0;
  }

  @Override
  public Box box() {
    return Box.around(x, y, 0.5 * across);
  }
}
