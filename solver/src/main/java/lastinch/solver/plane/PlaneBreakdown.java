package lastinch.solver.plane;

/** The numbers went wrong. */
final class PlaneBreakdown extends RuntimeException {
  private static final long serialVersionUID = 1L;
  final double time;
  final String quantity;
  final String reason;

  PlaneBreakdown(double time, String quantity, String reason) {
    super(quantity + " at " + time + " s: " + reason);
    this.time = time;
    this.quantity = quantity;
    this.reason = reason;
  }
}
