package lastinch.solver.network.record;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Station;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.EdgeStrip;
import lastinch.solver.network.heat.EdgeStrips;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.EdgeAtStation;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.EdgeStretch.Cause;
import lastinch.solver.result.PassageRecord.Role;

/**
 * What became of the rims: after the run the hand goes on, the sprue fills up and presses on what
 * can still move; then every place is full, rounded or empty.
 */
public final class EdgeReport {
  /** Step in which rims are cooled on after the run [s]; numerical. */
  private static final double STEP = 0.02;

  /** Longest time for which rims are followed after the run [s]; chosen. */
  private static final double END = 10.0;

  private final NetworkRun run;
  private final EdgeStrips rims;
  private final NetworkState state;

  public EdgeReport(NetworkRun run) {
    this.run = run;
    rims = run.rims;
    state = run.state;
  }

  /** After the run: lets the sprue fill and its metal press on rims that can still move. */
  public void standUnderTheSprue() {
    if (!rims.areAny()) {
      return;
    }
    rims.press();
    boolean live = true;
    for (double t = 0.0; live && t < END; t += STEP) {
      double surface = surfaceAfter(t);
      live = false;
      for (Channel c : state.channels) {
        if (c.shape.role == Role.PIECE && run.ending.isFed(c)) {
          live |= press(c, surface);
        }
      }
    }
  }

  private boolean press(Channel c, double surface) {
    boolean live = false;
    double over = c.full ? 0.0 : run.air.overpressure(c);
    for (int i = 0; i < c.shape.cells; i++) {
      int cell = c.firstCell + i;
      if (rims.isLive(cell) && !isCutOff(c, i)) {
        double height = c.shape.heightAt((i + 0.5) * c.shape.dx);
        rims.notePressure(cell, state.melt.density * Gravity.G * (surface - height) - over);
        rims.rest(cell, STEP, run.heat.faceTemperature(c, c.lanes[c.lanes.length - 1], i));
        live = true;
      }
    }
    return live;
  }

  /** Whether frozen metal in the channel lies between a cell and the metal that feeds it. */
  private static boolean isCutOff(Channel c, int i) {
    FrontMarker front = c.frontOf(i);
    return front.isFrozen() && (front == c.frontA ? i > front.frozenCell : i < front.frozenCell);
  }

  /** Height of the metal that stands over the mould a time after the run [m]. */
  private double surfaceAfter(double seconds) {
    if (state.cupIsHeld) {
      return state.jointHeight[ChannelGraph.CUP]
          + state.heldPressure / (state.melt.density * Gravity.G);
    }
    ChannelShape sprue = state.channels[0].shape;
    boolean wet = state.wet[ChannelGraph.CUP];
    double standing =
        wet
            ? sprue.totalVolume() + state.cup.volume()
            : state.channels[0].hasPlugB() ? state.channels[0].volumeB : 0.0;
    double rate =
        run.job.pour().rateAt(state.time + seconds, run.job.metal().melted(), run.massToRim)
            / state.melt.density;
    double inHand = state.cup.left() / state.melt.density + (wet ? 0.0 : state.cup.volume());
    double volume = standing + Math.min(inHand, Math.max(0.0, rate) * seconds);
    if (volume <= sprue.totalVolume()) {
      return sprue.heightAt(sprue.positionOf(sprue.totalVolume() - volume));
    }
    double level = (volume - sprue.totalVolume()) / run.job.gating().cup().area();
    return state.jointHeight[ChannelGraph.CUP] + Math.min(level, run.job.gating().cup().depth());
  }

  private boolean isThere(Channel c, int i) {
    double at = (i + 0.5) * c.shape.dx;
    return c.full || (c.hasPlugA() && at < c.positionA()) || (c.hasPlugB() && at > c.positionB());
  }

  private EdgeStretch.State stateOf(Channel c, int i) {
    int cell = c.firstCell + i;
    if (!isThere(c, i)) {
      return EdgeStretch.State.EMPTY;
    }
    return causeOf(cell) == Cause.NONE ? EdgeStretch.State.FULL : EdgeStretch.State.ROUNDED;
  }

