package lastinch.validation.wall;

import java.util.Optional;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** Heat into deep mould from a face of fixed temperature and behind a film. */
public final class HalfSpaceStudy implements Study {
  private static final double START = 500.0;
  private static final double HOT = 950.0;
  private static final double SHARE = 0.005;
  private static final int STEPS = 400;
  private final double factor;

  /** The study as it should be. */
  public HalfSpaceStudy() {
    this(1.0);
  }

  private HalfSpaceStudy(double factor) {
    this.factor = factor;
  }

  @Override
  public String title() {
    return "Heat into deep mould: fixed face, and behind a film of 1000 W/(m2 K)";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, ch. 2 and sec. 2.7;"
        + " figures computed from the formulas";
  }

  @Override
  public String setting() {
    return Bench.MOULD + ", 500 degC; face or hot side 950 degC; 400 even steps on a fine grid";
  }

  @Override
  public String note() {
    return "Half a percent: the aim of the column is 1 %; half the conductivity is 30 % off.";
  }

  @Override
  public void compare(Rows rows) {
    double[] seconds = {1.0, 10.0, 60.0};
    double[] heat = {481713.511, 1523311.88, 3731336.81};
    for (int i = 0; i < seconds.length; i++) {
      double got = heat(column(seconds[i]), Bench.FOREVER, seconds[i]);
      rows.share("fixed face, heat after " + seconds[i] + " s", "J/m2", heat[i], got, SHARE);
    }
    double[] time = {0.1, 1.0, 10.0, 60.0};
    double[] film = {35793.6074, 244077.456, 1184120.31, 3354116.51};
    double[] face = {629.486200, 764.040062, 876.879518, 919.133675};
    StudyCurve curve = rows.curve("Heat taken behind the film", "seconds", "MJ/m2");
    for (int i = 0; i < time.length; i++) {
      WallColumns column = column(time[i]);
      double got = heat(column, 1000.0, time[i]);
      curve.point(time[i], 1e-6 * film[i], 1e-6 * got);
      String after = " after " + time[i] + " s";
      rows.share("film, heat" + after, "J/m2", film[i], got, SHARE);
      double t = column.faceTemperature(0) - Bench.ICE;
      rows.within("film, face" + after, "degC", face[i], t, SHARE * (HOT - START));
    }
  }

  private WallColumns column(double seconds) {
    WallGrid grid = Bench.fine(seconds);
    return Bench.column(grid, Bench.mould(factor), START, 0.0);
  }

  private static double heat(WallColumns column, double h, double seconds) {
    double sum = 0.0;
    for (int i = 0; i < STEPS; i++) {
      sum += column.exchangeAt(0, seconds / STEPS, h, HOT + Bench.ICE);
    }
    return sum;
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new HalfSpaceStudy(0.5));
  }
}
