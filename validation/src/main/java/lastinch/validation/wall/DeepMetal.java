package lastinch.validation.wall;

import lastinch.solver.material.MetalTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;

/** Deep metal that freezes through its own thickness on a wall. */
final class DeepMetal {
  private final WallGrid grid;
  private final WallColumns columns;
  private final MetalTable metal;
  private final double gap;
  private final double massPerArea;
  private double enthalpy;

  /**
   * Metal on a wall.
   *
   * @param columns one column
   * @param grid of it
   * @param metal what freezes
   * @param density [kg/m3]
   * @param wall temperature of the mould at the start [degC]
   * @param gap depth of the metal [m]
   * @param pour temperature of the metal at the start [degC]
   */
  DeepMetal(
      WallColumns columns,
      WallGrid grid,
      MetalTable metal,
      double density,
      double wall,
      double gap,
      double pour) {
    this.columns = columns;
    this.grid = grid;
    this.metal = metal;
    this.gap = gap;
    massPerArea = density * gap;
    enthalpy = metal.enthalpy(pour + Bench.ICE);
    columns.openThick(0, wall + Bench.ICE, 0.0, Bench.FOREVER, gap, enthalpy);
  }

  /** Metal on a wall that stays at its heat, with even nodes. */
  static DeepMetal onFixedWall(
      MetalTable metal, double density, double wall, double gap, int nodes, double pour) {
    WallGrid grid = WallGrid.graded(1e-3, 1.0, 1e-3).withMetalNodes(nodes);
    WallColumns columns = WallColumns.fixed(1, grid, Bench.mould(1.0), metal);
    return new DeepMetal(columns, grid, metal, density, wall, gap, pour);
  }

  void run(double seconds, int steps) {
    for (int i = 0; i < steps; i++) {
      enthalpy = columns.exchange(0, seconds / steps, Bench.FOREVER, massPerArea, enthalpy);
    }
  }

  double faceCelsius() {
    return columns.faceTemperature(0) - Bench.ICE;
  }

  /** Thickness that has frozen [mm]. */
  double frozen() {
    double sum = 0.0;
    for (int j = 0; j < grid.metalNodes(); j++) {
      sum += gap * grid.metalShare(j) * metal.solid(columns.metalNode(0, j));
    }
    return 1e3 * sum;
  }

  /**
   * Depth to which all has frozen [mm].
   *
   * @param arrest solid share that freezes at one heat at the end [-]
   */
  double frozenThrough(double arrest) {
    double sum = 0.0;
    for (int j = 0; j < grid.metalNodes(); j++) {
      double solid = metal.solid(columns.metalNode(0, j));
      sum += gap * grid.metalShare(j) * Math.max(0.0, (solid - 1.0 + arrest) / arrest);
    }
    return 1e3 * sum;
  }

  /** Depth at which a temperature stands [mm]. */
  double depthOf(double celsius) {
    double t = celsius + Bench.ICE;
    int j = 1;
    while (temperature(j) < t) {
      j++;
    }
    double a = temperature(j - 1);
    double share = (t - a) / (temperature(j) - a);
    return 1e3 * (middle(j - 1) + share * (middle(j) - middle(j - 1)));
  }

  /** Temperature at a depth in mm [degC]. */
  double celsiusAt(double millimetres) {
    double depth = 1e-3 * millimetres;
    int j = 1;
    while (middle(j) < depth) {
      j++;
    }
    double share = (depth - middle(j - 1)) / (middle(j) - middle(j - 1));
    double a = temperature(j - 1);
    return a + share * (temperature(j) - a) - Bench.ICE;
  }

  private double temperature(int node) {
    return metal.temperature(columns.metalNode(0, node));
  }

  private double middle(int node) {
    double x = 0.5 * grid.metalShare(node);
    for (int j = 0; j < node; j++) {
      x += grid.metalShare(j);
    }
    return x * gap;
  }
}
