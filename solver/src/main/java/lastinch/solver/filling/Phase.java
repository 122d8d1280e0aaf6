package lastinch.solver.filling;

/** Parts of a pour, in their order. */
public enum Phase {
  /** Until nothing more can come of it: the verdict. */
  FILLING,
  /** The hand goes on until cup or crucible ask it to stop and nothing moves. */
  TOPPING_UP
}
