package lastinch.solver.geometry.cavity;

import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Solid;
import lastinch.solver.geometry.solid.FaceShares;

/**
 * Wall of a drawn piece: the true area of its faces over each cell that nothing else joins. Slivers
 * over cells too little open to count go to an open neighbour.
 */
final class SolidWall {
  private static final int[] DI = {1, -1, 0, 0, 1, 1, -1, -1};
  private static final int[] DJ = {0, 0, 1, -1, 1, -1, 1, -1};

  private SolidWall() {}

  static void set(Solid solid, GapMap.Draft draft, CellFilling filling, int region) {
    GapGrid grid = draft.grid();
    double[] faces = FaceShares.of(solid, grid);
    for (int c = 0; c < faces.length; c++) {
      if (filling.only(c) == region) {
        draft.wall(c, faces[c]);
      }
    }
    for (int c = 0; c < faces.length; c++) {
      if (faces[c] > 0.0 && filling.isClosed(c)) {
        giveAway(grid, c, faces[c], draft, filling, region);
      }
    }
  }

  private static void giveAway(
      GapGrid grid, int cell, double area, GapMap.Draft draft, CellFilling filling, int region) {
    for (int k = 0; k < DI.length; k++) {
      int i = cell % grid.nx() + DI[k];
      int j = cell / grid.nx() + DJ[k];
      if (i >= 0 && j >= 0 && i < grid.nx() && j < grid.ny()) {
        int to = grid.index(i, j);
        if (filling.only(to) == region) {
          draft.wall(to, draft.wall(to) + area);
          return;
        }
      }
    }
  }
}
