package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Fronts of pure metal freezing on a cold wall, on an insulating mould and on a chill. */
public final class FreezingFrontStudy implements Study {
  private static final double LATENT = 397e3;
  private static final double DENSITY = 2500.0;
  private static final double SHARE = 0.01;
  private final double solid;

  /** The study as it should be. */
  public FreezingFrontStudy() {
    this(210.0);
  }

  private FreezingFrontStudy(double solid) {
    this.solid = solid;
  }

  @Override
  public String title() {
    return "Pure metal freezing through its own thickness";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Stefan and Neumann: Carslaw and Jaeger, 2nd ed., ch. 11. On a mould: Schwarz 1931, in"
        + " Poirier and Geiger, Transport Phenomena in Materials Processing";
  }

  @Override
  public String setting() {
    return "Aluminium-like metal, freezes at 660 degC, 397 kJ/kg, solid 210 W/(m K) and 1100"
        + " J/(kg K), liquid 95 and 1080, 2500 kg/m3; wall 400 degC, mould 20 degC";
  }

  @Override
  public String note() {
    return "1 % of the fronts, 0.5 K and 2 K of the contact temperatures; half the conductivity of"
        + " the solid is 25 % off.";
  }

  @Override
  public void compare(Rows rows) {
    MetalTable metal = metal();
    DeepMetal stefan = DeepMetal.onFixedWall(metal, DENSITY, 400.0, 15e-3, 300, 660.0);
    stefan.run(1.0, 2000);
    rows.share("no superheat, front after 1 s", "mm", 9.48953931, stefan.frozen(), SHARE);
    rows.within("  5 mm deep", "degC", 546.558649, stefan.celsiusAt(5.0), 2.0);
    DeepMetal neumann = DeepMetal.onFixedWall(metal, DENSITY, 400.0, 70e-3, 500, 760.0);
    neumann.run(1.0, 2000);
    rows.share("100 K of superheat, front after 1 s", "mm", 8.17458852, neumann.frozen(), SHARE);
    rows.within("  20 mm deep", "degC", 754.809830, neumann.celsiusAt(20.0), 1.0);
    MouldTable chill = MouldTable.constant(40.0, 7200.0 * 600.0, 200.0, 1500.0);
    DeepMetal sand = onMould(metal, Bench.mould(1.0), 660.0);
    rows.share("on insulating mould, skin after 10 s", "mm", 2.17566619, sand.frozen(), SHARE);
    rows.within("  contact temperature", "degC", 658.880267, sand.faceCelsius(), 0.5);
    DeepMetal iron = onMould(metal, chill, 660.0);
    rows.share("on a chill, skin after 10 s", "mm", 21.2693670, iron.frozen(), SHARE);
    rows.within("  contact temperature", "degC", 541.889156, iron.faceCelsius(), 2.0);
    DeepMetal hot = onMould(metal, Bench.mould(1.0), 760.0);
    rows.within("100 K of superheat on the mould: no skin", "mm", 0.0, hot.frozen(), 0.0);
    rows.within("  contact temperature", "degC", 718.617472, hot.faceCelsius(), 0.5);
  }

  private DeepMetal onMould(MetalTable metal, MouldTable mould, double pour) {
    double seconds = 10.0;
    double diffusivity = mould.conductivityAt(600.0) / mould.capacityAt(600.0);
    WallGrid grid =
        WallGrid.graded(
                0.01 * Math.sqrt(diffusivity * seconds),
                1.06,
                6.0 * Math.sqrt(diffusivity * seconds))
            .withMetalNodes(180, 1.03);
    WallColumns columns = new WallColumns(1, grid, mould, metal);
    double gap = 6.0 * Math.sqrt(7.6e-5 * seconds);
    DeepMetal deep = new DeepMetal(columns, grid, metal, DENSITY, 20.0, gap, pour);
    deep.run(seconds, 2000);
    return deep;
  }

  private MetalTable metal() {
    return MetalTable.byPoints(
        new double[] {-LATENT - 1100.0 * 660.0, -LATENT, 0.0, 1080.0 * 200.0},
        new double[] {Bench.ICE, 660.0 + Bench.ICE, 660.0 + Bench.ICE, 860.0 + Bench.ICE},
        new double[] {1.0, 1.0, 0.0, 0.0},
        new double[] {solid, solid, 95.0, 95.0},
        LATENT / 2000.0);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FreezingFrontStudy(105.0));
  }
}
