package lastinch.solver.wall;

import java.util.Arrays;
import lastinch.solver.material.MetalTable;

/**
 * Metal nodes through the half gap of thick places, per area of wall.
 *
 * <p>Node state is specific enthalpy, node 0 at the wall. The implicit step is solved by sweeps:
 * elimination from the middle to the wall on the straight table pieces of the last iterate, then
 * outwards again with every node settled exactly on its own piece. A sweep that leaves all nodes on
 * their lines is exact. The enthalpies are moved by flows, so heat is kept to rounding.
 */
final class MetalSide {
  /**
   * Most sweeps of a step; steps that need more are counted [-]; numerical: with half as many no
   * stop moves.
   */
  private static final int MOST_SWEEPS = 60;

  /**
   * Largest distance from the assumed straight line that counts as on it [K]; numerical, over
   * rounding.
   */
  private static final double ON_LINE = 1e-8;

  private final MetalTable metal;
  private final WallGrid grid;
  private final int nodes;
  private final double[] enthalpy;
  private final double[] halfGap;

  private final double[] iterate;
  private final double[] conductance;
  private final double[] stiff;
  private final double[] known;
  private final double[] temperature;
  private int unsettled;

  MetalSide(int columns, WallGrid grid, MetalTable metal) {
    this.metal = metal;
    this.grid = grid;
    this.nodes = grid.metalNodes();
    enthalpy = new double[columns * nodes];
    halfGap = new double[columns];
    iterate = new double[nodes];
    conductance = new double[nodes];
    stiff = new double[nodes];
    known = new double[nodes];
    temperature = new double[nodes];
  }

  MetalSide copy() {
    MetalSide same = new MetalSide(halfGap.length, grid, metal);
    System.arraycopy(enthalpy, 0, same.enthalpy, 0, enthalpy.length);
    System.arraycopy(halfGap, 0, same.halfGap, 0, halfGap.length);
    same.unsettled = unsettled;
    return same;
  }

  void open(int column, double gap, double h) {
    halfGap[column] = gap;
    Arrays.fill(enthalpy, column * nodes, (column + 1) * nodes, h);
  }

  double mean(int column) {
    double sum = 0.0;
    for (int j = 0; j < nodes; j++) {
      sum += grid.metalShare(j) * enthalpy[column * nodes + j];
    }
    return sum;
  }

  void shift(int column, double by) {
    for (int j = column * nodes; j < (column + 1) * nodes; j++) {
      enthalpy[j] += by;
    }
  }

  double enthalpy(int column, int node) {
    return enthalpy[column * nodes + node];
  }

  /** Reads the state before the step; returns the resistance wall to first node [m2 K/W]. */
  double begin(int column) {
    int base = column * nodes;
    double gap = halfGap[column];
    double resistance = 0.0;
    double first = 0.0;
    for (int j = 0; j < nodes; j++) {
      iterate[j] = enthalpy[base + j];
      double half = 0.5 * gap * grid.metalShare(j) / metal.conductivity(iterate[j]);
      if (j == 0) {
        first = half;
      } else {
        conductance[j - 1] = 1.0 / (resistance + half);
      }
      resistance = half;
    }
    return first;
  }

  /**
   * Solves all nodes against a wall that takes {@code offset + slope x temperature of node 0}.
   *
   * @return heat flow into the wall [W/m2]
   */
  double solve(int column, double dt, double massPerArea, double offset, double slope) {
    int base = column * nodes;
    boolean settled = false;
    int sweeps = 0;
    while (!settled && sweeps < MOST_SWEEPS) {
      eliminate(base, dt, massPerArea);
      settled = settle(base, dt, massPerArea, offset, slope);
      sweeps++;
    }
    if (!settled) {
      unsettled++;
    }
    return offset + slope * temperature[0];
  }

  private void eliminate(int base, double dt, double massPerArea) {
    double s = 0.0;
    double r = 0.0;
    for (int j = nodes - 1; j > 0; j--) {
      stiff[j] = s;
      known[j] = r;
      double mass = massPerArea * grid.metalShare(j);
      double g = conductance[j - 1];
      int piece = metal.piece(iterate[j]);
      double b = metal.slope(piece);
      double a = metal.intercept(piece);
      double inverse = 1.0 / (mass + dt * (s + g) * b);
      double p = (mass * enthalpy[base + j] + dt * (r - (s + g) * a)) * inverse;
      s = g * (mass + dt * s * b) * inverse;
      r = g * (a + b * p);
    }
    stiff[0] = s;
    known[0] = r;
  }

  private boolean settle(int base, double dt, double massPerArea, double offset, double slope) {
    boolean onLine = true;
    double link = slope;
    double taken = offset;
    for (int j = 0; j < nodes; j++) {
      int piece = metal.piece(iterate[j]);
      double mass = massPerArea * grid.metalShare(j);
      double h =
          metal.settle(enthalpy[base + j], mass, dt * (taken - known[j]), dt * (link + stiff[j]));
      double t = metal.temperature(h);
      double line = metal.intercept(piece) + metal.slope(piece) * h;
      onLine &= j == 0 || Math.abs(line - t) <= ON_LINE;
      iterate[j] = h;
      temperature[j] = t;
      link = conductance[j];
      taken = -link * t;
    }
    return onLine;
  }

  /** Ends the step: moves the enthalpies by the flows between the solved temperatures. */
  void accept(int column, double dt, double massPerArea, double flow) {
    int base = column * nodes;
    double out = flow;
    for (int j = 0; j < nodes; j++) {
      double in = j == nodes - 1 ? 0.0 : conductance[j] * (temperature[j + 1] - temperature[j]);
      enthalpy[base + j] += dt * (in - out) / (massPerArea * grid.metalShare(j));
      out = in;
    }
  }

  int unsettled() {
    return unsettled;
  }
}
