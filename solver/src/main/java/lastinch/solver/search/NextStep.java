package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.Finding;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.Bands;

/**
 * The one thing to do next: of a handful of single changes that were poured, the one that helps
 * what is worst without spoiling anything else, on the best pour and on the bad one. Nothing is
 * offered that was not poured and found better.
 *
 * @param troubles of the plan as it is, worst first; empty when there is nothing to mend
 * @param best the plan as it is, with its best figures
 * @param change the change to make, when one helps
 * @param furthest what went furthest of those that help but mend nothing, when none does
 * @param tried how many single changes were poured
 */
public record NextStep(
    List<Trouble> troubles,
    RunSummary best,
    Optional<Change> change,
    Optional<Change> furthest,
    int tried) {
  /** Help that is too little to name: 5 % of the heat or of the length; our own limit. */
  private static final double WORTH = 0.05;

  /** Loss of heat or length that counts as none [-]; our own limit. */
  private static final double NOTHING = 0.02;

  /** How many of the tried are poured on the bad pour too. */
  private static final int JUDGED = 5;

  /** How many of these for one trouble. */
  private static final int EACH = 3;

  public NextStep {
    troubles = List.copyOf(troubles);
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(change, "change");
    Objects.requireNonNull(furthest, "furthest");
  }

  /**
   * A change that was poured.
   *
   * @param lever what is changed
   * @param value its new value, in the lever's unit
   * @param helps the trouble of the plan that it is for
   * @param mended whether that trouble is gone with it
   * @param best with the best figures
   * @param bad on the bad pour
   * @param brings lesser troubles that were not there before
   */
  public record Change(
      Lever lever,
      double value,
      Trouble helps,
      boolean mended,
      RunSummary best,
      RunSummary bad,
      List<Trouble> brings) {
    public Change {
      Objects.requireNonNull(lever, "lever");
      Objects.requireNonNull(helps, "helps");
      Objects.requireNonNull(best, "best");
      Objects.requireNonNull(bad, "bad");
      brings = List.copyOf(brings);
    }
  }

  /**
   * Pours what is worth trying.
   *
   * @param studies makes the runs
   * @param job the plan
   * @param bands how far its answer holds
   * @param owned what the shop has
   * @param wanted heat to spare that is wanted [-]
   * @return empty when it was stopped
   */
  public static Optional<NextStep> of(
      RunCache studies, PourCase job, BandStudy bands, Owned owned, double wanted) {
    Trouble.Pair base =
        new Trouble.Pair(
            RunSummary.of(job, bands.best()), RunSummary.of(job, bands.unlucky()), wanted);
    return among(studies, job, bands, owned, base);
  }

  /** The same with the plan's own pours at hand. */
  static Optional<NextStep> among(
      RunCache studies, PourCase job, BandStudy bands, Owned owned, Trouble.Pair base) {
    List<Trouble> troubles = Trouble.of(base);
    List<NextAttempts.Try> tries = NextAttempts.of(job, bands.best(), owned, troubles);
    List<PourCase> jobs = tries.stream().map(t -> t.lever().set(job, t.value())).toList();
    List<Optional<RunSummary>> poured = studies.pourAll(jobs);
    if (poured.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    List<Integer> promising = promising(base, troubles, tries, poured);
    List<Optional<RunSummary>> bad =
        studies.pourAll(
            promising.stream().map(i -> Bands.day(jobs.get(i), bands.swings(), false)).toList());
    List<Change> changes = new ArrayList<>();
    for (int k = 0; k < bad.size(); k++) {
      if (bad.get(k).isEmpty()) {
        return Optional.empty();
      }
      int i = promising.get(k);
      Trouble.Pair pair =
          new Trouble.Pair(poured.get(i).orElseThrow(), bad.get(k).orElseThrow(), base.wanted());
      change(base, troubles, tries.get(i), pair).ifPresent(changes::add);
    }
    changes.sort(ORDER);
    Optional<Change> first = changes.stream().filter(Change::mended).findFirst();
    Optional<Change> helps =
        first.or(() -> changes.stream().filter(c -> isWorthDoing(c.helps())).findFirst());
    return Optional.of(
        new NextStep(
            troubles,
            base.best(),
            helps,
            helps.isPresent() ? Optional.empty() : changes.stream().findFirst(),
            tries.size()));
  }

  /** Whether less of a trouble is worth doing where it is not gone altogether. */
  private static boolean isWorthDoing(Trouble trouble) {
    return trouble == Trouble.LITTLE_SPARE || trouble == Trouble.SPLASHES;
  }

  /** Worst trouble first, what mends it before what eases it, least besides, least work. */
  private static final Comparator<Change> ORDER =
      Comparator.comparing(Change::helps)
          .thenComparing(c -> !c.mended())
          .thenComparing(
              c -> c.brings().stream().findFirst().orElse(null),
              Comparator.nullsLast(Comparator.<Trouble>naturalOrder()).reversed())
          .thenComparing(c -> c.lever().effort())
          .thenComparing(c -> -c.bad().goodness())
          .thenComparing(c -> -c.best().goodness());

  /** Those that the best pour speaks for, most helpful first, as many as are judged further. */
  private static List<Integer> promising(
      Trouble.Pair base,
      List<Trouble> troubles,
      List<NextAttempts.Try> tries,
      List<Optional<RunSummary>> poured) {
    Map<Trouble, List<Integer>> byTrouble = new EnumMap<>(Trouble.class);
    for (int i = 0; i < tries.size(); i++) {
      RunSummary best = poured.get(i).orElseThrow();
      boolean better = best.goodness() > base.best().goodness();
      Trouble.Pair hoped = new Trouble.Pair(best, better ? best : base.bad(), base.wanted());
      int number = i;
      change(base, troubles, tries.get(i), hoped)
          .ifPresent(c -> byTrouble.computeIfAbsent(c.helps(), t -> new ArrayList<>()).add(number));
    }
    List<Integer> chosen = new ArrayList<>();
    for (List<Integer> numbers : byTrouble.values()) {
      numbers.sort(Comparator.comparingDouble(i -> -poured.get(i).orElseThrow().goodness()));
      int left = JUDGED - chosen.size();
      chosen.addAll(numbers.subList(0, Math.min(numbers.size(), Math.min(EACH, left))));
    }
    return chosen;
  }

  /** What a tried value does for the worst trouble it helps; empty when it helps none. */
  private static Optional<Change> change(
      Trouble.Pair base, List<Trouble> troubles, NextAttempts.Try tried, Trouble.Pair pair) {
    if (!pair.best().answered() || !pair.bad().answered()) {
      return Optional.empty();
    }
    List<Trouble> left = Trouble.of(pair);
    for (Trouble trouble : worthHelping(troubles)) {
      List<Trouble> brings = left.stream().filter(t -> !troubles.contains(t)).toList();
      boolean worse = brings.stream().anyMatch(t -> t.compareTo(trouble) < 0);
      boolean mended = !left.contains(trouble);
      boolean eased = trouble.measure(pair) > trouble.measure(base) + WORTH;
      if (!worse && (mended || eased) && !spoils(base, trouble, pair, brings)) {
        return Optional.of(
            new Change(
                tried.lever(), tried.value(), trouble, mended, pair.best(), pair.bad(), brings));
      }
    }
    return Optional.empty();
  }

  /** A pour that fails with its best figures is helped out of that first, or not at all. */
  private static List<Trouble> worthHelping(List<Trouble> troubles) {
    return troubles.stream()
        .filter(t -> t == troubles.get(0) || troubles.get(0).compareTo(Trouble.BAD_POUR_FAILS) >= 0)
        .toList();
  }

  /**
   * Whether it costs something that the plan has. A pour that failed may come to lesser troubles,
   * which are named; one that fills may come to none, and gives away no heat it needs.
   */
  private static boolean spoils(
      Trouble.Pair base, Trouble helped, Trouble.Pair pair, List<Trouble> brings) {
    List<LookOut> now = LookOut.of(pair.best());
    List<LookOut> before = LookOut.of(base.best());
    for (LookOut hard : List.of(LookOut.ABOVE_CEILING, LookOut.TOO_LITTLE_METAL)) {
      if (now.contains(hard) && !before.contains(hard)) {
        return true;
      }
    }
    if (pair.best().findings().contains(Finding.Kind.CUP_RUNS_EMPTY)
        && !base.best().findings().contains(Finding.Kind.CUP_RUNS_EMPTY)) {
      return true;
    }
    if (helped.compareTo(Trouble.BAD_POUR_FAILS) <= 0) {
      return false;
    }
    boolean faster =
        Trouble.SPLASHES.isIn(pair)
            && Trouble.SPLASHES.measure(pair) < Trouble.SPLASHES.measure(base) - WORTH;
    boolean newMarks = now.stream().anyMatch(l -> !before.contains(l));
    boolean gives = helped == Trouble.SPLASHES && base.best().heat() >= base.wanted();
    boolean colder =
        gives
            ? !pair.bad().filled()
            : lost(base.best(), pair.best()) || lost(base.bad(), pair.bad());
    return !brings.isEmpty() || faster || newMarks || colder;
  }

  private static boolean lost(RunSummary before, RunSummary now) {
    return now.goodness() < before.goodness() - NOTHING;
  }
}
