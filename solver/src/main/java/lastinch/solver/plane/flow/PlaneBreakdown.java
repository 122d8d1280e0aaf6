package lastinch.solver.plane.flow;

/** The numbers went wrong. */
public final class PlaneBreakdown extends RuntimeException {
  private static final long serialVersionUID = 1L;
  public final double time;
  public final String quantity;
  public final String reason;

  public PlaneBreakdown(double time, String quantity, String reason) {
    super(quantity + " at " + time + " s: " + reason);
    this.time = time;
    this.quantity = quantity;
    this.reason = reason;
  }
}
