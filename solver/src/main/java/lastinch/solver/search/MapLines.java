package lastinch.solver.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;

/**
 * Lines between outcomes on a map: every grid edge whose ends differ is narrowed with runs, then
 * the crossings are joined cell by cell. A cell with four crossings is settled by a run in its
 * middle.
 */
final class MapLines {
  private final RunCache studies;
  private final PourCase job;
  private final OperatingMap.Question q;
  private final List<Double> xs;
  private final List<Double> ys;
  private final List<Optional<RunSummary>> glances;

  MapLines(
      RunCache studies,
      PourCase job,
      OperatingMap.Question q,
      List<Double> xs,
      List<Double> ys,
      List<Optional<RunSummary>> glances) {
    this.studies = studies;
    this.job = job;
    this.q = q;
    this.xs = xs;
    this.ys = ys;
    this.glances = glances;
  }

  /** From a place of the grid to the next one right of it or, rising, above it. */
  private record Edge(int column, int row, boolean rising) {
    private int toColumn() {
      return rising ? column : column + 1;
    }

    private int toRow() {
      return rising ? row + 1 : row;
    }

    private Point from(List<Double> xs, List<Double> ys) {
      return new Point(xs.get(column), ys.get(row));
    }

    private Point to(List<Double> xs, List<Double> ys) {
      return new Point(xs.get(toColumn()), ys.get(toRow()));
    }
  }

  private record Point(double x, double y) {
    private Point towards(Point there, double share) {
      return new Point(x + share * (there.x - x), y + share * (there.y - y));
    }
  }

  private boolean isInside(OperatingMap.Parts parts, RunSummary g) {
    return parts == OperatingMap.Parts.FILLS ? g.filled() : q.goal().isMetBy(g);
  }

  /** How far a run lies inside a line [-]; below zero outside, never zero. */
  private double inside(OperatingMap.Parts parts, RunSummary g) {
    if (!isInside(parts, g)) {
      double heat = g.filled() ? q.goal().inside(g) : Math.min(g.signed(), 0.0);
      return Math.min(-LineCrossing.NEXT_TO_NOTHING, heat);
    }
    double heat =
        parts == OperatingMap.Parts.FILLS ? Math.min(g.heat(), g.signed()) : q.goal().inside(g);
    return Math.max(LineCrossing.NEXT_TO_NOTHING, heat);
  }

  private Optional<RunSummary> at(int column, int row) {
    return glances.get(row * xs.size() + column).filter(RunSummary::answered);
  }

  private RunSummary pour(double x, double y) {
    return studies.pour(q.up().set(q.across().set(job, x), y));
  }

  List<OperatingMap.Line> lines(OperatingMap.Parts parts) {
    Map<Edge, Point> crossings = crossings(parts);
    Map<Edge, List<Edge>> joined = new LinkedHashMap<>();
    for (int row = 0; row + 1 < ys.size(); row++) {
      for (int column = 0; column + 1 < xs.size(); column++) {
        join(parts, column, row, crossings, joined);
      }
    }
    return chains(parts, crossings, joined);
  }

  private Map<Edge, Point> crossings(OperatingMap.Parts parts) {
    List<Edge> edges = new ArrayList<>();
    List<Supplier<Point>> tasks = new ArrayList<>();
    for (int row = 0; row < ys.size(); row++) {
      for (int column = 0; column < xs.size(); column++) {
        for (boolean rising : new boolean[] {false, true}) {
          Edge edge = new Edge(column, row, rising);
          if (isCrossed(parts, edge)) {
            edges.add(edge);
            tasks.add(() -> crossing(parts, edge));
          }
        }
      }
    }
    List<Optional<Point>> points = studies.all(tasks);
    Map<Edge, Point> crossings = new LinkedHashMap<>();
    for (int i = 0; i < edges.size(); i++) {
      int number = i;
      points.get(i).ifPresent(p -> crossings.put(edges.get(number), p));
    }
    return crossings;
  }

  private boolean isCrossed(OperatingMap.Parts parts, Edge edge) {
    if (edge.toColumn() >= xs.size() || edge.toRow() >= ys.size()) {
      return false;
    }
    Optional<RunSummary> here = at(edge.column(), edge.row());
    Optional<RunSummary> there = at(edge.toColumn(), edge.toRow());
    return here.isPresent()
        && there.isPresent()
        && isInside(parts, here.get()) != isInside(parts, there.get());
  }

