package lastinch.solver.network.heat;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.Lane;

/**
 * The leading metal of one plug: a massless mark with its own enthalpy, and a ledger of what it
 * lost and gained by place on its way from the cup.
 */
public final class FrontMarker {
  /** How a front stands. */
  public enum State {
    ABSENT,
    RUNNING,
    HELD,
    STOPPED
  }

  public State state = State.ABSENT;

  /** Enthalpy of the leading metal [J/kg], of the middle where its section is parted. */
  public double enthalpy;

  /** The same of its rims. */
  public double rims;

  /** Whether the plug's front pushes ahead (+1), stands (0) or draws back (-1). */
  public int motion;

  /** Speed, positive when advancing [m/s]. */
  public double speed;

  /** How long it has been slower than the holding speed [s]. */
  public double slowFor;

  /** Whether it had stood still before it froze, so that something else had stopped it. */
  public boolean stoodFirst;

  /** How much farther it would have come if its channel had not frozen behind it [m]. */
  public double wayLeft;

  /** Nothing of its plug has closed by freezing. */
  static final int OPEN = -1;

  /** Cell at which its plug has closed by freezing, or {@link #OPEN}. */
  public int frozenCell = OPEN;

  /** Since when [s]. */
  public double frozenSince;

  /** No gate passed yet. */
  public static final int NO_GATE = -1;

  /** Channel of the last gate it came through, or {@link #NO_GATE}. */
  public int origin = NO_GATE;

  /** By global cell: lost, gained [J/kg] and seconds spent [s]. */
  public final double[] lost;

  public final double[] gained;
  public final double[] seconds;

  public FrontMarker(int cells) {
    lost = new double[cells];
    gained = new double[cells];
    seconds = new double[cells];
  }

  /** Takes over mark and ledger of another front. */
  public void copyFrom(FrontMarker other) {
    enthalpy = other.enthalpy;
    rims = other.rims;
    origin = other.origin;
    System.arraycopy(other.lost, 0, lost, 0, lost.length);
    System.arraycopy(other.gained, 0, gained, 0, gained.length);
    System.arraycopy(other.seconds, 0, seconds, 0, seconds.length);
  }

  /** Starts anew from metal of one enthalpy [J/kg], without booking it. */
  public void take(double value) {
    enthalpy = value;
    rims = value;
  }

  /** Starts anew from what moves in a cell of its channel, without booking it. */
  public void takeFrom(Channel c, int i) {
    enthalpy = c.middle.mobile[i];
    rims = c.lanes[c.lanes.length - 1].mobile[i];
  }

  /** Mark of one lane [J/kg]. */
  public double of(int lane) {
    return lane == Lane.RIMS ? rims : enthalpy;
  }

  /** Sets the mark of the whole section, booking the difference at a place. */
  public void setEnthalpy(double value, int globalCell) {
    double change = value - enthalpy;
    if (change < 0.0) {
      lost[globalCell] -= change;
    } else {
      gained[globalCell] += change;
    }
    enthalpy = value;
    rims = value;
  }

  public void start() {
    state = State.RUNNING;
    motion = 1;
    speed = 0.0;
    slowFor = 0.0;
    stoodFirst = false;
    wayLeft = 0.0;
  }

  /** Its plug closes by freezing at a cell. */
  public void freeze(int cell, double time) {
    frozenCell = cell;
    frozenSince = time;
  }

  public void thaw() {
    frozenCell = OPEN;
  }

  /** Takes over where the plug of another front has frozen, which is gone then. */
  public void takeFrozen(FrontMarker other) {
    frozenCell = other.frozenCell;
    frozenSince = other.frozenSince;
    other.thaw();
  }

  /** Whether its plug has closed by freezing, so that nothing comes to it or goes from it. */
  public boolean isFrozen() {
    return frozenCell != OPEN;
  }

  public boolean isPresent() {
    return state != State.ABSENT;
  }

  public boolean isStopped() {
    return state == State.STOPPED;
  }
}
