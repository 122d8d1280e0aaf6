package lastinch.solver.plane.flow;

import java.util.Arrays;
import lastinch.solver.numerics.WorkerPair;

/** What the cells and faces of a run hold now. Arrays are indexed as in {@link PlaneGrid}. */
public final class FlowState {
  /** Who works on it. */
  public final WorkerPair team;

  /**
   * Cells round metal that are worked on as well [-]: what crosses a cell in a step and what
   * schemes reach for.
   */
  private static final int MARGIN = 3;

  /** Cells of wall beside an open cell that are worked on as well [-]. */
  private static final int RIM = 1;

  final PlaneGrid grid;

  /** Liquid in a cell [m3]. */
  public final double[] liquid;

  /** Speed through a face, mean over its aperture [m/s]. */
  public final double[] u;

  public final double[] v;

  /** Pressure above open air [Pa], in cells that carry one. */
  public final double[] pressure;

  /** Whether a cell carries a pressure: at least half full, and no bubble of air. */
  public final boolean[] active;

  /** Pressure of the air in a cell without metal, above open air [Pa]. */
  public final double[] airPressure;

  /** Liquid that crossed a face in the step, positive to the right or up [m3]. */
  public final double[] fluxX;

  public final double[] fluxY;

  /** Liquid that entered a cell through gates in the step [m3]. */
  public final double[] gateFlux;

  /** Speed along each axis of what entered through gates [m/s]. */
  final double[] gateU;

  final double[] gateV;

  /** What carried solid multiplies the viscosity by [-]. */
  public final double[] thickening;

  /** Share of the gap that skins leave open [-]. */
  public final double[] openShare;

  /** Liquid grown fast to the wall, part of {@code liquid} [m3]. */
  public final double[] skin;

  /** Share of solid carried in the moving metal [-]. */
  public final double[] slurry;

  /** Wet part of the grid with a margin: first and last row. */
  public int rowFrom;

  public int rowTo;

  /** First row of the upper half of the wet part's cells. */
  int rowMiddle;

  /**
   * By row: first and last cell of its wet part with a margin; the last before the first if dry.
   */
  public final int[] first;

  public final int[] last;

  /** By row: first and last open cell with a margin. */
  private final int[] openFirst;

  private final int[] openLast;

  /** By row: first and last wet cell, without a margin. */
  private final int[] wetFirst;

  private final int[] wetLast;

  public FlowState(PlaneGrid grid) {
    this(grid, WorkerPair.alone());
  }

  public FlowState(PlaneGrid grid, WorkerPair team) {
    this.grid = grid;
    this.team = team;
    int n = grid.size;
    liquid = new double[n];
    u = new double[n];
    v = new double[n];
    pressure = new double[n];
    active = new boolean[n];
    airPressure = new double[n];
    fluxX = new double[n];
    fluxY = new double[n];
    gateFlux = new double[n];
    gateU = new double[n];
    gateV = new double[n];
    thickening = new double[n];
    openShare = new double[n];
    skin = new double[n];
    slurry = new double[n];
    Arrays.fill(thickening, 1.0);
    Arrays.fill(openShare, 1.0);
    rowFrom = PlaneGrid.HALO;
    rowTo = PlaneGrid.HALO + grid.ny - 1;
    int rows = grid.ny + 2 * PlaneGrid.HALO;
    first = new int[rows];
    last = new int[rows];
    openFirst = new int[rows];
    openLast = new int[rows];
    wetFirst = new int[rows];
    wetLast = new int[rows];
    rowMiddle = (rowFrom + rowTo) / 2;
    findOpenPart();
  }

  /** Share of a cell that holds liquid [-]; 0 in walls. */
  public double fill(int c) {
    return liquid[c] * grid.perVolume[c];
  }

  /** Liquid everywhere [m3], summed with compensation. */
  public double totalLiquid() {
    double sum = 0.0;
    double rest = 0.0;
    for (int j = rowFrom; j <= rowTo; j++) {
      int end = last[j];
      for (int c = first[j]; c <= end; c++) {
        double y = liquid[c] - rest;
        double t = sum + y;
        rest = (t - sum) - y;
        sum = t;
      }
    }
    return sum;
  }

  /** Finds the open part of every row; the whole of it counts as wet until it is looked at. */
  private void findOpenPart() {
    for (int j = 0; j < first.length; j++) {
      int row = j * grid.stride;
      int from = row + PlaneGrid.HALO;
      int to = from + grid.nx - 1;
      openFirst[j] = to + 1;
      openLast[j] = row;
      for (int c = from; c <= to; c++) {
        if (grid.volume[c] > 0.0) {
          openFirst[j] = Math.min(openFirst[j], Math.max(from, c - RIM));
          openLast[j] = Math.min(to, c + RIM);
        }
      }
      first[j] = openFirst[j];
      last[j] = openLast[j];
    }
  }

  /**
   * Finds the wet part again: cells with liquid or a gate, with a margin of three cells. Liquid
   * comes no farther than one cell in a step, so it is looked for in the last wet part only.
   *
   * @param gateCells cells that gates open into
   */
  public void findWetPart(int[] gateCells) {
    for (int j = 0; j < first.length; j++) {
      int from = first[j];
      int to = last[j];
      while (from <= to && !(liquid[from] > 0.0)) {
        from++;
      }
      while (from <= to && !(liquid[to] > 0.0)) {
        to--;
      }
      wetFirst[j] = from <= to ? from : j * grid.stride + grid.stride;
      wetLast[j] = from <= to ? to : j * grid.stride;
    }
    for (int g : gateCells) {
      int j = g / grid.stride;
      wetFirst[j] = Math.min(wetFirst[j], g);
      wetLast[j] = Math.max(wetLast[j], g);
    }
    widen();
  }

  private void widen() {
    rowFrom = first.length;
    rowTo = 0;
    for (int j = 0; j < first.length; j++) {
      int from = grid.stride;
      int to = 0;
      for (int k = Math.max(0, j - MARGIN); k <= Math.min(first.length - 1, j + MARGIN); k++) {
        from = Math.min(from, wetFirst[k] - k * grid.stride);
        to = Math.max(to, wetLast[k] - k * grid.stride);
      }
      first[j] = Math.max(openFirst[j], j * grid.stride + from - MARGIN);
      last[j] = Math.min(openLast[j], j * grid.stride + to + MARGIN);
      if (from <= to && first[j] <= last[j]) {
        rowFrom = Math.min(rowFrom, j);
        rowTo = j;
      } else {
        first[j] = j * grid.stride + 4;
        last[j] = j * grid.stride;
      }
    }
    halve();
  }

  private void halve() {
    int all = 0;
    for (int j = rowFrom; j <= rowTo; j++) {
      all += Math.max(0, last[j] - first[j] + 1);
    }
    int below = 0;
    rowMiddle = rowFrom;
    while (rowMiddle <= rowTo && 2 * below < all) {
      below += Math.max(0, last[rowMiddle] - first[rowMiddle] + 1);
      rowMiddle++;
    }
  }

  /**
   * First row of a half of the work.
   *
   * @param part 0 for the lower half, 1 for the upper one
   * @param before rows below the wet part that are worked on too
   */
  public int from(int part, int before) {
    return part == 0 ? rowFrom - before : rowMiddle;
  }

  /**
   * Last row of a half of the work.
   *
   * @param part 0 for the lower half, 1 for the upper one
   * @param beyond rows above the wet part that are worked on too
   */
  public int to(int part, int beyond) {
    return part == 0 ? rowMiddle - 1 : rowTo + beyond;
  }
}
