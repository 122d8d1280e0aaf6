package lastinch.solver.network.heat;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.ColumnTransport;
import lastinch.solver.network.flow.Lane;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;

/**
 * Leading metal: loses heat to mould it has just wetted, gains some from the metal behind, and
 * stops when it carries too much solid. The crossing is found inside the step.
 */
public final class FrontMarkers {
  /** Slower than this a front is on its way to standing [m/s]; chosen: halved no stop moves. */
  public static final double HOLDING_SPEED = 1e-3;

  /**
   * A front slower than that for this long stands [s]; chosen: halved no stop moves, only when it
   * is called one.
   */
  public static final double HOLDING_TIME = 0.1;

  /**
   * Share of the spendable heat lost in a step above which the mould's own heat bounds it [-];
   * numerical: halved no stop moves.
   */
  private static final double FAST = 0.2;

  private final NetworkState state;
  private final ColumnTransport transport;
  private final CellHeat heat;

  public FrontMarkers(NetworkState state, ColumnTransport transport, CellHeat heat) {
    this.state = state;
    this.transport = transport;
    this.heat = heat;
  }

  /** Loss rate of leading metal at a place, of the middle where the section is parted [W/kg]. */
  public double lossRate(Channel c, double s, double enthalpy, boolean held) {
    return lossRate(c, c.middle, s, enthalpy, held);
  }

  private double lossRate(Channel c, Lane lane, double s, double enthalpy, boolean held) {
    ChannelShape shape = c.shape;
    double area = shape.carriedTo(lane.share, s) * shape.areaAt(s);
    double perimeter = shape.carriedTo(lane.perimeter, s);
    double gap = 2.0 * area / perimeter;
    double wall =
        held
            ? heat.faceTemperature(c, lane, shape.cellAt(s))
            : shape.interpolate(shape.mouldTemperature, s);
    double flux = state.melt.tipConductance(gap) * (state.melt.table.temperature(enthalpy) - wall);
    return flux * perimeter / (state.melt.density * area);
  }

  /** Leading metal cannot cool below the mould it meets, however good the contact. */
  private double bounded(Channel c, double s, double enthalpy, double loss) {
    if (loss < FAST * (state.melt.enthalpyIn - state.melt.enthalpyStop)) {
      return loss;
    }
    double mould = c.shape.interpolate(c.shape.mouldTemperature, s);
    return Math.min(loss, Math.max(0.0, enthalpy - state.melt.table.enthalpy(mould)));
  }

  private double lossStep(
      Channel c, Lane lane, double s, double enthalpy, double dt, boolean held) {
    double loss = bounded(c, s, enthalpy, dt * lossRate(c, lane, s, enthalpy, held));
    if (enthalpy - loss >= 0.0) {
      return loss;
    }
    double above = Math.max(0.0, enthalpy);
    return above + (loss - above) * c.mushShare;
  }

  /** Share of a step [s] until some moving front stops, 1 when none does. */
  public double shareToStop(double dt) {
    double share = 1.0;
    for (Channel c : state.channels) {
      if (!c.full) {
        share = Math.min(share, shareToStop(c, c.frontA, c.positionA(), dt));
        share = Math.min(share, shareToStop(c, c.frontB, c.positionB(), dt));
      }
    }
    return share;
  }

  private double shareToStop(Channel c, FrontMarker front, double at, double dt) {
    boolean moves = !front.isFrozen() && front.enthalpy > state.melt.enthalpyStop;
    if (!moves || !isLeading(c, front) || standsAtMouth(c, front)) {
      return 1.0;
    }
    double next = after(c, front, at, dt);
    double stop = state.melt.enthalpyStop;
    return next >= stop ? 1.0 : (front.enthalpy - stop) / (front.enthalpy - next);
  }

  /** Fronts that move into empty mould or stand before it. */
  private boolean isLeading(Channel c, FrontMarker front) {
    return front.isPresent() && !front.isStopped() && !state.melt.water && c.emptyVolume() > 0.0;
  }

  /**
   * Whether surface tension holds a front no farther in than it bulges at a mouth, half the gap: it
   * is metal of the joint, changed by what flows past.
   */
  private boolean standsAtMouth(Channel c, FrontMarker front) {
    boolean plugA = front == c.frontA;
    int joint = plugA ? c.jointA : c.jointB;
    if (front.motion != 0 || joint == ChannelGraph.CLOSED || !state.wet[joint]) {
      return false;
    }
    double at = plugA ? c.positionA() : c.shape.length - c.positionB();
    return at <= 0.5 * c.shape.thickness[plugA ? 0 : c.shape.cells - 1];
  }

  private double after(Channel c, FrontMarker front, double at, double dt) {
    double alone = front.enthalpy - loss(c, Lane.MIDDLE, front, at, dt);
    return mixed(c, Lane.MIDDLE, front, at, alone, dt);
  }

  /** Heat that leading metal loses in a step, by the midpoint of its way [J/kg]. */
  private double loss(Channel c, int which, FrontMarker front, double at, double dt) {
    Lane lane = c.lanes[which];
    boolean held = front.slowFor > HOLDING_TIME;
    double direction = front == c.frontA ? 1.0 : -1.0;
    double middle =
        Math.max(
            0.0, Math.min(c.shape.length, at + direction * 0.5 * dt * Math.max(0.0, front.speed)));
    double h = front.of(which);
    double half = h - lossStep(c, lane, middle, h, 0.5 * dt, held);
    boolean crosses = h >= 0.0 && half < 0.0;
    boolean fast = h - half > FAST * (state.melt.enthalpyIn - state.melt.enthalpyStop);
    return crosses || fast
        ? lossStep(c, lane, middle, h, dt, held)
        : lossAtMean(c, lane, middle, h, half, dt, held);
  }

