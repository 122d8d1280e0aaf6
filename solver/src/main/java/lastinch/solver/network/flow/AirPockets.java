package lastinch.solver.network.flow;

import java.util.Arrays;
import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.charge.Closures;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.physics.AirEscape;
import lastinch.solver.physics.DryAir;

/**
 * The air ahead of the metal. Every empty stretch of channel carries its own mass; those joined by
 * dry joints form a pocket with one pressure, found implicitly from mass, volume and what leaks
 * through vents, parting crack and mould. A pocket that reaches the mouth of the sprue stands at
 * the open air. Air temperature is the mean of metal and mould, throughout.
 */
public final class AirPockets {
  private static final double OPEN = DryAir.OPEN_AIR;
  private static final double GAS = DryAir.GAS_CONSTANT;

  /** Least share of a cell that a pocket's volume counts as [-]; numerical. */
  private static final double FLOOR = 1e-3;

  /** A pocket under this share of the first air has no part in the peak told of [-]; chosen. */
  private static final double LAST_GAP = 0.01;

  /** A vent's law is taken at this overpressure at least [Pa]; numerical. */
  private static final double LEAST_OVER = 1.0;

  /** Stiffness of a pocket that hardly resists, far under any column's [Pa s/m3]; numerical. */
  private static final double LEAST_STIFFNESS = 1e-3;

  private static final int NEWTON = 25; // most passes for its pressure [-]; numerical

  /** Change of flow up to which a pocket's pressure is carried on straight [-]; numerical. */
  private static final double NEAR = 1e-3;

  private final NetworkState state;
  private final AirEscapeLaw law;
  private final double ventDischarge;
  private final double temperature;

  /** By channel: mass of air in its empty stretch [kg]. */
  public final double[] mass;

  /** By channel, then joints: number of the pocket it belongs to. */
  private final int[] pocketOf;

  private final boolean[] open;
  private final double[] pressure;
  private final double[] stiffness;
  private final double[] volume;
  private final double[] pocketMass;
  private final double[] wallLeak;
  private final double[] vents;
  private final double[] closedSince;

  /** By pocket: the last flow in a step for which its pressure was found. */
  private final double[] foundInflow;

  private final double[] foundStep;
  private final double[] foundPressure;
  private int pockets;
  private double leaked;
  private final double initial;
  private final double initialVolume;
  private double peakOver;

  public AirPockets(NetworkState state, PourCase job) {
    this.state = state;
    law = Closures.air(job, state.melt, List.of());
    ventDischarge = job.laws().ventDischarge().value();
    temperature = law.temperature();
    int n = state.channels.length;
    mass = new double[n];
    double sum = 0.0;
    for (Channel c : state.channels) {
      mass[c.index] = OPEN * c.emptyVolume() / (GAS * temperature);
      sum += mass[c.index];
    }
    initial = sum;
    initialVolume = sum * GAS * temperature / OPEN;
    int nodes = n + state.wet.length;
    pocketOf = new int[nodes];
    open = new boolean[nodes];
    pressure = new double[nodes];
    stiffness = new double[nodes];
    volume = new double[nodes];
    pocketMass = new double[nodes];
    wallLeak = new double[nodes];
    vents = new double[nodes];
    closedSince = new double[nodes];
    foundInflow = new double[nodes];
    foundStep = new double[nodes];
    foundPressure = new double[nodes];
    Arrays.fill(closedSince, Double.NaN);
    relabel();
  }

  /** Finds the pockets anew after an event. */
  public void relabel() {
    int n = state.channels.length;
    for (Channel c : state.channels) {
      if (c.gapClosed()) {
        squeezeOut(c);
      }
    }
    for (int i = 0; i < pocketOf.length; i++) {
      pocketOf[i] = i;
    }
    for (Channel c : state.channels) {
      if (c.full) {
        continue;
      }
      if (!c.hasPlugA() && c.jointA != ChannelGraph.CLOSED && !state.wet[c.jointA]) {
        unite(c.index, n + c.jointA);
      }
      if (!c.hasPlugB() && c.jointB != ChannelGraph.CLOSED && !state.wet[c.jointB]) {
        unite(c.index, n + c.jointB);
      }
    }
    for (int i = 0; i < pocketOf.length; i++) {
      pocketOf[i] = root(i);
    }
    Arrays.fill(open, false);
    if (!state.wet[ChannelGraph.CUP]) {
      open[pocketOf[n + ChannelGraph.CUP]] = true;
    }
    pockets = pocketOf.length;
  }

