package lastinch.solver.network;

/** The numbers went wrong. Caught by the run, which keeps the last good state. */
final class Breakdown extends RuntimeException {
  private static final long serialVersionUID = 1L;
  final double time;
  final String place;
  final String quantity;
  final String reason;

  Breakdown(double time, String place, String quantity, String reason) {
    super(quantity + " at " + place + ", " + time + " s: " + reason);
    this.time = time;
    this.place = place;
    this.quantity = quantity;
    this.reason = reason;
  }
}
