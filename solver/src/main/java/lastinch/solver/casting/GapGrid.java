package lastinch.solver.casting;

import lastinch.solver.material.Checks;

/**
 * Square cells laid over the parting plane.
 *
 * @param x0 lower corner along x [m]
 * @param y0 lower corner along y [m]
 * @param cell edge length of a cell [m]
 * @param nx cells along x
 * @param ny cells along y
 */
public record GapGrid(double x0, double y0, double cell, int nx, int ny) {
  /**
   * More cells than any run could use [-]; refuses a slip in the units before memory runs out;
   * chosen.
   */
  public static final int MOST_CELLS = 4_000_000;

  public GapGrid {
    Checks.within("x0", x0, -20.0, 20.0, "m");
    Checks.within("y0", y0, -20.0, 20.0, "m");
    Checks.within("cell", cell, 1e-5, 0.1, "m");
    if (nx < 1 || ny < 1 || (long) nx * ny > MOST_CELLS) {
      throw new IllegalArgumentException("no grid of " + nx + " x " + ny + " cells");
    }
  }

  /**
   * The smallest grid, with one free cell all round, that covers a box; cell faces lie on whole
   * multiples of the cell size.
   *
   * @param lowX lowest x of the box [m]
   * @param lowY lowest y [m]
   * @param highX highest x [m]
   * @param highY highest y [m]
   * @param cell edge length of a cell [m]
   */
  public static GapGrid covering(
      double lowX, double lowY, double highX, double highY, double cell) {
    double i0 = before(lowX, cell);
    double j0 = before(lowY, cell);
    double i1 = after(highX, cell);
    double j1 = after(highY, cell);
    if (cells(lowX, lowY, highX, highY, cell) > MOST_CELLS) {
      throw new IllegalArgumentException("cells of " + cell + " m are too fine for this piece");
    }
    return new GapGrid(i0 * cell, j0 * cell, cell, (int) (i1 - i0), (int) (j1 - j0));
  }

  /** Cells that {@link #covering} a box [m] would take; to ask first, as too many are refused. */
  public static double cells(double lowX, double lowY, double highX, double highY, double cell) {
    return (after(highX, cell) - before(lowX, cell)) * (after(highY, cell) - before(lowY, cell));
  }

  private static double before(double low, double cell) {
    return Math.floor(low / cell + 1e-9) - 1;
  }

  private static double after(double high, double cell) {
    return Math.ceil(high / cell - 1e-9) + 1;
  }

  /** Number of cells. */
  public int size() {
    return nx * ny;
  }

  /** Index of a cell. */
  public int index(int i, int j) {
    return j * nx + i;
  }

  /** Middle of a column of cells [m]. */
  public double x(int i) {
    return x0 + (i + 0.5) * cell;
  }

  /** Middle of a row of cells [m]. */
  public double y(int j) {
    return y0 + (j + 0.5) * cell;
  }

  /** Column that holds a place, the outermost for places outside. */
  public int column(double x) {
    return (int) Math.max(0, Math.min(nx - 1, Math.floor((x - x0) / cell)));
  }

  /** Row that holds a place, the outermost for places outside. */
  public int row(double y) {
    return (int) Math.max(0, Math.min(ny - 1, Math.floor((y - y0) / cell)));
  }
}
