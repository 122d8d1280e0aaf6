package lastinch.solver.network;

/** One moving column of metal in the pressure solve: a plug up to its front, or a full channel. */
final class Leg {
  /** Marks a leg's end whose pressure is known. */
  static final int KNOWN = -1;

  Channel channel;

  /** Joint at its A side and B side, or {@link #KNOWN}. */
  int from;

  int to;

  /** Front at its A side (-1), at its B side (+1), or none (0). */
  int frontSide;

  Front front;

  /** Flow at the start of the step, in the present iteration [m3/s]. */
  double oldFlow;

  double flow;

  /** Inertia [kg/m4], resistances [Pa s/m3] and [Pa s2/m6], weight [Pa], front area [m2]. */
  double inertia;

  double linear;
  double quadraticForward;
  double quadraticBackward;
  double weight;
  double openArea;

  /** Capillary push at the front's position [Pa]. */
  double capillary;

  /** Whether the plug hangs at a joint that holds air, which gives it nothing. */
  boolean hangsInAir;

  /** Whether a shallow pool limits the flow, and to what [m3/s]. */
  boolean drawsAtMost;

  double held;

  /** Pressure at a known end, or above that of the node there [Pa]. */
  double knownFrom;

  double knownTo;

  /** flow = alpha + beta (pFrom - pTo). */
  double alpha;

  double beta;

  /** Puts the push that an advancing front needs at its end. */
  void setCapillary() {
    double push = front.motion > 0 ? capillary : 0.0;
    if (frontSide > 0) {
      knownTo = push;
    } else {
      knownFrom = push;
    }
  }

  /** Linearises about the present flow: pressures at unknown ends are left out. */
  void linearise(double dt, double density) {
    double q = flow;
    double quadratic = q >= 0.0 ? quadraticForward : quadraticBackward;
    double residual =
        inertia * (q - oldFlow) / dt + linear * q + quadratic * q * Math.abs(q) + weight;
    double slope = inertia / dt + linear + 2.0 * quadratic * Math.abs(q);
    if (openArea > 0.0) {
      double head = 0.5 * density / (openArea * openArea);
      double sign = opensAtB() ? 1.0 : -1.0;
      residual += sign * head * q * q;
      slope += Math.max(-0.5 * slope, 2.0 * sign * head * q);
    }
    residual += knownTo - knownFrom;
    beta = 1.0 / slope;
    alpha = q - residual * beta;
  }

  /** Whether the end that gives off its velocity head lies at the B side. */
  private boolean opensAtB() {
    return openSide > 0;
  }

  /** Side of the free surface or open end that carries the velocity head: -1 = A, +1 = B. */
  int openSide;
}
