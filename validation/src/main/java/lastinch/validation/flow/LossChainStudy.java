package lastinch.validation.flow;

import java.util.Optional;
import lastinch.solver.physics.Losses;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Speed through a chain of losses. */
public final class LossChainStudy implements Study {
  private final double exit;

  /** The study as it should be. */
  public LossChainStudy() {
    this(Losses.EXIT);
  }

  private LossChainStudy(double exit) {
    this.exit = exit;
  }

  @Override
  public String title() {
    return "Speed through a chain of losses under a head";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Losses as given by Crane TP-410, Idelchik and White (from memory); speed by the energy equation";
  }

  @Override
  public String setting() {
    return "8 mm pipe, 0.30 m, friction factor 0.025, square-edged inlet, mitre bend, exit; head 0.25 m. Then 1.1 on a wide and 2.35 on a half as wide section";
  }

  @Override
  public String note() {
    return "Algebra: 1e-6. Without its exit the chain is 18 % fast.";
  }

  @Override
  public void compare(Rows rows) {
    double friction = 0.025 * 0.30 / 0.008;
    double k = Losses.SHARP_INLET + Losses.MITRE_BEND + exit + friction;
    double v = Losses.steadySpeed(0.25, k);
    rows.share("speed", "m/s", 1.17752811, v, 1e-6);
    rows.share("flow", "mL/s", 59.1890183, 1e6 * v * Math.PI * 0.004 * 0.004, 1e-6);
    double two = Losses.referredTo(1.1, 2.0, 1.0) + 2.35;
    rows.share("two sections, narrow", "m/s", 1.36695700, Losses.steadySpeed(0.25, two), 1e-6);
    rows.within("sudden widening to twice", "", 0.25, Losses.suddenExpansion(1.0, 2.0), 1e-12);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new LossChainStudy(0.0));
  }
}
