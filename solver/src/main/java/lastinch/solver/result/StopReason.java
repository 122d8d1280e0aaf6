package lastinch.solver.result;

/** Why a front stands for good. In the order of precedence. */
public enum StopReason {
  /** The leading metal is too thick with solid. */
  SLUSH,
  /** Skins grown from both faces leave too little room. */
  SKIN,
  /** The way to the front closed further back. */
  FROZE_UPSTREAM,
  /** Nothing left to pour. */
  NO_METAL,
  /** Air ahead pushes back. */
  AIR,
  /** The gap is too thin for the push there is. */
  CAPILLARITY
}
