package lastinch.solver.network.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.FilmForming;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.EdgeStrips;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.heat.FrontMarkers;
import lastinch.solver.physics.LapIndex;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;

/** Notes what fronts leave behind: arrivals, laps, gate speeds, the path of the leading metal. */
public final class FrontRecorder {
  /**
   * Time that the front of metal takes to arrive [s]: a depth of 10 mm at 0.5 m/s; estimate, no
   * source.
   */
  private static final double ARRIVING = 20e-3;

  /** Fronts that parted by less than this since they last met meet no second time [m]. */
  private static final double PARTED = 5e-3;

  /** A plug under this share of its channel has not gone anywhere [-]. */
  private static final double BARELY = 1e-3;

  public final NetworkState state;
  private final FilmForming film;
  private final FrontTrail trail;
  private FrontMarkers tips;
  private EdgeStrips rims;
  public final double[] arrivalTime;
  public final double[] arrivalEnthalpy;
  public final double[] arrivalSpeed;
  public final double[] freezeTime;
  final double[] lapIndex;
  public final double[] peakSpeed;
  public final double[] firstTime;

  /** By cell: channel of the gate that its first metal came through. */
  final int[] origin;

  private final double[] smoothSpeed;

  /** By channel: longest empty stretch since fronts last met in it [m]. */
  private final double[] widest;

  /** By channel: when metal last fell onto a pool in it [s]. */
  private final double[] landedAt;

  private final double[] oldA;
  private final double[] oldB;
  private final List<Meeting> meetings = new ArrayList<>();
  private double lastPress;

  public FrontRecorder(NetworkState state, Alloy alloy) {
    this.state = state;
    film = alloy.film();
    trail = new FrontTrail(state);
    int cells = state.allCells;
    arrivalTime = new double[cells];
    Arrays.fill(arrivalTime, Double.POSITIVE_INFINITY);
    arrivalEnthalpy = new double[cells];
    arrivalSpeed = new double[cells];
    freezeTime = new double[cells];
    origin = new int[cells];
    lapIndex = new double[cells];
    int n = state.channels.length;
    peakSpeed = new double[n];
    firstTime = new double[n];
    smoothSpeed = new double[n];
    widest = new double[n];
    for (Channel c : state.channels) {
      widest[c.index] = c.shape.length;
    }
    Arrays.fill(firstTime, Double.POSITIVE_INFINITY);
    landedAt = new double[n];
    oldA = new double[n];
    oldB = new double[n];
  }

  public void watch(FrontMarkers leadingMetal, EdgeStrips thinRims) {
    this.tips = leadingMetal;
    this.rims = thinRims;
  }

  /** Keeps where fronts stand before a step. */
  public void beginStep() {
    for (Channel c : state.channels) {
      oldA[c.index] = c.hasPlugA() ? c.positionA() : 0.0;
      oldB[c.index] = c.hasPlugB() ? c.positionB() : c.shape.length;
    }
  }

  /** Notes cells that fronts passed in a step [s] that ended at the state's time. */
  public void endStep(double dt) {
    for (Channel c : state.channels) {
      if (c.hasPlugA()) {
        passed(c, c.frontA, oldA[c.index], c.positionA(), dt);
      }
      if (c.hasPlugB()) {
        passed(c, c.frontB, oldB[c.index], c.positionB(), dt);
      }
      noteSpeed(c, dt);
      widest[c.index] = Math.max(widest[c.index], emptyLength(c));
    }
    if (state.time - lastPress >= FrontTrail.EVERY) {
      rims.press();
      lastPress = state.time;
    }
    trail.sample();
  }

  private static double emptyLength(Channel c) {
    if (c.full) {
      return 0.0;
    }
    double from = c.hasPlugA() ? c.positionA() : 0.0;
    double to = c.hasPlugB() ? c.positionB() : c.shape.length;
    return Math.max(0.0, to - from);
  }

