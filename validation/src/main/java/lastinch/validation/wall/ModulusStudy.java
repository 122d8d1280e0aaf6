package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Freezing times of plates and a rod from the heat a mould takes at a hot face. */
public final class ModulusStudy implements Study {
  private final double shape;

  /** The study as it should be. */
  public ModulusStudy() {
    this(1.0);
  }

  private ModulusStudy(double shape) {
    this.shape = shape;
  }

  @Override
  public String title() {
    return "Freezing time by modulus, and why a rod is faster than its modulus says";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Chvorinov 1940; Flemings, Solidification Processing: B = (pi/4) (rho (L + c dT)/(b (Tm"
        + " - T0)))^2; outer cylinder: Carslaw and Jaeger, sec. 13.5";
  }

  @Override
  public String setting() {
    return Bench.MOULD
        + "; face held at the freezing temperature; modulus 10 mm; rod of radius 10 mm"
        + " in mould of 500 degC";
  }

  @Override
  public String note() {
    return "1 % for plates, 3 % for the rod. A column that does not widen with depth is 68 % slow"
        + " on the rod.";
  }

  @Override
  public void compare(Rows rows) {
    double[] mould = {20.0, 300.0, 500.0};
    double[] bronze = {233.114158, 477.208131, 995.656470};
    double[] silver = {117.664059, 261.656764, 620.980881};
    double[] aluminium = {193.415342, 611.287996, 3094.64545};
    for (int i = 0; i < mould.length; i++) {
      String in = " plate, mould " + mould[i] + " degC";
      double b = time(mould[i], 0.0, 950.0, 8000.0 * 190e3 * 0.01);
      rows.share("bronze" + in, "s", bronze[i], b, 0.01);
      double s = time(mould[i], 0.0, 870.0, 9400.0 * 105e3 * 0.01);
      rows.share("silver" + in, "s", silver[i], s, 0.01);
      double a = time(mould[i], 0.0, 660.0, 2400.0 * 397e3 * 0.01);
      rows.share("aluminium" + in, "s", aluminium[i], a, 0.01);
    }
    double rod = time(500.0, shape / 0.01, 950.0, 8000.0 * 190e3 * 0.005);
    rows.share("bronze rod", "s", 148.108057, rod, 0.03);
  }

  private static double time(double mould, double curvature, double face, double heat) {
    WallColumns column =
        Bench.column(WallGrid.usual(Bench.DIFFUSIVITY, 6000.0), Bench.mould(1.0), mould, curvature);
    double sum = 0.0;
    double t = 0.0;
    while (sum < heat) {
      double dt = Math.max(2e-3, 2e-3 * t);
      sum += column.exchangeAt(0, dt, Bench.FOREVER, face + Bench.ICE);
      t += dt;
    }
    return t;
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new ModulusStudy(0.0));
  }
}
