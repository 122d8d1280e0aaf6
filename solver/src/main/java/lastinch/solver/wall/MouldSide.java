package lastinch.solver.wall;

import java.util.Arrays;
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

  /** Change of capacity that asks for a second pass; without, a step errs by half of it [-]. */
  private static final double NOTICED = 1e-2;

  /** Smallest change for which a secant is formed; below, the tangent serves [K]; numerical. */
  private static final double LEAST_CHANGE = 1e-3;

  /** Where the running fraction of the elimination is scaled down [-]; numerical. */
  private static final double LARGE = 0x1p300;

  /** Change of temperature from which a node counts as reached by heat [K]; numerical. */
  private static final double REACHED = 0.02;

  /** Diffusion lengths of a step beyond reached nodes that take part in it [-]; numerical. */
  private static final double REACH = 4.0;

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

  /** By column: nodes that take part in the present step; nodes that heat has reached. */
  private final int[] active;

  private final int[] reached;
  private final double reach;
  private final double[] depths;
  private final double[] outerArea;
  private final double[] initialHeat;
  private final double[] initialTemperature;
  private final double[] lost;

  /** By column: growth of area with depth [1/m] and where it ends [m], as it was opened. */
  private final double[] growth;

  private final double[] limits;

  private final double[] before;
  private final double[] resistivity;
  private final double[] capacity;
  private final double[] tangent;
  private final double[] resistance;
  private final double[] known;
  private final double[] gain;
  private final double[] share;
  private final double[] fixed;
  private final double[] after;

  private final double allowed;
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
    inner = new double[n];
    outer = new double[n];
    count = new int[columns];
    active = new int[columns];
    reached = new int[columns];
    reach = REACH * Math.sqrt(mould.fastest());
    depths = new double[nodes];
    for (int k = 0; k < nodes; k++) {
      depths[k] = grid.depth(k);
    }
    outerArea = new double[columns];
    initialHeat = new double[columns];
    initialTemperature = new double[columns];
    lost = new double[columns];
    growth = new double[columns];
    limits = new double[columns];
    before = new double[nodes];
    resistivity = new double[nodes];
    capacity = new double[nodes];
    tangent = new double[nodes];
    resistance = new double[nodes];
    known = new double[nodes];
    gain = new double[nodes];
    share = new double[nodes];
    fixed = new double[nodes];
    after = new double[nodes];
    allowed = mould.constant() ? Double.POSITIVE_INFINITY : NOTICED / mould.steepest();
  }

  /** The same columns with as many more nodes as heat asks for in a time [s]. */
  MouldSide deeper(double seconds) {
    WallGrid more = grid.deeper(WallGrid.reach(mould.fastest(), seconds));
    MouldSide same = new MouldSide(count.length, more, mould, air);
    for (int column = 0; column < count.length; column++) {
      if (count[column] > 0) {
        same.open(column, initialTemperature[column], growth[column], limits[column]);
        same.take(column, this);
      }
    }
    return same;
  }

  /** Takes over a column; a last node that is now longer holds the same heat above the start. */
  private void take(int column, MouldSide from) {
    int base = column * nodes;
    int old = column * from.nodes;
    int n = from.count[column];
    initialHeat[column] = from.initialHeat[column];
    for (int k = 0; k < n; k++) {
      double above = from.heat[old + k] - from.initialHeat[column];
      heat[base + k] =
          volume[base + k] == from.volume[old + k]
              ? from.heat[old + k]
              : from.initialHeat[column] + above * from.volume[old + k] * perVolume[base + k];
    }
    Arrays.fill(heat, base + n, base + count[column], from.initialHeat[column]);
    reached[column] = from.reached[column];
    lost[column] = from.lost[column];
  }

  void open(int column, double temperature, double curvature, double depthLimit) {
    growth[column] = curvature;
    limits[column] = depthLimit;
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
    reached[column] = 0;
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

  /** Nodes that heat can reach in a step [s]; all of them where the outer end meets air. */
  private int nodesFor(int column, double dt) {
    int n = count[column];
    if (air.present()) {
      return n;
    }
    int so = reached[column];
    double depth = (so == 0 ? 0.0 : depths[so - 1]) + reach * Math.sqrt(dt);
    int k = Math.min(n, so + 2);
    while (k < n && depths[k - 1] < depth) {
      k++;
    }
    return k;
  }

  /** Reads the state before a step [s]: temperatures, resistances, tangent capacities. */
  void begin(int column, double dt) {
    int base = column * nodes;
    int n = nodesFor(column, dt);
    active[column] = n;
    double[] perLength = resistivity;
    double[] perKelvin = tangent;
    mould.read(heat, base, n, before, perLength, perKelvin);
    double[] behind = outer;
    double[] ahead = inner;
    double[] held = volume;
    double[] between = resistance;
    double[] stored = capacity;
    double nearer = perLength[0];
    stored[0] = held[base] * perKelvin[0];
    for (int k = 1; k < n; k++) {
      double here = perLength[k];
      between[k] = behind[base + k - 1] * nearer + ahead[base + k] * here;
      stored[k] = held[base + k] * perKelvin[k];
      nearer = here;
    }
    surface = inner[base] * resistivity[0];
    outwards = air.present() ? airConductance(base + n - 1, n - 1, outerArea[column]) : 0.0;
  }

  private double airConductance(int at, int node, double area) {
    double t = before[node];
    double ta = air.temperature();
    double film = air.convection() + air.emissivity() * RADIATION * (t * t + ta * ta) * (t + ta);
    return 1.0 / (outer[at] * resistivity[node] + 1.0 / (film * area));
  }

  /**
   * Eliminates from the deep end to the face for a time step [s]. The stiffness of what lies deeper
   * runs along as a fraction, top over bottom, so that no division waits for the one before. Each
   * node leaves its temperature as {@code fixed + share x temperature before it} and the flow into
   * it as {@code gain x temperature before it - known}.
   */
  void eliminate(int column, double dt) {
    double[] stored = capacity;
    double[] start = before;
    double[] between = resistance;
    double[] f0 = known;
    double[] g0 = gain;
    double[] s0 = share;
    double[] t0 = fixed;
    double rate = 1.0 / dt;
    int deepest = active[column] - 1;
    double c = stored[deepest] * rate;
    double top = c + outwards;
    double bottom = 1.0;
    double r = c * start[deepest] + outwards * air.temperature();
    for (int k = deepest; k > 0; k--) {
      double resist = between[k];
      double sum = Math.fma(top, resist, bottom);
      double inverse = 1.0 / sum;
      double part = bottom * inverse;
      double f = r * part;
      f0[k] = f;
      g0[k] = top * inverse;
      s0[k] = part;
      t0[k] = f * resist;
      c = stored[k - 1] * rate;
      r = Math.fma(c, start[k - 1], f);
      top = Math.fma(c, sum, top);
      bottom = sum;
      if (top > LARGE) {
        top *= 1.0 / LARGE;
        bottom *= 1.0 / LARGE;
      }
    }
    stiff = top / bottom;
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

  /**
   * New temperatures for a heat flow into the face [W/m2].
   *
   * @return whether capacities change over the step so much that a second pass is worth while
   */
  boolean follow(int column, double flow) {
    int n = active[column];
    double[] start = before;
    double[] end = after;
    double[] part = share;
    double[] base = fixed;
    double t = (right + flow) / stiff;
    double most = Math.abs(t - start[0]);
    end[0] = t;
    for (int k = 1; k < n; k++) {
      t = Math.fma(part[k], t, base[k]);
      end[k] = t;
      double change = Math.abs(t - start[k]);
      most = change > most ? change : most;
    }
    return most > allowed;
  }

  /** Replaces tangent capacities by secants over the change of the last pass. */
  void secants(int column) {
    int base = column * nodes;
    double[] start = before;
    double[] end = after;
    double[] perKelvin = tangent;
    int n = active[column];
    for (int k = 0; k < n; k++) {
      double rise = end[k] - start[k];
      double then = heat[base + k] + perKelvin[k] * rise;
      double change = mould.temperature(then) - start[k];
      if (Math.abs(change) > LEAST_CHANGE) {
        capacity[k] = volume[base + k] * perKelvin[k] * (rise / change);
      }
    }
  }

  /**
   * Ends the step: moves the enthalpies by the flows between the temperatures last followed.
   *
   * @return temperature of the face [K]
   */
  double accept(int column, double dt, double flow) {
    int base = column * nodes;
    int last = active[column] - 1;
    double[] stored = heat;
    double[] share = perVolume;
    double[] end = after;
    double[] g0 = gain;
    double[] f0 = known;
    double in = flow;
    for (int k = 0; k < last; k++) {
      double out = g0[k + 1] * end[k] - f0[k + 1];
      stored[base + k] += dt * (in - out) * share[base + k];
      in = out;
    }
    double outflow = outwards * (after[last] - air.temperature());
    heat[base + last] += dt * (in - outflow) * perVolume[base + last];
    lost[column] += dt * outflow;
    int so = reached[column];
    while (so <= last && Math.abs(after[so] - initialTemperature[column]) > REACHED) {
      so++;
    }
    reached[column] = so;
    return after[0] + flow * surface;
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
