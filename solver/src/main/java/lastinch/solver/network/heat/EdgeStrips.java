package lastinch.solver.network.heat;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.DispersionLaw;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.flow.AirPockets;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Friction;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.PassageRecord.Role;

/**
 * The outer strip of each thin rim: it takes the time of the front beside it, carries its own mark,
 * and loses heat on two faces and its end. It fills in full where its mark still moves and a
 * pressure high enough for so thin a gap comes while the metal there can still move. It changes
 * nothing in the flow.
 */
public final class EdgeStrips {
  /**
   * Solid share of metal at rest at which skin has closed it [-]: 0.15 of the gap is left, as in
   * the passage.
   */
  private static final double CLOSED = 0.85;

  private final NetworkState state;
  private final CellHeat heat;
  private final AirPockets air;
  private final boolean any;

  /** By cell of the whole network: the strip, if there is one. */
  private final EdgeStrip[] strip;

  private final boolean[] reached;

  /**
   * By cell: mark of the rim on arrival [J/kg]; whether it had stopped, and on which share of the
   * way from the cell before.
   */
  private final double[] enthalpy;

  private final boolean[] stopped;
  private final double[] stopShare;

  /** By cell: what metal at rest in the rim still holds [J/kg], and what froze to its walls. */
  private final double[] resting;

  private final double[] skin;
  private final double[] pressed;
  private double lastTime;

  public EdgeStrips(NetworkState state, PourCase job, CellHeat heat, AirPockets air) {
    this.state = state;
    this.heat = heat;
    this.air = air;
    int n = state.allCells;
    strip = new EdgeStrip[n];
    Arrays.fill(strip, EdgeStrip.NONE);
    reached = new boolean[n];
    enthalpy = new double[n];
    stopped = new boolean[n];
    stopShare = new double[n];
    resting = new double[n];
    skin = new double[n];
    pressed = new double[n];
    Arrays.fill(pressed, Double.NEGATIVE_INFINITY);
    boolean found = false;
    for (Channel c : state.channels) {
      Optional<Limb> limb = limbOf(c, job);
      for (int i = 0; i < c.shape.cells && limb.isPresent() && !state.melt.water; i++) {
        double at = Math.min(limb.get().length(), alongLimb(c, i));
        OptionalDouble thickness = EdgeStrip.thickness(limb.get(), at);
        if (thickness.isPresent()) {
          double mould = c.shape.mouldTemperature[i];
          strip[c.firstCell + i] =
              EdgeStrip.of(limb.get(), at, thickness.getAsDouble(), mould, state.melt);
          found = true;
        }
      }
    }
    any = found;
  }

  private static Optional<Limb> limbOf(Channel c, PourCase job) {
    if (c.shape.role == Role.PIECE) {
      for (Limb limb : job.piece().limbs()) {
        if (limb.name().equals(c.shape.limb)) {
          return Optional.of(limb);
        }
      }
    }
    return Optional.empty();
  }

  /** Distance of a cell's middle from the first station of its limb [m]. */
  public double alongLimb(Channel c, int i) {
    double first = c.shape.start;
    for (Channel other : state.channels) {
      if (other.shape.limb.equals(c.shape.limb)) {
        first = Math.min(first, other.shape.start);
      }
    }
    return c.shape.start - first + (i + 0.5) * c.shape.dx;
  }

  public boolean areAny() {
    return any;
  }

  /** A front has reached the middle of a cell; its own arrival is noted already. */
  public void arrived(Channel c, int i, FrontRecorder noted) {
    int cell = c.firstCell + i;
    if (!strip[cell].isThere()) {
      return;
    }
    int from = before(c, i, noted);
    reached[cell] = true;
    if (from < 0) {
      enthalpy[cell] = noted.arrivalEnthalpy[cell];
    } else if (stopped[from]) {
      enthalpy[cell] = enthalpy[from];
      stopped[cell] = true;
    } else {
      follow(c, i, from, noted);
    }
    resting[cell] = enthalpy[cell];
  }

  /** The neighbouring cell of the same rim that metal reached last before, or -1. */
  private int before(Channel c, int i, FrontRecorder noted) {
    int low = i > 0 ? c.firstCell + i - 1 : across(c, c.jointA);
    int high = i < c.shape.cells - 1 ? c.firstCell + i + 1 : across(c, c.jointB);
    double now = noted.arrivalTime[c.firstCell + i];
    boolean fromLow = low >= 0 && reached[low] && noted.arrivalTime[low] <= now;
    boolean fromHigh = high >= 0 && reached[high] && noted.arrivalTime[high] <= now;
    if (fromLow && fromHigh) {
      return noted.arrivalTime[low] >= noted.arrivalTime[high] ? low : high;
    }
    return fromLow ? low : fromHigh ? high : -1;
  }

  /** The end cell of the same limb's next channel through a joint, or -1. */
  private int across(Channel c, int joint) {
    if (joint == ChannelGraph.CLOSED) {
      return -1;
    }
    for (int end : state.ends[joint]) {
      Channel other = state.channelOf(end);
      if (other != c && other.shape.limb.equals(c.shape.limb)) {
        return other.firstCell + (NetworkState.isEndA(end) ? 0 : other.shape.cells - 1);
      }
    }
    return -1;
  }

