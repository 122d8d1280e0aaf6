package lastinch.solver.search;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import lastinch.solver.study.RunSummary;

/**
 * Where, between two runs that came out differently, one outcome turns into the other. The first
 * run is made where a straight line through both ends would have it, the next so close beside it
 * that a line may be left between them; what is still open then is halved.
 */
final class LineCrossing {
  /** A line is left when it lies between two runs this share of the way apart [-]. */
  static final double NARROW = 1.0 / 16.0;

  /** Instead of nothing, so that every run lies on one side [-]. */
  static final double NEXT_TO_NOTHING = 1e-9;

  /** Rounds of guess and neighbour before halving takes over. */
  private static final int GUESSES = 2;

  private final DoubleFunction<RunSummary> runs;
  private final ToDoubleFunction<RunSummary> inside;
  private double low;
  private double high = 1.0;
  private double atLow;
  private double atHigh;

  /**
   * Makes ready.
   *
   * @param runs the run at a share of the way [-]
   * @param inside how far a run lies inside; never zero
   */
  LineCrossing(DoubleFunction<RunSummary> runs, ToDoubleFunction<RunSummary> inside) {
    this.runs = runs;
    this.inside = inside;
  }

  /** Share of the way from one to the other at which the line lies [-]. */
  double between(RunSummary here, RunSummary there) {
    atLow = inside.applyAsDouble(here);
    atHigh = inside.applyAsDouble(there);
    for (int i = 0; i < GUESSES && isWide(); i++) {
      double guess = low + (high - low) * atLow / (atLow - atHigh);
      boolean right = tried(within(guess));
      if (isWide()) {
        tried(right ? low + NARROW : high - NARROW);
      }
    }
    while (isWide()) {
      tried(0.5 * (low + high));
    }
    return 0.5 * (low + high);
  }

  private boolean isWide() {
    // rounding may leave a bracket one bit wider than it was made
    return high - low > NARROW * (1.0 + 1e-9);
  }

  /** Not so near to an end that hardly anything is left beyond it. */
  private double within(double share) {
    double margin = Math.min(NARROW, 0.5 * (high - low));
    return Math.max(low + margin, Math.min(high - margin, share));
  }

  /** Makes a run; whether the line lies beyond it. */
  private boolean tried(double share) {
    double value = inside.applyAsDouble(runs.apply(share));
    boolean beyond = (value > 0.0) == (atLow > 0.0);
    if (beyond) {
      low = share;
      atLow = value;
    } else {
      high = share;
      atHigh = value;
    }
    return beyond;
  }
}
