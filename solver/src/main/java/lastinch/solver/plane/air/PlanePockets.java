package lastinch.solver.plane.air;

import java.util.Arrays;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.physics.AirEscape;
import lastinch.solver.physics.DryAir;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneGrid;

/**
 * Air in the cavity: connected cells without metal are a pocket with one pressure (ideal gas at a
 * fixed temperature). Every cell keeps its own share of the gas, so pockets that split share by
 * volume and pockets that merge add up. Gas caught in a cell that metal closes round stays in it as
 * a bubble, which keeps a free surface until its gas is gone.
 */
public final class PlanePockets {
  /** Most pockets solved with the flow [-]; chosen: those beyond share the last. */
  public static final int MOST = 256;

  /** No pocket. */
  public static final int NONE = -1;

  private static final double LEAST_VOLUME = 1e-3; // room at least, of its cells [-]; chosen
  private static final double LEAST_GAS = 5e-3; // less, of what open air holds, is none [-]; chosen
  private static final double LOWEST = 0.2 * DryAir.OPEN_AIR; // [Pa]; chosen
  private static final double HIGHEST = 20.0 * DryAir.OPEN_AIR; // [Pa]; chosen
  private static final double HALF = 0.5; // fill from which a cell carries a pressure [-]; chosen
  private static final double FAST = 3.0; // times emptied in a step: at outside p [-]; chosen

  /** A void of fewer cells that opens in metal without any gas draws air at once [-]; chosen. */
  private static final double FEW = 3.0;

  private final PlaneGrid grid;
  private final AirEscapeLaw law;
  private final double perGas;

  /** Pocket of a cell without metal. */
  public final int[] pocket;

  final double[] gas;
  private final boolean[] wasActive;
  private final int[] queue;
  private final int[] open;
  private final int[] columnOf;
  private final double[] areaOf;
  private int pockets;

  /** By pocket: gas [kg], room [m3], open area [m2], outline [m], longest side [m]. */
  private final double[] mass = new double[MOST];

  private final double[] room = new double[MOST];
  private final double[] own = new double[MOST];
  private final double[] bulk = new double[MOST];
  private final double[] change = new double[MOST];
  private final double[] arrived = new double[MOST];
  private final double[] area = new double[MOST];
  private final double[] outline = new double[MOST];
  private final double[] span = new double[MOST];

  /** By pocket: pressure before the step, above open air [Pa]; leak at it; rise of leak. */
  public final double[] pressure = new double[MOST];

  public final double[] stiffness = new double[MOST];
  public final double[] leak = new double[MOST];
  public final double[] leakSlope = new double[MOST];
  private double leaked;
  private boolean changed = true;

  public PlanePockets(PlaneGrid grid, AirEscapeLaw law) {
    this.grid = grid;
    this.law = law;
    perGas = DryAir.GAS_CONSTANT * law.temperature();
    pocket = new int[grid.size];
    gas = new double[grid.size];
    wasActive = new boolean[grid.size];
    queue = new int[grid.size];
    columnOf = new int[grid.size];
    areaOf = new double[grid.size];
    open = openCells();
    Arrays.fill(pocket, NONE);
    for (int c = 0; c < grid.size; c++) {
      gas[c] = law.start() / perGas * grid.volume[c];
    }
  }

  /** Cells that are not wall, in the order of the grid. */
  private int[] openCells() {
    int[] found = new int[grid.size];
    int n = 0;
    for (int c = 0; c < grid.size; c++) {
      columnOf[c] = c % grid.stride;
      if (grid.volume[c] > 0.0) {
        areaOf[c] = grid.volume[c] / grid.gap[c];
        found[n++] = c;
      }
    }
    return Arrays.copyOf(found, n);
  }

  /** Gives metal that stands at the start its room. */
  public void start(FlowState s) {
    for (int c = 0; c < grid.size; c++) {
      gas[c] = law.start() / perGas * Math.max(0.0, grid.volume[c] - s.liquid[c]);
    }
  }

  /**
   * Sorts cells into metal and air, joins air into pockets, finds their pressures.
   *
   * @param time since the start [s]
   * @param dt step to come [s]
   */
  public void sort(FlowState s, double time, double dt) {
    classify(s);
    if (!law.pushes()) {
      return;
    }
    if (changed) {
      label(s);
      changed = false;
    }
    gather(s);
    pressures(time);
    letFastOnesGo(dt);
    share(s);
  }

