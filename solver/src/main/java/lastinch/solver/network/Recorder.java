package lastinch.solver.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.FilmForming;
import lastinch.solver.physics.LapIndex;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PassageRecord;

/** Notes what fronts leave behind: arrivals, laps, gate speeds, the path of the leading metal. */
final class Recorder {
  private static final int SAMPLES = 16384;
  private static final double EVERY = 2e-3;

  private final State state;
  private final FilmForming film;
  private Tips tips;
  final double[] arrivalTime;
  final double[] arrivalEnthalpy;
  final double[] arrivalSpeed;
  final double[] freezeTime;
  final double[] lapIndex;
  final double[] peakSpeed;
  final double[] firstTime;
  private final double[] oldA;
  private final double[] oldB;
  private final int[] trackChannel = new int[SAMPLES];
  private final double[] trackTime = new double[SAMPLES];
  private final double[] trackAt = new double[SAMPLES];
  private final double[] trackSpeed = new double[SAMPLES];
  private final double[] trackEnthalpy = new double[SAMPLES];
  private int samples;
  private double lastSample = Double.NEGATIVE_INFINITY;
  private int lastChannel = -1;

  Recorder(State state, Alloy alloy) {
    this.state = state;
    film = alloy.film();
    int cells = state.allCells;
    arrivalTime = new double[cells];
    Arrays.fill(arrivalTime, Double.POSITIVE_INFINITY);
    arrivalEnthalpy = new double[cells];
    arrivalSpeed = new double[cells];
    freezeTime = new double[cells];
    lapIndex = new double[cells];
    int n = state.channels.length;
    peakSpeed = new double[n];
    firstTime = new double[n];
    Arrays.fill(firstTime, Double.POSITIVE_INFINITY);
    oldA = new double[n];
    oldB = new double[n];
  }

  void watch(Tips leadingMetal) {
    this.tips = leadingMetal;
  }

  /** Keeps where fronts stand before a step. */
  void beginStep() {
    for (Channel c : state.channels) {
      oldA[c.index] = c.hasPlugA() ? c.positionA() : 0.0;
      oldB[c.index] = c.hasPlugB() ? c.positionB() : c.shape.length;
    }
  }

  /** Notes cells that fronts passed in a step [s] that ended at the state's time. */
  void endStep(double dt) {
    for (Channel c : state.channels) {
      if (c.hasPlugA()) {
        passed(c, c.frontA, oldA[c.index], c.positionA(), dt);
      }
      if (c.hasPlugB()) {
        passed(c, c.frontB, oldB[c.index], c.positionB(), dt);
      }
      noteSpeed(c);
    }
    sample();
  }

  private void noteSpeed(Channel c) {
    boolean wetNow = c.volumeA > 0.0 || c.volumeB > 0.0 || c.stream.size() > 0;
    if (!wetNow) {
      return;
    }
    if (!Double.isFinite(firstTime[c.index])) {
      firstTime[c.index] = state.time;
    }
    double flow = Math.max(Math.abs(c.flowA), Math.abs(c.flowB));
    double narrowest = Math.min(c.shape.faceArea[0], c.shape.faceArea[c.shape.cells]);
    peakSpeed[c.index] = Math.max(peakSpeed[c.index], flow / narrowest);
  }

