package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** A block of investment cooling in air from its round outside. */
public final class FlaskRodStudy implements Study {
  private static final double RADIUS = 0.05;
  private final boolean round;

  /** The study as it should be. */
  public FlaskRodStudy() {
    this(true);
  }

  private FlaskRodStudy(boolean round) {
    this.round = round;
  }

  @Override
  public String title() {
    return "Hot flask in air: the core stays hot while the outside cools";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Carslaw and Jaeger, 2nd ed., ch. 7: infinite cylinder with a film";
  }

  @Override
  public String setting() {
    return "Radius 50 mm, 0.6 W/(m K), 1200 kg/m3, 1000 J/(kg K), film 60 W/(m2 K); 700 into 20"
        + " degC; steps of 0.5 s";
  }

  @Override
  public String note() {
    return "2 K. A flat slab of the same depth is 50 K and more off.";
  }

  @Override
  public void compare(Rows rows) {
    double[] seconds = {300.0, 600.0, 1200.0, 1800.0};
    double[] centre = {692.745007, 618.057995, 412.510103, 265.514369};
    double[] outside = {245.720321, 176.103082, 111.485771, 76.5017663};
    WallColumns columns =
        new WallColumns(
            1,
            WallGrid.graded(0.2e-3, 1.08, RADIUS),
            MouldTable.constant(0.6, 1.2e6, 200.0, 1500.0),
            Bench.warmBody(450.0, 60.0));
    columns.open(0, 700.0 + Bench.ICE, round ? -1.0 / RADIUS : 0.0, RADIUS);
    StudyCurve curve = rows.curve("Core of the flask", "seconds", "degC");
    double t = 0.0;
    for (int i = 0; i < seconds.length; i++) {
      while (t < seconds[i] - 0.25) {
        columns.exchangeAt(0, 0.5, 60.0, 20.0 + Bench.ICE);
        t += 0.5;
      }
      double axis = columns.nodeTemperature(0, columns.nodes(0) - 1) - Bench.ICE;
      double face = columns.faceTemperature(0) - Bench.ICE;
      curve.point(seconds[i], centre[i], axis);
      rows.within("core after " + seconds[i] + " s", "degC", centre[i], axis, 2.0);
      rows.within("outside after " + seconds[i] + " s", "degC", outside[i], face, 2.0);
    }
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FlaskRodStudy(false));
  }
}
