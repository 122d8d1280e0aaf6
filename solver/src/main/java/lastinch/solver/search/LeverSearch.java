package lastinch.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.levers.Range;
import lastinch.solver.study.Goal;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;

/**
 * Searches along one lever, both ways from where it is. Nothing is taken for monotone: both sides
 * are scanned out to what is practical, and only the bracket next to the first value that does it
 * is halved. An island of good values narrower than the scan can be missed; the scan is finer near
 * the present value, where the answer is wanted.
 */
final class LeverSearch {
  /** Values tried on each side before anything is halved. */
  private static final int SCAN = 8;

  /** Spacing of the scan: near values lie closer. */
  private static final double NEARER = 1.6;

  /** Change of goodness that is worth a word: 1 % of heat or of length. */
  private static final double WORTH = 0.01;

  private final RunCache studies;
  private final PourCase job;
  private final Lever lever;
  private final Goal goal;
  private final Trial base;
  private final TreeMap<Double, Trial> tried = new TreeMap<>();

  LeverSearch(RunCache studies, PourCase job, Lever lever, Goal goal) {
    this.studies = studies;
    this.job = job;
    this.lever = lever;
    this.goal = goal;
    this.base = new Trial(lever.now(), studies.pour(job));
    tried.put(base.value(), base);
  }

  private Trial pour(double value) {
    Trial known = tried.get(value);
    if (known == null) {
      known = new Trial(value, studies.pour(lever.set(job, value)));
      tried.put(value, known);
    }
    return known;
  }

  /** The smallest change after which it does what is wanted. */
  LeverAnswer smallest() {
    Predicate<RunSummary> good = goal::isMetBy;
    scanAll();
    Optional<Bracket> found =
        lever.unit() == ParameterUnit.CHOICE ? bestChoice(good) : nearest(good);
    if (found.isEmpty()) {
      return without();
    }
    Trial at = found.get().there();
    Optional<Trial> stops = base.glance().filled() ? Optional.empty() : lastStop(found.get());
    Optional<Trial> tool = tool(good);
    Trial chosen = tool.orElse(at);
    return new LeverAnswer(
        lever,
        LeverAnswer.Kind.ENOUGH,
        Optional.of(at),
        found.get().before(),
        stops,
        tool,
        best(),
        Optional.empty(),
        false,
        LookOut.of(chosen.glance()),
        List.copyOf(tried.values()));
  }

  /** How far it may slip before it no longer does what is wanted. */
  LeverAnswer slip() {
    scanAll();
    if (!isAnswered()) {
      return without();
    }
    Optional<Bracket> found = nearest(g -> g.answered() && !goal.isMetBy(g));
    return new LeverAnswer(
        lever,
        found.isPresent() ? LeverAnswer.Kind.MAY_SLIP : LeverAnswer.Kind.HOLDS,
        found.flatMap(Bracket::before),
        found.map(Bracket::there),
        found.isPresent() && !lever.stepwise() ? firstStop(found.get()) : Optional.empty(),
        Optional.empty(),
        best(),
        Optional.empty(),
        inert(),
        found.flatMap(Bracket::before).map(t -> LookOut.of(t.glance())).orElse(List.of()),
        List.copyOf(tried.values()));
  }

  /** Every choice, run beside the present one that does what is wanted already. */
  LeverAnswer compared() {
    scanAll();
    return without(LeverAnswer.Kind.COMPARED);
  }

  private LeverAnswer without() {
    boolean helps = goal.goodness(best().glance()) > goal.goodness(base.glance()) + WORTH;
    return without(helps ? LeverAnswer.Kind.NOT_ENOUGH : LeverAnswer.Kind.NO_HELP);
  }

  private LeverAnswer without(LeverAnswer.Kind answered) {
    Trial best = best();
    LeverAnswer.Kind kind = isAnswered() ? answered : LeverAnswer.Kind.NO_ANSWER;
    return new LeverAnswer(
        lever,
        kind,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        best,
        endOf(best),
        inert(),
        List.of(),
        List.copyOf(tried.values()));
  }

  private boolean isAnswered() {
    return tried.values().stream().anyMatch(t -> t.value() != lever.now() && t.glance().answered());
  }

  private Optional<Bound> endOf(Trial best) {
    Range range = lever.practical();
    if (best.value() > range.high().value() - lever.step()) {
      return Optional.of(range.high());
    }
    return best.value() < range.low().value() + lever.step()
        ? Optional.of(range.low())
        : Optional.empty();
  }

  private boolean inert() {
    return tried.values().stream()
        .allMatch(t -> Math.abs(goal.goodness(t.glance()) - goal.goodness(base.glance())) < WORTH);
  }

  private Trial best() {
    return tried.values().stream()
        .max(
            Comparator.comparingDouble((Trial t) -> goal.goodness(t.glance()))
                .thenComparing(t -> -Math.abs(t.value() - base.value())))
        .orElse(base);
  }

  private void scanAll() {
    for (int way : new int[] {1, -1}) {
      for (long offset : scan(way)) {
        pour(valueAt(way, offset));
      }
    }
  }

