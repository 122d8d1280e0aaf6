package lastinch.solver.casting;

/** A side of the piece seen from above (cope side), thick end towards you. */
public enum Side {
  LEFT,
  RIGHT,
  THICK_END,
  TIP
}
