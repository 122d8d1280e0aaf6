package lastinch.validation.pour;

import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** Water let into a dry channel under a held head. */
public final class DryPipeStudy implements Study {
  private final double friction;

  /** The study as it should be. */
  public DryPipeStudy() {
    this(0.02);
  }

  private DryPipeStudy(double friction) {
    this.friction = friction;
  }

  @Override
  public String title() {
    return "Filling a dry channel under a held head";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Momentum of a growing column, x dv/dt + v^2 (1 + K + f x/D)/2 = g H; K = 0: v^2 = 2"
        + " g H (1 - e^-z)/z, z = f x/D (derived; from any fluids text)";
  }

  @Override
  public String setting() {
    return "Slot 2 mm, friction factor 0.02, so f/D = 5 per metre; head 0.2 m, no loss at the"
        + " inlet, water that exchanges no heat";
  }

  @Override
  public String note() {
    return "1 %. Half the friction is 10 % fast at 0.5 m.";
  }

  @Override
  public void compare(Rows rows) {
    Checking options =
        Rig.options(
            true,
            OptionalDouble.of(friction),
            OptionalDouble.of(0.2),
            OptionalDouble.empty(),
            Checking.Fluid.WATER,
            0.02,
            false);
    PourCase job =
        Rig.channel(
            Rig.metal(1000.0, 850.0, 190e3, 0.3),
            Rig.mould(1000.0, 0.6),
            20.0,
            1150.0,
            2e-3,
            2.5,
            options);
    PourResult poured = DryPour.run(job, RunObserver.NONE, () -> false);
    double[] place = {0.05, 0.1, 0.2, 0.5, 1.0};
    double[] speed = {1.86331503, 1.75725564, 1.57494161, 1.20031637, 0.882899801};
    double[] time = {0.0260349374, 0.0536766600, 0.113867962, 0.334207700, 0.827768112};
    StudyCurve curve = rows.curve("Front in the dry pipe", "from the inlet [m]", "seconds");
    for (int i = 0; i < place.length; i++) {
      double[] got = at(poured.track(), place[i]);
      curve.point(place[i], time[i], got[1]);
      rows.share("speed at " + place[i] + " m", "m/s", speed[i], got[0], 0.01);
      rows.share("time to " + place[i] + " m", "s", time[i], got[1], 0.01);
    }
  }

  /** Speed and time of the leading metal at a place, straight between samples. */
  private static double[] at(FrontTrack track, double place) {
    int i = 1;
    while (track.at(i) < place) {
      i++;
    }
    double share = (place - track.at(i - 1)) / (track.at(i) - track.at(i - 1));
    return new double[] {
      track.speed(i - 1) + share * (track.speed(i) - track.speed(i - 1)),
      track.time(i - 1) + share * (track.time(i) - track.time(i - 1))
    };
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new DryPipeStudy(0.01));
  }
}
