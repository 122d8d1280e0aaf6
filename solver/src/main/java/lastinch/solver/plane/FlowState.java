package lastinch.solver.plane;

import java.util.Arrays;

/** What the cells and faces of a run hold now. Arrays are indexed as in {@link PlaneGrid}. */
final class FlowState {
  final PlaneGrid grid;

  /** Liquid in a cell [m3]. */
  final double[] liquid;

  /** Speed through a face, mean over its aperture [m/s]. */
  final double[] u;

  final double[] v;

  /** Pressure above open air [Pa], in cells that carry one. */
  final double[] pressure;

  /** Whether a cell carries a pressure: at least half full, and no bubble of air. */
  final boolean[] active;

  /** Pressure of the air in a cell without metal, above open air [Pa]. */
  final double[] airPressure;

  /** Liquid that crossed a face in the step, positive to the right or up [m3]. */
  final double[] fluxX;

  final double[] fluxY;

  /** Liquid that entered a cell through gates in the step [m3]. */
  final double[] gateFlux;

  /** Speed along each axis of what entered through gates [m/s]. */
  final double[] gateU;

  final double[] gateV;

  /** What carried solid multiplies the viscosity by [-]. */
  final double[] thickening;

  /** Share of the gap that skins leave open [-]. */
  final double[] openShare;

  /** Liquid grown fast to the wall, part of {@code liquid} [m3]. */
  final double[] skin;

  /** Share of solid carried in the moving metal [-]. */
  final double[] slurry;

  /** Wet part of the grid with a margin: first and last row and column. */
  int rowFrom;

  int rowTo;
  int columnFrom;
  int columnTo;

  FlowState(PlaneGrid grid) {
    this.grid = grid;
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
    columnFrom = PlaneGrid.HALO;
    columnTo = PlaneGrid.HALO + grid.nx - 1;
  }

  /** Share of a cell that holds liquid [-]; 0 in walls. */
  double fill(int c) {
    return liquid[c] * grid.perVolume[c];
  }

  /** Liquid everywhere [m3], summed with compensation. */
  double totalLiquid() {
    double sum = 0.0;
    double rest = 0.0;
    for (double m : liquid) {
      double y = m - rest;
      double t = sum + y;
      rest = (t - sum) - y;
      sum = t;
    }
    return sum;
  }

  /**
   * Finds the wet part again: cells with liquid or a gate, with a margin of three cells.
   *
   * @param gateCells cells that gates open into
   */
  void findWetPart(int[] gateCells) {
    int r0 = grid.ny + PlaneGrid.HALO;
    int r1 = PlaneGrid.HALO - 1;
    int c0 = grid.nx + PlaneGrid.HALO;
    int c1 = PlaneGrid.HALO - 1;
    for (int j = PlaneGrid.HALO; j < grid.ny + PlaneGrid.HALO; j++) {
      int row = j * grid.stride;
      boolean any = false;
      for (int i = PlaneGrid.HALO; i < grid.nx + PlaneGrid.HALO; i++) {
        if (liquid[row + i] > 0.0) {
          any = true;
          c0 = Math.min(c0, i);
          c1 = Math.max(c1, i);
        }
      }
      if (any) {
        r0 = Math.min(r0, j);
        r1 = Math.max(r1, j);
      }
    }
    for (int g : gateCells) {
      r0 = Math.min(r0, g / grid.stride);
      r1 = Math.max(r1, g / grid.stride);
      c0 = Math.min(c0, g % grid.stride);
      c1 = Math.max(c1, g % grid.stride);
    }
    rowFrom = Math.max(PlaneGrid.HALO, r0 - 3);
    rowTo = Math.min(PlaneGrid.HALO + grid.ny - 1, r1 + 3);
    columnFrom = Math.max(PlaneGrid.HALO, c0 - 3);
    columnTo = Math.min(PlaneGrid.HALO + grid.nx - 1, c1 + 3);
  }
}
