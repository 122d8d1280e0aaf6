package lastinch.validation.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MetalKind;
import lastinch.cases.catalogue.Ramming;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.validation.Celsius;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Thin rims and long thin pieces at ordinary hand pours, against what the trade finds. */
public final class ThinRimStudy implements Study {
  private static final double ICE = Celsius.ZERO;
  private static final double[] RATES = {0.3, 0.45, 0.6};

  @Override
  public String title() {
    return "Thin rims and long pieces of tin bronze poured by hand into oil-bonded sand";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
  }

  @Override
  public String source() {
    return "Edges of about 1 mm misrun in oil-bonded sand at ordinary hand pours; pieces of 300 mm"
        + " succeed and longer ones do not: common practice, no source";
  }

  @Override
  public String setting() {
    return "lens-shaped, flat, fed at the thick end by a 120 mm sprue, read 1150 degC 15 s before the"
        + " pour, mould 20 degC, 3 mm vent at the tip; all figures as the catalogue has them. The"
        + " even piece is 25 mm wide and 5 mm thick, the tapering one 34 to 12 mm wide and 6 to"
        + " 1.2 mm thick";
  }

  @Override
  public String note() {
    return "Compared with, not tuned to: the trade's words carry no sizes or rates of their own. At these"
        + " sizes and rates the sum fills longer pieces than the trade reports: that part of the words"
        + " is not met and is only told.";
  }

  @Override
  public void compare(Rows rows) {
    StringBuilder got = new StringBuilder();
    boolean all = true;
    for (double rate : RATES) {
      double rounded = rounded(pour(even(0.3, 1e-3), rate));
      all &= rounded > 0.0;
      got.append(String.format(Locale.ROOT, got.isEmpty() ? "%.0f" : ", %.0f", 1e3 * rounded));
    }
    rows.trend(
        "rim of 1 mm round a piece of 300 mm, at 0.3, 0.45, 0.6 kg/s",
        "stays rounded in part",
        got.append(" mm rounded").toString(),
        all);
    thicker(rows);
    longer(rows);
  }

  private static void thicker(Rows rows) {
    StringBuilder got = new StringBuilder();
    boolean holds = true;
    double before = Double.POSITIVE_INFINITY;
    for (double edge : new double[] {0.6e-3, 1e-3, 1.5e-3, 2e-3, 3e-3}) {
      double rounded = rounded(pour(even(0.3, edge), 0.45));
      // a cell is what the strip's places leave open
      holds &= rounded <= before + 5e-3;
      before = rounded;
      got.append(String.format(Locale.ROOT, got.isEmpty() ? "%.0f" : ", %.0f", 1e3 * rounded));
    }
    rows.trend(
        "rim of 0.6, 1, 1.5, 2, 3 mm at 0.45 kg/s",
        "rounded no longer when thicker",
        got.append(" mm rounded").toString(),
        holds);
  }

  private static void longer(Rows rows) {
    List<String> got = new ArrayList<>();
    boolean shortFills = false;
    for (double length : new double[] {0.3, 0.45, 0.6}) {
      PourResult result = pour(tapering(length), 0.45);
      boolean fills = result.outcome() instanceof Outcome.Filled;
      shortFills |= length == 0.3 && fills;
      got.add(
          fills ? "fills" : String.format(Locale.ROOT, "stops at %.0f mm", 1e3 * result.reach()));
    }
    rows.trend("tapering piece of 300 mm at 0.45 kg/s", "fills", got.get(0), shortFills);
    rows.told(
        "tapering piece of 450, 600 mm; the trade finds that longer ones do not fill",
        String.join(", ", got.subList(1, got.size())));
  }

  private static double rounded(PourResult result) {
    double sum = 0.0;
    for (EdgeStretch stretch : result.edges()) {
      sum += stretch.state() == EdgeStretch.State.ROUNDED ? stretch.to() - stretch.from() : 0.0;
    }
    return sum;
  }

  private static Limb even(double length, double edge) {
    return limb(
        new Station(0.0, 25e-3, 5e-3, OptionalDouble.of(edge)),
        new Station(length, 25e-3, 5e-3, OptionalDouble.of(edge)));
  }

  private static Limb tapering(double length) {
    return limb(
        new Station(0.0, 34e-3, 6e-3, OptionalDouble.empty()),
        new Station(length, 12e-3, 1.2e-3, OptionalDouble.empty()));
  }

  private static Limb limb(Station root, Station tip) {
    return new Limb(Limb.ONLY, List.of(root, tip), SectionForm.LENS, "", "", 0.0);
  }

  private static PourResult pour(Limb limb, double rate) {
    Catalogue catalogue = Catalogue.builtIn();
    PourCase job =
        new PourCase(
            "thin rim",
            new Piece(List.of(limb), Optional.empty()),
            new Mould(
                catalogue.medium("oil-bonded sand", MetalKind.COPPER, Ramming.FIRM),
                Band.typed(20.0 + ICE),
                0.0,
                Optional.empty(),
                Orientation.FLAT,
                5e-5,
                101325.0),
            new Gating(
                new Cup(45e-3, 30e-3),
                new Sprue(0.12, 18e-3, 14e-3, Optional.of(new Place.Into(Limb.ONLY))),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(
                    new Vent("tip vent", new Place.At(Limb.ONLY, limb.length(), Side.TIP), 3e-3)),
                List.of(),
                List.of()),
            new Metal(
                catalogue.alloy("tin bronze"),
                2.0,
                Band.typed(1150.0 + ICE),
                Band.typed(15.0),
                catalogue.commonFigures().coolingRate(),
                catalogue.commonFigures().lipLoss()),
            new Pour.AtRate(Band.typed(rate)),
            Checking.NONE);
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
