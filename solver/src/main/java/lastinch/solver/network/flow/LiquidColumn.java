package lastinch.solver.network.flow;

import lastinch.solver.network.heat.FrontMarker;

/** One moving column of metal in the pressure solve: a plug up to its front, or a full channel. */
public final class LiquidColumn {
  /** Marks a leg's end whose pressure is known. */
  static final int KNOWN = -1;

  public Channel channel;

  /** Joint at its A side and B side, or {@link #KNOWN}. */
  int from;

  int to;

  /** Front at its A side (-1), at its B side (+1), or none (0). */
  int frontSide;

  FrontMarker front;

  /** Flow at the start of the step, in the present iteration [m3/s]. */
  double oldFlow;

  public double flow;

  /** Inertia [kg/m4], resistances [Pa s/m3] and [Pa s2/m6], weight [Pa]. */
  double inertia;

  /** Share of it that is not the column's own but dragged along round a fresh front [kg/m4]. */
  double dragged;

  /** Inertia of the column where the step starts, and what it gains over the step [kg/m4]. */
  double column;

  double lengthening;

  /** Least inertia of a column, and what a fresh front drags along besides [kg/m4]. */
  double least;

  double opening;

  public double linear;
  public double quadraticForward;
  public double quadraticBackward;
  double weight;

  /** How the weight grows with the flow, the front being half a step on [Pa s/m3]; 0 or more. */
  double lift;

  /** Weight over the far end of what lands on a pool in half a step [Pa]. */
  double landing;

  /** Share of the step after which the flow to be found is reached [-], and that time [s]. */
  double share;

  double span;

  /** Velocity heads that leave at B less those at A, over the flow squared [Pa s2/m6]. */
  double head;

  /**
   * Flow up to which the velocity head of metal that draws back is taken into account [m3/s]; a
   * pool gives no more, and the passes would run away on it.
   */
  double most;

  /** Whether its A end, its B end opens into air at a joint. */
  boolean dryA;

  boolean dryB;

  /** Capillary push at the front's position [Pa]. */
  double capillary;

  /** Whether a shallow pool limits the flow, and to what [m3/s]. */
  boolean drawsAtMost;

  /** Whether checking options force the flow. */
  boolean forced;

  double held;

  /** Pressure at a known end, or above that of the node there [Pa]. */
  double knownFrom;

  double knownTo;

  /** flow = alpha + beta (pFrom - pTo). */
  double alpha;

  double beta;

  /** Whether its front stands. */
  boolean stands() {
    return front != null && front.motion == 0;
  }

  /** Puts the push that an advancing front needs at its end. */
  void setCapillary() {
    double push = front.motion > 0 ? capillary : 0.0;
    if (frontSide > 0) {
      knownTo = push;
    } else {
      knownFrom = push;
    }
  }

  /**
   * Adds the velocity head at a surface or an open end of an area [m2]: -1 = A side, +1 = B side.
   */
  void addHead(int side, double area, double density) {
    head += side * 0.5 * density / (area * area);
  }

  /**
   * Sets after which share [-] of a step [s] the flow to be found is reached: with its inertia then
   * the column's motion accounts for all that is spent on it.
   */
  void setShare(double reached, double step) {
    share = reached;
    span = reached * step;
    double own = column + (1.0 - reached) * lengthening;
    inertia = Math.max(own, least) + opening;
    dragged = inertia - own;
  }

  /** Linearises about the present flow: pressures at unknown ends are left out. */
  void linearise() {
    double q = flow;
    double quadratic = q >= 0.0 ? quadraticForward : quadraticBackward;
    double residual =
        (inertia / span + lift) * (q - oldFlow) + linear * q + quadratic * q * Math.abs(q) + weight;
    double slope = inertia / span + lift + linear + 2.0 * quadratic * Math.abs(q);
    boolean speedsUp = head * q < 0.0;
    if (speedsUp && Math.abs(q) > most) {
      residual += head * most * most;
    } else {
      residual += head * q * q;
      slope += Math.max(-0.5 * slope, 2.0 * head * q);
    }
    residual += knownTo - knownFrom;
    beta = 1.0 / slope;
    alpha = q - residual * beta;
  }

  /**
   * How many times over losses and velocity heads would stop a flow [m3/s] of this column in a step
   * [s] [-].
   */
  double stiffness(double q, double step) {
    double quadratic = q >= 0.0 ? quadraticForward : quadraticBackward;
    double slope = linear + 2.0 * quadratic * Math.abs(q) + Math.max(0.0, 2.0 * head * q);
    return step * slope / inertia;
  }

  /** Flow at the end of the step, carried on from the present one [m3/s]. */
  double carriedOn() {
    return oldFlow + (flow - oldFlow) / share;
  }
}
