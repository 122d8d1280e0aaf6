package lastinch.solver.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.VerdictWord;

/**
 * Pours a job again with each unknown at both ends of its band, then once on an unlucky and once on
 * a lucky day.
 *
 * <p>With c half the change of a measure, as a rule the signed margin, from one end to the other, a
 * day moves each unknown by its half-band times |c| over the root of the sum of all c squared,
 * towards the end that its sign says is bad (or good), on the scale of the logarithm where a band
 * is wide. To first order that is the likeliest of the days that come once in twenty.
 */
public final class Bands {
  /** Share of the slurry between which the laws of mush are run at their ends [-]. */
  private static final double LEAST_SHARE = 0.1;

  private static final double MOST_SHARE = 0.9;

  /** Least share of the spread for which a measurement is worth naming [-]; our own limit. */
  static final double WORTH_NAMING = 0.02;

  private Bands() {}

  /**
   * The study.
   *
   * @param job a job of which {@code best} is the result
   * @param best filled or stopped short
   * @param measure by which good and bad ends are told apart
   * @param workers how many pours at once, at least 1; the answer is the same for all
   * @param stopRequested polled often, from several threads
   * @return empty when asked to stop, or when the run itself has no verdict
   */
  public static Optional<BandStudy> around(
      PourCase job, PourResult best, Measure measure, int workers, BooleanSupplier stopRequested) {
    if (VerdictWord.of(best).isEmpty()) {
      return Optional.empty();
    }
    List<UncertainInput> unknowns = applying(job, best);
    List<PourCase> jobs = new ArrayList<>();
    for (UncertainInput unknown : unknowns) {
      jobs.add(unknown.set(job, unknown.towards(job, false, 1.0)));
      jobs.add(unknown.set(job, unknown.towards(job, true, 1.0)));
    }
    try (RunCache studies =
        new RunCache(Pourer.dry(measure), workers, RunCache.Watch.NONE, stopRequested)) {
      List<RunSummary> ends = allOf(studies.pourAll(jobs));
      List<OneAtATimeEffect> swings = swings(job, measure, unknowns, ends);
      List<PourResult> days =
          allOf(
              studies.<PourResult>all(
                  List.of(
                      () -> whole(day(job, swings, false), stopRequested),
                      () -> whole(day(job, swings, true), stopRequested))));
      return Optional.of(
          new BandStudy(
              best,
              days.get(0),
              days.get(1),
              swings,
              VerdictWord.of(best, days).orElseThrow(),
              weakest(swings),
              measure(swings)));
    } catch (RunCache.Cancelled e) {
      return Optional.empty();
    }
  }

  private static <T> List<T> allOf(List<Optional<T>> found) {
    return found.stream().map(f -> f.orElseThrow(RunCache.Cancelled::new)).toList();
  }

  private static PourResult whole(PourCase job, BooleanSupplier stop) {
    PourResult result = DryPour.run(job, RunObserver.NONE, stop);
    if (result.outcome() instanceof Outcome.Cancelled) {
      throw new RunCache.Cancelled();
    }
    return result;
  }

  /**
   * Open figures of a job that can matter to it, in the order of the list: the share of mush where
   * it is mixed, figures of an open gap where one has begun to open.
   */
  public static List<UncertainInput> applying(PourCase job, PourResult best) {
    boolean mixed = best.slurryShare() > LEAST_SHARE && best.slurryShare() < MOST_SHARE;
    List<UncertainInput> unknowns = new ArrayList<>(UncertainInput.openIn(job));
    if (!mixed) {
      unknowns.remove(UncertainInput.RANGE_RATIO);
    }
    if (best.findings().stream().noneMatch(f -> f.kind() == Finding.Kind.GAP_COUNTS)) {
      unknowns.remove(UncertainInput.CONTACT_GAP);
      unknowns.remove(UncertainInput.GAP_OPEN);
    }
    return unknowns;
  }

  private static List<OneAtATimeEffect> swings(
      PourCase job, Measure measure, List<UncertainInput> unknowns, List<RunSummary> ends) {
    double sum = 0.0;
    for (int i = 0; i < unknowns.size(); i++) {
      double c = half(measure, ends.get(2 * i), ends.get(2 * i + 1));
      sum += c * c;
    }
    List<OneAtATimeEffect> swings = new ArrayList<>();
    for (int i = 0; i < unknowns.size(); i++) {
      RunSummary low = ends.get(2 * i);
      RunSummary high = ends.get(2 * i + 1);
      double c = half(measure, low, high);
      swings.add(
          new OneAtATimeEffect(
              unknowns.get(i),
              unknowns.get(i).band(job).orElseThrow(),
              low,
              high,
              measure,
              sum > 0.0 ? c * c / sum : 0.0));
    }
    return swings;
  }

  /** Half the change; nothing where one of the runs has no verdict. */
  private static double half(Measure measure, RunSummary low, RunSummary high) {
    return low.answered() && high.answered() ? OneAtATimeEffect.half(measure, low, high) : 0.0;
  }

  /** The job on a day when all unknowns lean the same way. */
  public static PourCase day(PourCase job, List<OneAtATimeEffect> swings, boolean lucky) {
    PourCase moved = job;
    for (OneAtATimeEffect swing : swings) {
      if (swing.share() > 0.0) {
        boolean up = (swing.half() > 0.0) == lucky;
        double value = swing.unknown().towards(job, up, Math.sqrt(swing.share()));
        moved = swing.unknown().set(moved, value);
      }
    }
    return moved;
  }

  private static Optional<UncertainInput> weakest(List<OneAtATimeEffect> swings) {
    Optional<UncertainInput> found = Optional.empty();
    double most = 0.0;
    for (OneAtATimeEffect swing : swings) {
      if (swing.share() > most) {
        most = swing.share();
        found = Optional.of(swing.unknown());
      }
    }
    return found;
  }

  /** Most of the spread for the effort. */
  private static Optional<UncertainInput> measure(List<OneAtATimeEffect> swings) {
    Optional<UncertainInput> found = Optional.empty();
    double most = 0.0;
    for (OneAtATimeEffect swing : swings) {
      double worth = swing.share() / swing.unknown().effort().weight();
      if (swing.share() >= WORTH_NAMING && worth > most) {
        most = worth;
        found = Optional.of(swing.unknown());
      }
    }
    return found;
  }
}
