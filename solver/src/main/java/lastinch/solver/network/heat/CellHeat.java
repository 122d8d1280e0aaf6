package lastinch.solver.network.heat;

import java.util.Arrays;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.Lane;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.physics.Slurry;
import lastinch.solver.wall.WallColumns;

/**
 * Heat from metal to mould, cell by cell: every wetted cell faces its own column of mould. New
 * solid is shared between slurry and skin; heat gained melts skin first. Falling metal gives heat
 * to the share of wall it touches.
 */
public final class CellHeat {
  /** Longest step of the wall of a fresh cell [s]; numerical: halved stops move by 0.4 mm. */
  private static final double FRESH_STEP = 2e-3;

  /**
   * Age up to which a cell is fresh [s]; numerical: halved metal goes 0.2 to 2 mm farther, 0.6 % at
   * most.
   */
  private static final double FRESH_AGE = 20e-3;

  /**
   * Age from which a place takes every second heat step [s]; numerical: doubled stops move by 0.4
   * mm.
   */
  private static final double OLD = 0.25;

  /** A falling drop under this has no heat to speak of [m3]; numerical, far under rounding. */
  private static final double LEAST_DROP = 1e-300;

  private final NetworkState state;
  private final WallColumns columns;
  private final LaneCoupling coupling;
  private final boolean curved;
  private final double depthLimit;
  private final int cupColumn;
  private final double cupTemperature;
  private double cupShare;

  /**
   * By column of mould: whether metal is resolved through the gap; heat passed before anything is
   * solid [W/(m2 K)].
   */
  private final boolean[] thick;

  private final double[] liquidConductance;
  private final double[] streamVolume;
  private final double[] streamHeat;
  private final double[] streamAfter;

  /** By lane of the cell at work: enthalpy [J/kg] and solid share [-] before its step. */
  private final double[] fresh = new double[2];

  private final double[] before = new double[2];
  private double mostSolidAnywhere;
  private int count;

  public CellHeat(NetworkState state, PourCase job, MouldColumns mould, double cupTemperature) {
    this.state = state;
    Checking checking = job.checking();
    curved = checking.wallCurvature();
    coupling = new LaneCoupling(state);
    cupColumn = state.columns;
    columns = mould.of(state.columns + 1, state.melt.table);
    depthLimit = mould.depthLimit;
    this.cupTemperature = cupTemperature;
    streamVolume = new double[state.allCells];
    streamHeat = new double[state.allCells];
    streamAfter = new double[state.allCells];
    thick = new boolean[state.columns];
    liquidConductance = new double[state.columns];
    for (Channel c : state.channels) {
      for (Lane lane : c.lanes) {
        for (int i = 0; i < c.shape.cells; i++) {
          measure(lane.firstColumn + i, lane.gap[i]);
        }
      }
    }
  }

  private void measure(int column, double gap) {
    MeltProperties melt = state.melt;
    thick[column] = melt.contact.isThick(gap);
    liquidConductance[column] = melt.tipConductance(thick[column] ? 0.0 : gap);
  }

  /**
   * One heat step [s] for cup, plugs and falling metal. Places wetted long ago, where little
   * changes from step to step, take every second step, twice as long.
   */
  public void step(double dt) {
    step(dt, false);
  }

  /** A last heat step [s] after which nothing is due. */
  public void finish(double dt) {
    step(dt, true);
  }