  /** Carries the mark on from the cell before. */
  private void follow(Channel c, int i, int from, FrontRecorder noted) {
    int cell = c.firstCell + i;
    MeltProperties melt = state.melt;
    double seconds = Math.max(0.0, noted.arrivalTime[cell] - noted.arrivalTime[from]);
    double wall = c.shape.mouldTemperature[i];
    double middle = noted.arrivalEnthalpy[from];
    double alone =
        middle
            - FrontCooling.after(
                melt, middle, seconds, FrontCooling.pull(melt, c, i), wall, c.mushShare);
    double lost = middle - noted.arrivalEnthalpy[cell];
    double kept = alone > 0.0 ? Math.max(0.0, Math.min(1.0, lost / alone)) : 1.0;
    double gap = 2.0 * c.shape.volume[i] / c.shape.wall[i];
    double warmed = (1.0 - kept) * spreading(strip[cell].gap(), noted.arrivalSpeed[cell], gap);
    double pull = melt.tipConductance(strip[cell].gap()) * strip[cell].wallPerMass();
    double after =
        FrontCooling.after(
            melt, enthalpy[from], seconds, (1.0 - warmed) * pull, wall, strip[cell].mushShare());
    if (after <= melt.enthalpyStop) {
      stopped[cell] = true;
      stopShare[cell] = (enthalpy[from] - melt.enthalpyStop) / (enthalpy[from] - after);
      after = melt.enthalpyStop;
    }
    enthalpy[cell] = after;
  }

  /** How heat spreads along the rim against the middle at one speed [-]; no more than there. */
  private double spreading(double rim, double speed, double middle) {
    DispersionLaw law = state.melt.dispersion;
    double thin = law.plates(speed, 2.0 * rim, Friction.SLOT);
    return Math.min(1.0, thin / law.plates(speed, 2.0 * middle, Friction.SLOT));
  }

  /** Cools what rests in the rims up to now and notes the pressure on what can still move. */
  public void press() {
    if (!any) {
      return;
    }
    double dt = state.time - lastTime;
    lastTime = state.time;
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE) {
        press(c, dt);
      }
    }
  }

  private void press(Channel c, double dt) {
    double over = c.full ? 0.0 : air.overpressure(c);
    for (int i = 0; i < c.shape.cells; i++) {
      int cell = c.firstCell + i;
      if (isLive(cell)) {
        if (!c.frontOf(i).isFrozen()) {
          pressed[cell] = Math.max(pressed[cell], pressureAt(c, (i + 0.5) * c.shape.dx) - over);
        }
        rest(cell, dt, heat.faceTemperature(c, c.lanes[c.lanes.length - 1], i));
      }
    }
  }

  /** Whether metal in a rim came and can still move. */
  public boolean isLive(int cell) {
    return reached[cell]
        && !stopped[cell]
        && resting[cell] > state.melt.enthalpyStop
        && skin[cell] < CLOSED * state.melt.table.latentHeat();
  }

  /** Cools metal at rest in a rim for a time [s] against a mould face [K]. */
  public void rest(int cell, double dt, double face) {
    MeltProperties melt = state.melt;
    EdgeStrip s = strip[cell];
    double pull = melt.tipConductance(s.gap()) * s.wallPerMass();
    double before = resting[cell];
    double loss = Math.max(0.0, dt * pull * (melt.table.temperature(before) - face));
    resting[cell] = FrontCooling.less(before, loss, s.mushShare());
    skin[cell] += loss - (before - resting[cell]);
  }

  /** Pressure above the open air in the metal at a place of a channel [Pa]. */
  private double pressureAt(Channel c, double s) {
    boolean byA = c.full || (c.hasPlugA() && s <= c.positionA());
    int joint = byA ? c.jointA : c.jointB;
    if (c.full && (joint == ChannelGraph.CLOSED || !state.wet[joint])) {
      byA = false;
      joint = c.jointB;
    }
    double density = state.melt.density;
    ChannelShape shape = c.shape;
    double front = c.full ? (byA ? shape.length : 0.0) : byA ? c.positionA() : c.positionB();
    double ahead = c.full ? 0.0 : air.overpressure(c);
    if (joint == ChannelGraph.CLOSED || !state.wet[joint]) {
      return ahead + density * Gravity.G * (shape.heightAt(front) - shape.heightAt(s));
    }
    double base = byA ? 0.0 : shape.length;
    double flow = byA ? c.flowA : -c.flowB;
    double speed = flow / shape.areaAt(base);
    double loss = byA ? c.losses.intoA() : c.losses.intoB();
    double inside = state.nodePressure[joint];
    inside -= flow > 0.0 ? 0.5 * density * (1.0 + loss) * speed * speed : 0.0;
    double still = inside + density * Gravity.G * (shape.heightAt(base) - shape.heightAt(s));
    if (c.full || flow <= 0.0) {
      return still;
    }
    double atFront = inside + density * Gravity.G * (shape.heightAt(base) - shape.heightAt(front));
    double drop = Math.max(0.0, atFront - ahead - pushAt(shape, front));
    return still - drop * Math.abs(s - base) / Math.max(shape.dx, Math.abs(front - base));
  }

  private double pushAt(ChannelShape shape, double s) {
    return Capillary.push(
        state.melt.capillaryStrength,
        shape.carriedTo(shape.thickness, s),
        shape.carriedTo(shape.width, s));
  }

  /** Notes that a pressure above the open air [Pa] reached a rim. */
  public void notePressure(int cell, double pressure) {
    pressed[cell] = Math.max(pressed[cell], pressure);
  }

  public EdgeStrip strip(int cell) {
    return strip[cell];
  }

  public boolean isReached(int cell) {
    return reached[cell];
  }

  public boolean isStopped(int cell) {
    return stopped[cell];
  }

  public double stopShare(int cell) {
    return stopShare[cell];
  }

  public double enthalpy(int cell) {
    return enthalpy[cell];
  }

  /** Greatest pressure on the rim while it could move [Pa]; 0 when there was none. */
  public double pressed(int cell) {
    return Math.max(0.0, pressed[cell]);
  }
}