  private void passed(Channel c, Front front, double from, double to, double dt) {
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
      note(c, i, front, state.time - dt * (1.0 - share), dt > 0.0 ? (high - low) / dt : 0.0);
    }
  }

  private void note(Channel c, int i, Front front, double when, double speed) {
    int cell = c.firstCell + i;
    arrivalTime[cell] = when;
    arrivalEnthalpy[cell] = front.enthalpy;
    arrivalSpeed[cell] = speed;
    double at = (i + 0.5) * c.shape.dx;
    freezeTime[cell] = when + tips.secondsLeft(c, at, front.enthalpy);
    lapIndex[cell] = lap(c, i, front, speed);
  }

  private double lap(Channel c, int i, Front front, double speed) {
    Melt melt = state.melt;
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

  /** A channel has just been filled; its last cells may not have been passed by a cell middle. */
  void filled(Channel c, boolean byA, boolean byB) {
    Front front = byA ? c.frontA : c.frontB;
    if (!byA && !byB) {
      return;
    }
    for (int i = 0; i < c.shape.cells; i++) {
      if (!Double.isFinite(arrivalTime[c.firstCell + i])) {
        note(c, i, front, state.time, Math.abs(front.speed));
      }
    }
  }

  /** Two fronts meet in a channel of this solver only when a fall and a pool do. */
  void meeting(Channel c) {
    firstTime[c.index] = Math.min(firstTime[c.index], state.time);
  }

  private void sample() {
    int leading = -1;
    double at = 0.0;
    double speed = 0.0;
    double enthalpy = 0.0;
    for (Channel c : state.channels) {
      if (c.shape.role == PassageRecord.Role.WELL) {
        continue;
      }
      if (c.stream.firstInFlight && c.stream.size() > 0) {
        leading = c.index;
        double fallen = Math.min(c.shape.length, c.stream.fallen(0));
        at = c.fallsTowardsB() ? fallen : c.shape.length - fallen;
        speed = c.stream.speed(0);
        enthalpy = c.stream.first.enthalpy;
      } else if (c.hasPlugB() && c.volumeB > 0.0) {
        leading = c.index;
        at = c.positionB();
        speed = c.frontB.speed;
        enthalpy = c.frontB.enthalpy;
      } else if (!c.full && c.hasPlugA() && c.volumeA > 0.0) {
        leading = c.index;
        at = c.positionA();
        speed = c.frontA.speed;
        enthalpy = c.frontA.enthalpy;
      }
    }
    boolean due = leading != lastChannel || state.time - lastSample >= EVERY;
    if (leading < 0 || !due || samples >= SAMPLES) {
      return;
    }
    trackChannel[samples] = leading;
    trackTime[samples] = state.time;
    trackAt[samples] = at;
    trackSpeed[samples] = speed;
    trackEnthalpy[samples] = enthalpy;
    samples++;
    lastSample = state.time;
    lastChannel = leading;
  }

  FrontTrack track() {
    String[] names = new String[samples];
    double[] temperature = new double[samples];
    for (int i = 0; i < samples; i++) {
      names[i] = state.channels[trackChannel[i]].shape.name;
      temperature[i] = state.melt.table.temperature(trackEnthalpy[i]);
    }
    return new FrontTrack(
        names,
        Arrays.copyOf(trackTime, samples),
        Arrays.copyOf(trackAt, samples),
        Arrays.copyOf(trackSpeed, samples),
        temperature);
  }

  /** Records of all channels, heights counted from the lowest end. */
  List<PassageRecord> passages(double stopTime) {
    double lowest = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      lowest = Math.min(lowest, Math.min(c.shape.heightA, c.shape.heightB));
    }
    List<PassageRecord> records = new ArrayList<>();
    for (Channel c : state.channels) {
      records.add(passage(c, lowest, stopTime));
    }
    return records;
  }

  private PassageRecord passage(Channel c, double lowest, double stopTime) {
    ChannelShape shape = c.shape;
    int n = shape.cells;
    double[] at = new double[n];
    double[] height = new double[n];
    double[] temperature = new double[n];
    double[] solid = new double[n];
    double[] freeze = new double[n];
    double[] finalTemperature = new double[n];
    double[] finalSolid = new double[n];
    for (int i = 0; i < n; i++) {
      int cell = c.firstCell + i;
      at[i] = (i + 0.5) * shape.dx;
      height[i] = shape.heightAt(at[i]) - lowest;
      boolean reached = Double.isFinite(arrivalTime[cell]);
      temperature[i] = reached ? state.melt.table.temperature(arrivalEnthalpy[cell]) : 0.0;
      solid[i] = reached ? state.melt.table.solid(arrivalEnthalpy[cell]) : 0.0;
      freeze[i] = reached ? freezeTime[cell] : stopTime;
      double h = c.enthalpy(i, state.melt.density);
      finalTemperature[i] =
          c.wet[i] > 0.0 ? state.melt.table.temperature(h) : shape.mouldTemperature[i];
      finalSolid[i] = c.wet[i] > 0.0 ? state.melt.table.solid(h) : 0.0;
    }
    return new PassageRecord(
        shape.name,
        shape.role,
        shape.length,
        shape.start,
        at,
        shape.width,
        shape.thickness,
        height,
        part(c, arrivalTime),
        temperature,
        solid,
        part(c, arrivalSpeed),
        freeze,
        finalTemperature,
        finalSolid,
        part(c, lapIndex));
  }

  private static double[] part(Channel c, double[] all) {
    return Arrays.copyOfRange(all, c.firstCell, c.firstCell + c.shape.cells);
  }
}
