package lastinch.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Stop;
import lastinch.ui.words.PouredPlan;

/** Places of the piece that metal reached, with both times, from the thick end to the tip. */
final class Race {
  /** Places further apart than so many cells have no metal between them. */
  private static final double GAP = 2.5;

  private record Point(double at, double arrives, double freezes) {}

  private final List<Point> points;

  private Race(List<Point> points) {
    this.points = points;
  }

  static Race of(PouredPlan plan) {
    Optional<PassageRecord> piece = ToldLimb.of(plan.result());
    List<Point> points = new ArrayList<>();
    if (piece.isEmpty()) {
      return new Race(points);
    }
    PassageRecord p = piece.get();
    for (int cell = 0; cell < p.size(); cell++) {
      if (p.reached(cell)) {
        double freezes = Math.max(p.freezeTime(cell), p.arrivalTime(cell));
        points.add(new Point(p.start() + p.at(cell), p.arrivalTime(cell), freezes));
      }
    }
    if (!points.isEmpty() && plan.result().outcome() instanceof Outcome.Filled) {
      extend(points, p);
    }
    if (ManyFrontsChart.suits(plan.pourCase())) {
      return new Race(points);
    }
    plan.result().stops().stream()
        .filter(s -> s.passage().equals(p.name()))
        .findFirst()
        .ifPresent(s -> end(points, p, s));
    return new Race(points);
  }

  /** Cell middles end half a cell before the tip; a full piece goes on to it. */
  private static void extend(List<Point> points, PassageRecord p) {
    Point first = points.get(0);
    Point last = points.get(points.size() - 1);
    points.add(0, new Point(p.start(), first.arrives(), first.freezes()));
    points.add(new Point(p.start() + p.length(), last.arrives(), last.freezes()));
  }

  /** Puts the very place of a stop at the end at which metal stood. */
  private static void end(List<Point> points, PassageRecord p, Stop stop) {
    double at = p.start() + stop.at();
    double middle =
        points.isEmpty() ? at : (points.get(0).at() + points.get(points.size() - 1).at()) / 2;
    boolean atFront = at >= middle;
    points.removeIf(q -> atFront ? q.at() > at : q.at() < at);
    double freezes =
        switch (stop.reason()) {
          case SLUSH, SKIN -> stop.time();
          default ->
              points.isEmpty()
                  ? stop.time()
                  : Math.max(stop.time(), points.get(atFront ? points.size() - 1 : 0).freezes());
        };
    points.add(atFront ? points.size() : 0, new Point(at, stop.time(), freezes));
  }

  /** First and last number of points without a gap between them. */
  List<int[]> runs() {
    double step = Double.POSITIVE_INFINITY;
    for (int i = 2; i < points.size() - 1; i++) {
      step = Math.min(step, points.get(i).at() - points.get(i - 1).at());
    }
    List<int[]> runs = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= points.size(); i++) {
      if (i == points.size() || points.get(i).at() - points.get(i - 1).at() > GAP * step) {
        runs.add(new int[] {first, i - 1});
        first = i;
      }
    }
    return runs;
  }

  int size() {
    return points.size();
  }

  /** Distance on the piece's ruler [m]. */
  double at(int i) {
    return points.get(i).at();
  }

  /** When metal gets there [s]. */
  double arrives(int i) {
    return points.get(i).arrives();
  }

  /** When it would have stopped flowing there [s], not before it arrived. */
  double freezes(int i) {
    return points.get(i).freezes();
  }
}
