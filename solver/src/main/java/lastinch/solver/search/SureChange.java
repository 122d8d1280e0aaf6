package lastinch.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Range;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunCache;
import lastinch.solver.uncertainty.ChanceInterval;
import lastinch.solver.uncertainty.FillProbability;

/**
 * How far one lever has to go before a job fills often enough.
 *
 * @param lever the lever
 * @param value the smallest change that was found to do it; the best that was tried where none does
 * @param chance how often it fills there
 * @param enough whether that is as often as was asked for
 */
public record SureChange(Lever lever, double value, ChanceInterval chance, boolean enough) {
  /** Days on which each value is tried. */
  private static final int DAYS = 128;

  /** Levers that are tried. */
  private static final int LEVERS = 4;

  /** Values between the plan and the end of practice, then halvings of the step that does it. */
  private static final int STEPS = 4;

  private static final int HALVINGS = 3;

  public SureChange {
    Objects.requireNonNull(lever, "lever");
    Objects.requireNonNull(chance, "chance");
  }

  /**
   * What was asked for, and what was found.
   *
   * @param share of the days on which it has to fill [-]
   * @param changes cheapest first
   */
  public record Wanted(double share, List<SureChange> changes) {
    public Wanted {
      changes = List.copyOf(changes);
    }
  }

  /** Runs that so many levers take at the most, as a rule. */
  public static int usualRuns(int levers) {
    return Math.min(LEVERS, levers) * STEPS * DAYS;
  }

  /**
   * For the cheapest levers that help.
   *
   * @param studies makes the runs
   * @param job the plan
   * @param least what single changes do to it
   * @param wanted share of the days on which it has to fill [-]
   * @throws RunCache.Cancelled when stopped before its end
   */
  public static List<SureChange> of(
      RunCache studies, PourCase job, SmallestChange least, double wanted) {
    List<SureChange> all = new ArrayList<>();
    for (LeverAnswer answer : least.answers()) {
      boolean helps =
          answer.kind() == LeverAnswer.Kind.ENOUGH
              || answer.kind() == LeverAnswer.Kind.NOT_ENOUGH
              || answer.kind() == LeverAnswer.Kind.MAY_SLIP;
      if (helps && !answer.lever().stepwise() && all.size() < LEVERS) {
        all.add(along(studies, job, answer, wanted));
      }
    }
    return List.copyOf(all);
  }

  private static SureChange along(
      RunCache studies, PourCase job, LeverAnswer answer, double wanted) {
    Lever lever = answer.lever();
    double at = answer.chosen().orElse(answer.best()).value();
    boolean slips = answer.kind() == LeverAnswer.Kind.MAY_SLIP;
    double towards = slips ? 2.0 * lever.now() - at : at;
    Range range = lever.practical();
    double end = towards >= lever.now() ? range.high().value() : range.low().value();
    double before = lever.now();
    Optional<SureChange> best = Optional.empty();
    for (int i = 1; i <= STEPS; i++) {
      SureChange there =
          at(studies, job, lever, lever.now() + i * (end - lever.now()) / STEPS, wanted);
      if (there.enough) {
        return closer(studies, job, before, there, wanted);
      }
      if (best.isEmpty() || there.chance.share() > best.get().chance.share()) {
        best = Optional.of(there);
      }
      before = there.value;
    }
    return best.orElseThrow();
  }

  private static SureChange closer(
      RunCache studies, PourCase job, double before, SureChange enough, double wanted) {
    double bad = before;
    SureChange good = enough;
    for (int i = 0; i < HALVINGS; i++) {
      SureChange middle = at(studies, job, good.lever, 0.5 * (bad + good.value), wanted);
      if (middle.enough) {
        good = middle;
      } else {
        bad = middle.value;
      }
    }
    return good;
  }

  /** On a mark of the lever's instrument, within practice. */
  private static SureChange at(
      RunCache studies, PourCase job, Lever lever, double value, double wanted) {
    double marked = lever.mark(lever.nearestMark(value));
    double set = lever.practical().holds(marked) ? marked : value;
    ChanceInterval chance =
        FillProbability.of(studies, lever.set(job, set), Measure.MARGIN, DAYS, false).chance();
    return new SureChange(lever, set, chance, chance.share() >= wanted);
  }
}