  /** Marks on one side, counted from the present value, in rising distance. */
  private List<Long> scan(int way) {
    long most = marks(way);
    List<Long> offsets = new ArrayList<>();
    int points = lever.stepwise() ? (int) most : SCAN;
    for (int i = 1; i <= points; i++) {
      double share = (double) i / points;
      long offset = lever.stepwise() ? i : Math.round(most * StrictMath.pow(share, NEARER));
      offset = Math.max(1, offset);
      if (offset <= most && (offsets.isEmpty() || offset > offsets.get(offsets.size() - 1))) {
        offsets.add(offset);
      }
    }
    return offsets;
  }

  /** How many marks lie on one side within practice. */
  private long marks(int way) {
    long from = first(way);
    double tiny = 1e-6;
    return way > 0
        ? (long) Math.floor((lever.practical().high().value() - lever.zero()) / lever.step() + tiny)
            - from
            + 1
        : from
            - (long)
                Math.ceil((lever.practical().low().value() - lever.zero()) / lever.step() - tiny)
            + 1;
  }

  /** Number of the first mark beside the present value. */
  private long first(int way) {
    double here = (lever.now() - lever.zero()) / lever.step();
    double tiny = 1e-6;
    return way > 0 ? (long) Math.floor(here + tiny) + 1 : (long) Math.ceil(here - tiny) - 1;
  }

  private double valueAt(int way, long offset) {
    return offset == 0 ? lever.now() : lever.mark(first(way) + way * (offset - 1));
  }

  /** A value that does it and the one before it that does not. */
  private record Bracket(int way, long offset, Trial there, Optional<Trial> before) {}

  private Optional<Bracket> nearest(Predicate<RunSummary> good) {
    Optional<Bracket> up = nearest(good, 1);
    Optional<Bracket> down = nearest(good, -1);
    if (up.isEmpty() || down.isEmpty()) {
      return up.or(() -> down);
    }
    double upBy = Math.abs(up.get().there().value() - base.value());
    double downBy = Math.abs(down.get().there().value() - base.value());
    return upBy <= downBy ? up : down;
  }

  private Optional<Bracket> nearest(Predicate<RunSummary> good, int way) {
    long bad = 0;
    for (long offset : scan(way)) {
      if (good.test(pour(valueAt(way, offset)).glance())) {
        long fine = offset;
        while (fine - bad > 1) {
          long middle = (fine + bad) / 2;
          if (good.test(pour(valueAt(way, middle)).glance())) {
            fine = middle;
          } else {
            bad = middle;
          }
        }
        return Optional.of(
            new Bracket(way, fine, pour(valueAt(way, fine)), Optional.of(pour(valueAt(way, bad)))));
      }
      bad = offset;
    }
    return Optional.empty();
  }

  private Optional<Bracket> bestChoice(Predicate<RunSummary> good) {
    Trial best = best();
    return good.test(best.glance())
        ? Optional.of(new Bracket(1, 0, best, Optional.empty()))
        : Optional.empty();
  }

  /** Between the present value, which stops short, and one that fills: the last that stops. */
  private Optional<Trial> lastStop(Bracket found) {
    if (lever.stepwise()) {
      return Optional.empty();
    }
    long stops = 0;
    long fills = found.offset();
    for (long offset : scan(found.way())) {
      if (offset < fills && !pour(valueAt(found.way(), offset)).glance().filled()) {
        stops = Math.max(stops, offset);
      }
    }
    while (fills - stops > 1) {
      long middle = (fills + stops) / 2;
      if (pour(valueAt(found.way(), middle)).glance().filled()) {
        fills = middle;
      } else {
        stops = middle;
      }
    }
    return Optional.of(pour(valueAt(found.way(), stops)));
  }

  /** Beyond a value that no longer has the spare: the first that does not fill at all. */
  private Optional<Trial> firstStop(Bracket found) {
    if (!found.there().glance().filled()) {
      return Optional.of(found.there());
    }
    long fills = found.offset();
    for (long offset : scan(found.way())) {
      if (offset <= fills) {
        continue;
      }
      if (pour(valueAt(found.way(), offset)).glance().filled()) {
        fills = offset;
        continue;
      }
      long stops = offset;
      while (stops - fills > 1) {
        long middle = (fills + stops) / 2;
        if (pour(valueAt(found.way(), middle)).glance().filled()) {
          fills = middle;
        } else {
          stops = middle;
        }
      }
      return Optional.of(pour(valueAt(found.way(), stops)));
    }
    return Optional.empty();
  }

  /** The size the shop owns, nearest to the present one, that does it. */
  private Optional<Trial> tool(Predicate<RunSummary> good) {
    return lever.owned().stream()
        .filter(v -> lever.physical().holds(v))
        .sorted(Comparator.comparingDouble((Double v) -> Math.abs(v - lever.now())))
        .map(this::pour)
        .filter(t -> good.test(t.glance()))
        .findFirst();
  }
}
