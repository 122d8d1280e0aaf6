package lastinch.solver.plane.flow;

import lastinch.solver.casting.GapMap;
import lastinch.solver.material.Checks;

/**
 * Square cells over a thin cavity, with two rows of wall all round. Cell {@code (i, j)} has index
 * {@code (j + 2) stride + i + 2}; face {@code c} of {@code faceX} lies between cells {@code c - 1}
 * and {@code c}, of {@code faceY} between {@code c - stride} and {@code c}. Immutable by
 * convention: kernels read the arrays, nobody writes them.
 */
public final class PlaneGrid {
  /** Rows of wall round the grid. */
  public static final int HALO = 2;

  /**
   * Open share below which a cell of a map is given to its neighbour [-]; chosen: alone it would
   * set the step.
   */
  private static final double SLIVER = 0.15;

  public final int nx;
  public final int ny;
  public final int stride;
  public final int size;

  /** Edge of a cell [m]. */
  public final double dx;

  /** Volume of a cell [m3], 0 in walls. */
  public final double[] volume;

  /** One over volume [1/m3], 0 in walls. */
  public final double[] perVolume;

  /** Thickness of a cell, volume over open area [m]. */
  public final double[] gap;

  /** Mould area that a full cell touches: two faces and the rim [m2]. */
  public final double[] wall;

  /** Length of outline in a cell [m]. */
  public final double[] rim;

  /** Open area of a face [m2]. */
  public final double[] faceX;

  public final double[] faceY;

  /** Gap at a face [m]. */
  public final double[] gapX;

  public final double[] gapY;

  /** Cell that took over a sliver; every other cell its own. */
  private final int[] home;

  /**
   * Lays cells over a map.
   *
   * @param nx cells along
   * @param ny cells across
   * @param dx edge of a cell [m]
   * @param gap thickness by cell, row by row from the lowest, 0 in walls [m]
   * @param open open share of each cell's area [-]
   */
  public static PlaneGrid of(int nx, int ny, double dx, double[] gap, double[] open) {
    return new PlaneGrid(nx, ny, dx, gap, open, new double[0], new double[0]);
  }

  /** A map whose cells are wholly open or wholly wall. */
  public static PlaneGrid of(int nx, int ny, double dx, double[] gap) {
    double[] open = new double[nx * ny];
    for (int k = 0; k < open.length; k++) {
      open[k] = gap[k] > 0.0 ? 1.0 : 0.0;
    }
    return of(nx, ny, dx, gap, open);
  }