  private Cause causeOf(int cell) {
    if (!rims.strip(cell).isThere() || !rims.isReached(cell)) {
      return Cause.NONE;
    }
    if (rims.isStopped(cell)) {
      return Cause.HEAT;
    }
    return rims.pressed(cell) < rims.strip(cell).needed() ? Cause.PUSH : Cause.NONE;
  }

  /** States along each limb that has a thin rim. */
  public List<EdgeStretch> stretches() {
    List<EdgeStretch> found = new ArrayList<>();
    for (Limb limb : run.job.piece().limbs()) {
      List<Channel> channels = thinChannels(limb);
      double from = 0.0;
      EdgeStretch.State last = EdgeStretch.State.EMPTY;
      Cause cause = Cause.NONE;
      boolean begun = false;
      for (Channel c : channels) {
        for (int i = 0; i < c.shape.cells; i++) {
          EdgeStretch.State now = stateOf(c, i);
          Cause why = now == EdgeStretch.State.ROUNDED ? causeOf(c.firstCell + i) : Cause.NONE;
          if (begun && (now != last || why != cause)) {
            double to = between(c, i, last, now);
            found.add(new EdgeStretch(limb.name(), from, to, last, cause));
            from = to;
          }
          begun = true;
          last = now;
          cause = why;
        }
      }
      if (begun) {
        found.add(new EdgeStretch(limb.name(), from, limb.length(), last, cause));
      }
    }
    return found;
  }

  private List<Channel> thinChannels(Limb limb) {
    List<Channel> channels = new ArrayList<>();
    boolean thin = false;
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE && c.shape.limb.equals(limb.name())) {
        channels.add(c);
        for (int i = 0; i < c.shape.cells; i++) {
          thin |= rims.strip(c.firstCell + i).isThere();
        }
      }
    }
    return thin ? channels : List.of();
  }

  /** Where one state ends and the next begins, before a cell's middle [m]. */
  private double between(Channel c, int i, EdgeStretch.State last, EdgeStretch.State now) {
    double middle = rims.alongLimb(c, i);
    double face = middle - 0.5 * c.shape.dx;
    double begins = middle - (i + 0.5) * c.shape.dx;
    if (now == EdgeStretch.State.EMPTY && c.hasPlugA()) {
      return Math.max(face - 0.5 * c.shape.dx, begins + c.positionA());
    }
    if (last == EdgeStretch.State.EMPTY && c.hasPlugB()) {
      return Math.max(face - 0.5 * c.shape.dx, begins + c.positionB());
    }
    int cell = c.firstCell + i;
    boolean stops = last == EdgeStretch.State.FULL && rims.isStopped(cell);
    return stops ? middle - (1.0 - rims.stopShare(cell)) * c.shape.dx : face;
  }

  /** The same at the stations. */
  public List<EdgeAtStation> atStations() {
    List<EdgeAtStation> found = new ArrayList<>();
    for (Limb limb : run.job.piece().limbs()) {
      List<Channel> channels = thinChannels(limb);
      for (Station station : limb.stations()) {
        if (!channels.isEmpty()) {
          add(found, limb, station.at() - limb.stations().get(0).at(), channels);
        }
      }
    }
    return found;
  }

  private void add(List<EdgeAtStation> found, Limb limb, double at, List<Channel> channels) {
    Channel nearest = channels.get(0);
    int place = 0;
    for (Channel c : channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (Math.abs(rims.alongLimb(c, i) - at) < Math.abs(rims.alongLimb(nearest, place) - at)) {
          nearest = c;
          place = i;
        }
      }
    }
    int cell = nearest.firstCell + place;
    EdgeStrip strip = rims.strip(cell);
    if (strip.isThere()) {
      EdgeStretch.State now = stateOf(nearest, place);
      double edge = EdgeStrip.thickness(limb, at).orElse(strip.thickness());
      found.add(
          new EdgeAtStation(
              limb.name(),
              at,
              edge,
              now,
              now == EdgeStretch.State.ROUNDED ? causeOf(cell) : Cause.NONE,
              rims.isReached(cell)
                  ? state.melt.table.temperature(rims.enthalpy(cell))
                  : nearest.shape.mouldTemperature[place],
              rims.pressed(cell),
              strip.needed() * strip.thickness() / edge));
    }
  }
}
