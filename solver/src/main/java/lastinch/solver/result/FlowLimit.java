package lastinch.solver.result;

/** What held the flow back for most of the pour. */
public enum FlowLimit {
  HAND,
  GATES,
  HEAD,
  AIR
}
