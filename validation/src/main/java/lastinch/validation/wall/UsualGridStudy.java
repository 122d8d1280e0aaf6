package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;
import org.apache.commons.math3.special.Erf;

/** The grid and steps of an ordinary dry pour behind films of every strength. */
public final class UsualGridStudy implements Study {
  private static final double START = 500.0;
  private static final double HOT = 950.0;
  private static final double EFFUSIVITY = Math.sqrt(Bench.K * Bench.VOLUME_HEAT);
  private final double first;

  /** The study as it should be. */
  public UsualGridStudy() {
    this(WallGrid.FIRST);
  }

  private UsualGridStudy(double first) {
    this.first = first;
  }

  @Override
  public String title() {
    return "The usual grid of a dry pour: heat taken in the first moments";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, sec. 2.7: heat behind a"
        + " film, Q = (b^2/h) dT (erfcx(h sqrt(t)/b) - 1 + 2 h sqrt(t/pi)/b)";
  }

  @Override
  public String setting() {
    return Bench.MOULD
        + ", 500 degC; 950 degC behind a film; first node 0.05 mm, growth 1.35, ten"
        + " steps of 2 ms, then 2 ms to 10 ms";
  }

  @Override
  public String note() {
    return "1 % up to 1000 W/(m2 K), 2 % above: contact itself is known to a factor of two. A first"
        + " node of 1 mm fails.";
  }

  @Override
  public void compare(Rows rows) {
    for (double h : new double[] {300.0, 1000.0, 1500.0, 2500.0}) {
      WallGrid grid =
          WallGrid.graded(first, WallGrid.RATIO, 4.0 * Math.sqrt(Bench.DIFFUSIVITY * 10.0));
      WallColumns column = Bench.column(grid, Bench.mould(1.0), START, 0.0);
      double heat = 0.0;
      double t = 0.0;
      double next = 0.05;
      for (int i = 0; t < 10.0; i++) {
        double dt = Bench.step(i, t < 0.1 ? 2e-3 : 1e-2);
        heat += column.exchangeAt(0, dt, h, HOT + Bench.ICE);
        t += dt;
        if (t > next - 1e-9) {
          rows.share(
              String.format(java.util.Locale.ROOT, "h = %.0f, heat after %.2f s", h, t),
              "J/m2",
              (HOT - START) * exact(h, t),
              heat,
              h > 1000.0 ? 0.02 : 0.01);
          next = next < 0.1 ? 1.0 : next < 5.0 ? 10.0 : Double.POSITIVE_INFINITY;
        }
      }
    }
  }

  private static double exact(double h, double t) {
    double y = h / EFFUSIVITY * Math.sqrt(t);
    double erfcx =
        y < 20.0
            ? Math.exp(y * y) * Erf.erfc(y)
            : (1.0 - 1.0 / (2.0 * y * y)) / (y * Math.sqrt(Math.PI));
    return EFFUSIVITY * EFFUSIVITY / h * (erfcx - 1.0 + 2.0 * y / Math.sqrt(Math.PI));
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new UsualGridStudy(1e-3));
  }
}
