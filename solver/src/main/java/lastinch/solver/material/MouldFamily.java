package lastinch.solver.material;

/** Kinds of mould. */
public enum MouldFamily {
  /** Sand held together by oil, resin, water glass or clay. */
  SAND,
  /** Powder poured round the pattern, burnt out and poured hot. */
  INVESTMENT,
  /** Dipped ceramic shell. */
  SHELL,
  /** Graphite or metal mould, used again and again. */
  PERMANENT
}
