package lastinch.ui.chart.study;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.RunSummary;

/**
 * Regions of a map of room to move, cell by cell: corners by their runs, edges of the region where
 * the refined lines cross the grid.
 */
final class RoomCells {
  private static final int CORNERS = 4;
  private final OperatingMap room;
  private final OperatingMap.Parts parts;
  private final List<Double> xs;
  private final List<Double> ys;

  /** Where lines cross edges of the grid: along the bottom of a cell, and along its left side. */
  private final double[][] bottom;

  private final double[][] left;

  RoomCells(OperatingMap room, OperatingMap.Parts parts) {
    this.room = room;
    this.parts = parts;
    this.xs = room.acrossValues();
    this.ys = room.upValues();
    this.bottom = middles(ys.size(), xs.size(), true);
    this.left = middles(ys.size(), xs.size(), false);
    for (OperatingMap.Line line : room.lines()) {
      for (int i = 0; line.parts() == parts && i < line.across().size(); i++) {
        place(line.across().get(i), line.up().get(i));
      }
    }
  }

  private double[][] middles(int rows, int columns, boolean across) {
    double[][] all = new double[rows][columns];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        List<Double> values = across ? xs : ys;
        int at = across ? c : r;
        int next = Math.min(at + 1, values.size() - 1);
        all[r][c] = 0.5 * (values.get(at) + values.get(next));
      }
    }
    return all;
  }

  private void place(double x, double y) {
    int row = on(ys, y);
    int column = on(xs, x);
    if (row >= 0 && column < 0) {
      bottom[row][below(xs, x)] = x;
    } else if (column >= 0 && row < 0) {
      left[below(ys, y)][column] = y;
    }
  }

  private static int on(List<Double> values, double value) {
    double step = Math.abs(values.get(values.size() - 1) - values.get(0));
    for (int i = 0; i < values.size(); i++) {
      if (Math.abs(values.get(i) - value) < 1e-9 * step) {
        return i;
      }
    }
    return -1;
  }

  private static int below(List<Double> values, double value) {
    int i = 0;
    while (i + 2 < values.size() && values.get(i + 1) < value) {
      i++;
    }
    return i;
  }

  private boolean inside(int column, int row) {
    Optional<RunSummary> g = room.at(column, row);
    return g.isPresent()
        && (parts == OperatingMap.Parts.FILLS ? g.get().filled() : room.goal().isMetBy(g.get()));
  }

  /** The region, in values of the two levers. */
  Path2D region() {
    Path2D path = new Path2D.Double();
    for (int row = 0; row + 1 < ys.size(); row++) {
      for (int column = 0; column + 1 < xs.size(); column++) {
        cell(path, column, row);
      }
    }
    return path;
  }

  private void cell(Path2D path, int c, int r) {
    int[] cs = {c, c + 1, c + 1, c};
    int[] rs = {r, r, r + 1, r + 1};
    double[][] crossings = {
      {bottom[r][c], ys.get(r)},
      {xs.get(c + 1), left[r][c + 1]},
      {bottom[r + 1][c], ys.get(r + 1)},
      {xs.get(c), left[r][c]}
    };
    boolean started = false;
    for (int i = 0; i < CORNERS; i++) {
      int next = (i + 1) % CORNERS;
      boolean here = inside(cs[i], rs[i]);
      if (here) {
        started = to(path, started, xs.get(cs[i]), ys.get(rs[i]));
      }
      if (here != inside(cs[next], rs[next])) {
        started = to(path, started, crossings[i][0], crossings[i][1]);
      }
    }
    if (started) {
      path.closePath();
    }
  }

  private static boolean to(Path2D path, boolean started, double x, double y) {
    if (started) {
      path.lineTo(x, y);
    } else {
      path.moveTo(x, y);
    }
    return true;
  }
}
