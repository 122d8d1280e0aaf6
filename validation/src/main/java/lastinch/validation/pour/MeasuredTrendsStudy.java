package lastinch.validation.pour;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Measured directions without figures to meet, and measured pours that lie outside the product. */
public final class MeasuredTrendsStudy implements Study {
  private static final double LONG = 0.3;

  @Override
  public String title() {
    return "Measured pours of which only the direction is known";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
  }

  @Override
  public String source() {
    return "Koroyasu, Mater. Trans. 55(12):1820-1826, 2014; Caliari and others, Metall. Ital. (A356"
        + " spiral in sand); Metals 14(10):1133, 2024 (narrow dies); J. Dent. Res. 64(2), 1985 (mesh"
        + " castings); all from their abstracts";
  }

  @Override
  public String setting() {
    return "Slot of 5 mm and 300 mm, bronze-like metal under 100 mm of head into a mould of 900"
        + " degC that lets its air out through its wall only, permeability 1e-12 to 1e-10 m2; narrow"
        + " dies: slots of 0.5 mm at 0.2 and 0.8 m/s into 30 and 150 degC";
  }

  @Override
  public String note() {
    return "Nothing is tuned. What is only told has no counterpart here or goes the other way"
        + " than measured, and says so. Below the range shown, from 1e-13 to 1e-12 m2, the metal's"
        + " speed rises about in proportion (0.005 to 0.048 m/s): there the trend does not hold.";
  }

  @Override
  public void compare(Rows rows) {
    permeability(rows);
    narrow(rows);
    rows.told(
        "grain refined or modified A356: measured without clear effect in thin sections",
        "the product has no such figure, so it shows none");
    rows.told(
        "mesh castings: score is the share of whole squares",
        "the product's share of the piece that filled, with limbs as bars; no mesh was poured");
    rows.told(
        "vacuum tube, 7 mm bore, mould at 400 degC: lengths not published in what could be read",
        "not compared; pours by suction are not worked out");
  }

  private static void permeability(Rows rows) {
    double[] through = {1e-12, 1e-11, 1e-10};
    StringBuilder got = new StringBuilder();
    boolean holds = true;
    double before = 0.0;
    for (double each : through) {
      double speed = LONG / end(each);
      got.append(String.format(Locale.ROOT, got.isEmpty() ? "%.3f" : ", %.3f", speed));
      holds &= before == 0.0 || (speed > before && speed < 10.0 * before);
      before = speed;
    }
    rows.trend(
        "mean speed as the wall lets ten times more air through, twice",
        "rises, less than in proportion",
        got.append(" m/s").toString(),
        holds);
  }

  /** When metal has filled the slot [s]. */
  private static double end(double permeability) {
    Checking bare =
        Rig.options(
            true,
            OptionalDouble.empty(),
            OptionalDouble.of(0.1),
            OptionalDouble.empty(),
            Checking.Fluid.METAL,
            5e-3,
            false);
    Checking pushes =
        new Checking(
            true,
            bare.frictionFactor(),
            bare.spreading(),
            bare.entryLoss(),
            true,
            true,
            bare.cupKeptAt(),
            bare.entersAt(),
            bare.startsWet(),
            bare.fluid(),
            bare.cellLength(),
            bare.frontCourant(),
            bare.heatStep(),
            bare.mushShare(),
            false,
            false,
            false,
            false);
    PourCase job =
        Rig.channel(
            Rig.metal(1000.0, 850.0, 190e3, 0.3),
            Rig.mould(200.0, 0.6, permeability),
            900.0,
            1150.0,
            5e-3,
            LONG,
            pushes);
    PourResult poured = DryPour.run(job, RunObserver.NONE, () -> false);
    return poured.outcome().time();
  }

  private static void narrow(Rows rows) {
    double slow = narrow(30.0, 0.2);
    double fast = narrow(150.0, 0.8);
    rows.told(
        "0.5 mm die, slow and cold against fast and hot: measured, slow and cold ran further",
        String.format(
            Locale.ROOT,
            "%.0f against %.0f mm: the other way. One contact for all speeds fails in so narrow a"
                + " way; pressure dies of 0.5 mm are outside the product",
            slow,
            fast));
  }

  private static double narrow(double celsius, double speed) {
    Checking options =
        Rig.options(
            false,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(speed),
            Checking.Fluid.METAL,
            2e-3,
            false);
    PourCase job =
        Rig.channel(
            Rig.metal(615.0, 577.0, 390e3, 0.37),
            Rig.mould(3000.0, 30.0),
            celsius,
            700.0,
            5e-4,
            1.0,
            options);
    return 1e3 * DryPour.run(job, RunObserver.NONE, () -> false).reach();
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
