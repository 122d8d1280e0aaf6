package lastinch.ui.chart.paper;

/**
 * A place in the mould.
 *
 * @param x along the piece, from its first station [m]
 * @param y to its left, seen from the cope side with the thick end towards you [m]
 * @param n square to the parting plane, towards the cope [m]
 */
public record Spot3(double x, double y, double n) {
  public static final Spot3 ZERO = new Spot3(0.0, 0.0, 0.0);

  public Spot3 plus(double times, Spot3 way) {
    return new Spot3(x + times * way.x, y + times * way.y, n + times * way.n);
  }

  public double u() {
    return x;
  }

  public double v(View view) {
    return view == View.FACE ? y : n;
  }

  public double distance(Spot3 other) {
    double dx = x - other.x;
    double dy = y - other.y;
    double dn = n - other.n;
    return Math.sqrt(dx * dx + dy * dy + dn * dn);
  }
}
