package lastinch.validation.wall;

import java.util.Locale;
import java.util.Optional;
import lastinch.solver.material.MetalTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** Deep metal and deep mould that meet through a contact. */
public final class TwoBodiesStudy implements Study {
  private static final double METAL = 1000.0;
  private static final double MOULD = 500.0;
  private static final double DENSITY = 8000.0;

  /** Of the step of 500 K; in kelvin. */
  private static final double ALLOWED = 1.5;

  private static final double FLUX_SHARE = 0.005;
  private static final int STEPS = 1000;
  private final double factor;

  /** The study as it should be. */
  public TwoBodiesStudy() {
    this(1.0);
  }

  private TwoBodiesStudy(double factor) {
    this.factor = factor;
  }

  @Override
  public String title() {
    return "Metal and mould, both deep, through a contact of 2000 W/(m2 K)";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Contact of two half-spaces: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed."
        + " 1959, from memory; re-derived, figures computed from the formulas";
  }

  @Override
  public String setting() {
    return "Metal 60 W/(m K), 8000 kg/m3, 450 J/(kg K) at 1000 degC, it does not freeze; "
        + Bench.MOULD
        + ", 500 degC; "
        + STEPS
        + " even steps on a fine grid";
  }

  @Override
  public String note() {
    return "0.3 % of the 500 K between the bodies, half a percent of the flux; half the mould's"
        + " conductivity moves the mould's face by 20 K and more.";
  }

  @Override
  public void compare(Rows rows) {
    double[] seconds = {0.01, 0.1, 1.0, 10.0};
    double[] flux = {789741.759, 522150.796, 231595.528, 78730.1722};
    double[] metalFace = {993.625422, 985.512638, 976.703627, 972.069077};
    double[] mouldFace = {598.754542, 724.437241, 860.905863, 932.703991};
    StudyCurve curve = rows.curve("Face of the mould", "seconds (log 10)", "degC");
    for (int i = 0; i < seconds.length; i++) {
      double[] got = contact(seconds[i], 2000.0);
      String after = String.format(Locale.ROOT, " after %s s", seconds[i]);
      rows.within("mould's face" + after, "degC", mouldFace[i], got[0], ALLOWED);
      rows.within("metal's face" + after, "degC", metalFace[i], got[0] + got[1] / 2000.0, ALLOWED);
      rows.share("flux" + after, "W/m2", flux[i], got[1], FLUX_SHARE);
      curve.point(Math.log10(seconds[i]), mouldFace[i], got[0]);
    }
    for (double s : new double[] {0.1, 1.0, 10.0}) {
      String what = String.format(Locale.ROOT, "perfect contact, both faces after %s s", s);
      rows.within(what, "degC", 969.682148, contact(s, Bench.FOREVER)[0], ALLOWED);
    }
  }

  /** Temperature of the mould's face [degC] and flux [W/m2] at the end. */
  private double[] contact(double seconds, double h) {
    double gap = 5.0 * Math.sqrt(60.0 / (DENSITY * 450.0) * seconds);
    MetalTable metal = Bench.warmBody(450.0, 60.0);
    WallGrid grid =
        WallGrid.graded(0.01e-3, 1.08, 5.0 * Math.sqrt(Bench.DIFFUSIVITY * seconds))
            .withMetalNodes(60, 1.05);
    WallColumns columns = new WallColumns(1, grid, Bench.mould(factor), metal);
    double enthalpy = metal.enthalpy(METAL + Bench.ICE);
    columns.openThick(0, MOULD + Bench.ICE, 0.0, Bench.FOREVER, gap, enthalpy);
    double flux = 0.0;
    for (int i = 0; i < STEPS; i++) {
      double after = columns.exchange(0, seconds / STEPS, h, DENSITY * gap, enthalpy);
      flux = (enthalpy - after) * DENSITY * gap * STEPS / seconds;
      enthalpy = after;
    }
    return new double[] {columns.faceTemperature(0) - Bench.ICE, flux};
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new TwoBodiesStudy(0.5));
  }
}
