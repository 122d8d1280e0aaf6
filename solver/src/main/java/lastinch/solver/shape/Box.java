package lastinch.solver.shape;

/** Sides of an upright rectangle in the parting plane [m]. */
record Box(double lowX, double lowY, double highX, double highY) {
  static Box around(double x, double y, double reach) {
    return new Box(x - reach, y - reach, x + reach, y + reach);
  }

  Box with(Box other) {
    return new Box(
        Math.min(lowX, other.lowX),
        Math.min(lowY, other.lowY),
        Math.max(highX, other.highX),
        Math.max(highY, other.highY));
  }
}
