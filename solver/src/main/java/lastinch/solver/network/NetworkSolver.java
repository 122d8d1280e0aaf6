package lastinch.solver.network;

import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.network.layout.NetworkScope;
import lastinch.solver.result.PourResult;

/** Fills a network of channels: plugs, pools and falling metal with real front positions. */
public final class NetworkSolver {
  private NetworkSolver() {}

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

  /**
   * Runs a case that {@link NetworkScope} allows.
   *
   * @param job the job
   * @param watch told of progress
   * @param stop polled once per step
   */
  public static PourResult run(PourCase job, Watch watch, BooleanSupplier stop) {
    return new NetworkRun(job).run(watch, stop);
  }
}
