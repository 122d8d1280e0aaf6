package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastinch.solver.casting.GapMap;
import lastinch.solver.filling.FilledState;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.wall.WallColumns;

/** Lays what stands over the plane, and in cup, sprue and well before it, out as cells. */
final class PlaneHandover {
  /** Less metal than this share of a square is not handed over [-]; chosen, as for its heat. */
  private static final double TRACE = 1e-5;

  private static final int NONE = -1;

  private final PlaneRun run;
  private final double seconds;
  private final FilledState.Builder cells;
  private final int mapParts;

  /** Columns of both halves of the grid. */
  private final WallColumns[] banks;

  /** By square of the grid: its number in the state, or {@link #NONE}. */
  private final int[] number;

  PlaneHandover(PlaneRun run, double seconds) {
    this.run = run;
    this.seconds = seconds;
    List<FilledState.Part> parts = new ArrayList<>();
    for (GapMap.Part part : run.map.parts()) {
      parts.add(new FilledState.Part(part.name(), Role.valueOf(part.kind().name())));
    }
    mapParts = parts.size();
    parts.add(new FilledState.Part("cup", Role.CUP));
    parts.add(new FilledState.Part("sprue", Role.SPRUE));
    parts.add(new FilledState.Part("well", Role.WELL));
    cells = new FilledState.Builder(run.flow.time(), run.melt.table, run.melt.density, parts);
    banks = new WallColumns[] {run.heat.columns(0, seconds), run.heat.columns(1, seconds)};
    number = new int[run.grid.size];
    Arrays.fill(number, NONE);
  }

  FilledState state() {
    addSquares();
    joinSquares();
    if (!run.sprue.isHeld()) {
      int foot = run.sprue.cells(seconds).addTo(cells, mapParts, inletHeight());
      for (GapMap.Opening inlet : run.map.inlets()) {
        int c = number[run.gridCell(inlet.cell())];
        if (foot >= 0 && c != NONE) {
          cells.join(foot, c, inlet.area(), run.grid.dx);
        }
      }
    }
    return cells.build();
  }

  /** Where the sprue stands on: the inlet it opens into. */
  private double inletHeight() {
    double sum = 0.0;
    for (GapMap.Opening inlet : run.map.inlets()) {
      sum += run.map.height(inlet.cell());
    }
    return sum / Math.max(1, run.map.inlets().size());
  }

  private void addSquares() {
    FlowState s = run.flow.state;
    for (int c = 0; c < run.grid.size; c++) {
      if (s.liquid[c] <= TRACE * run.grid.volume[c] || run.heat.wetted(c) == 0.0) {
        continue;
      }
      int k = run.mapCell[c];
      number[c] =
          cells.cell(
              run.map.part(k),
              s.liquid[c],
              run.grid.volume[c],
              run.map.height(k),
              run.grid.gap[c],
              s.fill(c) < 1.0 - TRACE);
      cells.heat(run.heat.content[c] / s.liquid[c], s.skin[c] / s.liquid[c], run.heat.mostSolid(c));
      double wetted = run.heat.wetted(c);
      cells.faces(
          wetted * run.grid.wall[c],
          Math.min(1.0, s.liquid[c] * run.grid.perVolume[c]) / wetted,
          run.heat.isThick(c),
          banks[run.heat.half(c)],
          run.heat.columnOf(c));
    }
  }

  private void joinSquares() {
    int n = run.grid.stride;
    for (int c = n; c < run.grid.size; c++) {
      join(c, c - 1, run.grid.faceX[c]);
      join(c, c - n, run.grid.faceY[c]);
    }
  }

  private void join(int c, int other, double area) {
    if (number[c] != NONE && number[other] != NONE && area > 0.0) {
      cells.join(number[c], number[other], area, run.grid.dx);
    }
  }
}
