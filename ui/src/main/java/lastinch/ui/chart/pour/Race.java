package lastinch.ui.chart.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.Gap;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.ui.words.PouredPlan;

/** Places of the piece that metal reached, with both times, from the thick end to the tip. */
public final class Race {
  /** Places further apart than so many cells have no metal between them. */
  private static final double GAP = 2.5;

  private record Point(double at, double arrives, double freezes) {}

  /**
   * Where a front stopped for good.
   *
   * @param stop as it was found
   * @param at on the piece's ruler [m]
   * @param up whether the metal came up the ruler
   */
  public record End(Stop stop, double at, boolean up) {}

  private final List<Point> points = new ArrayList<>();
  private final List<End> ends = new ArrayList<>();
  private final List<Meeting> meetings = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();
  private final double start;
  private final double step;

  private Race(PourResult result, Optional<PassageRecord> limb) {
    start = limb.map(PassageRecord::start).orElse(0.0);
    step = limb.map(p -> p.length() / Math.max(1, p.size())).orElse(1.0);
    if (limb.isEmpty()) {
      return;
    }
    PassageRecord p = limb.get();
    for (int cell = 0; cell < p.size(); cell++) {
      if (p.reached(cell)) {
        points.add(
            new Point(
                start + p.at(cell),
                p.arrivalTime(cell),
                Math.max(p.freezeTime(cell), p.arrivalTime(cell))));
      }
    }
    if (points.isEmpty()) {
      return;
    }
    extend(p);
    for (Stop stop : result.stops()) {
      if (stop.passage().equals(p.name())) {
        end(stop);
      }
    }
    result.gaps().stream().filter(g -> g.passage().equals(p.name())).forEach(gaps::add);
    for (Meeting m : result.meetings()) {
      if (m.passage().equals(p.name())) {
        meetings.add(m);
      }
    }
  }

  public static Race of(PouredPlan plan) {
    return new Race(plan.result(), ToldLimb.of(plan.result()));
  }

  /** The race in one part of the piece. */
  public static Race of(PourResult result, PassageRecord part) {
    return new Race(result, Optional.of(part));
  }

  /** Cell middles end half a cell before the ends of the piece; metal goes on to them. */
  private void extend(PassageRecord p) {
    Point first = points.get(0);
    Point last = points.get(points.size() - 1);
    if (p.reached(0)) {
      points.add(0, new Point(start, first.arrives(), first.freezes()));
    }
    if (p.reached(p.size() - 1)) {
      points.add(new Point(start + p.length(), last.arrives(), last.freezes()));
    }
  }

  /** Puts the very place of a stop at the end of the metal that stopped there. */
  private void end(Stop stop) {
    double at = start + stop.at();
    boolean up = stop.way() != Stop.Way.DOWN;
    ends.add(new End(stop, at, up));
    Optional<Point> beside =
        up
            ? points.stream().filter(q -> q.at() <= at).reduce((a, b) -> b)
            : points.stream().filter(q -> q.at() > at).findFirst();
    if (beside.isEmpty()) {
      return;
    }
    double freezes =
        switch (stop.reason()) {
          case SLUSH, SKIN -> stop.time();
          default -> Math.max(stop.time(), beside.get().freezes());
        };
    points.removeIf(q -> Math.abs(q.at() - at) < step && (up ? q.at() > at : q.at() < at));
    points.add(new Point(at, stop.time(), freezes));
    points.sort(Comparator.comparingDouble(Point::at));
  }

  /** First and last number of points of metal without a gap or a cold shut in it. */
  List<int[]> runs() {
    List<int[]> runs = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= points.size(); i++) {
      if (i == points.size() || isApart(points.get(i - 1).at(), points.get(i).at())) {
        runs.add(new int[] {first, i - 1});
        first = i;
      }
    }
    return runs;
  }

  private boolean isApart(double a, double b) {
    return b - a > GAP * step
        || gaps.stream().anyMatch(g -> start + g.from() >= a && start + g.to() <= b)
        || meetings.stream()
            .filter(m -> m.kind() == Meeting.Kind.COLD_SHUT)
            .mapToDouble(m -> start + m.at())
            .anyMatch(at -> at >= a && at < b);
  }

  /** Where fronts stopped for good. */
  public List<End> ends() {
    return ends;
  }

  /** Where fronts met. */
  public List<Meeting> meetings() {
    return meetings;
  }

  public int size() {
    return points.size();
  }

  /** Distance on the piece's ruler [m]. */
  public double at(int i) {
    return points.get(i).at();
  }

  /** When metal gets there [s]. */
  public double arrives(int i) {
    return points.get(i).arrives();
  }

  /** When it would have stopped flowing there [s], not before it arrived. */
  double freezes(int i) {
    return points.get(i).freezes();
  }

  /** Time metal had left there [s]. */
  public double spare(int i) {
    return freezes(i) - arrives(i);
  }
}
