package lastinch.solver.geometry.cavity;

import java.util.Arrays;
import java.util.List;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Orientation;

/**
 * Fills cells from regions. Each cell is looked at in {@link #FINE} by {@code FINE} small squares,
 * a drawn piece in 4 by 4; where regions overlap the widest gap counts. A step between neighbouring
 * small squares that is steeper than a wall at 45 degrees on either face is taken as a rim, its
 * length corrected for the slant of the rim against the grid.
 */
public final class CellFilling {
  /**
   * Small squares along the edge of a cell [-]; chosen: a swept strip and a lens have their volume
   * within 0.25 %.
   */
  static final int FINE = 8;

  /**
   * The same for a drawn piece, whose wall is not taken from them [-]; chosen: volume within 0.5 %,
   * wall within 2 %.
   */
  public static final int FINE_DRAWN = 4;

  /** Thinner gaps [m] hold no metal and are taken as closed: a slip of the surface, our choice. */
  static final double LEAST_GAP = 1e-6;

  /** Stands for a cell with several regions. */
  static final int MIXED = -2;

  private static final int NONE = -1;

  private final List<GapRegion> regions;
  private final int[] partOf;
  private final GapMap.Draft draft;
  private final GapGrid grid;
  private final double rise;
  private final double lean;
  private final double small;
  private final int fine;
  private final int columns;

  /** Gap and region by small square: the rows of one row of cells and one row on either side. */
  private final double[][] gap;

  private final int[][] owner;
  private final double[] share;

  /** By cell: the only region in it, or {@link #MIXED}. */
  private final int[] only;

  CellFilling(
      List<GapRegion> regions, int[] partOf, int parts, GapMap.Draft draft, Orientation stands) {
    this.regions = regions;
    this.partOf = partOf.clone();
    this.draft = draft;
    rise = stands.rise();
    lean = stands.upright() ? 0.0 : StrictMath.cos(stands.angle());
    grid = draft.grid();
    boolean drawn = regions.stream().anyMatch(r -> r instanceof SolidRegion);
    fine = drawn ? FINE_DRAWN : FINE;
    small = grid.cell() / fine;
    columns = grid.nx() * fine + 2;
    gap = new double[fine + 2][columns];
    owner = new int[fine + 2][columns];
    share = new double[Math.max(parts, 1)];
    only = new int[grid.size()];
    Arrays.fill(only, NONE);
  }

  void fill() {
    for (int j = 0; j < grid.ny(); j++) {
      sampleRow(j);
      for (int i = 0; i < grid.nx(); i++) {
        fillCell(i, j);
      }
      setFaces(j);
    }
  }

  /** The only region in a cell, or {@link #MIXED}. */
  int only(int cell) {
    return only[cell];
  }

  /** Whether a cell holds no cavity. */
  boolean isClosed(int cell) {
    return only[cell] == NONE;
  }

  private double xOf(int column) {
    return grid.x0() + (column - 0.5) * small;
  }

  private double yOf(int j, int row) {
    return grid.y0() + j * grid.cell() + (row - 0.5) * small;
  }

  private void sampleRow(int j) {
    for (int row = 0; row < fine + 2; row++) {
      Arrays.fill(gap[row], 0.0);
      Arrays.fill(owner[row], NONE);
    }
    for (int r = 0; r < regions.size(); r++) {
      GapRegion region = regions.get(r);
      PlanBox box = region.box();
      int from = Math.max(0, (int) Math.floor((box.lowX() - grid.x0()) / small));
      int to = Math.min(columns - 1, (int) Math.ceil((box.highX() - grid.x0()) / small) + 1);
      for (int row = 0; row < fine + 2; row++) {
        double y = yOf(j, row);
        if (y < box.lowY() || y > box.highY()) {
          continue;
        }
        for (int column = from; column <= to; column++) {
          double g = region.gapAt(xOf(column), y);
          if (g > Math.max(LEAST_GAP, gap[row][column])) {
            gap[row][column] = g;
            owner[row][column] = r;
          }
        }
      }
    }
  }

