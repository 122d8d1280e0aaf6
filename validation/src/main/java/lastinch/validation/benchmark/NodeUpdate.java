package lastinch.validation.benchmark;

import java.util.concurrent.TimeUnit;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One heat step of one mould node, all passes and the metal's share included: tin bronze in sand by
 * its tables of conductivity and heat, and with constants.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class NodeUpdate {
  private static final int COLUMNS = 64;
  private static final int NODES = 16;
  private static final int STEPS = 200;

  /** Figures of the mould. */
  @Param({"tables", "constants"})
  public String figures;

  private WallColumns columns;
  private double start;
  private double[] enthalpy;

  /** Columns of the usual grid, all cold. */
  @Setup(Level.Trial)
  public void build() {
    Catalogue catalogue = Catalogue.builtIn();
    MetalTable metal = MetalTable.of(catalogue.alloy("tin bronze"), false, 280.0, 1600.0);
    MouldTable mould =
        figures.equals("tables")
            ? MouldTable.of(
                catalogue.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM), 280.0, 1700.0)
            : MouldTable.constant(0.6, 1.6e6, 280.0, 1700.0);
    WallGrid grid = WallGrid.graded(WallGrid.FIRST, WallGrid.RATIO, depth());
    if (grid.nodes() != NODES) {
      throw new IllegalStateException("nodes = " + grid.nodes() + ", must be " + NODES);
    }
    columns = new WallColumns(COLUMNS, grid, mould, metal);
    start = metal.enthalpy(1420.0);
    enthalpy = new double[COLUMNS];
  }

  /** Depth of 16 nodes, less a hair [m]. */
  private static double depth() {
    double depth = 0.0;
    double d = WallGrid.FIRST;
    for (int i = 0; i < NODES; i++) {
      depth += d;
      d *= WallGrid.RATIO;
    }
    return 0.999 * depth;
  }

  /** Two seconds of all columns in steps of 10 ms, from cold. */
  @Benchmark
  @OperationsPerInvocation(COLUMNS * NODES * STEPS)
  public double step() {
    double sum = 0.0;
    for (int c = 0; c < COLUMNS; c++) {
      columns.open(c, 293.0, 0.0, Double.POSITIVE_INFINITY);
      enthalpy[c] = start;
    }
    for (int i = 0; i < STEPS; i++) {
      for (int c = 0; c < COLUMNS; c++) {
        enthalpy[c] = columns.exchange(c, 10e-3, 1200.0, 12.0, enthalpy[c]);
        sum += enthalpy[c];
      }
    }
    return sum;
  }
}
