package lastinch.validation.flow;

import java.util.Optional;
import lastinch.solver.physics.FreeFall;
import lastinch.solver.physics.Gravity;
import lastinch.solver.physics.Losses;
import lastinch.solver.physics.SplashLimit;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** Draining, filling from below, the taper of a sprue, a falling stream. */
public final class SprueStudy implements Study {
  private final double pull;

  /** The study as it should be. */
  public SprueStudy() {
    this(Gravity.G);
  }

  private SprueStudy(double pull) {
    this.pull = pull;
  }

  @Override
  public String title() {
    return "Draining, sprue taper and falling stream";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Torricelli; any fluids text (White), from memory; figures computed from the formulas";
  }

  @Override
  public String setting() {
    return "Head 0.20 m over a hole; sprue of 250 mm head with an 8 mm foot and 50 mm of cup;"
        + " stream of 0.3 m/s";
  }

  @Override
  public String note() {
    return "Algebra: 1e-6. A pull of 9.0 instead of 9.81 m/s2 is 4 % off.";
  }

  @Override
  public void compare(Rows rows) {
    rows.share("speed through the hole", "m/s", 1.98090888, Losses.steadySpeed(0.20, 1.0), 1e-6);
    double rate = Math.PI * 0.004 * 0.004 * FreeFall.speedAfter(0.0, 0.25);
    rows.share("flow through the sprue", "L/s", 0.111324143, 1e3 * rate, 1e-6);
    double[] head = {0.05, 0.10, 0.15, 0.20};
    double[] wide = {11.9627902, 10.0594674, 9.08975493, 8.45897011};
    StudyCurve taper = rows.curve("Taper of the sprue", "under a head of [mm]", "width [mm]");
    for (int i = 0; i < head.length; i++) {
      double got = 8.0 / Math.sqrt(FreeFall.areaRatio(head[i], 0.25));
      taper.point(1e3 * head[i], wide[i], got);
      rows.share("sprue width under a head of " + head[i] + " m", "mm", wide[i], got, 1e-6);
    }
    double[] drop = {0.05, 0.1, 0.2};
    double[] speed = {1.03489130, 1.43248037, 2.00349694};
    double[] time = {0.0749124667, 0.115441424, 0.173649026};
    for (int i = 0; i < drop.length; i++) {
      String after = " after a fall of " + drop[i] + " m";
      rows.share("stream" + after, "m/s", speed[i], FreeFall.speedAfter(0.3, drop[i]), 1e-6);
      rows.share("time" + after, "s", time[i], FreeFall.time(0.3, drop[i], pull), 1e-6);
    }
    double fall = 1e3 * SplashLimit.fallHeight(0.5);
    rows.share("fall that makes 0.5 m/s", "mm", 12.7420999, fall, 1e-6);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new SprueStudy(9.0));
  }
}
