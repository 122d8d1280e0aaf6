package lastinch.solver.plane.heat;

import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.OuterAir;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;

/** Makes the columns of mould that the cells of a plane face. */
final class MouldColumns {
  /** Outside of a shell: air, 10 W/(m2 K), emissivity 0.8; estimates of the catalogue. */
  private static final double OUTSIDE = 293.15;

  private static final double CONVECTION = 10.0;
  private static final double EMISSIVITY = 0.8;

  private MouldColumns() {}

  /**
   * Columns for a job.
   *
   * @param metal table of the metal in front of them
   * @param mouldTemperature before metal [K]
   * @param count how many
   * @param shell whether they end in air
   */
  static WallColumns of(
      PourCase job,
      PlaneMeltProperties melt,
      MetalTable metal,
      double mouldTemperature,
      int count,
      boolean shell) {
    double hot = melt.table.temperature(melt.enthalpyIn);
    MouldTable table = MouldTable.of(job.mould().medium(), mouldTemperature - 100.0, hot + 50.0);
    double diffusivity = 0.0;
    for (double t = mouldTemperature; t < hot; t += 100.0) {
      diffusivity = Math.max(diffusivity, table.conductivityAt(t) / table.capacityAt(t));
    }
    WallGrid nodes = WallGrid.usual(diffusivity, 8.0).withMetalNodes(8);
    if (job.checking().mouldStaysAtHeat()) {
      return WallColumns.fixed(count, nodes, table, metal);
    }
    return shell
        ? WallColumns.shell(
            count, nodes, table, metal, OuterAir.of(OUTSIDE, CONVECTION, EMISSIVITY))
        : new WallColumns(count, nodes, table, metal);
  }
}
