package lastinch.solver.run;

import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;

/** The one way to run a case. */
public final class DryPour {
  private DryPour() {}

  /**
   * Pours a case dry.
   *
   * @param pourCase the job
   * @param observer told of progress
   * @param stopRequested polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist
   */
  @SuppressWarnings("DoNotCallSuggester")
  public static PourResult run(
      PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
    throw new UnsupportedOperationException("not built");
  }
}
