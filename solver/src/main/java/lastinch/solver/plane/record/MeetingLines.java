package lastinch.solver.plane.record;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.material.FilmForming;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;

/**
 * Lines where fronts met, read from the times of arrival: from two cells side by side the way is
 * followed back from each cell to the neighbour that metal reached first; where the two ways lead
 * apart, metal came from both sides and met there. How hot each was is read one cell behind the
 * line, where the other had not come. Cells that hang together make a line; short ones are noise of
 * the front and left out.
 */
public final class MeetingLines {
  /** How far ways are followed back [m]; our own choice, no source. */
  private static final double BACK = 6e-3;

  /** Ways that end earlier than this share of it tell nothing [-]; our own choice, no source. */
  private static final double ENOUGH = 0.6;

  /**
   * How far apart both ways end, over the sum of their lengths, where fronts met [-]; our own
   * choice, no source: it finds the meetings of spokes and leaves out jets that wobble.
   */
  private static final double APART = 0.75;

  /** Shortest line that is told [m]; our own limit, no source. */
  private static final double SHORTEST = 3e-3;

  private final PlaneRun run;
  private final boolean[] met;
  private final int[] sideA;
  private final int[] sideB;
  private final double[] heatA;
  private final double[] heatB;
  private final boolean[] seen;
  private double way;

  public MeetingLines(PlaneRun run) {
    this.run = run;
    met = new boolean[run.grid.size];
    sideA = new int[run.grid.size];
    sideB = new int[run.grid.size];
    heatA = new double[run.grid.size];
    heatB = new double[run.grid.size];
    seen = new boolean[run.grid.size];
  }

  /** A line of cells and what became of it. */
  public record Line(List<Integer> cells, Meeting meeting) {}

  /** All lines, in time order. */
  public List<Line> find() {
    List<Line> lines = new ArrayList<>();
    if (run.melt.water) {
      return lines;
    }
    for (int c = 0; c < run.grid.size; c++) {
      mark(c);
    }
    for (int c = 0; c < run.grid.size; c++) {
      if (met[c] && !seen[c]) {
        List<Integer> cells = gather(c);
        if (extent(cells) >= SHORTEST) {
          lines.add(new Line(cells, meeting(cells)));
        }
      }
    }
    lines.sort((a, b) -> Double.compare(a.meeting().time(), b.meeting().time()));
    return lines;
  }

  private void mark(int c) {
    if (run.piece[c] && isMetal(c)) {
      look(c, c + 1, run.grid.faceX[c + 1]);
      look(c, c + run.grid.stride, run.grid.faceY[c + run.grid.stride]);
    }
  }

  private void look(int a, int b, double face) {
    if (face == 0.0 || !isMetal(b) || !run.piece[b]) {
      return;
    }
    int fromA = back(a);
    double wayA = way;
    int fromB = back(b);
    double wayB = way;
    boolean told = Math.min(wayA, wayB) > ENOUGH * BACK;
    if (told && distance(fromA, fromB) - run.grid.dx > APART * (wayA + wayB)) {
      int later = run.recorder.time[a] > run.recorder.time[b] ? a : b;
      met[later] = true;
      sideA[later] = fromA;
      sideB[later] = fromB;
      heatA[later] = run.recorder.enthalpy[earlier(a)];
      heatB[later] = run.recorder.enthalpy[earlier(b)];
    }
  }

  /** Where metal of a cell came from; the length of that way is left in {@code way}. */
  private int back(int c) {
    int at = c;
    way = 0.0;
    while (way < BACK) {
      int before = earlier(at);
      if (before == at) {
        return at;
      }
      way += distance(at, before);
      at = before;
    }
    return at;
  }

  /** The neighbour that metal came from: that with the steepest way down in time. */
  private int earlier(int c) {
    int n = run.grid.stride;
    int best = c;
    double steepest = 0.0;
    for (int b = -n; b <= n; b += n) {
      for (int a = -1; a <= 1; a++) {
        int other = c + b + a;
        if (other != c && isMetal(other)) {
          double down = run.recorder.time[c] - run.recorder.time[other];
          double slope = a == 0 || b == 0 ? down : down * Math.sqrt(0.5);
          if (slope > steepest) {
            steepest = slope;
            best = other;
          }
        }
      }
    }
    return best;
  }

  private double distance(int a, int b) {
    int n = run.grid.stride;
    double x = (a % n - b % n) * run.grid.dx;
    double y = (a / n - b / n) * run.grid.dx;
    return Math.sqrt(x * x + y * y);
  }

  private boolean isMetal(int c) {
    return run.grid.volume[c] > 0.0 && run.recorder.reached(c);
  }

  private List<Integer> gather(int seed) {
    List<Integer> cells = new ArrayList<>();
    cells.add(seed);
    seen[seed] = true;
    int n = run.grid.stride;
    for (int i = 0; i < cells.size(); i++) {
      int c = cells.get(i);
      for (int b = -2; b <= 2; b++) {
        for (int a = -2; a <= 2; a++) {
          int other = c + b * n + a;
          if (other >= 0 && other < met.length && met[other] && !seen[other]) {
            seen[other] = true;
            cells.add(other);
          }
        }
      }
    }
    return cells;
  }

  private double extent(List<Integer> cells) {
    int n = run.grid.stride;
    int i0 = Integer.MAX_VALUE;
    int i1 = 0;
    int j0 = Integer.MAX_VALUE;
    int j1 = 0;
    for (int c : cells) {
      i0 = Math.min(i0, c % n);
      i1 = Math.max(i1, c % n);
      j0 = Math.min(j0, c / n);
      j1 = Math.max(j1, c / n);
    }
    double x = (i1 - i0 + 1) * run.grid.dx;
    double y = (j1 - j0 + 1) * run.grid.dx;
    return Math.sqrt(x * x + y * y);
  }

  private Meeting meeting(List<Integer> cells) {
    double hA = 0.0;
    double hB = 0.0;
    double time = 0.0;
    double lap = 0.0;
    double along = 0.0;
    for (int c : cells) {
      hA += heatA[c] / cells.size();
      hB += heatB[c] / cells.size();
      lap = Math.max(lap, Math.max(run.recorder.lap[sideA[c]], run.recorder.lap[sideB[c]]));
      time += run.recorder.time[c] / cells.size();
      along += run.map.along(run.mapCell[c]) / cells.size();
    }
    double solid = 0.5 * (run.melt.table.solid(hA) + run.melt.table.solid(hB));
    boolean liquid = hA > 0.0 && hB > 0.0;
    boolean clean = run.melt.alloy.film() != FilmForming.YES || lap < LapStretch.CLEAN;
    Meeting.Kind kind =
        liquid && clean
            ? Meeting.Kind.JOINED
            : solid <= 0.5 * run.melt.flowStop ? Meeting.Kind.LAP : Meeting.Kind.COLD_SHUT;
    int middle = cells.get(cells.size() / 2);
    return new Meeting(
        run.map.parts().get(run.map.part(run.mapCell[middle])).name(),
        Math.max(0.0, along),
        time,
        run.melt.table.temperature(hA),
        run.melt.table.temperature(hB),
        solid,
        kind,
        run.gateName(sideA[middle]),
        run.gateName(sideB[middle]));
  }
}