  /**
   * Speeds are smoothed: a plug's flat front brings its whole column to a gate at once, which
   * shoots for about a millisecond; the front of real metal is as long as a runner is deep and
   * takes some {@value #ARRIVING} s to arrive.
   */
  private void noteSpeed(Channel c, double dt) {
    boolean wetNow = c.volumeA > 0.0 || c.volumeB > 0.0 || c.stream.size() > 0;
    if (!wetNow) {
      return;
    }
    if (!Double.isFinite(firstTime[c.index])) {
      firstTime[c.index] = state.time;
    }
    double flow = Math.max(Math.abs(c.flowA), Math.abs(c.flowB));
    double narrowest = Math.min(c.shape.faceArea[0], c.shape.faceArea[c.shape.cells]);
    smoothSpeed[c.index] += (flow / narrowest - smoothSpeed[c.index]) * dt / (ARRIVING + dt);
    peakSpeed[c.index] = Math.max(peakSpeed[c.index], smoothSpeed[c.index]);
  }

  private void passed(Channel c, FrontMarker front, double from, double to, double dt) {
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    int first = (int) Math.ceil(low / c.shape.dx - 0.5);
    int last = (int) Math.floor(high / c.shape.dx - 0.5);
    for (int i = Math.max(0, first); i <= Math.min(c.shape.cells - 1, last); i++) {
      int cell = c.firstCell + i;
      if (Double.isFinite(arrivalTime[cell])) {
        continue;
      }
      double share = high > low ? Math.abs((i + 0.5) * c.shape.dx - from) / (high - low) : 1.0;
      double speed =
          c.landingRate > 0.0
              ? c.landingRate / c.shape.areaAt((i + 0.5) * c.shape.dx)
              : dt > 0.0 ? (high - low) / dt : 0.0;
      note(c, i, front, state.time - dt * (1.0 - share), speed);
    }
  }

  private void note(Channel c, int i, FrontMarker front, double when, double speed) {
    int cell = c.firstCell + i;
    arrivalTime[cell] = when;
    arrivalEnthalpy[cell] = front.enthalpy;
    arrivalSpeed[cell] = speed;
    origin[cell] = front.origin;
    double at = (i + 0.5) * c.shape.dx;
    freezeTime[cell] = when + tips.secondsLeft(c, at, front.enthalpy);
    lapIndex[cell] = lap(c, i, front, speed);
    rims.arrived(c, i, this);
  }

  private double lap(Channel c, int i, FrontMarker front, double speed) {
    MeltProperties melt = state.melt;
    if (melt.water) {
      return 0.0;
    }
    double gap = 2.0 * c.shape.volume[i] / c.shape.wall[i];
    double tau = LapIndex.tau(gap, melt.capillaryLength, speed, front.slowFor);
    double flux =
        melt.tipConductance(gap)
            * Math.max(0.0, melt.table.temperature(front.enthalpy) - c.shape.mouldTemperature[i]);
    double drop =
        LapIndex.surfaceDrop(flux, tau, melt.conductivity, melt.density, melt.specificHeat);
    double surface = LapIndex.surfaceEnthalpy(front.enthalpy, melt.specificHeat, drop);
    return LapIndex.index(Math.min(1.0, melt.table.solid(surface)), melt.flowStop, film);
  }

  /** Notes metal that was there before the first step. */
  public void inPlace(Channel c, FrontMarker front) {
    for (int i = 0; i < c.shape.cells; i++) {
      if (c.wet[i] >= 0.5 * c.shape.volume[i]) {
        note(c, i, front, 0.0, 0.0);
      }
    }
  }

  /** A channel has just been filled; its last cells may not have been passed by a cell middle. */
  public void filled(Channel c, boolean byA, boolean byB) {
    FrontMarker front = byA ? c.frontA : c.frontB;
    if (!byA && !byB) {
      return;
    }
    for (int i = 0; i < c.shape.cells; i++) {
      if (!Double.isFinite(arrivalTime[c.firstCell + i])) {
        note(c, i, front, state.time, Math.abs(front.speed));
      }
    }
  }

  /**
   * Two fronts meet in a channel of the piece. Metal that rises to where it fell from, and fronts
   * that have hardly parted since they last met, make no new line.
   */
  public void meeting(Channel c) {
    boolean apart = widest[c.index] >= Math.min(PARTED, 0.5 * c.shape.length);
    widest[c.index] = 0.0;
    if (!c.shape.isPiece() || state.melt.water || !apart || risesIntoItsFall(c)) {
      return;
    }
    meet(c, 0.5 * (c.positionA() + c.positionB()), c.frontA, c.frontB);
  }

