package lastinch.solver.filling;

/** What a case asks of a solver that it does not have. */
public enum Need {
  MODEL_TOO_WIDE,
  MODEL_TOO_BRANCHED,
  STARTS_WET,
  METAL_IN_PLACE,
  SQUARES_TOO_FINE,
  GATE_OFF_THE_PIECE,
  GATING_OVER_THE_PIECE
}
