package lastinch.solver.run;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.network.NetworkSolver;
import lastinch.solver.plane.PlaneSolver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.result.ToppedUp;

/** The one way to run a case: a solver, a job, and how far to go. */
public final class DryPour {
  /** Fills a network of channels. */
  public static final FillingSolver NETWORK = new NetworkSolver();

  private DryPour() {}

  /** Fills the map of the cavity in two dimensions. */
  public static FillingSolver plane(PlaneSettings settings) {
    return new PlaneSolver(settings);
  }

  /** Edge of the finest squares in which a case can be poured over the plane [m]. */
  public static double finestSquare(PourCase job) {
    return PlaneSolver.finest(job);
  }

  /**
   * Pours a case dry along its channels, until the verdict.
   *
   * @param job the job
   * @param observer told of progress
   * @param stop polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist
   */
  public static PourResult run(PourCase job, RunObserver observer, BooleanSupplier stop) {
    return run(NETWORK, job, Phase.FILLING, observer, stop).filling();
  }

  /**
   * Pours a case dry. What was cancelled or broke down ends there.
   *
   * @param solver which fills
   * @param job the job
   * @param last phase wanted; those before it come first
   * @param observer told of progress in all of them
   * @param stop polled once per step; the run then ends as cancelled with what there is
   * @throws UnsupportedCase when the case needs a part of the solver that does not exist
   */
  public static Poured run(
      FillingSolver solver, PourCase job, Phase last, RunObserver observer, BooleanSupplier stop) {
    List<Need> needs = solver.needs(job);
    if (!needs.isEmpty()) {
      throw new UnsupportedCase(needs);
    }
    try (Filling filling = solver.begin(job)) {
      observer.onPhase(Phase.FILLING);
      PourResult filled = filling.fill(observer, stop);
      boolean goesOn =
          filled.outcome() instanceof Outcome.Filled || filled.outcome() instanceof Outcome.Misrun;
      Optional<ToppedUp> toppedUp = Optional.empty();
      if (goesOn && last.compareTo(Phase.TOPPING_UP) >= 0) {
        observer.onPhase(Phase.TOPPING_UP);
        toppedUp = Optional.of(filling.topUp(observer, stop));
      }
      return new Poured(filled, filling.field(), toppedUp);
    }
  }
}
