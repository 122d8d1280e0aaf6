package lastinch.solver.filling;

/** Watches a pour through all its phases. Cannot change it. */
@FunctionalInterface
public interface RunObserver {
  /** Watches nothing. */
  RunObserver NONE = (time, filled) -> {};

  /**
   * Called after accepted steps, at most a few hundred times a run.
   *
   * @param time simulated [s]
   * @param filled share of the piece's volume [-], never falls
   */
  void onStep(double time, double filled);

  /** Called when a phase begins. */
  default void onPhase(Phase phase) {}
}