  private void step(double dt, boolean last) {
    if (state.melt.water) {
      return;
    }
    count++;
    if (dt > 0.0) {
      stepCup(dt);
    }
    for (Channel c : state.channels) {
      c.streamDue += dt;
      c.streamAge = c.stream.size() > 0 ? c.streamAge + dt : 0.0;
      boolean streams = last || c.streamAge < OLD || (count & 1) == 0;
      if (streams && c.streamDue > 0.0) {
        stepStream(c, c.streamDue);
        c.streamDue = 0.0;
      }
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.wet[i] > 1e-9 * c.shape.volume[i]) {
          c.due[i] += dt;
          boolean turn = last || c.age[i] < OLD || ((count + i) & 1) == 0;
          if (turn && c.due[i] > 0.0) {
            stepCell(c, i, c.due[i]);
            c.due[i] = 0.0;
          }
        }
      }
    }
  }

  private void stepCup(double dt) {
    double volume = state.cup.volume();
    if (volume <= 0.0 || state.cup.wall() <= 0.0) {
      return;
    }
    double share = state.cup.wettedShare();
    if (share > cupShare) {
      if (cupShare == 0.0) {
        columns.open(cupColumn, cupTemperature, 0.0, depthLimit);
      } else {
        columns.widen(cupColumn, cupShare, share);
      }
      cupShare = share;
    }
    double area = cupShare * state.cup.wall();
    double conductance =
        state.melt.contact.conductance(2.0 * volume / area, 0.0) * share / cupShare;
    double perArea = state.melt.density * volume / area;
    state.cupEnthalpy = columns.exchange(cupColumn, dt, conductance, perArea, state.cupEnthalpy);
  }

  /** Makes the columns of a cell stand for a wetted share, fresh wall included. */
  private void wetWall(Channel c, int i, double share) {
    if (share <= c.wettedShare[i]) {
      return;
    }
    for (Lane lane : c.lanes) {
      int column = lane.firstColumn + i;
      if (c.wettedShare[i] == 0.0) {
        open(c, lane, i);
      } else {
        columns.widen(column, c.wettedShare[i], share);
      }
    }
    c.wettedShare[i] = share;
  }

  private void open(Channel c, Lane lane, int i) {
    int column = lane.firstColumn + i;
    double mould = c.shape.mouldTemperature[i];
    double curvature = curved ? lane.curvature[i] : 0.0;
    if (thick[column]) {
      columns.openThick(
          column, mould, curvature, depthLimit, 0.5 * lane.gap[i], fresh[lane == c.middle ? 0 : 1]);
    } else {
      columns.open(column, mould, curvature, depthLimit);
    }
  }

  private void stepCell(Channel c, int i, double dt) {
    double share = c.fill(i);
    for (int k = 0; k < c.lanes.length; k++) {
      Lane lane = c.lanes[k];
      fresh[k] = lane.heat[i] / c.mass(lane, i, state.melt.density);
    }
    wetWall(c, i, share);
    double now = share / c.wettedShare[i];
    int parts = c.age[i] < FRESH_AGE ? (int) Math.ceil(dt / FRESH_STEP - 1e-9) : 1;
    for (int k = 0; k < c.lanes.length; k++) {
      before[k] = state.melt.table.solid(fresh[k]);
      fresh[k] = cooled(c, c.lanes[k], i, fresh[k], now, dt, parts);
    }
    c.age[i] += dt;
    if (c.hasRims()) {
      coupling.conduct(c, i, dt, fresh);
    }
    for (int k = 0; k < c.lanes.length; k++) {
      settle(c, c.lanes[k], i, before[k], state.melt.table.solid(fresh[k]));
    }
    if (c.hasRims()) {
      coupling.ease(c, i);
    }
  }

  private double cooled(
      Channel c, Lane lane, int i, double enthalpy, double now, double dt, int parts) {
    int column = lane.firstColumn + i;
    double mass = c.mass(lane, i, state.melt.density);
    double conductance = conductance(column, lane.gap[i], lane.mostSolid[i]) * now;
    double perArea = mass / (c.wettedShare[i] * lane.wall[i]);
    double h = enthalpy;
    for (int k = 0; k < parts; k++) {
      h = columns.exchange(column, dt / parts, conductance, perArea, h);
    }
    lane.heat[i] = h * state.melt.density * (lane.share[i] * c.wet[i]);
    return h;
  }

  /** Heat passed by lumped metal to the mould face at a column [W/(m2 K)]. */
  private double conductance(int column, double gap, double mostSolid) {
    return mostSolid <= state.melt.contact.skinFrees
        ? liquidConductance[column]
        : state.melt.contact.conductance(thick[column] ? 0.0 : gap, mostSolid);
  }

  /** Shares new solid between skin and slurry. */
  private void settle(Channel c, Lane lane, int i, double solidBefore, double after) {
    double mass = c.mass(lane, i, state.melt.density);
    double change = after - solidBefore;
    lane.skin[i] = Slurry.skin(lane.skin[i], change, mass, c.mushShare, after);
    lane.mostSolid[i] = after <= 0.0 ? 0.0 : Math.max(lane.mostSolid[i], after);
    mostSolidAnywhere = Math.max(mostSolidAnywhere, lane.mostSolid[i]);
    double share = lane.skin[i] / mass;
    lane.openShare[i] = Slurry.openShare(share);
    lane.slurry[i] = Slurry.carried(after, share);
    lane.thickening[i] = Slurry.viscosityFactor(Math.min(1.0, lane.slurry[i]), state.melt.flowStop);
  }

  private void stepStream(Channel c, double dt) {
    int parcels = c.stream.size();
    if (parcels == 0) {
      return;
    }
    for (int i = 0; i < c.shape.cells; i++) {
      streamVolume[i] = 0.0;
      streamHeat[i] = 0.0;
    }
    for (int p = 0; p < parcels; p++) {
      int i = cellOf(c, p);
      streamVolume[i] += c.stream.volume(p);
      streamHeat[i] += c.stream.volume(p) * c.stream.enthalpy(p);
    }
    for (int i = 0; i < c.shape.cells; i++) {
      if (streamVolume[i] > 0.0) {
        streamAfter[i] = exchangeStream(c, i, dt) - streamHeat[i] / streamVolume[i];
      }
    }
    boolean leading = c.stream.firstInFlight;
    for (int p = 0; p < parcels; p++) {
      int i = cellOf(c, p);
      double change = streamAfter[i];
      c.stream.setEnthalpy(p, c.stream.enthalpy(p) + change);
      if (p == 0 && leading) {
        c.stream.first.setEnthalpy(c.stream.enthalpy(p), c.firstCell + i);
        c.stream.first.seconds[c.firstCell + i] += dt;
      }
    }
  }

  private double exchangeStream(Channel c, int i, double dt) {
    double density = state.melt.density;
    double h = streamHeat[i] / streamVolume[i];
    if (streamVolume[i] < LEAST_DROP) {
      return h;
    }
    double share = Math.min(1.0, streamVolume[i] / c.shape.volume[i]);
    Arrays.fill(fresh, h);
    wetWall(c, i, share);
    double after = 0.0;
    for (Lane lane : c.lanes) {
      int column = lane.firstColumn + i;
      double area = c.wettedShare[i] * lane.wall[i];
      double conductance = liquidConductance[column] * share / c.wettedShare[i];
      double perArea = density * (lane.share[i] * streamVolume[i]) / area;
      after += lane.share[i] * columns.exchange(column, dt, conductance, perArea, h);
    }
    return after;
  }

  private static int cellOf(Channel c, int parcel) {
    double fallen = c.stream.middle(parcel);
    double s = c.fallsTowardsB() ? fallen : c.shape.length - fallen;
    return c.shape.cellAt(Math.max(0.0, Math.min(c.shape.length, s)));
  }

  /**
   * A copy of all columns of mould, by cell and then the cup's, that goes its own way.
   *
   * @param seconds how long heat is to be followed from here [s]
   */
  public WallColumns columns(double seconds) {
    return columns.continued(seconds);
  }

  /** Number of the cup's column. */
  public int cupColumn() {
    return cupColumn;
  }

  /** Wall of the cup that its column stands for [m2]. */
  public double cupWall() {
    return cupShare * state.cup.wall();
  }

  /** Whether metal is resolved through the gap at a column. */
  public boolean isThick(int column) {
    return thick[column];
  }

  /**
   * Mould face temperature of a lane at a cell [K]; that of untouched mould where no metal has
   * been.
   */
  public double faceTemperature(Channel c, Lane lane, int cell) {
    return c.wettedShare[cell] > 0.0
        ? columns.faceTemperature(lane.firstColumn + cell)
        : c.shape.mouldTemperature[cell];
  }

  /** Heat in the mould above its start, from the stored profiles [J]. */
  public double heldInMould() {
    double sum = cupShare > 0.0 ? columns.held(cupColumn) * cupShare * state.cup.wall() : 0.0;
    for (Channel c : state.channels) {
      for (Lane lane : c.lanes) {
        for (int i = 0; i < c.shape.cells; i++) {
          if (c.wettedShare[i] > 0.0) {
            sum += columns.held(lane.firstColumn + i) * c.wettedShare[i] * lane.wall[i];
          }
        }
      }
    }
    return sum;
  }

  /** Heat that left through the outside of a shell [J]. */
  public double lostToAir() {
    double sum = cupShare > 0.0 ? columns.lostToAir(cupColumn) * cupShare * state.cup.wall() : 0.0;
    for (Channel c : state.channels) {
      for (Lane lane : c.lanes) {
        for (int i = 0; i < c.shape.cells; i++) {
          if (c.wettedShare[i] > 0.0) {
            sum += columns.lostToAir(lane.firstColumn + i) * c.wettedShare[i] * lane.wall[i];
          }
        }
      }
    }
    return sum;
  }

  /** Largest solid share that any place has had [-]. */
  public double mostSolidAnywhere() {
    return mostSolidAnywhere;
  }

  /** Whether a cell no longer lets metal through. */
  public boolean isShut(Channel c, int i) {
    if (c.wet[i] < 0.5 * c.shape.volume[i]) {
      return false;
    }
    return isShut(false, c, i);
  }

  /** Whether a shut cell has opened again, with some to spare. */
  public boolean isOpenAgain(Channel c, int i) {
    return !isShut(true, c, i);
  }

  /** A section is shut when its middle is. */
  private boolean isShut(boolean was, Channel c, int i) {
    double full = c.middle.gap[i];
    double open = full * (1.0 - c.skinShare(c.middle, i, state.melt.density));
    return Slurry.isShut(
        was, c.middle.slurry[i], state.melt.flowStop, open, Slurry.openGapStop(full));
  }

  /** Open gap of the middle over what stops it, as a share of what there was [-]. */
  public double openMargin(Channel c, int i) {
    double full = c.middle.gap[i];
    double stop = Slurry.openGapStop(full);
    double open = full * (1.0 - c.skinShare(c.middle, i, state.melt.density));
    return full > stop ? Math.max(0.0, (open - stop) / (full - stop)) : 1.0;
  }
}
