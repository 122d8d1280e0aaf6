package lastinch.solver.network.flow;

/** The numbers went wrong. Caught by the run, which keeps the last good state. */
public final class NetworkBreakdown extends RuntimeException {
  private static final long serialVersionUID = 1L;
  public final double time;
  public final String place;
  public final String quantity;
  public final String reason;

  public NetworkBreakdown(double time, String place, String quantity, String reason) {
    super(quantity + " at " + place + ", " + time + " s: " + reason);
    this.time = time;
    this.place = place;
    this.quantity = quantity;
    this.reason = reason;
  }
}
