package lastinch.solver.geometry.cavity;

/** Sides of an upright rectangle in the parting plane [m]. */
public record PlanBox(double lowX, double lowY, double highX, double highY) {
  static PlanBox around(double x, double y, double reach) {
    return new PlanBox(x - reach, y - reach, x + reach, y + reach);
  }

  PlanBox with(PlanBox other) {
    return new PlanBox(
        Math.min(lowX, other.lowX),
        Math.min(lowY, other.lowY),
        Math.max(highX, other.highX),
        Math.max(highY, other.highY));
  }
}
