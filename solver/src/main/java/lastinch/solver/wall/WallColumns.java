package lastinch.solver.wall;

import lastinch.solver.material.Checks;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.physics.DryAir;

/**
 * Many columns of mould normal to the wall, each coupled to the metal in front of it. All figures
 * are per area of face (per area at depth 0 where the wall is curved).
 *
 * <p>Scheme: finite volumes, enthalpy nodes, backward Euler (first order in time, second in space
 * on smooth grids), no stability limit. The column is eliminated to {@code heat flow = offset +
 * slope x metal temperature}, then the metal's enthalpy is solved on its table piece exactly. Heat
 * is kept to rounding. Nothing is allocated after construction. An instance belongs to one run.
 */
public final class WallColumns {
  /**
   * Stands in for perfect contact with a face that stays at its heat [W/(m2 K)]; numerical, far
   * over any contact.
   */
  private static final double PERFECT = 1e12;

  /**
   * Passes over a step at most: tangent capacities, then secants [-]; numerical: with four stops
   * move by 0.01 mm.
   */
  private static final int PASSES = 2;

  private final MetalTable metal;
  private final MouldSide mould;
  private final MetalSide through;
  private final boolean fixedFace;
  private final boolean[] thick;
  private final double[] face;
  private final double[] given;
  private final double[] wallEnthalpy;
  private double airLoss;

  /** The same columns, deep enough for heat that is followed for longer. */
  private WallColumns(WallColumns of, double seconds) {
    metal = of.metal;
    mould = of.mould.deeper(seconds);
    through = of.through.copy();
    fixedFace = of.fixedFace;
    thick = of.thick.clone();
    face = of.face.clone();
    given = of.given.clone();
    wallEnthalpy = of.wallEnthalpy.clone();
  }

  /**
   * A copy that goes its own way from here on. Nodes are added behind those there are, at the
   * temperature that the mould had, so that heat can be followed further; a column that ends in
   * air, or where something else begins, ends there still.
   *
   * @param seconds how long heat is to be followed from now on [s]
   */
  public WallColumns continued(double seconds) {
    return new WallColumns(this, seconds);
  }

  /** Columns that end without flux. */
  public WallColumns(int capacity, WallGrid grid, MouldTable mould, MetalTable metal) {
    this(capacity, grid, mould, metal, OuterAir.NONE, false);
  }

  private WallColumns(
      int capacity,
      WallGrid grid,
      MouldTable mould,
      MetalTable metal,
      OuterAir air,
      boolean fixedFace) {
    Checks.within("capacity", capacity, 1, 10_000_000, "-");
    this.metal = metal;
    this.mould = new MouldSide(capacity, grid, mould, air);
    this.through = new MetalSide(capacity, grid, metal);
    this.fixedFace = fixedFace;
    thick = new boolean[capacity];
    face = new double[capacity];
    given = new double[capacity];
    wallEnthalpy = new double[capacity];
  }

  /** Columns that end in air at their depth limit, as a shell does. */
  public static WallColumns shell(
      int capacity, WallGrid grid, MouldTable mould, MetalTable metal, OuterAir air) {
    return new WallColumns(capacity, grid, mould, metal, air, false);
  }

  /**
   * A mould that stays at its heat (a checking option): the face keeps the initial temperature, the
   * heat given to it is booked.
   */
  public static WallColumns fixed(int capacity, WallGrid grid, MouldTable mould, MetalTable metal) {
    return new WallColumns(capacity, grid, mould, metal, OuterAir.NONE, true);
  }

