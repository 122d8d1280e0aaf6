package lastinch.solver.wall;

import lastinch.solver.material.Curve;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.material.SampleMetals;
import lastinch.solver.material.SampleMoulds;

/** Bodies of the checks and the steps they are run with. */
final class Rig {
  static final double ZERO = SampleMetals.ZERO;
  static final double INFINITE = Double.POSITIVE_INFINITY;
  static final double K = 0.6;
  static final double DENSITY_HEAT = 1.5e6;
  static final double DIFFUSIVITY = K / DENSITY_HEAT;
  static final double EFFUSIVITY = Math.sqrt(K * DENSITY_HEAT);

  private Rig() {}

  /** Round figures near those of block investment. */
  static MouldTable mould() {
    return MouldTable.constant(K, DENSITY_HEAT, 200.0, 1800.0);
  }

  /** Curves like those of silica sand. */
  static MouldTable sandTable() {
    return MouldTable.of(
        SampleMoulds.medium(
            Curve.of(new double[] {293.0, 773.0, 1273.0}, new double[] {0.7, 0.5, 0.9}),
            Curve.of(
                new double[] {293.0, 500.0, 700.0, 900.0, 1100.0},
                new double[] {740.0, 1003.0, 1137.0, 1131.0, 1164.0}),
            1550.0),
        280.0,
        1700.0);
  }

  /** A body that only warms and cools. */
  static MetalTable warmBody(double c, double k) {
    return MetalTable.byPoints(
        new double[] {-1000.0 * c, 1000.0 * c},
        new double[] {1000.0, 3000.0},
        new double[] {0.0, 0.0},
        new double[] {k, k},
        100.0 * c);
  }

  /** First ten steps of 2 ms, then longer ones, as a newly wet place is stepped. */
  static double step(int i, double usual) {
    return i < 10 ? Math.min(2e-3, usual) : usual;
  }
}
