package lastinch.validation.flow;

import java.util.Optional;
import lastinch.solver.physics.Friction;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Friction of slots, rectangular channels and pipes. */
public final class FrictionStudy implements Study {
  private final double slot;

  /** The study as it should be. */
  public FrictionStudy() {
    this(Friction.SLOT);
  }

  private FrictionStudy(double slot) {
    this.slot = slot;
  }

  @Override
  public String title() {
    return "Friction of slots, channels and pipes";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Plane Poiseuille flow; Shah and London 1978 (rectangles); Blasius; Colebrook 1939 (from memory), solved to nine digits";
  }

  @Override
  public String setting() {
    return "Slot 1 mm, 3 mPa s, 8000 kg/m3, 10 kPa/m; turbulent pipes at Reynolds numbers of 1e4 to 1e6";
  }

  @Override
  public String note() {
    return "1e-6; the rectangle's polynomial is good to 0.06 %. A pipe's law in the slot is 50 % off.";
  }

  @Override
  public void compare(Rows rows) {
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.277777778, 2e-3, slot);
    rows.share("mean speed in the slot", "m/s", 0.277777778, 1e4 / over, 1e-6);
    double[] aspect = {1.0, 0.5, 0.25, 0.1};
    double[] fanning = {14.2270769, 15.5480561, 18.2327768, 21.1688768};
    for (int i = 0; i < aspect.length; i++) {
      double got = Friction.laminarProductRectangle(aspect[i]) / 4.0;
      rows.share("rectangle of aspect " + aspect[i] + ", f Re", "", fanning[i], got, 7e-4);
    }
    double smooth = Friction.factor(1e4, Friction.ROUND);
    rows.share("smooth pipe at 1e4", "", 0.0316, smooth, 1e-6);
    double[] reynolds = {1e4, 1e5, 1e6};
    double[] rough = {0.01, 0.001, 0.05};
    double[] factor = {0.0431265847, 0.0221745359, 0.0715737539};
    for (int i = 0; i < reynolds.length; i++) {
      double got = Friction.colebrook(reynolds[i], rough[i]);
      String what = "rough pipe " + rough[i] + " at " + reynolds[i];
      rows.share(what, "", factor[i], got, 1e-6);
    }
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FrictionStudy(Friction.ROUND));
  }
}
