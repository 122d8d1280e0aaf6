package lastinch.solver.network.heat;

import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.ChannelShape;
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

  private final NetworkState state;
  private final WallColumns columns;
  private final boolean curved;
  private final double depthLimit;
  private final int cupColumn;
  private final double cupTemperature;
  private double cupShare;

  /**
   * By cell: full gap [m]; whether metal is resolved through it; heat passed before anything is
   * solid [W/(m2 K)].
   */
  private final double[] gap;

  private final boolean[] thick;
  private final double[] liquidConductance;
  private final double[] streamVolume;
  private final double[] streamHeat;
  private final double[] streamAfter;
  private double mostSolidAnywhere;
  private int count;

  public CellHeat(NetworkState state, PourCase job, MouldColumns mould, double cupTemperature) {
    this.state = state;
    Checking checking = job.checking();
    curved = checking.wallCurvature();
    cupColumn = state.allCells;
    columns = mould.of(state.allCells + 1, state.melt.table);
    depthLimit = mould.depthLimit;
    this.cupTemperature = cupTemperature;
    streamVolume = new double[state.allCells];
    streamHeat = new double[state.allCells];
    streamAfter = new double[state.allCells];
    gap = new double[state.allCells];
    thick = new boolean[state.allCells];
    liquidConductance = new double[state.allCells];
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        measure(c.firstCell + i, 2.0 * c.shape.volume[i] / c.shape.wall[i]);
      }
    }
  }

  private void measure(int cell, double cellGap) {
    MeltProperties melt = state.melt;
    gap[cell] = cellGap;
    thick[cell] = melt.contact.isThick(cellGap);
    liquidConductance[cell] = melt.tipConductance(thick[cell] ? 0.0 : cellGap);
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

  /** Makes the column of a cell stand for a wetted share, fresh wall included. */
  private void wetWall(Channel c, int i, double share, double enthalpy) {
    if (share <= c.wettedShare[i]) {
      return;
    }
    ChannelShape shape = c.shape;
    int column = c.firstCell + i;
    if (c.wettedShare[i] == 0.0) {
      double curvature = curved ? 2.0 * Math.PI / shape.perimeter[i] : 0.0;
      if (thick[column]) {
        columns.openThick(
            column, shape.mouldTemperature[i], curvature, depthLimit, 0.5 * gap[column], enthalpy);
      } else {
        columns.open(column, shape.mouldTemperature[i], curvature, depthLimit);
      }
    } else {
      columns.widen(column, c.wettedShare[i], share);
    }
    c.wettedShare[i] = share;
  }

  private void stepCell(Channel c, int i, double dt) {
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    int column = c.firstCell + i;
    double h = c.heat[i] / (density * c.wet[i]);
    double solidBefore = state.melt.table.solid(h);
    double share = c.fill(i);
    wetWall(c, i, share, h);
    double now = share / c.wettedShare[i];
    double conductance = conductance(column, c.mostSolid[i]) * now;
    double perArea = density * c.wet[i] / (c.wettedShare[i] * shape.wall[i]);
    int parts = c.age[i] < FRESH_AGE ? (int) Math.ceil(dt / FRESH_STEP - 1e-9) : 1;
    for (int k = 0; k < parts; k++) {
      h = columns.exchange(column, dt / parts, conductance, perArea, h);
    }
    c.age[i] += dt;
    c.heat[i] = h * density * c.wet[i];
    settle(c, i, solidBefore, state.melt.table.solid(h));
  }

  /** Heat passed by lumped metal to the mould face at a cell [W/(m2 K)]. */
  private double conductance(int cell, double mostSolid) {
    return mostSolid <= state.melt.contact.skinFrees
        ? liquidConductance[cell]
        : state.melt.contact.conductance(thick[cell] ? 0.0 : gap[cell], mostSolid);
  }

  /** Shares new solid between skin and slurry. */
  private void settle(Channel c, int i, double before, double after) {
    double mass = state.melt.density * c.wet[i];
    double change = after - before;
    c.skin[i] = Slurry.skin(c.skin[i], change, mass, c.mushShare, after);
    c.mostSolid[i] = after <= 0.0 ? 0.0 : Math.max(c.mostSolid[i], after);
    mostSolidAnywhere = Math.max(mostSolidAnywhere, c.mostSolid[i]);
    double share = c.skin[i] / mass;
    c.openShare[i] = Slurry.openShare(share);
    c.slurry[i] = Slurry.carried(after, share);
    c.thickening[i] = Slurry.viscosityFactor(Math.min(1.0, c.slurry[i]), state.melt.flowStop);
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
    ChannelShape shape = c.shape;
    double density = state.melt.density;
    double h = streamHeat[i] / streamVolume[i];
    double share = Math.min(1.0, streamVolume[i] / shape.volume[i]);
    wetWall(c, i, share, h);
    double area = c.wettedShare[i] * shape.wall[i];
    double conductance = liquidConductance[c.firstCell + i] * share / c.wettedShare[i];
    return columns.exchange(c.firstCell + i, dt, conductance, density * streamVolume[i] / area, h);
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

  /** Full gap of a cell [m]. */
  public double gap(int cell) {
    return gap[cell];
  }

  /** Whether metal is resolved through the gap of a cell. */
  public boolean isThick(int cell) {
    return thick[cell];
  }

  /** Mould face temperature at a cell [K]; that of untouched mould where no metal has been. */
  public double faceTemperature(Channel c, int cell) {
    return c.wettedShare[cell] > 0.0
        ? columns.faceTemperature(c.firstCell + cell)
        : c.shape.mouldTemperature[cell];
  }

  /** Heat in the mould above its start, from the stored profiles [J]. */
  public double heldInMould() {
    double sum = cupShare > 0.0 ? columns.held(cupColumn) * cupShare * state.cup.wall() : 0.0;
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.wettedShare[i] > 0.0) {
          sum += columns.held(c.firstCell + i) * c.wettedShare[i] * c.shape.wall[i];
        }
      }
    }
    return sum;
  }

  /** Heat that left through the outside of a shell [J]. */
  public double lostToAir() {
    double sum = cupShare > 0.0 ? columns.lostToAir(cupColumn) * cupShare * state.cup.wall() : 0.0;
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.wettedShare[i] > 0.0) {
          sum += columns.lostToAir(c.firstCell + i) * c.wettedShare[i] * c.shape.wall[i];
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

  private boolean isShut(boolean was, Channel c, int i) {
    double full = gap[c.firstCell + i];
    double open = full * (1.0 - c.skinShare(i, state.melt.density));
    return Slurry.isShut(was, c.slurry[i], state.melt.flowStop, open, Slurry.openGapStop(full));
  }

  /** Open gap over what stops it, as a share of what there was [-]. */
  public double openMargin(Channel c, int i) {
    double full = gap[c.firstCell + i];
    double stop = Slurry.openGapStop(full);
    double open = full * (1.0 - c.skinShare(i, state.melt.density));
    return full > stop ? Math.max(0.0, (open - stop) / (full - stop)) : 1.0;
  }
}
