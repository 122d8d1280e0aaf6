package lastinch.solver.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.GapMap.Part;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Solid;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.geometry.cavity.CellFilling;
import lastinch.solver.geometry.cavity.PlanBox;
import lastinch.solver.geometry.cavity.SolidRegion;

/**
 * What a look over a drawn piece finds.
 *
 * @param map its gap map, lying flat
 * @param volume of the solid, by the map where bodies lie in each other [m3]
 * @param area of its faces, by the map where bodies lie in each other [m2]
 * @param thinnest the least gap at least 2 mm in from the rim; at the widest spot when no place
 *     lies that far in
 * @param thickest the greatest gap
 * @param heaviest the greatest volume over wall of any cell
 * @param torn share that enter and do not leave, or the other way round [-]
 * @param crossing share that lie in two bodies at once [-]
 * @param narrow share of the plan area in parts narrower than three cells [-]
 * @param drawn its stations
 */
public record ShapeReport(
    GapMap map,
    double volume,
    double area,
    Spot thinnest,
    Spot thickest,
    Spot heaviest,
    double torn,
    double crossing,
    double narrow,
    SlicedPart drawn) {
  /**
   * A figure and where it stands.
   *
   * @param value [m]
   * @param x along the piece [m]
   * @param y to the left [m]
   */
  public record Spot(double value, double x, double y) {}

  /** How far in from the rim the least gap is looked for [m], as with calipers; chosen. */
  private static final double SKIN = 2e-3;

  /** Cells [-] of a size [m] that the map of a piece takes, also when they are too many. */
  public static double cells(Solid solid, double cell) {
    PlanBox box = new SolidRegion(solid, List.of()).box();
    return GapGrid.cells(box.lowX(), box.lowY(), box.highX(), box.highY(), cell);
  }

  /**
   * What it would cost to look a piece over: boxes and faces that all lines of its map would look
   * at together [-].
   *
   * @param cell size of the cells of the map [m]
   */
  public static double looks(Solid solid, double cell) {
    double small = cell / CellFilling.FINE_DRAWN;
    double lines = (solid.high(0) / small + 1.0) * (solid.high(1) / small + 1.0);
    // each row of cells looks at the rows of small squares beside it once more
    double again = (CellFilling.FINE_DRAWN + 2.0) / CellFilling.FINE_DRAWN;
    return lines * again * new SolidTree(solid).looksPerLine();
  }

  /**
   * Looks a piece over.
   *
   * @param solid the piece
   * @param cell size of the cells of the map [m], of which there are no more than a grid may have
   */
  public static Optional<ShapeReport> of(Solid solid, double cell) {
    SolidRegion region = new SolidRegion(solid, List.of());
    List<Part> parts = new ArrayList<>();
    GapMap map =
        CavityMap.fill(List.of(region), parts, cell, Orientation.FLAT)
            .fix(parts, List.of(), List.of());
    SolidRegion.Tally tally = region.tally();
    if (tally.inside == 0) {
      return Optional.empty();
    }
    GapGrid grid = map.grid();
    boolean[] deep = farFromRim(map, (int) Math.ceil(SKIN / cell - 1e-9));
    Spot thinnest = extreme(map, deep, -1.0);
    Spot thickest = extreme(map, mostlyOpen(map), 1.0);
    Spot heaviest = new Spot(0.0, 0.0, 0.0);
    for (int c = 0; c < grid.size(); c++) {
      if (map.isOpen(c) && map.open(c) > 0.5 && map.wall(c) > 0.0) {
        double modulus = map.volume(c) / map.wall(c);
        if (modulus > heaviest.value()) {
          heaviest = new Spot(modulus, grid.x(c % grid.nx()), grid.y(c / grid.nx()));
        }
      }
    }
    boolean buried = region.isOverlapping();
    double all = tally.inside;
    double torn = tally.torn / all;
    double crossing = tally.crossing / all;
    return Optional.of(
        new ShapeReport(
            map,
            buried ? map.totalVolume() : solid.volume(),
            buried ? map.totalWall() : solid.area(),
            thinnest,
            thickest,
            heaviest,
            torn,
            crossing,
            narrow(map),
            SlicedPart.of(region, cell)));
  }

  private static Spot extreme(GapMap map, boolean[] among, double sign) {
    GapGrid grid = map.grid();
    double best = Double.NEGATIVE_INFINITY;
    int found = 0;
    for (int c = 0; c < grid.size(); c++) {
      if (among[c] && sign * map.gap(c) > best) {
        best = sign * map.gap(c);
        found = c;
      }
    }
    if (best == Double.NEGATIVE_INFINITY) {
      return extreme(map, allOpen(map), 1.0);
    }
    return new Spot(map.gap(found), grid.x(found % grid.nx()), grid.y(found / grid.nx()));
  }

  private static boolean[] mostlyOpen(GapMap map) {
    boolean[] open = allOpen(map);
    for (int c = 0; c < open.length; c++) {
      open[c] &= map.open(c) > 0.5;
    }
    return open;
  }

  private static boolean[] allOpen(GapMap map) {
    boolean[] open = new boolean[map.grid().size()];
    for (int c = 0; c < open.length; c++) {
      open[c] = map.isOpen(c);
    }
    return open;
  }

  /** Cells so many cells in from the rim, and those in the middle of what is narrower. */
  private static boolean[] farFromRim(GapMap map, int cells) {
    GapGrid grid = map.grid();
    int[] depth = new int[grid.size()];
    boolean[] in = mostlyOpen(map);
    for (int k = 1; k <= cells; k++) {
      for (int c = 0; c < in.length; c++) {
        depth[c] = in[c] ? k : depth[c];
      }
      in = shrunk(grid, in);
    }
    boolean[] far = new boolean[grid.size()];
    for (int j = 1; j + 1 < grid.ny(); j++) {
      for (int i = 1; i + 1 < grid.nx(); i++) {
        int here = depth[grid.index(i, j)];
        boolean middle = here > 0;
        for (int d = 0; d < 9; d++) {
          middle &= depth[grid.index(i + d % 3 - 1, j + d / 3 - 1)] <= here;
        }
        far[grid.index(i, j)] = here == cells || (middle && here > 1);
      }
    }
    return far;
  }

  private static boolean[] shrunk(GapGrid grid, boolean[] in) {
    boolean[] out = new boolean[in.length];
    for (int j = 1; j + 1 < grid.ny(); j++) {
      for (int i = 1; i + 1 < grid.nx(); i++) {
        boolean all = true;
        for (int d = 0; d < 9; d++) {
          all &= in[grid.index(i + d % 3 - 1, j + d / 3 - 1)];
        }
        out[grid.index(i, j)] = all;
      }
    }
    return out;
  }

  /** Share of the plan area that no block of three by three open cells covers. */
  private static double narrow(GapMap map) {
    GapGrid grid = map.grid();
    boolean[] kernel = shrunk(grid, allOpen(map));
    boolean[] covered = new boolean[kernel.length];
    for (int j = 1; j + 1 < grid.ny(); j++) {
      for (int i = 1; i + 1 < grid.nx(); i++) {
        for (int d = 0; kernel[grid.index(i, j)] && d < 9; d++) {
          covered[grid.index(i + d % 3 - 1, j + d / 3 - 1)] = true;
        }
      }
    }
    double open = 0.0;
    double bare = 0.0;
    for (int c = 0; c < kernel.length; c++) {
      open += map.open(c);
      bare += covered[c] ? 0.0 : map.open(c);
    }
    return open > 0.0 ? bare / open : 0.0;
  }
}
