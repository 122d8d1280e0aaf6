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
  /** More cells than any run could use; refuses a slip in the units before memory runs out. */
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
    double i0 = Math.floor(lowX / cell + 1e-9) - 1;
    double j0 = Math.floor(lowY / cell + 1e-9) - 1;
    double i1 = Math.ceil(highX / cell - 1e-9) + 1;
    double j1 = Math.ceil(highY / cell - 1e-9) + 1;
    if ((i1 - i0) * (j1 - j0) > MOST_CELLS) {
      throw new IllegalArgumentException("cells of " + cell + " m are too fine for this piece");
    }
    return new GapGrid(i0 * cell, j0 * cell, cell, (int) (i1 - i0), (int) (j1 - j0));
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
