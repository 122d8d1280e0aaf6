package lastinch.solver.wall;

import lastinch.solver.material.MouldTable;

/**
 * Mould nodes of all columns and their implicit step, per area of face.
 *
 * <p>Node state is enthalpy per volume. A step eliminates from the deep end to the face
 * (tridiagonal without pivoting; the matrix is an M-matrix, and the elimination is written without
 * differences of like numbers), which leaves {@code heat flow = offset + slope x metal
 * temperature}. The enthalpies are then moved by the flows between the new temperatures, so heat is
 * kept to rounding whatever the elimination rounds. Conductivity is that of the step's start; heat
 * capacity is the tangent in the first pass and the secant over the first pass's change in the
 * second.
 */
final class MouldSide {
  /** Stefan-Boltzmann constant, CODATA 2018 [W/(m2 K4)]. */
  private static final double RADIATION = 5.670374419e-8;

  /** Smallest change for which a secant is formed; below it the tangent serves [K]. */
  private static final double LEAST_CHANGE = 1e-3;

  /** Change of temperature from which a node counts as reached by heat [K]. */
  private static final double REACHED = 0.02;

  /** Diffusion lengths of a step beyond the reached nodes that take part in it [-]. */
  private static final double REACH = 6.0;

  /** Change of the first node in a step below which the tangent capacities will do [K]. */
  private static final double SMALL_CHANGE = 2.0;

  private final MouldTable mould;
  private final WallGrid grid;
  private final OuterAir air;
  private final int nodes;

  private final double[] heat;
  private final double[] volume;
  private final double[] perVolume;
  private final double[] inner;
  private final double[] outer;
  private final int[] count;

  /** By column: nodes in the present step; nodes whose heat has changed since the start. */
  private final int[] active;

  private final int[] changedTo;
  private final double reach;
  private final double[] depths;
  private final double[] outerArea;
  private final double[] initialHeat;
  private final double[] initialTemperature;
  private final double[] lost;

  private final double[] before;
  private final double[] conductivity;
  private final double[] capacity;
  private final double[] conductance;
  private final double[] known;
  private final double[] gain;
  private final double[] trial;

  private double stiff;
  private double right;
  private double surface;
  private double outwards;

  MouldSide(int columns, WallGrid grid, MouldTable mould, OuterAir air) {
    this.mould = mould;
    this.grid = grid;
    this.air = air;
    this.nodes = grid.nodes();
    int n = columns * nodes;
    heat = new double[n];
    volume = new double[n];
    perVolume = new double[n];
    active = new int[columns];
    changedTo = new int[columns];
    reach = REACH * Math.sqrt(mould.fastest());
    depths = new double[nodes];
    for (int k = 0; k < nodes; k++) {
      depths[k] = grid.depth(k);
    }
    inner = new double[n];
    outer = new double[n];
    count = new int[columns];
    outerArea = new double[columns];
    initialHeat = new double[columns];
    initialTemperature = new double[columns];
    lost = new double[columns];
    before = new double[nodes];
    conductivity = new double[nodes];
    capacity = new double[nodes];
    conductance = new double[nodes];
    known = new double[nodes];
    gain = new double[nodes];
    trial = new double[nodes];
  }

  void open(int column, double temperature, double curvature, double depthLimit) {
    double limit = curvature < 0.0 ? Math.min(depthLimit, -1.0 / curvature) : depthLimit;
    int base = column * nodes;
    double start = mould.heat(temperature);
    double x = 0.0;
    int k = 0;
    boolean more = true;
    while (more) {
      double d = grid.thickness(k);
      double next = x + d;
      boolean last = k == nodes - 1;
      if (next + 0.5 * (last ? 0.0 : grid.thickness(k + 1)) >= limit) {
        d = last ? Math.min(d, limit - x) : limit - x;
        last = true;
      }
      volume[base + k] = d * (1.0 + curvature * (x + 0.5 * d));
      perVolume[base + k] = 1.0 / volume[base + k];
      double in = grid.innerShare() * d;
      inner[base + k] = in / (1.0 + curvature * (x + 0.5 * in));
      outer[base + k] = (d - in) / (1.0 + curvature * (x + 0.5 * (in + d)));
      heat[base + k] = start;
      x += d;
      k++;
      more = !last;
    }
    count[column] = k;
    changedTo[column] = 0;
    outerArea[column] = Math.max(0.0, 1.0 + curvature * x);
    initialHeat[column] = start;
    initialTemperature[column] = mould.temperature(start);
    lost[column] = 0.0;
  }

  void widen(int column, double kept) {
    int base = column * nodes;
    double fresh = (1.0 - kept) * initialHeat[column];
    for (int k = base; k < base + count[column]; k++) {
      heat[k] = kept * heat[k] + fresh;
    }
    lost[column] *= kept;
  }

  boolean onePass() {
    return mould.constant();
  }

