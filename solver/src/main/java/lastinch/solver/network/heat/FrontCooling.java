package lastinch.solver.network.heat;

import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.record.FrontRecorder;

/** How the mark of leading metal cools along a wall of even heat, for what is worked out apart. */
final class FrontCooling {
  /**
   * Parts of a time in which the loss is taken by midpoints [-]; numerical: with eight ten plans
   * stay as they are.
   */
  private static final int PARTS = 4;

  private FrontCooling() {}

  /**
   * Enthalpy after a time [J/kg].
   *
   * @param start [J/kg]
   * @param seconds [s]
   * @param pull heat passed per degree and mass [W/(kg K)]
   * @param wall temperature of the mould [K]
   * @param share of new solid that rides along [-]
   */
  static double after(
      MeltProperties melt, double start, double seconds, double pull, double wall, double share) {
    double h = start;
    double dt = seconds / PARTS;
    for (int k = 0; k < PARTS; k++) {
      double half = less(h, 0.5 * dt * pull * (melt.table.temperature(h) - wall), share);
      h = less(h, dt * pull * (melt.table.temperature(half) - wall), share);
    }
    return h;
  }

  /** Less a loss: below the start of freezing only what rides along stays in the mark. */
  static double less(double h, double loss, double share) {
    if (h - loss >= 0.0) {
      return h - loss;
    }
    double above = Math.max(0.0, h);
    return h - above - (loss - above) * share;
  }

  /** Heat passed per degree and mass of leading metal at the middle of a cell [W/(kg K)]. */
  static double pull(MeltProperties melt, Channel c, int i) {
    double gap = c.middle.gap[i];
    double volume = c.middle.share[i] * c.shape.volume[i];
    return melt.tipConductance(gap) * c.middle.wall[i] / (melt.density * volume);
  }

  /**
   * Share of the loss that heat from behind did not make up for on the way from one cell to another
   * [-], 0 to 1; 1 where nothing came from behind.
   */
  static double kept(FrontRecorder noted, Channel c, int from, int to) {
    MeltProperties melt = noted.state.melt;
    int step = to >= from ? 1 : -1;
    double alone = 0.0;
    for (int i = from; i != to; i += step) {
      double seconds =
          noted.arrivalTime[c.firstCell + i + step] - noted.arrivalTime[c.firstCell + i];
      double h = noted.arrivalEnthalpy[c.firstCell + i];
      int next = i + step;
      double wall = c.shape.mouldTemperature[next];
      alone += h - after(melt, h, Math.max(0.0, seconds), pull(melt, c, next), wall, c.mushShare);
    }
    double lost =
        noted.arrivalEnthalpy[c.firstCell + from] - noted.arrivalEnthalpy[c.firstCell + to];
    return alone > 0.0 ? Math.max(0.0, Math.min(1.0, lost / alone)) : 1.0;
  }
}
