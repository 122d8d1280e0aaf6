package lastinch.solver.plane;

/** Fills a map of the cavity: jets, puddles, edges and air in two dimensions. */
public final class PlaneSolver {
  private PlaneSolver() {}

  /** Told of progress after accepted steps. */
  @FunctionalInterface
  public interface Watch {
    /**
     * Called at most a few hundred times a run.
     *
     * @param time [s]
     * @param filled share of the piece [-]
     */
    void onStep(double time, double filled);
  }
}
