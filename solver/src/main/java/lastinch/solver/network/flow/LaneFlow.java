package lastinch.solver.network.flow;

import lastinch.solver.charge.MeltProperties;

/**
 * Parts the flow of a channel between its middle and its rims, and carries over between them what
 * one has too much of: where rims hold back, the middle runs ahead and lays hot metal into the rims
 * at the front.
 */
final class LaneFlow {
  private final MeltProperties melt;
  private final double[] ease;

  LaneFlow(MeltProperties melt, int longest) {
    this.melt = melt;
    ease = new double[longest + 1];
  }

  /** Enthalpy of what moves in metal of an enthalpy [J/kg] and a share of skin [-]. */
  double mobile(double h, double skinShare) {
    if (skinShare <= 0.0) {
      return h;
    }
    double solid = melt.table.solid(h);
    double carried =
        skinShare < 1.0 ? Math.max(0.0, (solid - skinShare) / (1.0 - skinShare)) : solid;
    return h + melt.table.latentHeat() * (solid - carried);
  }

  /** Parts what crosses each face of a channel in a step between its lanes. */
  void part(Channel c) {
    if (!c.hasRims()) {
      System.arraycopy(c.crossing, 0, c.middle.crossing, 0, c.crossing.length);
      return;
    }
    int n = c.shape.cells;
    Lane rims = c.lanes[Lane.RIMS];
    double tipA = c.volumeA;
    double tipB = c.shape.totalVolume() - c.volumeB;
    easeFrom(c, 0);
    for (int f = 0; f <= n; f++) {
      if (c.crossing[f] > 0.0) {
        boolean fresh = !c.full && f > 0 && tipA <= c.shape.volumeTo[f];
        int up = Math.max(0, f - 1);
        partAt(c, rims, f, fresh ? rims.share[up] : c.rimFlow(up, ease[f]));
      }
    }
    easeFrom(c, n);
    for (int f = n; f >= 0; f--) {
      if (c.crossing[f] <= 0.0) {
        boolean fresh = !c.full && f < n && tipB >= c.shape.volumeTo[f];
        int up = Math.min(n - 1, f);
        partAt(c, rims, f, fresh ? rims.share[up] : c.rimFlow(up, ease[f]));
      }
    }
  }

  private static void partAt(Channel c, Lane rims, int face, double share) {
    double part = share * c.crossing[face];
    rims.crossing[face] = part;
    c.middle.crossing[face] = c.crossing[face] - part;
  }

  /**
   * By face: what cold has left of the flow of rims on the way there from an end [-]. Rims that
   * have stiffened somewhere hold back all that lies behind them.
   */
  private void easeFrom(Channel c, int end) {
    int n = c.shape.cells;
    double least = 1.0;
    for (int k = 0; k <= n; k++) {
      int face = end == 0 ? k : n - k;
      int next = end == 0 ? face : face - 1;
      if (k < n && c.wet[next] > 0.0) {
        least = Math.min(least, c.rimEase[next]);
      }
      ease[face] = least;
    }
  }

  /**
   * Carries over between the lanes of a cell what one holds too much of after a step.
   *
   * @param before metal in the cell before the step [m3]
   */
  void level(Channel c, int i, double before) {
    Lane middle = c.middle;
    double over =
        middle.share[i] * (before - c.wet[i]) + middle.crossing[i] - middle.crossing[i + 1];
    if (Math.abs(over) < Double.MIN_NORMAL) {
      return;
    }
    Lane from = over > 0.0 ? middle : c.lanes[Lane.RIMS];
    Lane to = over > 0.0 ? c.lanes[Lane.RIMS] : middle;
    double moved = Math.abs(over);
    double rest = from.share[i] * c.wet[i];
    double heat = moving(from, i, moved, rest);
    from.heat[i] -= heat;
    to.heat[i] += heat;
    from.skin[i] = Math.min(from.skin[i], melt.density * rest);
  }

  /** Heat content of what leaves a lane [J]: what moves first, then its skin. */
  private double moving(Lane from, int i, double moved, double rest) {
    double density = melt.density;
    if (rest <= 0.0) {
      return from.heat[i];
    }
    double whole = moved + rest;
    double h = from.heat[i] / (density * whole);
    double skin = Math.min(from.skin[i] / density, whole);
    double free = whole - skin;
    double mobile = mobile(h, skin / whole);
    double first = Math.min(moved, free);
    double last = moved - first;
    double heat = first * mobile;
    if (last > 0.0) {
      heat += last * (whole * h - free * mobile) / skin;
    }
    return density * heat;
  }
}
