package lastinch.solver.levers;

/** What a change costs a small shop, least first. Our own order, common practice. */
public enum Effort {
  /** Decided with the crucible in hand: faster, hotter, sooner. */
  AT_THE_FURNACE(0.0),
  /** Another cutter, pin or strip while the mould is made. */
  WHILE_MOULDING(1.0),
  /** Tape on the pattern or a new print; the piece itself changes. */
  ON_THE_PATTERN(2.0),
  /** Another metal to buy. */
  OTHER_METAL(3.0),
  /** Another way of making moulds. */
  OTHER_ROUTE(4.0),
  /** Not in anybody's hand; only worth knowing. */
  NOT_BY_HAND(5.0);

  private final double cost;

  Effort(double cost) {
    this.cost = cost;
  }

  /** A figure to sort by; our own scale [-]. */
  public double cost() {
    return cost;
  }
}