  private double lossAtMean(
      Channel c, Lane lane, double s, double start, double half, double dt, boolean held) {
    double loss = bounded(c, s, start, dt * lossRate(c, lane, s, half, held));
    if (start <= 0.0) {
      return loss * c.mushShare;
    }
    return start - loss >= 0.0 ? loss : start + (loss - start) * c.mushShare;
  }

  /**
   * Lets the metal behind warm the mark of a lane, implicitly; one over the distance squared in the
   * mean over the step's way. Of a parted section the middle runs ahead of the mean: it renews its
   * own mark from behind, and what it has over goes into the rims at the front.
   */
  private double mixed(
      Channel c, int which, FrontMarker front, double at, double enthalpy, double dt) {
    if (front.motion <= 0) {
      return enthalpy;
    }
    boolean plugA = front == c.frontA;
    int cell = c.shape.cellAt(at);
    int behind = plugA ? cell - 1 : cell + 1;
    if (behind < 0 || behind >= c.shape.cells || c.wet[behind] <= 0.0) {
      return enthalpy;
    }
    double distance = Math.abs(at - (behind + 0.5) * c.shape.dx);
    double ahead = Math.max(0.0, front.speed);
    double rate = 0.0;
    if (state.melt.spreading > 0.0) {
      double then = distance + ahead * dt;
      double flow = plugA ? c.flowA : c.flowB;
      double d = transport.spreading(c, behind, flow);
      rate = 2.0 * state.melt.spreading * d / (distance * then);
    }
    double source = rate * c.lanes[which].mobile[behind];
    if (c.hasRims()) {
      double gained = (c.lead(behind) - 1.0) * ahead / Math.max(c.middle.gap[behind], distance);
      if (which == Lane.MIDDLE) {
        rate += gained;
        source += gained * c.middle.mobile[behind];
      } else {
        double fed = gained * c.middle.share[behind] / c.lanes[Lane.RIMS].share[behind];
        source = c.rimEase[behind] * source + fed * front.enthalpy;
        rate = c.rimEase[behind] * rate + fed;
      }
    }
    return rate == 0.0 ? enthalpy : (enthalpy + dt * source) / (1.0 + dt * rate);
  }

  /** Ages all leading metal by a step, before the plugs move. */
  public void advance(double dt) {
    for (Channel c : state.channels) {
      if (!c.full) {
        advance(c, c.frontA, c.positionA(), dt);
        advance(c, c.frontB, c.positionB(), dt);
      }
    }
  }

  private void advance(Channel c, FrontMarker front, double at, double dt) {
    if (!isLeading(c, front)) {
      return;
    }
    if (standsAtMouth(c, front)) {
      int cell = c.firstCell + c.shape.cellAt(at);
      front.setEnthalpy(state.jointEnthalpy[front == c.frontA ? c.jointA : c.jointB], cell);
      front.seconds[cell] += dt;
    } else if (front.motion < 0) {
      int cell = c.shape.cellAt(at);
      if (c.wet[cell] > 0.0) {
        front.setEnthalpy(c.middle.mobile[cell], c.firstCell + cell);
        front.takeFrom(c, cell);
      }
    } else {
      int cell = c.firstCell + c.shape.cellAt(at);
      double unmixed = front.enthalpy - loss(c, Lane.MIDDLE, front, at, dt);
      double next = mixed(c, Lane.MIDDLE, front, at, unmixed, dt);
      double rims = c.hasRims() ? rimsAfter(c, front, at, dt) : next;
      front.lost[cell] += front.enthalpy - unmixed;
      front.gained[cell] += next - unmixed;
      front.seconds[cell] += dt;
      front.enthalpy = next;
      front.rims = rims;
    }
    double slow = Math.abs(front.speed);
    front.slowFor = slow < HOLDING_SPEED ? front.slowFor + dt : 0.0;
    if (front.enthalpy <= state.melt.enthalpyStop + 1e-9 * Math.abs(state.melt.enthalpyStop)) {
      front.state = FrontMarker.State.STOPPED;
      front.stoodFirst = front.slowFor > HOLDING_TIME;
    }
  }

  private double rimsAfter(Channel c, FrontMarker front, double at, double dt) {
    double alone = front.rims - loss(c, Lane.RIMS, front, at, dt);
    return mixed(c, Lane.RIMS, front, at, alone, dt);
  }

  /** A channel has frozen behind a front: notes how it stood and what it had left. */
  public void frozeBehind(Channel c, FrontMarker front) {
    if (isLeading(c, front)) {
      double at = front == c.frontA ? c.positionA() : c.positionB();
      front.stoodFirst = front.slowFor > HOLDING_TIME;
      front.wayLeft = Math.max(0.0, front.speed) * secondsLeft(c, at, front.enthalpy);
    }
  }

  /** Seconds that leading metal of an enthalpy would last at a place [s]. */
  public double secondsLeft(Channel c, double s, double enthalpy) {
    double stop = state.melt.enthalpyStop;
    if (enthalpy <= stop || state.melt.water) {
      return enthalpy <= stop ? 0.0 : Double.POSITIVE_INFINITY;
    }
    double seconds = 0.0;
    if (enthalpy > 0.0) {
      seconds += enthalpy / lossRate(c, s, 0.5 * enthalpy, false);
    }
    double top = Math.min(0.0, enthalpy);
    double share = Math.max(1e-9, c.mushShare);
    return seconds + (top - stop) / (share * lossRate(c, s, 0.5 * (top + stop), false));
  }
}
