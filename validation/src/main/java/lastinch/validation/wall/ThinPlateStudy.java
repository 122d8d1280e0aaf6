package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.material.MetalTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** A thin plate of metal between two mould halves: superheat and freezing. */
public final class ThinPlateStudy implements Study {
  private static final double SHARE = 0.01;
  private static final double POUR = 1150.0;
  private static final double DENSITY = 8000.0;
  private final double factor;

  /** The study as it should be. */
  public ThinPlateStudy() {
    this(1.0);
  }

  private ThinPlateStudy(double factor) {
    this.factor = factor;
  }

  @Override
  public String title() {
    return "Thin plate between two mould halves: time to lose its superheat and to freeze";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Well-stirred body on a half-space, Carslaw and Jaeger, 2nd ed.; freezing from the"
        + " integral equation of the mould face, solved apart from this program";
  }

  @Override
  public String setting() {
    return "Bronze-like plate, 8000 kg/m3, 450 J/(kg K), 190 kJ/kg given up evenly from 1000 to 850"
        + " degC, poured 1150 degC; "
        + Bench.MOULD
        + ", 600 degC; usual grid and steps";
  }

  @Override
  public String note() {
    return "1 % of every time. Times to the end of freezing were solved again (168 and 176 s): an"
        + " earlier reckoning of 66.3 and 74.2 s did not close its heat balance.";
  }

  @Override
  public void compare(Rows rows) {
    double[] h = {Bench.FOREVER, 2000.0};
    double[][] seconds = {{3.12859, 18.8461, 40.0425, 167.93}, {4.39279, 21.9967, 44.5836, 176.04}};
    double[] solid = {0.0, 0.3, 0.5, 1.0};
    for (int i = 0; i < h.length; i++) {
      for (int j = 0; j < solid.length; j++) {
        String what =
            String.format(
                java.util.Locale.ROOT,
                "3 mm, contact %s, until %.0f %% solid",
                h[i] == Bench.FOREVER ? "perfect" : "2000 W/(m2 K)",
                100.0 * solid[j]);
        rows.share(what, "s", seconds[i][j], time(1.5e-3, h[i], solid[j]), SHARE);
      }
    }
    double[] plate = {1.0, 2.0, 4.0, 6.0};
    double[] stop = {4.11494, 12.5117, 41.8745, 87.9869};
    StudyCurve curve = rows.curve("Time to 30 % solid", "thickness [mm]", "seconds");
    for (int i = 0; i < plate.length; i++) {
      curve.point(plate[i], stop[i], time(0.5e-3 * plate[i], 1000.0, 0.3));
      rows.share(
          plate[i] + " mm, contact 1000 W/(m2 K), until 30 % solid",
          "s",
          stop[i],
          time(0.5e-3 * plate[i], 1000.0, 0.3),
          SHARE);
    }
  }

  private double time(double half, double h, double solid) {
    MetalTable metal = bronze();
    double goal = solid == 0.0 ? 0.0 : metal.enthalpyAtSolid(solid);
    WallColumns columns =
        new WallColumns(1, WallGrid.usual(Bench.DIFFUSIVITY, 180.0), Bench.mould(factor), metal);
    columns.open(0, 600.0 + Bench.ICE, 0.0, Bench.FOREVER);
    double enthalpy = metal.enthalpy(POUR + Bench.ICE);
    double t = 0.0;
    for (int i = 0; enthalpy > goal; i++) {
      double dt = Bench.step(i, t < 1.0 ? 2e-3 : 1e-2);
      enthalpy = columns.exchange(0, dt, h, DENSITY * half, enthalpy);
      t += dt;
    }
    return t;
  }

  /** Freezing straight from 1000 to 850 degC. */
  private static MetalTable bronze() {
    double frozen = 190e3 + 450.0 * 150.0;
    return MetalTable.byPoints(
        new double[] {-frozen - 450.0 * 500.0, -frozen, 0.0, 450.0 * 200.0},
        new double[] {350.0 + Bench.ICE, 850.0 + Bench.ICE, 1000.0 + Bench.ICE, 1200.0 + Bench.ICE},
        new double[] {1.0, 1.0, 0.0, 0.0},
        new double[] {60.0, 60.0, 60.0, 60.0},
        frozen / 1000.0);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new ThinPlateStudy(0.5));
  }
}