  /**
   * Starts or restarts a column.
   *
   * @param column 0 to capacity - 1
   * @param temperature of the whole column [K]
   * @param curvature growth of area with depth, area = face (1 + curvature x depth), 2 pi/perimeter
   *     for a convex section, 0 for a flat wall, negative towards an axis [1/m]
   * @param depthLimit where the column ends; its last node is fitted [m]
   */
  public void open(int column, double temperature, double curvature, double depthLimit) {
    Checks.within("temperature", temperature, 1.0, 5000.0, "K");
    Checks.within("depthLimit", depthLimit, 1e-9, Double.POSITIVE_INFINITY, "m");
    mould.open(column, temperature, curvature, depthLimit);
    thick[column] = false;
    face[column] = temperature;
    given[column] = 0.0;
    wallEnthalpy[column] = 0.0;
  }

  /**
   * Starts or restarts a column with metal nodes through the half gap.
   *
   * @param column 0 to capacity - 1
   * @param temperature of the mould [K]
   * @param curvature as in {@link #open} [1/m]
   * @param depthLimit as in {@link #open} [m]
   * @param halfGap way for heat from the middle of the metal to the wall [m]
   * @param h0 enthalpy of all metal nodes [J/kg]
   */
  public void openThick(
      int column,
      double temperature,
      double curvature,
      double depthLimit,
      double halfGap,
      double h0) {
    Checks.within("halfGap", halfGap, 1e-9, 1e3, "m");
    open(column, temperature, curvature, depthLimit);
    through.open(column, halfGap, h0);
    thick[column] = true;
    wallEnthalpy[column] = h0;
  }

  /**
   * The wetted share of a cell has grown: the column now stands for old wall and fresh wall
   * together.
   *
   * @param oldShare wetted before [-]
   * @param newShare wetted now, not smaller [-]
   */
  public void widen(int column, double oldShare, double newShare) {
    Checks.within("oldShare", oldShare, 0.0, newShare, "-");
    if (newShare == 0.0) {
      return;
    }
    double kept = oldShare / newShare;
    mould.widen(column, kept);
    face[column] = kept * face[column] + (1.0 - kept) * mould.initialTemperature(column);
    given[column] *= kept;
  }

  /**
   * Moves all metal nodes of a thick column by the same enthalpy.
   *
   * @param newMean mean enthalpy afterwards [J/kg]
   */
  public void shift(int column, double newMean) {
    through.shift(column, newMean - through.mean(column));
    wallEnthalpy[column] = through.enthalpy(column, 0);
  }

  /**
   * One implicit step of metal and column together. The heat given per area is {@code (h -
   * returned) x metalPerArea}.
   *
   * @param dt time step [s]
   * @param conductance metal to mould face, of contact alone for a thick column, may be infinite
   *     [W/(m2 K)]
   * @param metalPerArea metal per area of wall [kg/m2]
   * @param h specific enthalpy of the metal before, the mean for a thick column [J/kg]
   * @return specific enthalpy after [J/kg]
   */
  public double exchange(int column, double dt, double conductance, double metalPerArea, double h) {
    return exchangeInAir(column, dt, conductance, metalPerArea, h, 0.0, DryAir.SHOP);
  }

  /**
   * As {@link #exchange}, the body losing heat to air besides; the loss of the step is then {@link
   * #airLoss()}. Not for thick columns, which take no notice of the air.
   *
   * @param airConductance body to air, per area of wall [W/(m2 K)]
   * @param airTemperature [K]
   */
  public double exchangeInAir(
      int column,
      double dt,
      double conductance,
      double metalPerArea,
      double h,
      double airConductance,
      double airTemperature) {
    if (thick[column]) {
      return exchangeThick(column, dt, conductance, metalPerArea, h);
    }
    double air = dt * airConductance;
    double link = begin(column, dt, 1.0 / conductance);
    double after = h;
    double flow = 0.0;
    int passes = 0;
    do {
      eliminate(column, dt);
      after =
          metal.settle(
              h,
              metalPerArea,
              dt * offset(column, link) - air * airTemperature,
              dt * slope(link) + air);
      airLoss = air == 0.0 ? 0.0 : air * (metal.temperature(after) - airTemperature);
      flow = (metalPerArea * (h - after) - airLoss) / dt;
      passes++;
    } while (again(column, flow, passes));
    accept(column, dt, flow);
    wallEnthalpy[column] = after;
    return after;
  }