  /**
   * Lays cells over a map with given open shares of the faces.
   *
   * @param openX open share of the left face of each cell, as many as cells; empty to take the
   *     lesser of the two cells
   * @param openY the same of the lower faces
   */
  public PlaneGrid(
      int nx, int ny, double dx, double[] gap, double[] open, double[] openX, double[] openY) {
    Checks.within("nx", nx, 1, 20000, "-");
    Checks.within("ny", ny, 1, 20000, "-");
    Checks.within("dx", dx, 1e-6, 1.0, "m");
    if (gap.length != nx * ny || open.length != nx * ny) {
      throw new IllegalArgumentException("gap and open need " + nx * ny + " entries");
    }
    this.nx = nx;
    this.ny = ny;
    this.dx = dx;
    stride = nx + 2 * HALO;
    size = stride * (ny + 2 * HALO);
    volume = new double[size];
    perVolume = new double[size];
    this.gap = new double[size];
    wall = new double[size];
    rim = new double[size];
    faceX = new double[size];
    faceY = new double[size];
    gapX = new double[size];
    gapY = new double[size];
    home = new int[size];
    for (int c = 0; c < size; c++) {
      home[c] = c;
    }
    double[] share = new double[size];
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int k = j * nx + i;
        int c = cell(i, j);
        Checks.within("open", open[k], 0.0, 1.0, "-");
        Checks.within("gap", gap[k], 0.0, 1.0, "m");
        if (gap[k] > 0.0 && open[k] > 0.0) {
          share[c] = open[k];
          this.gap[c] = gap[k];
          volume[c] = gap[k] * open[k] * dx * dx;
          perVolume[c] = 1.0 / volume[c];
        }
      }
    }
    faces(share, openX, openY);
    walls(share);
  }

  /** Lays the cells of a map of a cavity. */
  public static PlaneGrid over(GapMap map) {
    return new PlaneGrid(map);
  }

  private PlaneGrid(GapMap map) {
    this(
        map.nx(),
        map.ny(),
        map.cell(),
        new double[map.nx() * map.ny()],
        new double[map.nx() * map.ny()],
        new double[0],
        new double[0]);
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int k = j * nx + i;
        int c = cell(i, j);
        if (map.isOpen(k)) {
          gap[c] = map.gap(k);
          volume[c] = map.volume(k);
          perVolume[c] = 1.0 / map.volume(k);
          wall[c] = map.wall(k);
          rim[c] = Math.max(0.0, map.wall(k) - 2.0 * map.open(k) * dx * dx) / gap[c];
        }
      }
    }
    mergeSlivers(map);
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int c = cell(i, j);
        if (i > 0 && map.faceX(i, j) > 0.0 && volume[c] > 0.0 && volume[c - 1] > 0.0) {
          gapX[c] = between(gap[c], gap[c - 1]);
          faceX[c] = Math.min(map.faceX(i, j), 2.0 * dx * Math.min(gap[c], gap[c - 1]));
        }
        if (j > 0 && map.faceY(i, j) > 0.0 && volume[c] > 0.0 && volume[c - stride] > 0.0) {
          gapY[c] = between(gap[c], gap[c - stride]);
          faceY[c] = Math.min(map.faceY(i, j), 2.0 * dx * Math.min(gap[c], gap[c - stride]));
        }
      }
    }
  }

  /** A sliver of a cell goes to the neighbour it opens to widest; alone it would choke the step. */
  private void mergeSlivers(GapMap map) {
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int k = j * nx + i;
        int c = cell(i, j);
        if (!map.isOpen(k) || map.open(k) >= SLIVER) {
          continue;
        }
        int to = widest(map, i, j, c);
        if (to != c) {
          home[c] = to;
          volume[to] += volume[c];
          perVolume[to] = 1.0 / volume[to];
          wall[to] += wall[c];
          rim[to] += rim[c];
        }
        volume[c] = 0.0;
        perVolume[c] = 0.0;
        gap[c] = 0.0;
        wall[c] = 0.0;
        rim[c] = 0.0;
      }
    }
  }

  private int widest(GapMap map, int i, int j, int c) {
    double[] face = {map.faceX(i, j), map.faceX(i + 1, j), map.faceY(i, j), map.faceY(i, j + 1)};
    int[] cells = {c - 1, c + 1, c - stride, c + stride};
    int best = c;
    double most = 0.0;
    for (int k = 0; k < 4; k++) {
      if (face[k] > most && volume[cells[k]] > 2.0 * volume[c]) {
        most = face[k];
        best = cells[k];
      }
    }
    return best;
  }

  private void faces(double[] share, double[] openX, double[] openY) {
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int c = cell(i, j);
        int k = j * nx + i;
        if (volume[c] > 0.0 && volume[c - 1] > 0.0) {
          double s = openX.length == 0 ? Math.min(share[c], share[c - 1]) : openX[k];
          gapX[c] = between(gap[c], gap[c - 1]);
          faceX[c] = s * gapX[c] * dx;
        }
        if (volume[c] > 0.0 && volume[c - stride] > 0.0) {
          double s = openY.length == 0 ? Math.min(share[c], share[c - stride]) : openY[k];
          gapY[c] = between(gap[c], gap[c - stride]);
          faceY[c] = s * gapY[c] * dx;
        }
      }
    }
  }

  private void walls(double[] share) {
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int c = cell(i, j);
        if (volume[c] > 0.0) {
          double sx = share(faceX[c + 1], gapX[c + 1]) - share(faceX[c], gapX[c]);
          double sy = share(faceY[c + stride], gapY[c + stride]) - share(faceY[c], gapY[c]);
          double cut = Math.sqrt(sx * sx + sy * sy) * dx;
          boolean corner = share[c] == 1.0;
          double straight =
              (Math.abs(sx) + Math.abs(sy)) * dx
                  + (narrow(faceX[c], faceX[c + 1]) + narrow(faceY[c], faceY[c + stride])) * dx;
          rim[c] = corner ? straight : cut;
          wall[c] = 2.0 * share[c] * dx * dx + rim[c] * gap[c];
        }
      }
    }
  }

  /** Twice the closed share common to two opposite faces of a cell that is one cell wide. */
  private static double narrow(double left, double right) {
    return left == 0.0 && right == 0.0 ? 2.0 : 0.0;
  }

  private double share(double face, double gapThere) {
    return face == 0.0 ? 0.0 : face / (gapThere * dx);
  }

  /** Harmonic mean: second order where the gap varies smoothly, and never twice the lesser. */
  private static double between(double a, double b) {
    return 2.0 * a * b / (a + b);
  }

  /** Cell that holds what the map had in a cell: a sliver was given to its neighbour. */
  public int home(int c) {
    return home[c];
  }

  /** Index of a cell; {@code i} counts along, {@code j} across. */
  public int cell(int i, int j) {
    return (j + HALO) * stride + i + HALO;
  }

  /** Volume of the whole cavity [m3]. */
  public double totalVolume() {
    double sum = 0.0;
    for (double v : volume) {
      sum += v;
    }
    return sum;
  }

  /**
   * Patch of every cell, numbered stripe by stripe across the longer side of the grid.
   *
   * @param edge cells along the edge of a patch
   */
  int[] patches(int edge) {
    int[] patch = new int[size];
    boolean wide = nx >= ny;
    int across = (Math.min(nx, ny) + edge - 1) / edge;
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int stripe = (wide ? i : j) / edge;
        patch[cell(i, j)] = stripe * across + (wide ? j : i) / edge;
      }
    }
    return patch;
  }
}
