package lastinch.solver.shop;

import lastinch.solver.casting.Flask;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Curve;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.material.MouldTable;
import lastinch.solver.wall.WallColumns;
import lastinch.solver.wall.WallGrid;

/**
 * Heat in a flask that was taken hot from the kiln: radial conduction in the investment, the steel
 * can as a body of one temperature in perfect contact with it, radiation and still air outside.
 * Ends of the flask are left out; a lump would be wrong, for the surface cools long before the
 * core.
 *
 * <p>The column starts at the can and ends on the axis; its area shrinks with depth.
 */
public final class FlaskCooling {
  /** Investment node at the can [m] and growth [-]. */
  private static final double FIRST = 0.2e-3;

  private static final double RATIO = 1.08;

  /** Longest and most common time step [s]; a short cooling still gets many. */
  private static final double STEP = 0.5;

  private static final int FEWEST_STEPS = 100;

  private FlaskCooling() {}

  /**
   * Temperature in the investment after standing in still air.
   *
   * @param flask the can
   * @param medium the investment
   * @param initialTemperature of flask and investment in the kiln [K]
   * @param seconds out of the kiln [s]
   * @param airTemperature of air and walls [K]
   * @return temperature [K] against depth under the inside of the can [m]
   */
  public static Curve profile(
      Flask flask,
      MouldMedium medium,
      double initialTemperature,
      double seconds,
      double airTemperature) {
    MouldTable table =
        MouldTable.of(
            medium,
            Math.min(initialTemperature, airTemperature) - 10.0,
            Math.max(initialTemperature, airTemperature) + 10.0);
    return profile(
        flask,
        table,
        initialTemperature,
        seconds,
        airTemperature,
        AirFilm.still(flask.tall(), flask.emissivity()));
  }

  static Curve profile(
      Flask flask,
      MouldTable investment,
      double initialTemperature,
      double seconds,
      double airTemperature,
      AirFilm film) {
    Checks.within("seconds", seconds, 0.0, 1e6, "s");
    Checks.within("airTemperature", airTemperature, 200.0, 1000.0, "K");
    double radius = 0.5 * flask.inside();
    WallGrid grid = WallGrid.graded(FIRST, RATIO, radius);
    MetalTable steel = can(flask.steelSpecificHeat());
    WallColumns columns = new WallColumns(1, grid, investment, steel);
    columns.open(0, initialTemperature, -1.0 / radius, radius);

    double grown = flask.wall() / radius;
    double canPerArea = flask.steelDensity() * flask.wall() * (1.0 + 0.5 * grown);
    double h = steel.enthalpy(initialTemperature);
    int steps = (int) Math.max(FEWEST_STEPS, Math.ceil(seconds / STEP));
    double dt = seconds / steps;
    for (int i = 0; i < steps && dt > 0.0; i++) {
      double air = film.coefficient(steel.temperature(h), airTemperature) * (1.0 + grown);
      h =
          columns.exchangeInAir(
              0, dt, Double.POSITIVE_INFINITY, canPerArea, h, air, airTemperature);
    }
    return read(columns, grid);
  }

  /** Steel without any change of state, of one temperature: its conductivity is never asked for. */
  private static MetalTable can(double specificHeat) {
    double cold = -specificHeat * 200.0;
    double hot = specificHeat * 2700.0;
    return MetalTable.byPoints(
        new double[] {cold, hot},
        new double[] {100.0, 3000.0},
        new double[] {0.0, 0.0},
        new double[] {1.0, 1.0},
        hot);
  }

  private static Curve read(WallColumns columns, WallGrid grid) {
    int n = columns.nodes(0);
    double[] depth = new double[n + 1];
    double[] temperature = new double[n + 1];
    temperature[0] = columns.faceTemperature(0);
    for (int k = 0; k < n; k++) {
      depth[k + 1] = grid.depth(k);
      temperature[k + 1] = columns.nodeTemperature(0, k);
    }
    return Curve.of(depth, temperature);
  }
}
