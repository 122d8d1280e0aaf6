package lastinch.validation.pour;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
import lastinch.solver.casting.Attitude;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Cup;
import lastinch.solver.casting.Gating;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Sprue;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.Vent;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;
import lastinch.validation.Celsius;
import lastinch.validation.Kind;
import lastinch.validation.Rows;
import lastinch.validation.Study;

/** Which way reach goes with the things a hand can change, with the catalogue's own figures. */
public final class HandPourStudy implements Study {
  private static final double ICE = Celsius.ZERO;
  private static final double LONG = 1.2;

  /**
   * A strip poured by hand.
   *
   * @param celsius in the crucible
   * @param mould [degC]
   * @param thickness [m]
   * @param sprue [m]
   * @param rate [kg/s]
   */
  private record Strip(double celsius, double mould, double thickness, double sprue, double rate) {
    private static final Strip USUAL = new Strip(1150.0, 20.0, 2e-3, 0.12, 0.4);

    double reach(double length) {
      return 1e3 * DryPour.run(job(length), RunObserver.NONE, () -> false).reach();
    }

    private PourCase job(double length) {
      Catalogue catalogue = Catalogue.builtIn();
      Alloy alloy = catalogue.alloy("tin bronze");
      Limb limb =
          new Limb(
              Limb.ONLY,
              List.of(
                  new Station(0.0, 30e-3, thickness, OptionalDouble.empty()),
                  new Station(length, 30e-3, thickness, OptionalDouble.empty())),
              SectionForm.FLAT,
              "",
              "",
              0.0);
      return new PourCase(
          "strip",
          new Piece(List.of(limb), Optional.empty()),
          new Mould(
              catalogue.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM),
              Band.typed(mould + ICE),
              0.0,
              Optional.empty(),
              Attitude.FLAT,
              5e-5,
              101325.0),
          new Gating(
              new Cup(45e-3, 30e-3),
              new Sprue(sprue, 18e-3, 14e-3, Optional.of(new Place.Into(Limb.ONLY))),
              Optional.empty(),
              Optional.empty(),
              List.of(),
              List.of(new Vent("tip vent", new Place.At(Limb.ONLY, length, Side.TIP), 3e-3)),
              List.of(),
              List.of()),
          new Metal(
              alloy,
              2.0,
              Band.typed(celsius + ICE),
              Band.typed(10.0),
              catalogue.commonFigures().crucibleCooling(),
              catalogue.commonFigures().lipLoss()),
          new Pour.AtRate(Band.typed(rate)),
          Checking.NONE);
    }
  }

  @Override
  public String title() {
    return "A strip of tin bronze poured by hand into oil-bonded sand";
  }

  @Override
  public Kind kind() {
    return Kind.TREND;
  }

  @Override
  public String source() {
    return "Length in proportion to superheat: Motoyama, Ozasa, Okane, Mater. Trans."
        + " 58(4):629-634, 2017 (abstract). Edges of about 1 mm misrun in oil-bonded sand at"
        + " ordinary hand pours: common practice, no source. The other directions: a limit"
        + " every filling model must keep";
  }

  @Override
  public String setting() {
    return "30 mm wide, flat, fed at one end by a 120 mm sprue, 0.4 kg/s, read 1150 degC 10 s"
        + " before the pour, mould 20 degC, 3 mm vent at the tip; all figures as the catalogue"
        + " has them";
  }

  @Override
  public String note() {
    return "No figure is met here, only directions; nothing was tuned to them.";
  }

  @Override
  public void compare(Rows rows) {
    Strip u = Strip.USUAL;
    never(
        rows,
        "hotter metal, 1110, 1150, 1190 degC",
        new Strip(1110.0, u.mould(), u.thickness(), u.sprue(), u.rate()),
        u,
        new Strip(1190.0, u.mould(), u.thickness(), u.sprue(), u.rate()));
    never(
        rows,
        "hotter mould, 20, 150, 300 degC",
        u,
        new Strip(u.celsius(), 150.0, u.thickness(), u.sprue(), u.rate()),
        new Strip(u.celsius(), 300.0, u.thickness(), u.sprue(), u.rate()));
    never(
        rows,
        "thicker, 1, 1.5, 2 mm",
        new Strip(u.celsius(), u.mould(), 1e-3, u.sprue(), u.rate()),
        new Strip(u.celsius(), u.mould(), 1.5e-3, u.sprue(), u.rate()),
        u);
    held(rows);
    double plain = u.reach(LONG);
    double tall = new Strip(u.celsius(), u.mould(), u.thickness(), 0.24, u.rate()).reach(LONG);
    rows.told(
        "reach with a sprue of 120 and of 240 mm, held back by the hand",
        String.format(Locale.ROOT, "%.0f and %.0f mm", plain, tall));
    double edge = new Strip(u.celsius(), u.mould(), 1e-3, u.sprue(), u.rate()).reach(0.3);
    rows.trend(
        "1 mm strip of 300 mm",
        "stops short",
        String.format(Locale.ROOT, "reaches %.0f mm", edge),
        edge < 299.0);
    superheat(rows);
  }

  private static void never(Rows rows, String what, Strip... strips) {
    StringBuilder got = new StringBuilder();
    boolean holds = true;
    double before = 0.0;
    for (Strip strip : strips) {
      double reach = strip.reach(LONG);
      // a millimetre is what cells and steps leave open
      holds &= reach >= before - 1.0;
      before = reach;
      got.append(String.format(Locale.ROOT, got.isEmpty() ? "%.0f" : ", %.0f", reach));
    }
    rows.trend(what, "never shorter", got.append(" mm").toString(), holds);
  }

  /** More head over a plain channel with the catalogue's figures. */
  private static void held(Rows rows) {
    Catalogue catalogue = Catalogue.builtIn();
    StringBuilder got = new StringBuilder();
    boolean holds = true;
    double before = 0.0;
    for (double head : new double[] {0.05, 0.1, 0.2}) {
      Checking options =
          Rig.options(
              false,
              OptionalDouble.empty(),
              OptionalDouble.of(head),
              OptionalDouble.empty(),
              Checking.Fluid.METAL,
              4e-3,
              false);
      PourCase job =
          Rig.channel(
              catalogue.alloy("tin bronze"),
              catalogue.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM),
              20.0,
              1120.0,
              1.5e-3,
              3.0,
              options);
      double reach = 1e3 * DryPour.run(job, RunObserver.NONE, () -> false).reach();
      holds &= reach >= before - 1.0;
      before = reach;
      got.append(String.format(Locale.ROOT, got.isEmpty() ? "%.0f" : ", %.0f", reach));
    }
    rows.trend(
        "head of 50, 100, 200 mm held over a plain channel",
        "never shorter",
        got.append(" mm").toString(),
        holds);
  }

  private static void superheat(Rows rows) {
    Strip u = Strip.USUAL;
    int n = 5;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 1090.0 + 30.0 * i;
      y[i] = new Strip(x[i], u.mould(), u.thickness(), u.sprue(), u.rate()).reach(LONG);
    }
    double fit = squareOfCorrelation(x, y);
    rows.trend(
        "reach against heat in the crucible, 1090 to 1210 degC",
        "straight, R2 above 0.98",
        String.format(Locale.ROOT, "R2 = %.3f", fit),
        fit > 0.98);
  }

  private static double squareOfCorrelation(double[] x, double[] y) {
    double mx = 0.0;
    double my = 0.0;
    for (int i = 0; i < x.length; i++) {
      mx += x[i] / x.length;
      my += y[i] / x.length;
    }
    double xx = 0.0;
    double xy = 0.0;
    double yy = 0.0;
    for (int i = 0; i < x.length; i++) {
      xx += (x[i] - mx) * (x[i] - mx);
      xy += (x[i] - mx) * (y[i] - my);
      yy += (y[i] - my) * (y[i] - my);
    }
    return yy == 0.0 ? 0.0 : xy * xy / (xx * yy);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
