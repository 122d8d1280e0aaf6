package lastinch.solver.result;

import lastinch.solver.result.Margin.LimitedBy;

/** Why a front stands for good. In the order of precedence. */
public enum StopReason {
  /** The leading metal is too thick with solid. */
  SLUSH(LimitedBy.HEAT),
  /** Skins grown from both faces leave too little room. */
  SKIN(LimitedBy.HEAT),
  /** The way to the front closed further back. */
  FROZE_UPSTREAM(LimitedBy.HEAT),
  /** Nothing left to pour. */
  NO_METAL(LimitedBy.METAL),
  /** Air ahead pushes back. */
  AIR(LimitedBy.AIR),
  /** The gap is too thin for the push there is. */
  CAPILLARITY(LimitedBy.PUSH);

  private final LimitedBy lacked;

  StopReason(LimitedBy lacked) {
    this.lacked = lacked;
  }

  /** What was short. */
  public LimitedBy lacked() {
    return lacked;
  }
}
