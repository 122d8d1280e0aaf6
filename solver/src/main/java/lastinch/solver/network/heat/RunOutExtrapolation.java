package lastinch.solver.network.heat;

import java.util.OptionalDouble;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.physics.Capillary;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.Margin;
import lastinch.solver.result.PassageRecord.Role;

/**
 * How much longer a filled piece could have been: behind every closed end of it the leading metal
 * goes on in a made-up channel of the last section, with the flow that filled the end, kept warm
 * from behind as over the last quarter, until heat, metal or push run out. The shortest way counts.
 * The run itself is over; nothing of it changes.
 */
public final class RunOutExtrapolation {
  /**
   * Steps in which the longest way is walked [-], 2 mm each; numerical, what is promised of a stop.
   */
  private static final int STEPS = 1000;

  private final NetworkRun run;
  private final NetworkState state;
  private final FrontRecorder noted;
  private double least = Double.POSITIVE_INFINITY;
  private Margin.LimitedBy by = Margin.LimitedBy.HEAT;

  public RunOutExtrapolation(NetworkRun run) {
    this.run = run;
    state = run.state;
    noted = run.recorder;
    if (state.melt.water) {
      return;
    }
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE) {
        if (c.jointB == ChannelGraph.CLOSED) {
          goOn(c, true);
        }
        if (c.jointA == ChannelGraph.CLOSED) {
          goOn(c, false);
        }
      }
    }
  }

  /**
   * The least way beyond a closed end [m], at most {@link Margin#FAR}; none without such an end.
   */
  public OptionalDouble distance() {
    return Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty();
  }

  /** What ends it. */
  public Margin.LimitedBy limitedBy() {
    return by;
  }

  private void goOn(Channel c, boolean endB) {
    int last = endB ? c.shape.cells - 1 : 0;
    int quarter = Math.max(1, c.shape.cells / 4);
    int from = endB ? last - quarter : quarter;
    if (from < 0 || from >= c.shape.cells || !isReached(c, last) || !isReached(c, from)) {
      return;
    }
    boolean arriving = time(c, last) > time(c, from);
    double flow = arriving ? flowOver(c, from, last) : flowIntoPiece();
    double kept = arriving ? FrontCooling.kept(noted, c, from, last) : 1.0;
    walk(c, endB, last, flow, kept, arriving ? Double.POSITIVE_INFINITY : patience());
  }

  private boolean isReached(Channel c, int i) {
    return Double.isFinite(time(c, i));
  }

  private double time(Channel c, int i) {
    return noted.arrivalTime[c.firstCell + i];
  }

  /** Volume between two cell middles over the time between their arrivals [m3/s]. */
  private double flowOver(Channel c, int from, int to) {
    double a = c.shape.volumeBelow((from + 0.5) * c.shape.dx);
    double b = c.shape.volumeBelow((to + 0.5) * c.shape.dx);
    return Math.abs(b - a) / Math.abs(time(c, to) - time(c, from));
  }

  /** Mean flow from the first metal in the piece until it was full [m3/s]. */
  private double flowIntoPiece() {
    double first = state.time;
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.shape.isPiece()) {
          first = Math.min(first, time(c, i));
        }
      }
    }
    return run.pieceVolume / Math.max(1e-3, state.time - first);
  }

  /**
   * How long the rest of the piece could wait [s] where metal reached the end first: as long as
   * leading metal would have lasted at its worst place.
   */
  private double patience() {
    double least = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.shape.isPiece() && isReached(c, i)) {
          least = Math.min(least, noted.freezeTime[c.firstCell + i] - time(c, i));
        }
      }
    }
    return least;
  }

  private void walk(Channel c, boolean endB, int last, double flow, double kept, double patience) {
    MeltProperties melt = state.melt;
    ChannelShape shape = c.shape;
    double end = endB ? shape.length : 0.0;
    double area = shape.areaAt(end);
    double perimeter = shape.carriedTo(c.middle.perimeter, end);
    double part = shape.carriedTo(c.middle.share, end) * area;
    double gap = 2.0 * part / perimeter;
    double pull = kept * melt.tipConductance(gap) * perimeter / (melt.density * part);
    double wall = shape.mouldTemperature[last];
    double metal = spareVolume();
    double rise = endB ? shape.rise() : -shape.rise();
    double step = Margin.FAR / STEPS;
    double h = noted.arrivalEnthalpy[c.firstCell + last];
    h = FrontCooling.after(melt, h, 0.5 * shape.dx * area / flow, pull, wall, c.mushShare);
    double x = 0.0;
    double seconds = 0.0;
    Margin.LimitedBy ends = Margin.LimitedBy.HEAT;
    while (x < Margin.FAR && h > melt.enthalpyStop && seconds < patience) {
      double speed = flow / area * slowed(c, end, flow, x, rise * x);
      if (speed <= 0.0) {
        ends = Margin.LimitedBy.PUSH;
        break;
      }
      double next = FrontCooling.after(melt, h, step / speed, pull, wall, c.mushShare);
      double share = next < melt.enthalpyStop ? (h - melt.enthalpyStop) / (h - next) : 1.0;
      if ((x + share * step) * area > metal) {
        x = metal / area;
        ends = Margin.LimitedBy.METAL;
        break;
      }
      x += share * step;
      seconds += share * step / speed;
      h = next;
    }
    double found = Math.min(Margin.FAR, x);
    if (found < least) {
      least = found;
      by = ends;
    }
  }

  /** Metal that is not in the mould yet [m3]; endless where checking options hold the inlet. */
  private double spareVolume() {
    return state.cupIsHeld
        ? Double.POSITIVE_INFINITY
        : state.cup.left() / state.melt.density + state.cup.volume();
  }

  /**
   * Share of the speed that is left [-] once the made-up channel rubs and rises as well, with all
   * the metal over it that the cup can hold.
   *
   * @param x length of the made-up channel behind the front [m]
   * @param height that it has risen [m]
   */
  private double slowed(Channel c, double end, double flow, double x, double height) {
    if (state.forcedFlow > 0.0) {
      return 1.0;
    }
    MeltProperties melt = state.melt;
    ChannelShape shape = c.shape;
    double weight = melt.density * Gravity.G;
    double surface =
        state.cupIsHeld
            ? state.jointHeight[ChannelGraph.CUP] + state.heldPressure / weight
            : state.jointHeight[ChannelGraph.CUP] + state.rim;
    double push =
        weight * (surface - shape.heightAt(end) - height)
            - Capillary.push(
                melt.capillaryStrength,
                shape.carriedTo(shape.thickness, end),
                shape.carriedTo(shape.width, end));
    if (push <= 0.0) {
      return 0.0;
    }
    double speed = flow / shape.areaAt(end);
    int cell = shape.cellAt(end);
    double diameter = shape.hydraulicDiameter[cell];
    double reynolds = Math.max(1.0, melt.density * speed * diameter / melt.flowingViscosity());
    double factor = melt.friction.factor(reynolds, shape.laminarProduct[cell], diameter);
    double added = factor * x / diameter * 0.5 * melt.density * speed * speed;
    double needed = run.work.friction() + added;
    return needed <= push ? 1.0 : Math.sqrt(push / needed);
  }
}
