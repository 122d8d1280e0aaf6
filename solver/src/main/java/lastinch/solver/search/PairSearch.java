package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Effort;
import lastinch.solver.levers.Lever;
import lastinch.solver.study.Goal;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;

/**
 * Two levers moved together, each the same share of its own way: towards the value that does it
 * alone, or towards the best value there is.
 */
final class PairSearch {
  /** Levers that are paired, and pairs that are kept. */
  private static final int LEVERS = 6;

  private static final int KEPT = 3;

  /** Shares of the way tried first, then halved so often. */
  private static final double[] SHARES = {0.25, 0.5, 0.75, 1.0};

  private static final int HALVINGS = 3;
  private static final int USUAL_RUNS = 6;

  /** Improvement below which a lever is not worth pairing [-]. */
  private static final double WORTH = 0.02;

  private final RunCache studies;
  private final PourCase job;
  private final RunSummary base;
  private final Goal goal;
  private boolean whole = true;

  PairSearch(RunCache studies, PourCase job, RunSummary base, Goal goal) {
    this.studies = studies;
    this.job = job;
    this.base = base;
    this.goal = goal;
  }

  /** Whether the search was not stopped. */
  boolean whole() {
    return whole;
  }

  /** The cheapest pairs of levers that are worth pairing. */
  List<PairAnswer> cheapest(List<LeverAnswer> answers) {
    List<LeverAnswer> worth =
        answers.stream()
            .filter(this::isWorthPairing)
            .sorted(Comparator.comparingDouble(a -> -gain(a)))
            .limit(LEVERS)
            .toList();
    List<Supplier<Optional<PairAnswer>>> tasks = new ArrayList<>();
    for (int i = 0; i < worth.size(); i++) {
      for (int k = i + 1; k < worth.size(); k++) {
        LeverAnswer a = worth.get(i);
        LeverAnswer b = worth.get(k);
        studies.expect(USUAL_RUNS);
        tasks.add(() -> together(a, b));
      }
    }
    List<Optional<Optional<PairAnswer>>> found = studies.all(tasks);
    whole = found.stream().allMatch(Optional::isPresent);
    return found.stream()
        .flatMap(Optional::stream)
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(PairSearch::cost))
        .limit(KEPT)
        .toList();
  }

  private boolean isWorthPairing(LeverAnswer answer) {
    Lever lever = answer.lever();
    return !lever.stepwise()
        && lever.effort().compareTo(Effort.WHILE_MOULDING) <= 0
        && target(answer).isPresent()
        && gain(answer) > WORTH;
  }

  private double gain(LeverAnswer answer) {
    return goal.goodness(answer.best().glance()) - goal.goodness(base);
  }

  /** Where a lever goes when it goes all its way. */
  private static Optional<Trial> target(LeverAnswer answer) {
    return switch (answer.kind()) {
      case ENOUGH -> answer.at();
      case NOT_ENOUGH -> Optional.of(answer.best());
      default -> Optional.empty();
    };
  }

  private Optional<PairAnswer> together(LeverAnswer a, LeverAnswer b) {
    double bad = 0.0;
    for (double share : SHARES) {
      if (goal.isMetBy(pour(a, b, share))) {
        double good = share;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = 0.5 * (good + bad);
          if (goal.isMetBy(pour(a, b, middle))) {
            good = middle;
          } else {
            bad = middle;
          }
        }
        return isTwo(a, b, good) ? Optional.of(answer(a, b, good, bad)) : Optional.empty();
      }
      bad = share;
    }
    return Optional.empty();
  }

  /** Whether both levers have moved, and neither would have been enough alone. */
  private static boolean isTwo(LeverAnswer a, LeverAnswer b, double share) {
    return at(a, share) != a.lever().now()
        && at(b, share) != b.lever().now()
        && !reached(a, share)
        && !reached(b, share);
  }

  private static boolean reached(LeverAnswer answer, double share) {
    return answer.kind() == LeverAnswer.Kind.ENOUGH
        && at(answer, share) == answer.at().orElseThrow().value();
  }

  private PairAnswer answer(LeverAnswer a, LeverAnswer b, double good, double bad) {
    RunSummary glance = pour(a, b, good);
    return new PairAnswer(
        a.lever(),
        at(a, good),
        b.lever(),
        at(b, good),
        glance,
        at(a, bad),
        at(b, bad),
        pour(a, b, bad),
        LookOut.of(glance));
  }

  private RunSummary pour(LeverAnswer a, LeverAnswer b, double share) {
    PourCase one = a.lever().set(job, at(a, share));
    return studies.pour(b.lever().set(one, at(b, share)));
  }

  private static double at(LeverAnswer answer, double share) {
    Lever lever = answer.lever();
    double target = target(answer).orElseThrow().value();
    if (share >= 1.0) {
      return target;
    }
    double value = lever.now() + share * (target - lever.now());
    double marked = lever.mark(lever.nearestMark(value));
    return share <= 0.0 || Math.abs(marked - lever.now()) < 1e-9 * lever.step()
        ? lever.now()
        : marked;
  }

  private static double cost(PairAnswer pair) {
    double troubles = 0.0;
    for (LookOut look : pair.lookOuts()) {
      troubles += look.serious() ? 1.5 : 0.2;
    }
    return troubles
        + pair.first().effort().cost()
        + pair.second().effort().cost()
        + SmallestChange.shareOfWay(pair.first(), pair.firstValue())
        + SmallestChange.shareOfWay(pair.second(), pair.secondValue());
  }
}
