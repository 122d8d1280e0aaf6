package lastinch.ui.cli.study;

import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;

/** Runs of a study. Of the plans themselves the whole result is kept, so they are poured once. */
public final class StudyRuns implements Pourer.Run {
  private final Pourer.Run run;
  private final Map<PourCase, PourResult> whole = new ConcurrentHashMap<>();

  /**
   * Makes ready.
   *
   * @param run pours a job the way that was asked for
   */
  StudyRuns(Pourer.Run run) {
    this.run = Objects.requireNonNull(run, "run");
  }

  @Override
  public PourResult of(PourCase job, BooleanSupplier stop) {
    PourResult known = whole.get(job);
    return known == null ? run.of(job, stop) : known;
  }

  /**
   * The whole result of a plan.
   *
   * @throws RunCache.Cancelled when asked to stop
   */
  PourResult whole(PourCase plan, BooleanSupplier stop) {
    PourResult result = of(plan, stop);
    if (result.outcome() instanceof Outcome.Cancelled) {
      throw new RunCache.Cancelled();
    }
    whole.put(plan, result);
    return result;
  }
}
