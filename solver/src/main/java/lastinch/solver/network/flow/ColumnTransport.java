package lastinch.solver.network.flow;

import lastinch.solver.charge.DispersionLaw;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.numerics.ImplicitDiffusion;
import lastinch.solver.numerics.VanLeerFlux;
import lastinch.solver.result.PassageRecord.Role;

/**
 * Carries metal and its heat with the flows of a step: conservative, bounded, second order where
 * three cells are full; the leading metal's own mark is the neighbour downstream of the last full
 * cell, and what spills into a fresh cell carries that mark. Axial spreading is implicit.
 */
public final class ColumnTransport {
  /** Metal under this share of a cell is a drop that rounding has left [-]; numerical. */
  private static final double DROP = 1e-12;

  private final NetworkState state;
  private final LaneFlow lanes;
  private final double[] mixVolume;
  private final double[] mixHeat;
  private final double[] capacity;
  private final double[] link;
  private final double[] spreadEnthalpy;
  private final double[] scratchA;
  private final double[] scratchB;

  public ColumnTransport(NetworkState state) {
    this.state = state;
    mixVolume = new double[state.wet.length];
    mixHeat = new double[state.wet.length];
    int longest = 0;
    for (Channel c : state.channels) {
      longest = Math.max(longest, c.shape.cells);
    }
    lanes = new LaneFlow(state.melt, longest);
    capacity = new double[longest];
    link = new double[longest];
    spreadEnthalpy = new double[longest];
    scratchA = new double[longest];
    scratchB = new double[longest];
  }

  /** Moves all plugs on by a step [s]. */
  public void advance(double dt) {
    for (int j = 0; j < mixVolume.length; j++) {
      mixVolume[j] = 0.0;
      mixHeat[j] = 0.0;
    }
    for (Channel c : state.channels) {
      if (c.isEmpty()) {
        continue;
      }
      double newA = c.full ? c.volumeA : Math.max(0.0, c.volumeA + c.flowA * dt);
      double newB = c.full ? 0.0 : Math.max(0.0, c.volumeB - c.flowB * dt);
      refreshMobile(c);
      c.setCrossings(newA, newB, dt);
      lanes.part(c);
      for (int k = 0; k < c.lanes.length; k++) {
        carryInside(c, k);
      }
      collectOutflow(c);
      c.volumeA = newA;
      c.volumeB = newB;
    }
    for (int j = 0; j < mixVolume.length; j++) {
      if (j == ChannelGraph.CUP && state.wet[j]) {
        mixCup(mixVolume[j], mixHeat[j]);
        state.jointEnthalpy[j] = state.cupEnthalpy;
      } else if (state.wet[j]) {
        state.jointEnthalpy[j] =
            mixVolume[j] > 0.0 ? mixHeat[j] / mixVolume[j] : standing(j, state.jointEnthalpy[j]);
      } else if (mixVolume[j] > 0.0) {
        land(j);
      }
    }
    for (Channel c : state.channels) {
      if (!c.isEmpty()) {
        takeInflow(c);
        apply(c);
      }
    }
  }

  private void mixCup(double volume, double heat) {
    if (volume > 0.0) {
      state.returnToCup(volume, heat);
    }
  }