  /** Nodes that heat can reach in a step [s]; all of them where the outer end meets air. */
  private int nodesFor(int column, double dt) {
    int n = count[column];
    if (air.present()) {
      return n;
    }
    int reached = changedTo[column];
    double depth = (reached == 0 ? 0.0 : depths[reached - 1]) + reach * Math.sqrt(dt);
    int k = Math.min(n, reached + 2);
    while (k < n && depths[k - 1] < depth) {
      k++;
    }
    return k;
  }

  /** Reads the state before a step [s]: temperatures, conductances, tangent capacities. */
  void begin(int column, double dt) {
    int base = column * nodes;
    int n = nodesFor(column, dt);
    active[column] = n;
    for (int k = 0; k < n; k++) {
      double e = heat[base + k];
      int i = mould.interval(e);
      before[k] = mould.temperature(i, e);
      conductivity[k] = mould.conductivity(i, e);
      capacity[k] = volume[base + k] * mould.capacity(i);
    }
    for (int k = 0; k < n - 1; k++) {
      double a = conductivity[k];
      double b = conductivity[k + 1];
      conductance[k] = a * b / (outer[base + k] * b + inner[base + k + 1] * a);
    }
    surface = inner[base] / conductivity[0];
    outwards = 0.0;
    if (air.present()) {
      double t = before[n - 1];
      double film =
          air.convection()
              + air.emissivity()
                  * RADIATION
                  * (t * t + air.temperature() * air.temperature())
                  * (t + air.temperature());
      outwards =
          1.0 / (outer[base + n - 1] / conductivity[n - 1] + 1.0 / (film * outerArea[column]));
    }
  }

  /** Eliminates from the deep end to the face for a time step [s]. */
  void eliminate(int column, double dt) {
    double rate = 1.0 / dt;
    int k = active[column] - 1;
    double c = capacity[k] * rate;
    double s = c + outwards;
    double r = c * before[k] + outwards * air.temperature();
    while (k > 0) {
      double g = conductance[k - 1];
      double inverse = 1.0 / (s + g);
      double a = r * inverse;
      double b = g * inverse;
      known[k] = a;
      gain[k] = b;
      k--;
      c = capacity[k] * rate;
      r = c * before[k] + g * a;
      s = c + s * b;
    }
    stiff = s;
    right = r;
  }

  /** Resistance between face and middle of the first node [m2 K/W]. */
  double surfaceResistance() {
    return surface;
  }

  /** Heat flow taken per kelvin of a body behind a conductance to the first node [W/(m2 K)]. */
  double slope(double link) {
    return link * stiff / (link + stiff);
  }

  /** Heat flow taken at 0 K of that body [W/m2]. */
  double offset(double link) {
    return -link * right / (link + stiff);
  }

  /** Whether a heat flow into the face changes the first node little [W/m2]. */
  boolean barelyMoves(double flow) {
    return Math.abs((right + flow) / stiff - before[0]) < SMALL_CHANGE;
  }

  /** Replaces tangent capacities by secants over the change that a heat flow would cause. */
  void secants(int column, double dt, double flow) {
    move(column, dt, flow);
    int base = column * nodes;
    for (int k = 0; k < active[column]; k++) {
      double change = mould.temperature(trial[k]) - before[k];
      if (Math.abs(change) > LEAST_CHANGE) {
        capacity[k] = volume[base + k] * (trial[k] - heat[base + k]) / change;
      }
    }
  }

  /** Ends the step with a heat flow into the face [W/m2]; returns the face temperature [K]. */
  double accept(int column, double dt, double flow) {
    double outflow = move(column, dt, flow);
    System.arraycopy(trial, 0, heat, column * nodes, active[column]);
    int reached = changedTo[column];
    while (reached < active[column]
        && Math.abs(mould.temperature(trial[reached]) - initialTemperature[column]) > REACHED) {
      reached++;
    }
    changedTo[column] = reached;
    lost[column] += dt * outflow;
    return (right + flow) / stiff + flow * surface;
  }

  private double move(int column, double dt, double flow) {
    int base = column * nodes;
    int last = active[column] - 1;
    double t = (right + flow) / stiff;
    double in = flow;
    for (int k = 0; k < last; k++) {
      double next = known[k + 1] + gain[k + 1] * t;
      double out = conductance[k] * (t - next);
      trial[k] = heat[base + k] + dt * (in - out) * perVolume[base + k];
      in = out;
      t = next;
    }
    double outflow = outwards * (t - air.temperature());
    trial[last] = heat[base + last] + dt * (in - outflow) * perVolume[base + last];
    return outflow;
  }

  double held(int column) {
    int base = column * nodes;
    double sum = 0.0;
    for (int k = base; k < base + count[column]; k++) {
      sum += volume[k] * (heat[k] - initialHeat[column]);
    }
    return sum;
  }

  double lost(int column) {
    return lost[column];
  }

  double initialTemperature(int column) {
    return initialTemperature[column];
  }

  int count(int column) {
    return count[column];
  }

  double temperature(int column, int node) {
    return mould.temperature(heat[column * nodes + node]);
  }
}