  /** Narrows the way between two places that came out differently. */
  private Point crossing(OperatingMap.Parts parts, Edge edge) {
    Point from = edge.from(xs, ys);
    Point to = edge.to(xs, ys);
    boolean stepwise = edge.rising() ? q.up().stepwise() : q.across().stepwise();
    if (stepwise) {
      return from.towards(to, 0.5);
    }
    RunSummary here = at(edge.column(), edge.row()).orElseThrow();
    RunSummary there = at(edge.toColumn(), edge.toRow()).orElseThrow();
    LineCrossing crossing =
        new LineCrossing(
            share -> {
              Point p = from.towards(to, share);
              return pour(p.x(), p.y());
            },
            g -> inside(parts, g));
    return from.towards(to, crossing.between(here, there));
  }

  private void join(
      OperatingMap.Parts parts,
      int column,
      int row,
      Map<Edge, Point> crossings,
      Map<Edge, List<Edge>> joined) {
    Edge bottom = new Edge(column, row, false);
    Edge right = new Edge(column + 1, row, true);
    Edge top = new Edge(column, row + 1, false);
    Edge left = new Edge(column, row, true);
    List<Edge> crossed = new ArrayList<>();
    for (Edge edge : List.of(bottom, right, top, left)) {
      if (crossings.containsKey(edge)) {
        crossed.add(edge);
      }
    }
    if (crossed.size() == 2) {
      link(crossed.get(0), crossed.get(1), joined);
    } else if (crossed.size() == 4) {
      Optional<RunSummary> corner = at(column, row);
      boolean insideHere = corner.isPresent() && isInside(parts, corner.get());
      boolean insideMiddle = middle(parts, column, row).orElse(insideHere);
      // the middle belongs to this corner and the far one: the other two corners are cut off
      if (insideMiddle == insideHere) {
        link(bottom, right, joined);
        link(top, left, joined);
      } else {
        link(bottom, left, joined);
        link(top, right, joined);
      }
    }
  }

  private Optional<Boolean> middle(OperatingMap.Parts parts, int column, int row) {
    if (q.across().stepwise() || q.up().stepwise()) {
      return Optional.empty();
    }
    List<Supplier<RunSummary>> one =
        List.of(
            () ->
                pour(
                    0.5 * (xs.get(column) + xs.get(column + 1)),
                    0.5 * (ys.get(row) + ys.get(row + 1))));
    return studies.all(one).get(0).map(g -> isInside(parts, g));
  }

  private static void link(Edge a, Edge b, Map<Edge, List<Edge>> joined) {
    joined.computeIfAbsent(a, e -> new ArrayList<>()).add(b);
    joined.computeIfAbsent(b, e -> new ArrayList<>()).add(a);
  }

  private static List<OperatingMap.Line> chains(
      OperatingMap.Parts parts, Map<Edge, Point> crossings, Map<Edge, List<Edge>> joined) {
    List<OperatingMap.Line> lines = new ArrayList<>();
    List<Edge> starts = new ArrayList<>();
    joined.forEach(
        (edge, ends) -> {
          if (ends.size() == 1) {
            starts.add(edge);
          }
        });
    starts.addAll(joined.keySet());
    for (Edge start : starts) {
      if (joined.getOrDefault(start, List.of()).isEmpty()) {
        continue;
      }
      Deque<Edge> chain = new ArrayDeque<>();
      chain.add(start);
      Edge here = start;
      while (!joined.getOrDefault(here, List.of()).isEmpty()) {
        Edge next = joined.get(here).get(0);
        joined.get(here).remove(next);
        joined.get(next).remove(here);
        chain.add(next);
        here = next;
      }
      List<Double> x = new ArrayList<>();
      List<Double> y = new ArrayList<>();
      for (Edge edge : chain) {
        x.add(crossings.get(edge).x());
        y.add(crossings.get(edge).y());
      }
      lines.add(new OperatingMap.Line(parts, x, y));
    }
    return lines;
  }
}
