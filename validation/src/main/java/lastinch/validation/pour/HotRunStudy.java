package lastinch.validation.pour;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;
import org.apache.commons.math3.special.Erf;

/** Metal that does not freeze running over mould that warms up behind its front. */
public final class HotRunStudy implements Study {
  private static final double SPEED = 0.5;

  /** Square root of conductivity times heat per volume of the mould [W s0.5/(m2 K)]. */
  private static final double EFFUSIVITY = Math.sqrt(0.6 * 1.5e6);

  /** Heat carried past a place per area of one wall, times length: rho c a v. */
  private static final double CARRIED = 8000.0 * 450.0 * 1e-3 * SPEED;

  private final double conductivity;

  /** The study as it should be. */
  public HotRunStudy() {
    this(0.6);
  }

  private HotRunStudy(double conductivity) {
    this.conductivity = conductivity;
  }

  @Override
  public String title() {
    return "Metal running over mould that warms up";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Lauwerier 1955 (the same mathematics): T - T0 = (Tp - T0) erfc(b x/(2 rho c a v"
        + " sqrt(t - x/v))); at the front behind a contact h: exp(-h x/(rho c a v))";
  }

  @Override
  public String setting() {
    return "Slot 2 mm, 8000 kg/m3, 450 J/(kg K), 0.5 m/s, poured 1150 degC into a mould of 500"
        + " degC (0.6 W/(m K), 1500 kg/m3, 1000 J/(kg K)); perfect contact, and 2000 W/(m2 K)"
        + " for the front; cells of 10 mm";
  }

  @Override
  public String note() {
    return "3 K behind the front, 1 K at it, of 650 K. Half the mould conductivity is 10 K and"
        + " more off.";
  }

  @Override
  public void compare(Rows rows) {
    for (double end : new double[] {1.0, 2.0}) {
      Run run = run(true, 1e6, end);
      double[] place = end == 1.0 ? new double[] {0.05, 0.1, 0.25} : new double[] {0.1, 0.25, 0.5};
      StudyCurve curve =
          rows.curve(
              String.format(Locale.ROOT, "Heat along the channel after %.0f s", end),
              "from the inlet [mm]",
              "degC");
      for (double x : place) {
        double age = run.time() - x / SPEED;
        double theta = Erf.erfc(EFFUSIVITY * x / (2.0 * CARRIED * Math.sqrt(age)));
        String what =
            String.format(
                Locale.ROOT, "perfect contact, %.0f mm after %.3f s", 1e3 * x, run.time());
        curve.point(1e3 * x, 500.0 + 650.0 * theta, run.celsius(x));
        rows.within(what, "degC", 500.0 + 650.0 * theta, run.celsius(x), 3.0);
      }
    }
    Run film = run(false, 2000.0, 1.0);
    int last = film.poured().track().size() - 1;
    double front = film.poured().track().at(last);
    double celsius = film.poured().track().temperature(last) - Rig.ICE;
    double expected = 500.0 + 650.0 * Math.exp(-2000.0 * front / CARRIED);
    String what = String.format(Locale.ROOT, "contact 2000, front at %.0f mm", 1e3 * front);
    rows.within(what, "degC", expected, celsius, 1.0);
  }

  /** A pour stopped on its way. */
  private record Run(PourResult poured) {
    double time() {
      return poured.track().time(poured.track().size() - 1);
    }

    double celsius(double place) {
      PassageRecord cells = poured.passages().get(poured.passages().size() - 1);
      int i = 1;
      while (cells.at(i) < place) {
        i++;
      }
      double share = (place - cells.at(i - 1)) / (cells.at(i) - cells.at(i - 1));
      double a = cells.finalTemperature(i - 1);
      return a + share * (cells.finalTemperature(i) - a) - Rig.ICE;
    }
  }

  private Run run(boolean perfect, double contact, double end) {
    Checking options =
        Rig.options(
            false,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(SPEED),
            Checking.Fluid.METAL,
            0.01,
            perfect);
    PourCase job =
        Rig.channel(
            Rig.metal(300.0, 290.0, 190e3, 0.3),
            Rig.mould(contact, conductivity),
            500.0,
            1150.0,
            2e-3,
            1.5,
            options);
    double[] now = {0.0};
    RunObserver clock = (time, filled) -> now[0] = time;
    return new Run(DryPour.run(job, clock, () -> now[0] >= end));
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new HotRunStudy(0.3));
  }
}
