package lastinch.solver.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * What made the difference between two plans, found by taking parts of the second over into the
 * first, one at a time, and giving parts of the second back, one at a time.
 *
 * @param first outcome of the first plan
 * @param second outcome of the second
 * @param swaps every part in which they differ, heaviest first
 * @param kind what can be said
 */
public record Difference(RunSummary first, RunSummary second, List<Swap> swaps, Kind kind) {
  /** A change of goodness that is worth a word: 2 % of heat or of length. */
  public static final double WORTH = 0.02;

  public Difference {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
    swaps = List.copyOf(swaps);
    Objects.requireNonNull(kind, "kind");
  }

  /**
   * One part taken over.
   *
   * @param key name of the part
   * @param taken the first plan with this part of the second
   * @param givenBack the second plan with this part of the first
   */
  public record Swap(String key, RunSummary taken, RunSummary givenBack) {
    public Swap {
      Objects.requireNonNull(key, "key");
      Objects.requireNonNull(taken, "taken");
      Objects.requireNonNull(givenBack, "givenBack");
    }
  }

  /** What can be said. */
  public enum Kind {
    /** They end alike, or nearly. */
    ALIKE,
    /** One part alone turns the outcome, or brings at least half of what lies between them. */
    ONE_PART,
    /** Each of several parts alone turns the outcome. */
    ANY_PART,
    /** No part alone does much; together they do. */
    TOGETHER,
    /** Some swapped plans give no answer, and the others do not explain it. */
    UNCLEAR
  }

  /** What a swap brings the first plan [-]. */
  public double gain(Swap swap) {
    return swap.taken().answered() ? swap.taken().goodness() - first.goodness() : 0.0;
  }

  /** What giving it back costs the second plan [-]. */
  public double loss(Swap swap) {
    return swap.givenBack().answered() ? second.goodness() - swap.givenBack().goodness() : 0.0;
  }

  /** Runs that {@link #between} makes. */
  public static int runs(PourCase a, PourCase b) {
    return 2 + 2 * (int) PlanPart.ALL.stream().filter(p -> p.differs(a, b)).count();
  }

  /** Finds it. The plans must both give an answer for anything but {@link Kind#UNCLEAR}. */
  public static Difference between(RunCache studies, PourCase a, PourCase b) {
    PourCase one = PlanPart.withEnoughMetal(a, b);
    PourCase two = PlanPart.withEnoughMetal(b, a);
    Map<String, Integer> places = new LinkedHashMap<>();
    List<PourCase> jobs = new ArrayList<>(List.of(a, b));
    for (PlanPart part : PlanPart.ALL) {
      if (part.differs(a, b)) {
        places.put(part.key(), jobs.size());
        jobs.add(part.from(one, two));
        jobs.add(part.from(two, one));
      }
    }
    studies.expect(runs(a, b));
    List<Optional<RunSummary>> glances = studies.pourAll(jobs);
    if (!glances.stream().allMatch(Optional::isPresent)) {
      throw new RunCache.Cancelled();
    }
    List<Swap> swaps = new ArrayList<>();
    places.forEach(
        (key, at) ->
            swaps.add(
                new Swap(key, glances.get(at).orElseThrow(), glances.get(at + 1).orElseThrow())));
    Difference raw =
        new Difference(
            glances.get(0).orElseThrow(), glances.get(1).orElseThrow(), swaps, Kind.UNCLEAR);
    List<Swap> sorted =
        swaps.stream().sorted(Comparator.comparingDouble(s -> -weight(raw, s))).toList();
    return new Difference(raw.first(), raw.second(), sorted, kind(raw, sorted));
  }

  /** What a swap brings, and half of what giving it back costs, neither more than there is. */
  private static double weight(Difference raw, Swap swap) {
    double whole = raw.second().goodness() - raw.first().goodness();
    double way = Math.signum(whole);
    double most = Math.abs(whole);
    return Math.min(most, way * raw.gain(swap)) + 0.5 * Math.min(most, way * raw.loss(swap));
  }

  private static Kind kind(Difference raw, List<Swap> swaps) {
    if (!raw.first().answered() || !raw.second().answered()) {
      return Kind.UNCLEAR;
    }
    double whole = raw.second().goodness() - raw.first().goodness();
    if (Math.abs(whole) < WORTH || swaps.isEmpty()) {
      return Kind.ALIKE;
    }
    Swap heaviest = swaps.get(0);
    long turning =
        raw.first().filled() == raw.second().filled()
            ? 0
            : swaps.stream()
                .filter(t -> t.taken().answered())
                .filter(t -> t.taken().filled() == raw.second().filled())
                .count();
    if (turning > 1) {
      return Kind.ANY_PART;
    }
    if (turning == 1 || raw.gain(heaviest) / whole >= 0.5) {
      return Kind.ONE_PART;
    }
    boolean silent =
        swaps.stream().anyMatch(s -> !s.taken().answered() || !s.givenBack().answered());
    return silent ? Kind.UNCLEAR : Kind.TOGETHER;
  }
}