  private void fillCell(int i, int j) {
    Arrays.fill(share, 0.0);
    int count = 0;
    double sum = 0.0;
    double wall = 0.0;
    double most = 0.0;
    int chief = NONE;
    int single = NONE;
    boolean mixed = false;
    for (int row = 1; row <= fine; row++) {
      for (int column = i * fine + 1; column <= (i + 1) * fine; column++) {
        double g = gap[row][column];
        if (g > 0.0) {
          int r = owner[row][column];
          count++;
          mixed |= single != NONE && single != r;
          single = r;
          sum += g;
          wall += wallOf(row, column);
          share[partOf[r]] += g;
          if (share[partOf[r]] > most) {
            most = share[partOf[r]];
            chief = r;
          }
        }
      }
    }
    if (count > 0) {
      int cell = grid.index(i, j);
      only[cell] = mixed ? MIXED : single;
      double x = grid.x(i);
      draft.open(cell, partOf[chief], sum * small * small, (double) count / (fine * fine), wall);
      double y = grid.y(j);
      GapRegion region = regions.get(chief);
      draft.place(cell, rise * x + lean * region.middleAt(x, y), region.alongAt(x, y));
    }
  }

  /** Wall of one small square [m2]: both faces, and the rims of which it is the deeper side. */
  private double wallOf(int row, int column) {
    double g = gap[row][column];
    double slopeX = slope(gap[row][column - 1], g, gap[row][column + 1]);
    double slopeY = slope(gap[row - 1][column], g, gap[row + 1][column]);
    double faces = Math.sqrt(4.0 + slopeX * slopeX + slopeY * slopeY) * small * small;
    double steps =
        step(g, gap[row][column - 1])
            + step(g, gap[row][column + 1])
            + step(g, gap[row - 1][column])
            + step(g, gap[row + 1][column]);
    return steps == 0.0 ? faces : faces + steps * small / slant(row, column);
  }

  private boolean isRim(double a, double b) {
    return Math.abs(a - b) > 2.0 * small || b == 0.0;
  }

  /** Slope of the gap [-] from the neighbours that no rim parts it from. */
  private double slope(double before, double here, double after) {
    boolean useBefore = !isRim(here, before);
    boolean useAfter = !isRim(here, after);
    if (useBefore && useAfter) {
      return (after - before) / (2.0 * small);
    }
    return useBefore ? (here - before) / small : useAfter ? (after - here) / small : 0.0;
  }

  private double step(double here, double there) {
    return here > there && isRim(here, there) ? here - there : 0.0;
  }

  /** How much longer the staircase is than the rim that it stands for [-], 1 to 1.41. */
  private double slant(int row, int column) {
    double nx = 0.0;
    double ny = 0.0;
    for (int d = -1; d <= 1; d++) {
      int weight = d == 0 ? 2 : 1;
      nx += weight * (gap[row + d][column + 1] - gap[row + d][column - 1]);
      ny += weight * (gap[row + 1][column + d] - gap[row - 1][column + d]);
    }
    double norm = Math.sqrt(nx * nx + ny * ny);
    return norm == 0.0 ? 1.0 : (Math.abs(nx) + Math.abs(ny)) / norm;
  }

  /** Faces to the left of and below each cell of a row. */
  private void setFaces(int j) {
    for (int i = 0; i <= grid.nx(); i++) {
      double area = 0.0;
      for (int row = 1; row <= fine; row++) {
        area += passage(gap[row][i * fine], gap[row][i * fine + 1]);
      }
      draft.faceX(i, j, area * small);
    }
    for (int i = 0; i < grid.nx(); i++) {
      double area = 0.0;
      for (int column = i * fine + 1; column <= (i + 1) * fine; column++) {
        area += passage(gap[0][column], gap[1][column]);
      }
      draft.faceY(i, j, area * small);
    }
  }

  /** Gap between two small squares [m]: at a rim that of the shallower one. */
  private double passage(double a, double b) {
    return isRim(Math.max(a, b), Math.min(a, b)) ? Math.min(a, b) : 0.5 * (a + b);
  }
}
