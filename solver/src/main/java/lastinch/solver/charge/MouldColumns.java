package lastinch.solver.charge;

import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.physics.DryAir;
import lastinch.solver.wall.OuterAir;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;

/** Makes the columns of mould that metal faces, wherever it stands or falls. */
public final class MouldColumns {
  /** Metal nodes through half of a thick gap; chosen, halved the pinned pours stay within 1 %. */
  private static final int METAL_NODES = 8;

  /** The mould's table reaches this far under its start and over the metal [K]; chosen. */
  private static final double COLDER = 100.0;

  private static final double HOTTER = 50.0;

  /** Step in which the table is searched for the largest diffusivity [K]. */
  private static final double SEARCH = 100.0;

  /** Shortest and longest filling that columns are made for [s]; heat of more is followed on. */
  private static final double SHORTEST = 4.0;

  private static final double LONGEST = 40.0;

  /** Filling takes longer than pouring by up to this factor [-]; chosen. */
  private static final double SLOWER = 1.5;

  private final PourCase job;
  private final MouldTable table;
  private final WallGrid grid;

  /** Where columns end [m]: behind the wall of a shell; infinite in a block. */
  public final double depthLimit;

  /**
   * Columns for a job.
   *
   * @param melt what is poured
   * @param coldest temperature of the mould before metal [K]
   * @param massToRim metal that fills everything [kg]
   */
  public MouldColumns(PourCase job, MeltProperties melt, double coldest, double massToRim) {
    this.job = job;
    double hot = melt.temperatureIn();
    table = MouldTable.of(job.mould().medium(), coldest - COLDER, hot + HOTTER);
    double diffusivity = 0.0;
    for (double t = coldest; t < hot; t += SEARCH) {
      diffusivity = Math.max(diffusivity, table.conductivityAt(t) / table.capacityAt(t));
    }
    grid = WallGrid.usual(diffusivity, seconds(job, massToRim)).withMetalNodes(METAL_NODES);
    double wall = job.mould().wallThickness().value();
    depthLimit = wall > 0.0 ? wall : Double.POSITIVE_INFINITY;
  }

  private static double seconds(PourCase job, double massToRim) {
    double melted = job.metal().melted();
    double rate = Math.max(1e-3, job.pour().rate(melted, massToRim));
    return Math.min(LONGEST, Math.max(SHORTEST, SLOWER * melted / rate));
  }

  /**
   * A number of columns.
   *
   * @param metal table of the metal in front of them
   */
  public WallColumns of(int count, MetalTable metal) {
    if (job.checking().mouldStaysAtHeat()) {
      return WallColumns.fixed(count, grid, table, metal);
    }
    return Double.isFinite(depthLimit)
        ? WallColumns.shell(
            count,
            grid,
            table,
            metal,
            OuterAir.of(DryAir.SHOP, job.laws().airConvection().value(), job.laws().glow().value()))
        : new WallColumns(count, grid, table, metal);
  }
}
