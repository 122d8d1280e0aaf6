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
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** How far metal of a freezing range runs in a channel at a held speed and under a held head. */
public final class FluidityStudy implements Study {
  private final double contact;

  /** The study as it should be. */
  public FluidityStudy() {
    this(1000.0);
  }

  private FluidityStudy(double contact) {
    this.contact = contact;
  }

  @Override
  public String title() {
    return "How far metal runs before mush stops it";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Ragone, Adams and Taylor 1956; Flemings, Solidification Processing (1974), ch. 7, in"
        + " its exact form: L = v (rho c A/(S h)) ln((Tp - T0)/(TL - T0)) + v (rho c' A/(S h))"
        + " ln((TL - T0)/(TL - k (TL - TS) - T0)); under a head with the front clock of the"
        + " same formula";
  }

  @Override
  public String setting() {
    return "Slot, bronze-like metal poured 1150 degC, freezing straight from 1000 to 850 degC,"
        + " 190 kJ/kg, stops at 30 %; mould stays at its heat, contact 1000 W/(m2 K); no"
        + " spreading, no push from surface or air; 40 cells per run length";
  }

  @Override
  public String note() {
    return "0.5 % at a held speed, 2 % under a head; the two rims of a 2 m wide slot take 0.1 %"
        + " of the heat. Half the contact doubles every length.";
  }

  @Override
  public void compare(Rows rows) {
    double[] celsius = {300.0, 500.0, 600.0};
    double[] millimetres = {805.737175, 1119.85568, 1392.73112};
    StudyCurve curve = rows.curve("Reach at 2 mm and 0.5 m/s", "mould [degC]", "reach [mm]");
    for (int i = 0; i < celsius.length; i++) {
      double got = atSpeed(2e-3, celsius[i], 0.5, millimetres[i]);
      curve.point(celsius[i], millimetres[i], got);
      String what = String.format(Locale.ROOT, "2 mm, 0.5 m/s, mould %.0f degC", celsius[i]);
      rows.share(what, "mm", millimetres[i], got, 0.005);
    }
    rows.share("1 mm", "mm", 559.927838, atSpeed(1e-3, 500.0, 0.5, 559.927838), 0.005);
    rows.share("3 mm", "mm", 1679.78351, atSpeed(3e-3, 500.0, 0.5, 1679.78351), 0.005);
    rows.share("2 mm, 0.25 m/s", "mm", 559.92784, atSpeed(2e-3, 500.0, 0.25, 559.92784), 0.005);
    rows.share("2 mm, 1 m/s", "mm", 2239.71136, atSpeed(2e-3, 500.0, 1.0, 2239.71136), 0.005);
    Checking head =
        Rig.options(
            true,
            OptionalDouble.of(0.03),
            OptionalDouble.of(0.2),
            OptionalDouble.empty(),
            Checking.Fluid.METAL,
            1.78 / 40,
            false);
    PourResult poured = DryPour.run(channel(2e-3, 500.0, 8.0, head), RunObserver.NONE, () -> false);
    rows.share("2 mm under 0.2 m of head, friction 0.03", "mm", 1780.11388, reach(poured), 0.02);
    rows.share("  stops after", "s", 2.23971135, poured.stops().get(0).time(), 0.02);
  }

  private double atSpeed(double thickness, double celsius, double speed, double expected) {
    Checking options =
        Rig.options(
            true,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(speed),
            Checking.Fluid.METAL,
            1e-3 * expected / 40,
            false);
    PourCase job = channel(thickness, celsius, 2.5e-3 * expected, options);
    return reach(DryPour.run(job, RunObserver.NONE, () -> false));
  }

  private PourCase channel(double thickness, double celsius, double length, Checking options) {
    return Rig.channel(
        Rig.metal(1000.0, 850.0, 190e3, 0.3),
        Rig.mould(contact, 0.6),
        celsius,
        1150.0,
        thickness,
        length,
        options);
  }

  private static double reach(PourResult poured) {
    return 1e3 * poured.reach();
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FluidityStudy(500.0));
  }
}
