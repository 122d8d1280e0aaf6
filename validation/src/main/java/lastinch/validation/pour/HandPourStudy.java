package lastinch.validation.pour;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.run.DryPour;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** Which way reach goes with the things a hand can change, with the catalogue's own figures. */
public final class HandPourStudy implements Study {
  private static final double LONG = 1.2;

  @Override
  public String title() {
    return "A strip of tin bronze poured by hand into oil-bonded sand";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
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
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < 5; i++) {
      double read = 1090.0 + 30.0 * i;
      Strip strip = new Strip(read, u.mould(), u.thickness(), u.sprue(), u.rate());
      line.addData(read, strip.reach(LONG));
    }
    double fit = line.getRSquare();
    rows.trend(
        "reach against heat in the crucible, 1090 to 1210 degC",
        "straight, R2 above 0.98",
        String.format(Locale.ROOT, "R2 = %.3f", fit),
        fit > 0.98);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
