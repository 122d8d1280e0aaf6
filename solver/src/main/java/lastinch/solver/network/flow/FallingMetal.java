package lastinch.solver.network.flow;

import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.physics.Gravity;

/**
 * Metal in free fall: leaves dry joints and the cup, gathers speed, lands on the pool below or at
 * the far end. Friction acts on the wall it touches, as in a full channel at the same speed.
 */
public final class FallingMetal {
  /**
   * Time over which the landing rate is smoothed [s]; chosen, four of the longest steps: halved
   * stops move by 0.1 mm, heat to spare by 0.8 points at most.
   */
  private static final double SMOOTH = 20e-3;

  /**
   * Less than this share of a parcel, or of its way, does not land by itself [-]; numerical, over
   * rounding.
   */
  private static final double LEAST_LANDING = 1e-9;

  private final NetworkState state;
  private final FrontRecorder recorder;

  /** By joint: rate at which metal lands on it while it is dry, over about 20 ms [m3/s]. */
  private final double[] landing;

  private double highestFall;
  private int highestFallChannel = -1;

  public FallingMetal(NetworkState state, FrontRecorder recorder) {
    this.state = state;
    this.recorder = recorder;
    landing = new double[state.wet.length];
  }

  /** Moves all falling metal on by a step [s]. */
  public void advance(double dt) {
    for (Channel c : state.channels) {
      FallingStream stream = c.stream;
      if (stream.size() == 0) {
        continue;
      }
      double pull = pull(c);
      for (int p = 0; p < stream.size(); p++) {
        stream.advance(p, dt, pull, drag(c, stream, p));
      }
    }
  }

  /** Lands what has come to a pool or to the lower end in a step [s]. */
  public void land(double dt) {
    for (Channel c : state.channels) {
      c.landingRate *= Math.max(0.0, 1.0 - dt / SMOOTH);
      while (c.stream.size() > 0 && hasArrived(c)) {
        land(c);
      }
    }
  }

  private static double pull(Channel c) {
    return Gravity.G * Math.abs(c.shape.rise());
  }

  /** Whether some of the oldest parcel has come to where it lands. */
  private boolean hasArrived(Channel c) {
    double way = way(c);
    return c.stream.lastFallen(0) >= way
        || c.stream.fallen(0) - way > LEAST_LANDING * c.shape.length;
  }

  /**
   * Drag rate of a parcel [1/s]: none in a round channel, which a thin stream hardly touches; that
   * of both faces in a thin gap.
   */
  private double drag(Channel c, FallingStream stream, int p) {
    double fallen = Math.min(stream.fallen(p), c.shape.length);
    int cell = c.shape.cellAt(c.fallsTowardsB() ? fallen : c.shape.length - fallen);
    if (c.shape.width[cell] < 2.0 * c.shape.thickness[cell]) {
      return 0.0;
    }
    MeltProperties melt = state.melt;
    if (melt.viscosity == 0.0) {
      return 0.0;
    }
    double diameter = c.shape.hydraulicDiameter[cell];
    double reynolds = melt.density * Math.max(1e-3, stream.speed(p)) * diameter / melt.viscosity;
    return melt.friction.overSpeed(reynolds, melt.viscosity, diameter, c.shape.laminarProduct[cell])
        / melt.density;
  }

  /** How far metal falls before it lands [m]. */
  private double way(Channel c) {
    if (c.full) {
      return 0.0;
    }
    if (c.fallsTowardsB()) {
      return c.hasPlugB() ? c.positionB() : c.shape.length;
    }
    return c.hasPlugA() ? c.shape.length - c.positionA() : c.shape.length;
  }

  /** Lands what has arrived of the oldest parcel of a channel. */
  private void land(Channel c) {
    FallingStream stream = c.stream;
    double h = stream.enthalpy(0);
    double speed = arrivalSpeed(c);
    boolean down = c.fallsTowardsB();
    noteFall(c, speed);
    int lower = down ? c.jointB : c.jointA;
    boolean pool = c.full || (down ? c.hasPlugB() : c.hasPlugA());
    boolean passes = !pool && lower != ChannelGraph.CLOSED;
    double volume = arrived(c, passes);
    if (passes) {
      passOn(c, lower, volume, h, speed);
    } else {
      if (!pool) {
        startPool(c, down);
      }
      double taken = Math.min(c.emptyVolume(), volume);
      if (taken > 0.0) {
        rest(c, down, taken, h, stream.origin(0));
      }
      if (volume > taken) {
        landAtUpper(down ? c.jointA : c.jointB, volume - taken, h);
      }
    }
    if (volume < stream.volume(0)) {
      stream.cutFirst(volume, way(c));
    } else {
      stream.removeFirst();
    }
  }

