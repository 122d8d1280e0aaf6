package lastinch.validation.wall;

import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Celsius;

/** Bodies with round figures that the heat studies share; not recommended data. */
final class Bench {
  /** Zero of the Celsius scale [K]. */
  static final double ICE = Celsius.ZERO;

  /** Mould like block investment: conductivity [W/(m K)]. */
  static final double K = 0.6;

  /** The same: heat per volume and degree [J/(m3 K)]. */
  static final double VOLUME_HEAT = 1.5e6;

  static final double DIFFUSIVITY = K / VOLUME_HEAT;
  static final double FOREVER = Double.POSITIVE_INFINITY;

  static final String MOULD = "mould 0.6 W/(m K), 1500 kg/m3, 1000 J/(kg K)";

  private Bench() {}

  /** The mould with its conductivity times a factor; 1 is right. */
  static MouldTable mould(double factor) {
    return MouldTable.constant(K * factor, VOLUME_HEAT, 200.0, 1800.0);
  }

  /** A body that only warms and cools, heat per degree [J/(kg K)], conductivity [W/(m K)]. */
  static MetalTable warmBody(double c, double k) {
    return MetalTable.byPoints(
        new double[] {-1000.0 * c, 1000.0 * c},
        new double[] {1000.0, 3000.0},
        new double[] {0.0, 0.0},
        new double[] {k, k},
        100.0 * c);
  }

  /** A grid fine enough that what is compared is the method, not the grid. */
  static WallGrid fine(double seconds) {
    return WallGrid.graded(0.02e-3, 1.08, 5.0 * Math.sqrt(DIFFUSIVITY * seconds));
  }

  /** One flat column of mould. */
  static WallColumns column(WallGrid grid, MouldTable mould, double celsius, double curvature) {
    WallColumns columns = new WallColumns(1, grid, mould, warmBody(450.0, 60.0));
    columns.open(0, celsius + ICE, curvature, FOREVER);
    return columns;
  }

  /** Step of a newly wet place: ten of 2 ms at most, then the usual one [s]. */
  static double step(int i, double usual) {
    return i < 10 ? Math.min(2e-3, usual) : usual;
  }
}