  /** Enthalpy of metal that stands at a joint which nothing flows to: that of the ends there. */
  private double standing(int joint, double otherwise) {
    double area = 0.0;
    double sum = 0.0;
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      int last = c.shape.cells - 1;
      int cell = NetworkState.isEndA(end) ? 0 : last;
      if (c.wet[cell] > 0.0) {
        double face = c.shape.faceArea[NetworkState.isEndA(end) ? 0 : last + 1];
        area += face;
        sum += face * c.mobile(cell);
      }
    }
    return area > 0.0 ? sum / area : otherwise;
  }

  private void land(int joint) {
    state.landedOrigin[joint] = origin(joint);
    double before = state.landedVolume[joint];
    state.landedVolume[joint] += mixVolume[joint];
    state.landedHeat[joint] += mixHeat[joint];
    state.landedSpeed[joint] =
        (state.landedSpeed[joint] * before + mixVolume[joint] * arrivalSpeed(joint))
            / state.landedVolume[joint];
  }

  /** Channel of the gate that the fastest metal at a joint came through. */
  private int origin(int joint) {
    int origin = FrontMarker.NO_GATE;
    double most = 0.0;
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      double out = NetworkState.isEndA(end) ? -c.flowA : c.full ? c.flowA : c.flowB;
      if (out > most) {
        most = out;
        origin = c.shape.role == Role.GATE ? c.index : c.leadingFront().origin;
      }
    }
    return origin;
  }

  private double arrivalSpeed(int joint) {
    double fastest = 0.0;
    for (int end : state.ends[joint]) {
      Channel c = state.channelOf(end);
      double speed =
          NetworkState.isEndA(end)
              ? -c.flowA / c.shape.faceArea[0]
              : (c.full ? c.flowA : c.flowB) / c.shape.faceArea[c.shape.cells];
      fastest = Math.max(fastest, speed);
    }
    return fastest;
  }

  /** Recomputes the enthalpy of what moves in each cell. */
  private void refreshMobile(Channel c) {
    double density = state.melt.density;
    for (Lane lane : c.lanes) {
      for (int i = 0; i < c.wet.length; i++) {
        double mass = c.mass(lane, i, density);
        // a plug that has all but drawn back leaves less than a number can hold
        if (mass >= Double.MIN_NORMAL) {
          lane.mobile[i] = lanes.mobile(lane.heat[i] / mass, lane.skinShare(i, mass));
        }
      }
    }
  }

  private void carryInside(Channel c, int which) {
    Lane lane = c.lanes[which];
    int n = c.shape.cells;
    double tipA = c.volumeA;
    double tipB = c.shape.totalVolume() - c.volumeB;
    for (int f = 1; f < n; f++) {
      double crossing = lane.crossing[f];
      if (crossing == 0.0) {
        continue;
      }
      boolean forward = crossing > 0.0;
      double below = c.shape.volumeTo[f];
      if (forward && !c.full && c.frontA.isPresent() && tipA <= below && tipB > below) {
        lane.carried[f] = c.frontA.of(which);
        continue;
      }
      if (!forward && !c.full && c.frontB.isPresent() && tipB >= below && tipA < below) {
        lane.carried[f] = c.frontB.of(which);
        continue;
      }
      int up = forward ? f - 1 : f;
      int down = forward ? f : f - 1;
      int before = forward ? f - 2 : f + 1;
      double hUp = lane.mobile[up];
      double hDown = isFull(c, down) ? lane.mobile[down] : tipOr(c, forward, which, hUp);
      double hBefore = before >= 0 && before < n && isFull(c, before) ? lane.mobile[before] : hUp;
      double wet = lane.share[up] * c.wet[up];
      double free = lane.skin[up] == 0.0 ? wet : wet - lane.skin[up] / state.melt.density;
      double courant = free > 0.0 ? Math.min(1.0, Math.abs(crossing) / free) : 1.0;
      double carried = VanLeerFlux.face(hBefore, hUp, hDown, courant);
      lane.carried[f] = withSkin(c, lane, up, Math.abs(crossing), carried);
    }
  }

  /**
   * Enthalpy of what leaves a cell [J/kg]: metal that runs dry takes the skin of its place along,
   * so that no heat stays where no metal is.
   */
  private double withSkin(Channel c, Lane lane, int i, double out, double carried) {
    double density = state.melt.density;
    double skin = lane.skin[i] / density;
    if (skin == 0.0) {
      return carried;
    }
    double after = lane.share[i] * Math.max(0.0, c.wet[i] + c.crossing[i] - c.crossing[i + 1]);
    if (skin <= after) {
      return carried;
    }
    double free = Math.max(0.0, lane.share[i] * c.wet[i] - skin);
    double skinHeat = (lane.heat[i] / density - free * lane.mobile[i]) / skin;
    double taken = Math.min(out, skin - after);
    return carried + taken / out * (skinHeat - carried);
  }

  private static boolean isFull(Channel c, int i) {
    return c.wet[i] > 0.999999 * c.shape.volume[i];
  }

  private static double tipOr(Channel c, boolean forward, int lane, double otherwise) {
    FrontMarker front = forward ? c.frontA : c.frontB;
    return front.isPresent() ? front.of(lane) : otherwise;
  }

  private void collectOutflow(Channel c) {
    int n = c.shape.cells;
    for (Lane lane : c.lanes) {
      if (lane.crossing[0] < 0.0) {
        double out = -lane.crossing[0];
        lane.carried[0] = withSkin(c, lane, 0, out, lane.mobile[0]);
        addTo(c.jointA, out, lane.carried[0]);
      }
      if (lane.crossing[n] > 0.0) {
        double out = lane.crossing[n];
        lane.carried[n] = withSkin(c, lane, n - 1, out, lane.mobile[n - 1]);
        addTo(c.jointB, out, lane.carried[n]);
      }
    }
  }

  private void addTo(int joint, double volume, double enthalpy) {
    mixVolume[joint] += volume;
    mixHeat[joint] += volume * enthalpy;
  }

  private void takeInflow(Channel c) {
    int n = c.shape.cells;
    if (c.crossing[0] > 0.0) {
      double in = inflowFrom(c.jointA, c.crossing[0]);
      for (Lane lane : c.lanes) {
        lane.carried[0] = in;
      }
    }
    if (c.crossing[n] < 0.0) {
      double in = inflowFrom(c.jointB, -c.crossing[n]);
      for (Lane lane : c.lanes) {
        lane.carried[n] = in;
      }
    }
  }

  private double inflowFrom(int joint, double volume) {
    if (joint == ChannelGraph.CUP) {
      if (!state.cupIsHeld) {
        state.cup.draw(volume);
      }
      return state.cupEnthalpy;
    }
    return state.jointEnthalpy[joint];
  }

  private void apply(Channel c) {
    c.passed += c.crossing[c.shape.cells];
    c.mostPassed = Math.max(c.mostPassed, c.passed);
    for (Lane lane : c.lanes) {
      carryHeat(lane);
    }
    double[] wet = c.wet;
    for (int i = 0; i < wet.length; i++) {
      double in = c.crossing[i];
      double out = c.crossing[i + 1];
      if (in != 0.0 || out != 0.0) {
        double before = wet[i];
        wet[i] += in - out;
        if (c.hasRims()) {
          lanes.level(c, i, before);
        }
        for (Lane lane : c.lanes) {
          double most = wet[i] > 0.0 ? c.mass(lane, i, state.melt.density) : 0.0;
          lane.skin[i] = lane.skin[i] < most ? lane.skin[i] : most;
        }
      }
    }
    for (int i = 0; i < wet.length; i++) {
      if (wet[i] != 0.0 && wet[i] < DROP * c.shape.volume[i]) {
        joinDrop(c, i);
      }
    }
  }

  private void carryHeat(Lane lane) {
    double density = state.melt.density;
    double in = lane.crossing[0];
    double heatIn = in == 0.0 ? 0.0 : in * lane.carried[0];
    for (int i = 0; i < lane.heat.length; i++) {
      double out = lane.crossing[i + 1];
      double heatOut = out == 0.0 ? 0.0 : out * lane.carried[i + 1];
      if (in != 0.0 || out != 0.0) {
        lane.heat[i] += density * (heatIn - heatOut);
      }
      in = out;
      heatIn = heatOut;
    }
  }

  /** Rounding leaves a drop where a plug has drawn back; it stays with the plug. */
  private static void joinDrop(Channel c, int i) {
    boolean below = i > 0 && c.wet[i - 1] > c.wet[i];
    boolean above = i + 1 < c.wet.length && c.wet[i + 1] > c.wet[i];
    if (!below && !above) {
      return;
    }
    int to = below && (!above || c.wet[i - 1] > c.wet[i + 1]) ? i - 1 : i + 1;
    c.wet[to] += c.wet[i];
    c.wet[i] = 0.0;
    for (Lane lane : c.lanes) {
      lane.heat[to] += lane.heat[i];
      lane.heat[i] = 0.0;
      lane.skin[i] = 0.0;
    }
  }

  /** Spreads heat along the moving metal over a heat step [s]. */
  public void spread(double dt) {
    if (state.melt.spreading == 0.0 || state.melt.water) {
      return;
    }
    for (Channel c : state.channels) {
      refreshMobile(c);
      int n = c.shape.cells;
      int i = 0;
      while (i < n) {
        int from = i;
        while (i < n && c.wet[i] > 0.0) {
          i++;
        }
        if (i - from >= 2) {
          for (Lane lane : c.lanes) {
            spreadStretch(c, lane, from, i, dt);
          }
        }
        i = Math.max(i, from + 1);
      }
    }
  }

  private void spreadStretch(Channel c, Lane lane, int from, int to, double dt) {
    double density = state.melt.density;
    for (int i = from; i < to; i++) {
      spreadEnthalpy[i] = lane.mobile[i];
      capacity[i] = Math.max(1e-12, c.mass(lane, i, density) - lane.skin[i]);
    }
    for (int i = from; i < to - 1; i++) {
      double flow = flowAt(c, i);
      double d = state.melt.spreading * spreading(c, i, flow);
      double moves = lane == c.middle ? 1.0 : c.rimEase[i];
      boolean joined = isFull(c, i) || isFull(c, i + 1);
      double area = moves * (lane.share[i] * c.shape.faceArea[i + 1]);
      link[i] = joined ? dt * density * area * d / c.shape.dx : 0.0;
    }
    ImplicitDiffusion.solve(spreadEnthalpy, capacity, link, from, to, scratchA, scratchB);
    for (int i = from; i < to; i++) {
      double moving = c.mass(lane, i, density) - lane.skin[i];
      if (moving > 0.0) {
        lane.heat[i] += capacity[i] * (spreadEnthalpy[i] - lane.mobile[i]);
      }
    }
  }

  private static double flowAt(Channel c, int i) {
    if (c.full) {
      return c.flowA;
    }
    return (i + 1) * c.shape.dx <= c.positionA() ? c.flowA : c.flowB;
  }

  /** Spreading coefficient at a cell for a flow [m3/s], [m2/s]. */
  public double spreading(Channel c, int i, double flow) {
    DispersionLaw dispersion = state.melt.dispersion;
    double speed = Math.abs(flow) / c.shape.meanArea[i];
    double diameter = c.shape.hydraulicDiameter[i];
    double laminar = c.shape.laminarProduct[i];
    boolean round = c.shape.width[i] < 2.0 * c.shape.thickness[i];
    return round
        ? dispersion.round(speed, diameter, laminar)
        : dispersion.plates(speed, diameter, laminar);
  }
}