  /**
   * How much of the oldest parcel has come to where it lands [m3]. A pool rises to meet the stream:
   * what it rises by what lands has arrived as well.
   */
  private double arrived(Channel c, boolean passes) {
    FallingStream stream = c.stream;
    double volume = stream.volume(0);
    double way = way(c);
    if (stream.lastFallen(0) >= way) {
      return volume;
    }
    double section = volume / (stream.fallen(0) - stream.lastFallen(0));
    double landed = section * (stream.fallen(0) - way);
    if (!passes) {
      double area = c.shape.areaAt(c.fallsTowardsB() ? way : c.shape.length - way);
      landed = section < area ? landed / (1.0 - section / area) : volume;
    }
    return landed < (1.0 - LEAST_LANDING) * volume ? landed : volume;
  }

  /** Mean speed of what has arrived when it came to where it lands; what it fell on is undone. */
  private double arrivalSpeed(Channel c) {
    double way = way(c);
    double place = 0.5 * (c.stream.fallen(0) + Math.max(way, c.stream.lastFallen(0)));
    double speed = c.stream.speedAt(0, place);
    double gained = 2.0 * pull(c) * (place - way);
    return Math.sqrt(Math.max(0.0, speed * speed - gained));
  }

  /** Lays all metal in flight between plugs that have closed on it, the lowest first. */
  void settleBetweenPlugs(Channel c) {
    boolean down = c.fallsTowardsB();
    while (c.stream.size() > 0) {
      double volume = c.stream.volume(0);
      double h = c.stream.enthalpy(0);
      double taken = Math.min(c.emptyVolume(), volume);
      if (taken > 0.0) {
        lay(c, down, taken, h);
      }
      if (volume > taken) {
        landAtUpper(down ? c.jointA : c.jointB, volume - taken, h);
      }
      c.stream.removeFirst();
    }
    c.stream.firstInFlight = false;
  }

  /** Adds metal to the plug at the lower end. */
  private void lay(Channel c, boolean down, double volume, double h) {
    double total = c.shape.totalVolume();
    if (down) {
      c.deposit(total - c.volumeB - volume, total - c.volumeB, state.melt.density, h);
      c.volumeB += volume;
    } else {
      c.deposit(c.volumeA, c.volumeA + volume, state.melt.density, h);
      c.volumeA += volume;
    }
  }

  private void passOn(Channel c, int joint, double volume, double h, double speed) {
    state.landedOrigin[joint] = c.stream.origin(0);
    double before = state.landedVolume[joint];
    state.landedVolume[joint] += volume;
    state.landedHeat[joint] += volume * h;
    state.landedSpeed[joint] =
        (state.landedSpeed[joint] * before + speed * volume) / state.landedVolume[joint];
    if (c.stream.firstInFlight) {
      c.stream.firstInFlight = false;
      state.arrive(joint, c.stream.first);
    }
  }

  private void startPool(Channel c, boolean down) {
    FrontMarker front = down ? c.frontB : c.frontA;
    front.thaw();
    front.start();
    front.copyFrom(c.stream.first);
    c.stream.firstInFlight = false;
  }

  /** Adds landed metal to the pool's surface and freshens its mark. */
  private void rest(Channel c, boolean down, double volume, double h, int origin) {
    double surface = down ? c.positionB() : c.positionA();
    recorder.landed(c, down ? c.frontB : c.frontA, surface, h, origin);
    lay(c, down, volume, h);
    c.landingRate += volume / SMOOTH;
    FrontMarker front = down ? c.frontB : c.frontA;
    int cell = c.shape.cellAt(surface);
    double skinDeep = c.shape.areaAt(surface) * c.shape.thickness[cell];
    double mixed = (front.enthalpy * skinDeep + h * volume) / (skinDeep + volume);
    front.setEnthalpy(mixed, c.firstCell + cell);
    c.choked = h <= state.melt.enthalpyStop;
    if (c.choked) {
      front.state = FrontMarker.State.STOPPED;
    } else if (front.isStopped() && mixed > state.melt.enthalpyStop) {
      front.state = FrontMarker.State.RUNNING;
    }
  }

  private void landAtUpper(int joint, double volume, double h) {
    if (joint == ChannelGraph.CUP) {
      state.returnToCup(volume, volume * h);
    } else {
      double before = state.landedVolume[joint];
      state.landedVolume[joint] += volume;
      state.landedHeat[joint] += volume * h;
      state.landedSpeed[joint] *= before / state.landedVolume[joint];
    }
  }