  private double exchangeThick(
      int column, double dt, double contact, double metalPerArea, double h) {
    shift(column, h);
    double link = begin(column, dt, through.begin(column) + 1.0 / contact);
    double flow = 0.0;
    int passes = 0;
    do {
      eliminate(column, dt);
      flow = through.solve(column, dt, metalPerArea, offset(column, link), slope(link));
      passes++;
    } while (again(column, flow, passes));
    through.accept(column, dt, metalPerArea, flow);
    accept(column, dt, flow);
    airLoss = 0.0;
    wallEnthalpy[column] = through.enthalpy(column, 0);
    return through.mean(column);
  }

  /**
   * One implicit step against a body held at a temperature.
   *
   * @param dt time step [s]
   * @param conductance body to mould face, may be infinite [W/(m2 K)]
   * @param metalTemperature [K]
   * @return heat taken by the column [J/m2]
   */
  public double exchangeAt(int column, double dt, double conductance, double metalTemperature) {
    double link = begin(column, dt, 1.0 / conductance);
    double flow = 0.0;
    int passes = 0;
    do {
      eliminate(column, dt);
      flow = offset(column, link) + slope(link) * metalTemperature;
      passes++;
    } while (again(column, flow, passes));
    accept(column, dt, flow);
    airLoss = 0.0;
    return flow * dt;
  }

  private double begin(int column, double dt, double resistance) {
    if (fixedFace) {
      return Math.min(PERFECT, 1.0 / resistance);
    }
    mould.begin(column, dt);
    return 1.0 / (resistance + mould.surfaceResistance());
  }

  private void eliminate(int column, double dt) {
    if (!fixedFace) {
      mould.eliminate(column, dt);
    }
  }

  private boolean again(int column, double flow, int passes) {
    if (fixedFace) {
      return false;
    }
    boolean wanted = mould.follow(column, flow) && passes < PASSES;
    if (wanted) {
      mould.secants(column);
    }
    return wanted;
  }

  private double slope(double link) {
    return fixedFace ? link : mould.slope(link);
  }

  private double offset(int column, double link) {
    return fixedFace ? -link * mould.initialTemperature(column) : mould.offset(link);
  }

  private void accept(int column, double dt, double flow) {
    if (fixedFace) {
      given[column] += flow * dt;
    } else {
      face[column] = mould.accept(column, dt, flow);
    }
  }

  /** Heat lost to air by the body in the last {@link #exchangeInAir} [J/m2]. */
  public double airLoss() {
    return airLoss;
  }

  /** Temperature of the mould face at the end of the last step [K]. */
  public double faceTemperature(int column) {
    return face[column];
  }

  /** Temperature of a mould node, 0 at the face [K]. */
  public double nodeTemperature(int column, int node) {
    return mould.temperature(column, node);
  }

  /** Number of mould nodes in use by a column. */
  public int nodes(int column) {
    return mould.count(column);
  }

  /** Specific enthalpy of a metal node of a thick column, 0 at the wall [J/kg]. */
  public double metalNode(int column, int node) {
    return through.enthalpy(column, node);
  }

  /**
   * Heat above the initial state, from the stored profile; what was booked, where the mould stays
   * at its heat [J/m2].
   */
  public double held(int column) {
    return fixedFace ? given[column] : mould.held(column);
  }

  /** Heat that left through the outer end of a shell [J/m2]. */
  public double lostToAir(int column) {
    return mould.lost(column);
  }

  /** Share of solid of the metal at the wall after the last step [-]. */
  public double surfaceSolid(int column) {
    return metal.solid(wallEnthalpy[column]);
  }

  /** Number of steps in which the metal nodes of a thick column did not settle fully. */
  public int unsettled() {
    return through.unsettled();
  }
}