  /** A front comes to the end of its channel as another comes there through another channel. */
  public void meetingAtEnd(Channel c, FrontMarker front, FrontMarker other) {
    if (c.shape.isPiece() && !state.melt.water) {
      meet(c, front == c.frontA ? c.shape.length : 0.0, front, other);
    }
  }

  /**
   * Metal falls on a pool. One whose surface had stood and that came through another gate meets it
   * there; what falls after it is its own.
   */
  public void landed(Channel c, FrontMarker pool, double at, double enthalpy, int gate) {
    boolean stood =
        pool.isStopped()
            || (state.time - landedAt[c.index] > FrontMarkers.HOLDING_TIME
                && Math.abs(pool.speed) < FrontMarkers.HOLDING_SPEED);
    landedAt[c.index] = state.time;
    if (pool.origin == gate) {
      return;
    }
    boolean metal = c.volumeA > 0.0 || c.volumeB > 0.0;
    if (stood && metal && c.shape.isPiece() && !state.melt.water) {
      boolean clean = isClean(c, at, pool);
      meet(c, at, pool.enthalpy, pool.origin, enthalpy, gate, clean);
    }
    pool.origin = gate;
  }

  private boolean isClean(Channel c, double at, FrontMarker front) {
    return film != FilmForming.YES
        || lap(c, c.shape.cellAt(at), front, Math.abs(front.speed)) < LapStretch.CLEAN;
  }

  private void meet(Channel c, double at, FrontMarker one, FrontMarker other) {
    boolean clean = isClean(c, at, one) && isClean(c, at, other);
    meet(c, at, one.enthalpy, one.origin, other.enthalpy, other.origin, clean);
  }

  private void meet(
      Channel c, double at, double hA, int gateA, double hB, int gateB, boolean clean) {
    double solid = 0.5 * (state.melt.table.solid(hA) + state.melt.table.solid(hB));
    boolean liquid = hA > 0.0 && hB > 0.0;
    Meeting.Kind kind =
        liquid && clean
            ? Meeting.Kind.JOINED
            : solid <= 0.5 * state.melt.flowStop ? Meeting.Kind.LAP : Meeting.Kind.COLD_SHUT;
    meetings.add(
        new Meeting(
            c.shape.limb,
            at + offset(c),
            state.time,
            state.melt.table.temperature(hA),
            state.melt.table.temperature(hB),
            solid,
            kind,
            gate(gateA),
            gate(gateB)));
  }

  /** Name of a gate by its channel; empty for metal that came through none. */
  String gate(int channel) {
    return channel == FrontMarker.NO_GATE ? "" : state.channels[channel].shape.name;
  }

  private static boolean risesIntoItsFall(Channel c) {
    double least = BARELY * c.shape.totalVolume();
    return (c.fallsTowardsB() && c.volumeA < least) || (c.fallsTowardsA() && c.volumeB < least);
  }

  public List<Meeting> meetings() {
    return meetings;
  }

  /** Distance of a channel's beginning from the beginning of the limb or boss it is part of [m]. */
  public double offset(Channel c) {
    double first = c.shape.start;
    for (Channel other : state.channels) {
      if (other.shape.limb.equals(c.shape.limb)) {
        first = Math.min(first, other.shape.start);
      }
    }
    return c.shape.isPiece() ? c.shape.start - first : 0.0;
  }

  /** Path of the leading metal. */
  public FrontTrack track() {
    double[] offset = new double[state.channels.length];
    for (Channel c : state.channels) {
      offset[c.index] = offset(c);
    }
    return trail.track(offset);
  }

  /** Records of all channels, heights counted from the lowest end. */
  public List<PassageRecord> passages(double stopTime) {
    double lowest = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      lowest = Math.min(lowest, Math.min(c.shape.heightA, c.shape.heightB));
    }
    Map<String, PassageParts> parts = new LinkedHashMap<>();
    for (Channel c : state.channels) {
      parts.computeIfAbsent(c.shape.limb, n -> new PassageParts(this, n)).add(c);
    }
    List<PassageRecord> records = new ArrayList<>();
    for (PassageParts p : parts.values()) {
      records.add(p.join(lowest, stopTime));
    }
    return records;
  }
}