  private void squeezeOut(Channel c) {
    leaked += mass[c.index];
    mass[c.index] = 0.0;
  }

  private int root(int i) {
    int r = i;
    while (pocketOf[r] != r) {
      r = pocketOf[r];
    }
    return r;
  }

  private void unite(int a, int b) {
    int ra = root(a);
    int rb = root(b);
    pocketOf[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  /** Sums volumes, masses and leaks of the pockets at the start of a step. */
  public void beginStep() {
    if (!law.pushes()) {
      return;
    }
    Arrays.fill(volume, 0.0);
    Arrays.fill(pocketMass, 0.0);
    Arrays.fill(wallLeak, 0.0);
    Arrays.fill(stiffness, 0.0);
    Arrays.fill(foundStep, -1.0);
    for (Channel c : state.channels) {
      int p = pocketOf[c.index];
      double empty = c.emptyVolume() - c.stream.inFlight();
      if (c.gapClosed()) {
        squeezeOut(c);
      } else {
        volume[p] += Math.max(FLOOR * c.shape.volume[0], empty);
        pocketMass[p] += mass[c.index];
      }
    }
    for (int p = 0; p < pockets; p++) {
      boolean closed = !open[p] && volume[p] > 0.0;
      pressure[p] = closed ? pocketPressure(p, 0.0, 0.0) : OPEN;
      vents[p] = closed ? ventFactor(p) : 0.0;
    }
    for (Channel c : state.channels) {
      int p = pocketOf[c.index];
      if (c.gapClosed() || open[p]) {
        continue;
      }
      if (Double.isNaN(closedSince[p])) {
        closedSince[p] = state.time;
      }
      wallLeak[p] += leakFactor(c, pressure[p], state.time - closedSince[p]);
    }
  }

  /** Mass flow over (p^2 - outside^2) of mould and crack round an empty stretch [kg/(s Pa2)]. */
  private double leakFactor(Channel c, double at, double age) {
    double from = c.hasPlugA() ? c.positionA() : 0.0;
    double to = c.hasPlugB() ? c.positionB() : c.shape.length;
    double length = to - from;
    if (length <= 0.0) {
      return 0.0;
    }
    double perimeter = c.shape.perimeter[c.shape.cellAt(0.5 * (from + to))];
    return law.wallFactor(length, perimeter, at, age);
  }

  /** Mass flow through a pocket's vents over its pressure above the open air [kg/(s Pa)]. */
  private double ventFactor(int p) {
    double over = Math.max(pressure[p] - OPEN, LEAST_OVER);
    double flow = 0.0;
    for (int i = 0; i < state.graph.vents().size(); i++) {
      ChannelGraph.VentPoint v = state.graph.vents().get(i);
      if (isOpen(v, p)) {
        flow +=
            AirEscape.orificeFlow(
                ventDischarge * v.area(), OPEN + over, temperature, OPEN, temperature);
      }
    }
    return flow / over;
  }

  /** Whether a vent still leads out of a pocket. */
  private boolean isOpen(ChannelGraph.VentPoint vent, int p) {
    Channel c = state.channels[vent.channel()];
    if (pocketOf[c.index] != p || c.gapClosed()) {
      return false;
    }
    return (!c.hasPlugA() || c.positionA() < vent.at() || vent.at() >= c.shape.length)
        && (!c.hasPlugB() || c.positionB() > vent.at());
  }

  /** Pressure at the end of a step in which {@code inflow} [m3/s] of metal enters. */
  private double pocketPressure(int p, double inflow, double dt) {
    if (volume[p] <= 0.0) {
      stiffness[p] = 0.0;
      return OPEN;
    }
    double after = Math.max(FLOOR * volume[p], volume[p] - inflow * dt);
    double gas = GAS * temperature;
    if (dt == 0.0) {
      return pocketMass[p] * gas / after;
    }
    double at = pressure[p];
    for (int i = 0; i < NEWTON; i++) {
      double out = wallLeak[p] * (at * at - law.outside() * law.outside()) + vents[p] * (at - OPEN);
      double slope = after / gas + dt * (2.0 * wallLeak[p] * at + vents[p]);
      double residual = at * after / gas - pocketMass[p] + dt * out;
      double next = Math.max(0.1 * at, at - residual / slope);
      boolean done = Math.abs(next - at) < 1e-9 * OPEN;
      at = next;
      if (done) {
        break;
      }
    }
    double slope = after / gas + dt * (2.0 * wallLeak[p] * at + vents[p]);
    stiffness[p] = at * dt / gas / slope;
    return at;
  }

  /** Node of the pocket ahead of a channel's front; known where it is the open air. */
  int pocketAhead(Channel c) {
    int joint = c.hasPlugA() ? c.jointB : c.jointA;
    boolean reaches = c.hasPlugA() != c.hasPlugB() && c.gapClosed();
    boolean opens = reaches && joint != ChannelGraph.CLOSED && !state.wet[joint];
    return opens ? pocketAtJoint(joint) : node(pocketOf[c.index]);
  }

  /** Node of the pocket at a dry joint; known where it is the open air. */
  int pocketAtJoint(int joint) {
    return node(pocketOf[state.channels.length + joint]);
  }

  private int node(int p) {
    return law.pushes() && !open[p] ? state.wet.length + p : LiquidColumn.KNOWN;
  }

  /**
   * Pressure above the open air in a closed pocket that takes {@code inflow} [m3/s] of metal.
   * Carried on straight beyond the flow that would leave next to nothing of the pocket, so that it
   * rises with the flow everywhere.
   */
  double pressureWith(int p, double inflow, double dt) {
    double most = dt > 0.0 ? (1.0 - FLOOR) * volume[p] / dt : Double.POSITIVE_INFINITY;
    double within = Math.min(inflow, most);
    double change = within - foundInflow[p];
    boolean near = Math.abs(change) <= NEAR * Math.abs(within) && foundStep[p] == dt;
    if (!near) {
      foundPressure[p] = pocketPressure(p, within, dt);
      foundInflow[p] = within;
      foundStep[p] = dt;
    }
    return foundPressure[p] + stiffness[p] * (inflow - foundInflow[p]) - OPEN;
  }

  /** Rise of a closed pocket's pressure with inflow [Pa s/m3], at the last one asked for. */
  double stiffness(int p) {
    return Math.max(stiffness[p], LEAST_STIFFNESS);
  }

  /** Present pressure above the open air ahead of a channel's front [Pa]. */
  public double overpressure(Channel c) {
    int p = pocketOf[c.index];
    return law.pushes() && !open[p] ? pressure[p] - OPEN : 0.0;
  }

  /** Books what leaked in a step, once the metal has moved, and shares the rest by volume. */
  public void endStep(double dt) {
    if (!law.pushes()) {
      return;
    }
    for (int p = 0; p < pockets; p++) {
      if (volume[p] > 0.0 && !open[p]) {
        settle(p, dt);
      }
    }
    for (Channel c : state.channels) {
      share(c);
    }
  }

  private void settle(int p, double dt) {
    double before = volume[p];
    double now = 0.0;
    for (Channel c : state.channels) {
      if (pocketOf[c.index] == p && !c.gapClosed()) {
        now += Math.max(FLOOR * c.shape.volume[0], c.emptyVolume() - c.stream.inFlight());
      }
    }
    double at = pocketPressure(p, now > 0.0 ? (before - now) / dt : before / dt, dt);
    if (now > LAST_GAP * initialVolume) {
      peakOver = Math.max(peakOver, at - OPEN);
    }
    double held = now > 0.0 ? at * now / (GAS * temperature) : 0.0;
    leaked += pocketMass[p] - held;
    pocketMass[p] = held;
    volume[p] = now;
    pressure[p] = at;
  }

  private void share(Channel c) {
    int p = pocketOf[c.index];
    double empty =
        c.gapClosed()
            ? 0.0
            : Math.max(FLOOR * c.shape.volume[0], c.emptyVolume() - c.stream.inFlight());
    if (open[p]) {
      double held = OPEN * empty / (GAS * temperature);
      leaked += mass[c.index] - held;
      mass[c.index] = held;
    } else {
      mass[c.index] = volume[p] > 0.0 ? pocketMass[p] * empty / volume[p] : 0.0;
    }
  }

  /** Largest pressure above the open air so far [Pa]. */
  public double peakOver() {
    return peakOver;
  }

  /** Air that is in the mould now, that left it, that was there at first [kg]. */
  public double held() {
    double sum = 0.0;
    for (double m : mass) {
      sum += m;
    }
    return sum;
  }

  public double leaked() {
    return leaked;
  }

  public double initial() {
    return initial;
  }

  /** Whether air can get into a falling column from the mould. */
  public boolean getsIn() {
    return law.permeability() >= 1e-14 || law.crack() > 0.0;
  }

  public boolean isOn() {
    return law.pushes();
  }
}