  private void noteFall(Channel c, double speed) {
    double height = speed * speed / (2.0 * Gravity.G);
    boolean inPiece =
        c.shape.role == lastinch.solver.result.PassageRecord.Role.PIECE
            || c.shape.role == lastinch.solver.result.PassageRecord.Role.BOSS;
    if (inPiece && height > highestFall) {
      highestFall = height;
      highestFallChannel = c.index;
    }
  }

  /** Greatest height that metal fell free into the piece [m]. */
  public double highestFall() {
    return highestFall;
  }

  /** Channel of that fall, or -1. */
  public int highestFallChannel() {
    return highestFallChannel;
  }

  /** Keeps count of what lands at joints, once a step [s]. */
  public void countLanding(double dt) {
    double kept = Math.max(0.0, 1.0 - dt / SMOOTH);
    for (int j = 0; j < landing.length; j++) {
      landing[j] = landing[j] * kept + state.landedVolume[j] / SMOOTH;
    }
  }

  /** Whether more lands at a dry joint than the mouths of its falling outlets can swallow. */
  boolean overwhelms(int joint) {
    double swallowed = 0.0;
    for (int end : state.ends[joint]) {
      double area = outletArea(end);
      if (area > 0.0) {
        swallowed += area * mouthSpeed(state.channelOf(end), end, state.landedSpeed[joint]);
      }
    }
    return landing[joint] > swallowed;
  }

  /** Speed in a mouth: what is left of the landing speed, at least that of one diameter's fall. */
  private static double mouthSpeed(Channel c, int end, double speed) {
    double rise = Math.abs(c.shape.rise());
    int cell = NetworkState.isEndA(end) ? 0 : c.shape.cells - 1;
    double least = Math.sqrt(2.0 * Gravity.G * rise * c.shape.hydraulicDiameter[cell]);
    return Math.max(speed * rise, least);
  }

  /** Sends what landed at dry joints in a step [s] down their falling outlets. */
  public void send(double dt) {
    for (int j = 1; j < state.wet.length; j++) {
      if (!state.wet[j] && state.landedVolume[j] > 0.0) {
        double area = 0.0;
        for (int end : state.ends[j]) {
          area += outletArea(end);
        }
        if (area > 0.0) {
          sendShares(j, area, dt);
        }
      }
    }
  }

  private void sendShares(int joint, double area, double dt) {
    double volume = state.landedVolume[joint];
    double h = state.landedHeat[joint] / volume;
    double speed = state.landedSpeed[joint];
    for (int end : state.ends[joint]) {
      double share = outletArea(end) / area;
      if (share > 0.0) {
        Channel c = state.channelOf(end);
        if (!c.stream.firstInFlight && c.stream.size() == 0 && !c.hasPlugA() && !c.hasPlugB()) {
          c.stream.first.copyFrom(state.arrived[joint]);
          c.stream.firstInFlight = true;
        }
        c.stream.source = state.landedOrigin[joint];
        c.stream.release(volume * share, h, speed * Math.abs(c.shape.rise()), dt, pull(c));
      }
    }
    state.landedVolume[joint] = 0.0;
    state.landedHeat[joint] = 0.0;
    state.landedSpeed[joint] = 0.0;
  }

  /** Open area of a falling outlet that can still take metal [m2]; 0 otherwise. */
  double outletArea(int end) {
    Channel c = state.channelOf(end);
    if (!state.fallsAway(end) || c.full || c.choked || c.gapVolume() <= 0.0) {
      return 0.0;
    }
    boolean hanging = NetworkState.isEndA(end) ? c.hasPlugA() : c.hasPlugB();
    if (hanging) {
      return 0.0;
    }
    return NetworkState.isEndA(end) ? c.shape.faceArea[0] : c.shape.faceArea[c.shape.cells];
  }

  /** Lets the cup drain into an unfilled sprue for a step [s]. */
  public void drainCup(double dt) {
    boolean stiff = state.melt.enthalpyIn <= state.melt.enthalpyStop && !state.melt.water;
    if (state.wet[ChannelGraph.CUP] || stiff) {
      return;
    }
    double volume = state.cup.drainFree(dt);
    if (volume <= 0.0) {
      return;
    }
    Channel sprue = state.channelOf(state.ends[ChannelGraph.CUP][0]);
    if (!sprue.stream.firstInFlight && sprue.stream.size() == 0 && !sprue.hasPlugB()) {
      FrontMarker first = sprue.stream.first;
      first.take(state.melt.enthalpyIn);
      first.setEnthalpy(state.cupEnthalpy, sprue.firstCell);
      sprue.stream.firstInFlight = true;
    }
    sprue.stream.release(volume, state.cupEnthalpy, state.cup.leavingSpeed(), dt, pull(sprue));
  }
}
