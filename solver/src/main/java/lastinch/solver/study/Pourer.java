package lastinch.solver.study;

import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.UnsupportedCase;

/** Answers a job. */
@FunctionalInterface
public interface Pourer {
  /** The real thing: a dry pour. */
  Pourer DRY = dry();

  /** The same, asked for other measures besides. */
  static Pourer dry(Measure... also) {
    return of((job, stop) -> DryPour.run(job, RunObserver.NONE, stop), also);
  }

  /**
   * Pours over the plane.
   *
   * @param square edge of the squares [m]
   */
  static Run overPlane(double square) {
    return (job, stop) ->
        DryPour.run(
                DryPour.plane(PlaneSettings.squares(square)),
                job,
                Phase.FILLING,
                RunObserver.NONE,
                stop)
            .filling();
  }

  /**
   * Pours a job.
   *
   * @param job the job
   * @param stop polled now and then
   * @throws RunCache.Cancelled when it was asked to stop before it had an answer
   */
  RunSummary pour(PourCase job, BooleanSupplier stop);

  /** Runs a job to its end or until it is asked to stop. */
  @FunctionalInterface
  interface Run {
    /** The whole result. */
    PourResult of(PourCase job, BooleanSupplier stop);
  }

  /**
   * Answers by runs of which a glance is kept. A run that breaks down or needs a part that is not
   * there gives a glance that says so.
   *
   * @param also measures that are asked for besides {@link Measure#ALL}
   */
  static Pourer of(Run run, Measure... also) {
    return (job, stop) -> {
      PourResult result;
      try {
        result = run.of(job, stop);
      } catch (UnsupportedCase e) {
        return RunSummary.none(RunSummary.End.NOT_THERE);
      }
      if (result.outcome() instanceof Outcome.Cancelled) {
        throw new RunCache.Cancelled();
      }
      return RunSummary.of(job, result, also);
    };
  }
}
