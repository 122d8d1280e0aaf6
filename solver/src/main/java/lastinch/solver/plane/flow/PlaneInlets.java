package lastinch.solver.plane.flow;

import java.util.List;

/**
 * Places where metal enters the plane. Each has a pressure (or a speed) behind it, a short column
 * of metal with inertia, and a loss. Metal goes back through a gate only from a cell that is full.
 */
public final class PlaneInlets {
  /**
   * Length of the column behind a gate that carries its inertia [m], at least; chosen, no source.
   */
  static final double COLUMN = 0.02;

  /** Most of a cell's metal that goes back through a gate in a step [-]; chosen. */
  private static final double MOST_BACK = 0.2;

  /** One gate. */
  public static final class Gate {
    private final int[] cells;
    private final double[] area;
    private final double directionX;
    private final double directionY;
    private final double loss;

    /**
     * Describes a gate.
     *
     * @param cells it opens into
     * @param area of it that lies in each cell [m2]
     * @param directionX of the metal coming in, a unit vector or nothing for metal from above [-]
     * @param directionY likewise
     * @param loss coefficient on its speed, its exit not counted [-]
     */
    public Gate(int[] cells, double[] area, double directionX, double directionY, double loss) {
      this.cells = cells.clone();
      this.area = area.clone();
      this.directionX = directionX;
      this.directionY = directionY;
      this.loss = loss;
    }

    /** Whether metal comes in along the plane. */
    boolean isMouth() {
      return directionX != 0.0 || directionY != 0.0;
    }

    double totalArea() {
      double sum = 0.0;
      for (double a : area) {
        sum += a;
      }
      return sum;
    }
  }

  final List<Gate> gates;
  public final int[] cells;

  /** By gate: pressure behind it, above open air [Pa], and whether its speed is held instead. */
  public final double[] pressure;

  public final boolean[] held;
  public final double[] heldSpeed;

  /** By gate: length of the column behind it that carries its inertia [m], and its loss [-]. */
  final double[] column;

  final double[] loss;

  /**
   * By gate cell, in the order of {@code cells}: which gate, area, speed, what a step makes of it.
   */
  final int[] gateOf;

  final double[] area;
  public final double[] speed;
  final double[] known;
  final double[] gain;

  private final double[] passed;

  public PlaneInlets(List<Gate> gates) {
    this.gates = List.copyOf(gates);
    int n = 0;
    for (Gate g : gates) {
      n += g.cells.length;
    }
    cells = new int[n];
    area = new double[n];
    gateOf = new int[n];
    speed = new double[n];
    known = new double[n];
    gain = new double[n];
    pressure = new double[gates.size()];
    held = new boolean[gates.size()];
    heldSpeed = new double[gates.size()];
    column = new double[gates.size()];
    loss = new double[gates.size()];
    passed = new double[gates.size()];
    int k = 0;
    for (int g = 0; g < gates.size(); g++) {
      column[g] = COLUMN;
      loss[g] = gates.get(g).loss;
      for (int i = 0; i < gates.get(g).cells.length; i++) {
        cells[k] = gates.get(g).cells[i];
        area[k] = gates.get(g).area[i];
        gateOf[k] = g;
        k++;
      }
    }
  }

  /**
   * Speed of each gate cell as a straight function of the pressure in it, for a step [s]. Metal of
   * a mouth has half a cell [m] to go before it is where that pressure is.
   */
  void prepare(double density, double dx, double dt) {
    for (int k = 0; k < cells.length; k++) {
      int g = gateOf[k];
      if (held[g]) {
        known[k] = heldSpeed[g];
        gain[k] = 0.0;
        continue;
      }
      double way = column[g] + (gates.get(g).isMouth() ? 0.5 * dx : 0.0);
      double slow = 1.0 / (1.0 + dt * (1.0 + loss[g]) * Math.abs(speed[k]) / (2.0 * way));
      known[k] = slow * (speed[k] + dt * pressure[g] / (density * way));
      gain[k] = slow * dt / (density * way);
    }
  }

  /** Takes the pressures found. */
  void finish(FlowState s, double[] atCell) {
    for (int k = 0; k < cells.length; k++) {
      double w = known[k] - gain[k] * atCell[cells[k]];
      speed[k] = s.active[cells[k]] ? w : Math.max(0.0, w);
    }
  }

  /** What comes in during a step [s], into the cells of the state. */
  void enter(FlowState s, double dt) {
    for (int c : cells) {
      s.gateFlux[c] = 0.0;
      s.gateU[c] = 0.0;
      s.gateV[c] = 0.0;
    }
    for (int k = 0; k < cells.length; k++) {
      Gate gate = gates.get(gateOf[k]);
      int c = cells[k];
      double volume = Math.max(area[k] * speed[k] * dt, -MOST_BACK * s.liquid[c]);
      double sum = s.gateFlux[c] + volume;
      if (volume > 0.0) {
        double share = volume / sum;
        s.gateU[c] += share * (speed[k] * gate.directionX - s.gateU[c]);
        s.gateV[c] += share * (speed[k] * gate.directionY - s.gateV[c]);
      } else if (volume < 0.0) {
        s.gateU[c] = 0.5 * (s.u[c] + s.u[c + 1]);
        s.gateV[c] = 0.5 * (s.v[c] + s.v[c + s.grid.stride]);
      }
      s.gateFlux[c] = sum;
      passed[gateOf[k]] += volume;
    }
  }

  /** Volume that came through a gate so far [m3]. */
  public double passed(int gate) {
    return passed[gate];
  }

  /** Flow through a gate now [m3/s]. */
  public double flow(int gate) {
    double sum = 0.0;
    for (int k = 0; k < cells.length; k++) {
      sum += gateOf[k] == gate ? area[k] * speed[k] : 0.0;
    }
    return sum;
  }

  /** Flow into a cell now [m3/s]. */
  double flowInto(int cell) {
    double sum = 0.0;
    for (int k = 0; k < cells.length; k++) {
      sum += cells[k] == cell ? area[k] * speed[k] : 0.0;
    }
    return sum;
  }
}
