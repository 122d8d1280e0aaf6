package lastinch.solver.run;

import java.util.List;

/** A sound case that needs parts of the solver that are not there. */
public final class UnsupportedCase extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Need> needs;

  /** Parts that may be missing. */
  public enum Need {
    MODEL_TOO_WIDE,
    MODEL_TOO_BRANCHED,
    STARTS_WET,
    METAL_IN_PLACE,
    SQUARES_TOO_FINE,
    GATE_OFF_THE_PIECE,
    GATING_OVER_THE_PIECE
  }

  public UnsupportedCase(List<Need> needs) {
    super("needs " + needs);
    this.needs = List.copyOf(needs);
  }

  /** What is missing, in the order found. */
  public List<Need> needs() {
    return needs;
  }
}