  private void classify(FlowState s) {
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        boolean metal = grid.volume[c] > 0.0 && s.liquid[c] >= HALF * grid.volume[c];
        if (metal && law.pushes() && gas[c] > 0.0) {
          metal = !holdsBubble(s, c);
        }
        s.active[c] = metal;
        if (metal != wasActive[c]) {
          wasActive[c] = metal;
          changed = true;
        }
      }
    }
  }

  private boolean holdsBubble(FlowState s, int c) {
    int n = grid.stride;
    if (isVoid(s, c - 1) || isVoid(s, c + 1) || isVoid(s, c - n) || isVoid(s, c + n)) {
      return false;
    }
    if (gas[c] < LEAST_GAS * grid.volume[c] * law.start() / perGas) {
      leaked += gas[c];
      gas[c] = 0.0;
      return false;
    }
    return true;
  }

  private boolean isVoid(FlowState s, int c) {
    return grid.volume[c] > 0.0 && s.liquid[c] < HALF * grid.volume[c];
  }

  private void label(FlowState s) {
    Arrays.fill(pocket, NONE);
    pockets = 0;
    for (int c : open) {
      if (pocket[c] == NONE && !s.active[c]) {
        int p = Math.min(pockets, MOST - 1);
        flood(s, c, p);
        pockets = Math.min(MOST, p + 1);
      }
    }
  }

  private void flood(FlowState s, int seed, int p) {
    int n = grid.stride;
    int head = 0;
    int tail = 0;
    double a = 0.0;
    double edge = 0.0;
    int i0 = columnOf[seed];
    int i1 = i0;
    int lowest = seed;
    int highest = seed;
    queue[tail++] = seed;
    pocket[seed] = p;
    while (head < tail) {
      int c = queue[head++];
      a += areaOf[c];
      edge += grid.rim[c];
      i0 = Math.min(i0, columnOf[c]);
      i1 = Math.max(i1, columnOf[c]);
      lowest = Math.min(lowest, c);
      highest = Math.max(highest, c);
      tail = visit(s, c - 1, grid.faceX[c], p, tail);
      tail = visit(s, c + 1, grid.faceX[c + 1], p, tail);
      tail = visit(s, c - n, grid.faceY[c], p, tail);
      tail = visit(s, c + n, grid.faceY[c + n], p, tail);
    }
    area[p] = a;
    outline[p] = edge;
    span[p] = grid.dx * (1 + Math.max(i1 - i0, highest / n - lowest / n));
  }

  private int visit(FlowState s, int c, double face, int p, int tail) {
    if (face > 0.0 && pocket[c] == NONE && !s.active[c]) {
      pocket[c] = p;
      queue[tail] = c;
      return tail + 1;
    }
    return tail;
  }

  /** Pocket beside a cell with metal, or none. */
  private int beside(int c) {
    int n = grid.stride;
    int p = grid.faceX[c] > 0.0 ? pocket[c - 1] : NONE;
    p = p == NONE && grid.faceX[c + 1] > 0.0 ? pocket[c + 1] : p;
    p = p == NONE && grid.faceY[c] > 0.0 ? pocket[c - n] : p;
    return p == NONE && grid.faceY[c + n] > 0.0 ? pocket[c + n] : p;
  }

  private void gather(FlowState s) {
    Arrays.fill(mass, 0, pockets, 0.0);
    Arrays.fill(room, 0, pockets, 0.0);
    Arrays.fill(own, 0, pockets, 0.0);
    Arrays.fill(bulk, 0, pockets, 0.0);
    for (int c : open) {
      double left = grid.volume[c] - s.liquid[c];
      if (!s.active[c]) {
        int p = pocket[c];
        room[p] += Math.max(0.0, left);
        mass[p] += gas[c];
        bulk[p] += grid.volume[c];
        own[p] += roomOf(s, c);
      } else if (left > 0.0 || gas[c] > 0.0) {
        int p = beside(c);
        if (p != NONE) {
          room[p] += Math.max(0.0, left);
          mass[p] += gas[c];
          gas[c] = 0.0;
        }
      }
    }
  }

  private void pressures(double time) {
    double cell = grid.dx * grid.dx;
    for (int p = 0; p < pockets; p++) {
      room[p] = Math.max(room[p], LEAST_VOLUME * bulk[p]);
      double usual = law.start() / perGas * room[p];
      if (mass[p] < LEAST_GAS * usual && area[p] < FEW * cell) {
        leaked -= usual - mass[p];
        mass[p] = usual;
      }
      double absolute = Math.max(LOWEST, Math.min(HIGHEST, mass[p] * perGas / room[p]));
      pressure[p] = absolute - DryAir.OPEN_AIR;
      stiffness[p] = room[p] / absolute;
      double density = absolute / perGas;
      leak[p] = 0.0;
      leakSlope[p] = 0.0;
      if (law.permeability() > 0.0) {
        double shape = shapeFactor(p, absolute, time);
        leak[p] +=
            AirEscape.mouldFlow(
                    law.permeability(), shape, absolute, law.temperature(), law.outside())
                / density;
        leakSlope[p] +=
            AirEscape.mouldSlope(law.permeability(), shape, absolute, law.temperature()) / density;
      }
      if (law.crack() > 0.0 && outline[p] > 0.0) {
        double t = law.temperature();
        double edge = outline[p];
        double way = law.crackDepth();
        leak[p] +=
            AirEscape.crackFlow(law.crack(), edge, way, absolute, t, law.outside()) / density;
        leakSlope[p] +=
            AirEscape.crackSlope(law.crack(), edge, way, absolute, t, law.outside()) / density;
      }
    }
    for (int k = 0; k < law.vents().size(); k++) {
      AirEscapeLaw.Hole hole = law.vents().get(k);
      int p = pocket[hole.cell()] == NONE ? beside(hole.cell()) : pocket[hole.cell()];
      if (p != NONE) {
        double absolute = pressure[p] + DryAir.OPEN_AIR;
        double density = absolute / perGas;
        double t = law.temperature();
        leak[p] += AirEscape.orificeFlow(hole.opening(), absolute, t, law.outside(), t) / density;
        leakSlope[p] +=
            AirEscape.orificeSlope(hole.opening(), absolute, t, law.outside(), t) / density;
      }
    }
  }

  /**
   * Pockets whose air leaks much faster than a step lasts stand at the pressure outside; anything
   * else would let the stored air push once more than it can.
   */
  private void letFastOnesGo(double dt) {
    for (int p = 0; p < pockets; p++) {
      if (leakSlope[p] * dt > FAST * stiffness[p]) {
        double left = law.outside() / perGas * room[p];
        leaked += mass[p] - left;
        mass[p] = left;
        pressure[p] = law.outside() - DryAir.OPEN_AIR;
        stiffness[p] = room[p] / Math.max(LOWEST, law.outside());
        leak[p] = 0.0;
      }
    }
  }

  private double shapeFactor(int p, double absolute, double time) {
    double length = span[p];
    double width = area[p] / length;
    double gap = room[p] / area[p];
    double radius = (width + gap) / Math.PI;
    double viscosity = DryAir.viscosity(law.temperature());
    double depth =
        AirEscape.pressedDepth(
            radius,
            law.toSurface(),
            law.permeability(),
            law.porosity(),
            absolute,
            viscosity,
            Math.max(0.0, time));
    return AirEscape.shapeFactor(length, radius, depth);
  }

  private void share(FlowState s) {
    for (int c : open) {
      int p = pocket[c];
      if (p != NONE) {
        gas[c] = mass[p] * roomOf(s, c) / own[p];
        s.airPressure[c] = pressure[p];
      }
    }
  }

  /** Room for air in a cell [m3], never quite nothing. */
  private double roomOf(FlowState s, int c) {
    return Math.max(1e-9 * grid.volume[c], grid.volume[c] - s.liquid[c]);
  }

  /**
   * Books what leaked in a step whose pocket pressures were solved.
   *
   * @param p pocket
   * @param solved its pressure at the end of the step, above open air [Pa]
   * @param dt step [s]
   */
  public void book(int p, double solved, double dt) {
    double density = (pressure[p] + DryAir.OPEN_AIR) / perGas;
    double out = density * dt * (leak[p] + leakSlope[p] * (solved - pressure[p]));
    out = Math.min(out, mass[p]);
    leaked += out;
    change[p] = mass[p] > 0.0 ? (mass[p] - out) / mass[p] : 1.0;
    arrived[p] = mass[p] > 0.0 ? 0.0 : -out;
  }

  /** Takes what leaked out of the cells, once all pockets are booked. */
  public void settle(FlowState s, double[] solved) {
    for (int c : open) {
      int p = pocket[c];
      if (p != NONE) {
        double came = arrived[p] == 0.0 ? 0.0 : arrived[p] * roomOf(s, c) / own[p];
        gas[c] = gas[c] * change[p] + came;
        s.airPressure[c] = solved[p];
      }
    }
  }

  public int count() {
    return pockets;
  }

  /** Room for air in a pocket [m3]. */
  public double room(int p) {
    return room[p];
  }

  /** Air that has left [kg]; negative when more came in. */
  public double leaked() {
    return leaked;
  }

  /** Air in the cavity now [kg]. */
  public double held() {
    double sum = 0.0;
    for (double g : gas) {
      sum += g;
    }
    return sum;
  }
}
