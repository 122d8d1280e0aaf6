package lastinch.validation.flow;

import java.util.Optional;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Gravity;
import lastinch.solver.physics.SplashLimit;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Head to enter a thin slot, and the speed above which metal splashes. */
public final class CapillaryStudy implements Study {
  private final double film;

  /** The study as it should be. */
  public CapillaryStudy() {
    this(1.0);
  }

  private CapillaryStudy(double film) {
    this.film = film;
  }

  @Override
  public String title() {
    return "Head to enter a thin slot; speed above which metal splashes";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Laplace pressure 2 gamma/t at 180 degrees; drop height 2 sqrt(gamma/(rho g)) (Campbell, Castings, from memory)";
  }

  @Override
  public String setting() {
    return "Round figures: bronze 1.20 N/m and 8000 kg/m3, sterling 0.92 and 9300, clean aluminium 0.87 and 2380 (splash: 0.90 and 2400)";
  }

  @Override
  public String note() {
    return "Algebra: 1e-6. A film factor of 2 doubles every head.";
  }

  @Override
  public void compare(Rows rows) {
    double[][] metal = {{1.20, 8000.0}, {0.92, 9300.0}, {0.87, 2380.0}};
    String[] name = {"bronze", "sterling", "aluminium"};
    double[][] head = {
      {61.1620795, 30.5810398, 15.2905199},
      {40.3362818, 20.1681409, 10.0840705},
      {149.050446, 74.5252229, 37.2626115}
    };
    double[] slot = {0.5e-3, 1e-3, 2e-3};
    for (int i = 0; i < metal.length; i++) {
      for (int j = 0; j < slot.length; j++) {
        double push = Capillary.push(metal[i][0], Math.PI, film, slot[j], Double.POSITIVE_INFINITY);
        rows.share(
            name[i] + " into " + 1e3 * slot[j] + " mm",
            "mm",
            head[i][j],
            1e3 * push / (metal[i][1] * Gravity.G),
            1e-6);
      }
    }
    double strength = Capillary.strength(1.2, Math.toRadians(130.0), film);
    double thinnest = 1e3 * Capillary.thinnestSlot(strength, 8000.0 * Gravity.G * 0.1);
    rows.share("thinnest slot for 100 mm, 130 degrees", "mm", 0.196571134, thinnest, 1e-6);
    rows.share("bronze splashes above", "m/s", 0.391714874, SplashLimit.speed(1.2, 8000.0), 1e-6);
    rows.share("sterling", "m/s", 0.352998994, SplashLimit.speed(0.92, 9300.0), 1e-6);
    rows.share("aluminium", "m/s", 0.492555377, SplashLimit.speed(0.90, 2400.0), 1e-6);
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new CapillaryStudy(2.0));
  }
}
