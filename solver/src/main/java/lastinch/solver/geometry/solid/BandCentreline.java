package lastinch.solver.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import lastinch.solver.casting.GapGrid;

/**
 * A first line through a piece: middles of bands of equal way from one end. Where such a band falls
 * into pieces that each go on for some length, the piece branches.
 */
final class BandCentreline {
  private static final int[][] STEPS = {
    {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1},
    {2, 1}, {2, -1}, {-2, 1}, {-2, -1}, {1, 2}, {1, -2}, {-1, 2}, {-1, -2}
  };

  /** Most bands along a piece [-]; chosen. */
  private static final int BANDS = 60;

  /** Least breadth of a band [cells]; chosen. */
  private static final int LEAST_BAND = 3;

  /** Smallest share of the plan area that counts as a branch, and as a hole [-]; our choice. */
  private static final double COUNTS = 0.02;

  /** Bands that a part must go on for to be a branch [-]; chosen. */
  private static final int GOES_ON = 3;

  private final double[] x;
  private final double[] y;
  private final boolean branched;

  private BandCentreline(double[] x, double[] y, boolean branched) {
    this.x = x;
    this.y = y;
    this.branched = branched;
  }

  double[] x() {
    return x.clone();
  }

  double[] y() {
    return y.clone();
  }

  boolean isBranched() {
    return branched;
  }

  static BandCentreline of(PlanOutline outline) {
    int count = 0;
    int some = PlanOutline.NONE;
    for (int c = 0; c < outline.grid().size(); c++) {
      if (outline.isIn(c)) {
        count++;
        some = some == PlanOutline.NONE ? c : some;
      }
    }
    if (count < 8) {
      return new BandCentreline(new double[0], new double[0], false);
    }
    int one = farthest(ways(outline, some));
    int other = farthest(ways(outline, one));
    GapGrid grid = outline.grid();
    int start = one % grid.nx() <= other % grid.nx() ? one : other;
    double[] way = ways(outline, start);
    boolean holes = outline.holes((int) Math.max(4, COUNTS * count)) > 0;
    return along(outline, way, holes, count);
  }

  /** Way from a cell to every cell it is joined to, in cells; infinite elsewhere. */
  private static double[] ways(PlanOutline outline, int start) {
    double[] way = new double[outline.grid().size()];
    Arrays.fill(way, Double.POSITIVE_INFINITY);
    record Reached(double way, int cell) {}
    PriorityQueue<Reached> next =
        new PriorityQueue<>(
            (p, q) -> p.way != q.way ? Double.compare(p.way, q.way) : p.cell - q.cell);
    way[start] = 0.0;
    next.add(new Reached(0.0, start));
    while (!next.isEmpty()) {
      Reached r = next.remove();
      if (r.way > way[r.cell]) {
        continue;
      }
      for (int[] step : STEPS) {
        int to = outline.neighbour(r.cell, step[0], step[1]);
        boolean far = Math.abs(step[0]) + Math.abs(step[1]) == 3;
        if (to == PlanOutline.NONE
            || (far && outline.neighbour(r.cell, step[0] / 2, step[1] / 2) == PlanOutline.NONE)) {
          continue;
        }
        double length = Math.sqrt(step[0] * step[0] + step[1] * step[1]);
        if (r.way + length < way[to]) {
          way[to] = r.way + length;
          next.add(new Reached(way[to], to));
        }
      }
    }
    return way;
  }

  private static int farthest(double[] way) {
    int best = 0;
    double most = -1.0;
    for (int c = 0; c < way.length; c++) {
      if (way[c] < Double.POSITIVE_INFINITY && way[c] > most) {
        most = way[c];
        best = c;
      }
    }
    return best;
  }

  private static BandCentreline along(PlanOutline outline, double[] way, boolean holes, int count) {
    double most = way[farthest(way)];
    double band = Math.max(LEAST_BAND, most / BANDS);
    int bands = (int) (most / band) + 1;
    List<List<Integer>> members = new ArrayList<>();
    for (int b = 0; b < bands; b++) {
      members.add(new ArrayList<>());
    }
    int reached = 0;
    for (int c = 0; c < way.length; c++) {
      if (way[c] < Double.POSITIVE_INFINITY) {
        reached++;
        members.get(Math.min(bands - 1, (int) (way[c] / band))).add(c);
      }
    }
    double[] x = new double[bands];
    double[] y = new double[bands];
    int split = 0;
    int longest = 0;
    int used = 0;
    int least = (int) Math.max(4, COUNTS * count / BANDS * 4);
    for (int b = 0; b < bands; b++) {
      List<Integer> largest = new ArrayList<>();
      int parts = 0;
      for (List<Integer> part : parts(outline, members.get(b))) {
        parts += part.size() >= least ? 1 : 0;
        largest = part.size() > largest.size() ? part : largest;
      }
      split = parts > 1 ? split + 1 : 0;
      longest = Math.max(longest, split);
      if (!largest.isEmpty()) {
        middle(outline, largest, x, y, used++);
      }
    }
    // what hangs together with neither end is no part of one channel
    boolean apart = count - reached > COUNTS * count;
    boolean branched = holes || apart || longest >= GOES_ON;
    return new BandCentreline(Arrays.copyOf(x, used), Arrays.copyOf(y, used), branched);
  }

  private static void middle(
      PlanOutline outline, List<Integer> part, double[] x, double[] y, int at) {
    double sum = 0.0;
    for (int c : part) {
      double g = outline.gap(c);
      sum += g;
      x[at] += g * outline.grid().x(c % outline.grid().nx());
      y[at] += g * outline.grid().y(c / outline.grid().nx());
    }
    x[at] /= sum;
    y[at] /= sum;
  }

  /** Cells of a band that hang together. */
  private static List<List<Integer>> parts(PlanOutline outline, List<Integer> members) {
    List<List<Integer>> parts = new ArrayList<>();
    boolean[] open = new boolean[outline.grid().size()];
    members.forEach(c -> open[c] = true);
    for (int seed : members) {
      if (open[seed]) {
        List<Integer> part = new ArrayList<>();
        part.add(seed);
        open[seed] = false;
        for (int at = 0; at < part.size(); at++) {
          for (int k = 0; k < 8; k++) {
            int to = outline.neighbour(part.get(at), STEPS[k][0], STEPS[k][1]);
            if (to != PlanOutline.NONE && open[to]) {
              open[to] = false;
              part.add(to);
            }
          }
        }
        parts.add(part);
      }
    }
    return parts;
  }
}
