package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Effort;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.study.Goal;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * The smallest change after which a job does what is wanted; when it does so already, how far each
 * thing may slip.
 *
 * @param base the job as it stands
 * @param goal what was asked for
 * @param answers each lever alone, cheapest first; those that are not enough after the others
 * @param pairs two levers moved together, cheapest first
 * @param pick the change to make, if there is one
 * @param runs made for all this
 * @param whole whether the study was not stopped before its end
 */
public record SmallestChange(
    RunSummary base,
    Goal goal,
    List<LeverAnswer> answers,
    List<PairAnswer> pairs,
    Optional<Pick> pick,
    int runs,
    boolean whole) {
  /** Runs a lever takes, as a rule; for the progress only. */
  private static final int USUAL_RUNS = 20;

  /**
   * Help that is too little to tell which way it lies: 5 % of the heat or of the length. Where
   * several gates feed one piece, runs side by side differ by half as much without any rule.
   */
  private static final double LITTLE = 0.05;

  public SmallestChange {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(goal, "goal");
    answers = List.copyOf(answers);
    pairs = List.copyOf(pairs);
    Objects.requireNonNull(pick, "pick");
  }

  /** Whether it does what is wanted as it stands. */
  public boolean already() {
    return goal.isMetBy(base);
  }

  /** Whether the best value of a lever brings next to nothing. */
  public boolean helpsLittle(LeverAnswer answer) {
    return goal.goodness(answer.best().glance()) - goal.goodness(base) < LITTLE;
  }

  /**
   * What to change.
   *
   * @param answer a change of one lever
   * @param pair a change of two, when no single one is enough
   * @param because the reason
   */
  public record Pick(Optional<LeverAnswer> answer, Optional<PairAnswer> pair, Because because) {
    public Pick {
      Objects.requireNonNull(answer, "answer");
      Objects.requireNonNull(pair, "pair");
      Objects.requireNonNull(because, "because");
    }
  }

  /** Why a change is the one to make. */
  public enum Because {
    /** Nothing to make or buy. */
    NO_NEW_PARTS,
    /** The tool for it is there. */
    TOOL_OWNED,
    /** It is the only one. */
    ONLY_ONE,
    /** Of all that do it, it asks least. */
    CHEAPEST,
    /** No single change is enough. */
    TWO_TOGETHER
  }

  /** Runs that so many levers take, as a rule, pairs of them left out. */
  public static int usualRuns(List<Lever> levers) {
    return USUAL_RUNS * (int) levers.stream().filter(l -> l.effort() != Effort.NOT_BY_HAND).count();
  }

  /**
   * Searches.
   *
   * @param studies makes the runs
   * @param job as it stands
   * @param levers to try; those that are in nobody's hand are passed over
   * @param goal what is wanted
   * @throws RunCache.Cancelled when stopped before the job itself was poured
   */
  public static SmallestChange of(RunCache studies, PourCase job, List<Lever> levers, Goal goal) {
    RunSummary base = studies.pour(job);
    List<Lever> tried = levers.stream().filter(l -> l.effort() != Effort.NOT_BY_HAND).toList();
    boolean already = goal.isMetBy(base);
    List<Supplier<LeverAnswer>> tasks = new ArrayList<>();
    for (Lever lever : tried) {
      studies.expect(USUAL_RUNS);
      tasks.add(
          () -> {
            LeverSearch search = new LeverSearch(studies, job, lever, goal);
            return !already
                ? search.smallest()
                : lever.unit() == ParameterUnit.CHOICE ? search.compared() : search.slip();
          });
    }
    List<Optional<LeverAnswer>> found = studies.all(tasks);
    List<LeverAnswer> answers =
        found.stream()
            .flatMap(Optional::stream)
            .sorted(Comparator.comparingDouble((LeverAnswer a) -> cost(a, goal)))
            .toList();
    List<PairAnswer> pairs = List.of();
    boolean whole = found.stream().allMatch(Optional::isPresent);
    if (!already && whole) {
      PairSearch search = new PairSearch(studies, job, base, goal);
      pairs = search.cheapest(answers);
      whole = search.whole();
    }
    return new SmallestChange(
        base, goal, answers, pairs, pick(answers, pairs), studies.runs(), whole);
  }

  /** What a change costs: other work first, then what it brings with it, then how far it goes. */
  static double cost(LeverAnswer answer, Goal goal) {
    double first =
        switch (answer.kind()) {
          case ENOUGH, MAY_SLIP -> 0.0;
          case HOLDS, COMPARED, NOT_ENOUGH -> 100.0;
          case NO_HELP -> 200.0;
          case NO_ANSWER -> 300.0;
        };
    double troubles = 0.0;
    for (LookOut look : answer.lookOuts()) {
      troubles += look.serious() ? 1.5 : 0.2;
    }
    double way = answer.chosen().map(t -> shareOfWay(answer.lever(), t.value())).orElse(0.0);
    double help =
        answer.kind() == LeverAnswer.Kind.NOT_ENOUGH ? -goal.goodness(answer.best().glance()) : 0.0;
    return first + answer.lever().effort().cost() + troubles + way + 10.0 * help;
  }

  /** How much of the way to the end of what is practical a value is [-]. */
  public static double shareOfWay(Lever lever, double value) {
    double end =
        value >= lever.now() ? lever.practical().high().value() : lever.practical().low().value();
    double whole = Math.abs(end - lever.now());
    return whole > 0.0 ? Math.min(1.0, Math.abs(value - lever.now()) / whole) : 1.0;
  }

  private static Optional<Pick> pick(List<LeverAnswer> answers, List<PairAnswer> pairs) {
    List<LeverAnswer> enough =
        answers.stream().filter(a -> a.kind() == LeverAnswer.Kind.ENOUGH).toList();
    if (enough.isEmpty()) {
      return pairs.stream()
          .findFirst()
          .map(p -> new Pick(Optional.empty(), Optional.of(p), Because.TWO_TOGETHER));
    }
    LeverAnswer first = enough.get(0);
    Because because =
        enough.size() == 1
            ? Because.ONLY_ONE
            : first.lever().effort() == Effort.AT_THE_FURNACE
                ? Because.NO_NEW_PARTS
                : first.withTool().isPresent() ? Because.TOOL_OWNED : Because.CHEAPEST;
    return Optional.of(new Pick(Optional.of(first), Optional.empty(), because));
  }
}
