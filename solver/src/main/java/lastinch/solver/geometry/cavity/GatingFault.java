package lastinch.solver.geometry.cavity;

/** What can be wrong with gating as it is laid out round a piece. */
public enum GatingFault {
  /** A gate ends in the mould: within reach of its end there is no piece. */
  GATE_OFF_THE_PIECE,

  /** A gate or the runner lies over the piece beyond the rim that it joins. */
  GATING_OVER_THE_PIECE
}
