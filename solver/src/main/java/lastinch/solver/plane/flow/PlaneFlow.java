package lastinch.solver.plane.flow;

import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.air.PlanePockets;

/** The flow alone: one step of metal, air and gates. Heat and record are added round it. */
public final class PlaneFlow {
  /**
   * Largest share of a cell by which a step may over- or underfill it [-]; chosen: it leaves metal
   * at rest less than 1 um/s.
   */
  private static final double TOLERANCE = 1e-7;

  /**
   * Share of a cell that metal may cross in a step [-]; chosen, under the 0.5 that the advection
   * asks for. Halved: the fill of a hot feather changes by 0.5 %.
   */
  private static final double COURANT = 0.4;

  /** Longest step [s]; chosen, that of the heat. */
  private static final double LONGEST = 2e-3;

  /** First two steps [s]; chosen: their speeds are unknown. */
  private static final double FIRST = 1e-4;

  /** Most that a step may be longer than the last [-]; chosen. */
  private static final double GROWTH = 1.3;

  /**
   * Cells less full than this set no step [-]; chosen: the limiter of the volumes keeps them in
   * bounds.
   */
  private static final double WISP = 0.01;

  /** Share of a square that has to cross a face for a drop there to count [-]; chosen. */
  private static final double CROSSED = 1e-6;

  /** Share of the limit of explicit surface tension, sqrt(rho dx^3/(4 pi gamma)) [-]; chosen. */
  private static final double CAPILLARY = 0.8;

  public final PlaneGrid grid;
  public final FlowingLiquid liquid;
  public final FlowState state;
  public final PlaneInlets gates;
  public final PlanePockets pockets;
  public final Projection projection;
  private final VofAdvection transport;
  private final FaceMomentum momentum;
  private final WallFriction friction;
  private final Carried carried;

  /** Cells that let no metal through. */
  public final boolean[] shut;

  /** Cells whose leading metal goes no further. */
  public final boolean[] halted;

  private final double capillaryStep;
  private double time;
  private double courant = COURANT;
  private double lastStep;
  private int steps;

  /** What else travels with the metal. */
  public interface Carried {
    /** Nothing does. */
    Carried NOTHING = (s, dt) -> {};

    /**
     * Moves it by the volumes of a step that stand in the state; the liquid is not yet moved.
     *
     * @param s the state
     * @param dt step [s]
     */
    void carry(FlowState s, double dt);

    /**
     * Told that the liquid is moved and the cells that carry a pressure are known.
     *
     * @param s the state
     * @param dt step [s]
     */
    default void moved(FlowState s, double dt) {}
  }

  public PlaneFlow(
      PlaneGrid grid, FlowingLiquid liquid, PlaneInlets gates, AirEscapeLaw air, Carried carried) {
    this(grid, liquid, gates, air, carried, TOLERANCE);
  }

  public PlaneFlow(
      PlaneGrid grid,
      FlowingLiquid liquid,
      PlaneInlets gates,
      AirEscapeLaw air,
      Carried carried,
      double tolerance) {
    this(
        grid,
        liquid,
        gates,
        air,
        carried,
        tolerance,
        new boolean[grid.size],
        new boolean[grid.size],
        WorkerPair.alone());
  }

  /**
   * A flow whose shut cells and halted fronts others find.
   *
   * @param shut cells that let no metal through
   * @param halted cells whose leading metal goes no further
   * @param team who works
   */
  public PlaneFlow(
      PlaneGrid grid,
      FlowingLiquid liquid,
      PlaneInlets gates,
      AirEscapeLaw air,
      Carried carried,
      boolean[] shut,
      boolean[] halted,
      WorkerPair team) {
    this(grid, liquid, gates, air, carried, TOLERANCE, shut, halted, team);
  }

  private PlaneFlow(
      PlaneGrid grid,
      FlowingLiquid liquid,
      PlaneInlets gates,
      AirEscapeLaw air,
      Carried carried,
      double tolerance,
      boolean[] shut,
      boolean[] halted,
      WorkerPair team) {
    this.shut = shut;
    this.halted = halted;
    this.grid = grid;
    this.liquid = liquid;
    this.gates = gates;
    this.carried = carried;
    state = new FlowState(grid, team);
    pockets = new PlanePockets(grid, air);
    transport = new VofAdvection(grid);
    momentum = new FaceMomentum(grid);
    friction = new WallFriction(grid, liquid);
    projection =
        new Projection(grid, liquid, pockets, gates, friction, air.pushes(), tolerance, team);
    double dx = grid.dx;
    capillaryStep =
        liquid.tension() > 0.0
            ? CAPILLARY
                * Math.sqrt(liquid.density() * dx * dx * dx / (4.0 * Math.PI * liquid.tension()))
            : LONGEST;
    lastStep = FIRST;
  }

  /** Sets the share of a cell that may cross it in a step, for runs with other than usual steps. */
  public void limitSteps(double share) {
    courant = share;
  }

  /** Puts metal in place before the first step; speeds may be set in the state. */
  public void begin() {
    pockets.start(state);
    state.findWetPart(gates.cells);
    pockets.sort(state, 0.0, FIRST);
  }

  /** Longest step that the present speeds allow [s]. */
  public double chooseStep() {
    double rate = 0.0;
    int n = grid.stride;
    double area = grid.dx;
    for (int j = state.rowFrom; j <= state.rowTo; j++) {
      int end = state.last[j];
      for (int c = state.first[j]; c <= end; c++) {
        if (state.liquid[c] - state.skin[c] > WISP * grid.volume[c]) {
          double x = outwards(c, state.u, state.fluxX, 1);
          double y = outwards(c, state.v, state.fluxY, n);
          rate = Math.max(rate, (x + y) / area);
        }
      }
    }
    for (int c : gates.cells) {
      // what comes in is not taken from what the cell gives: each alone has to keep the limit
      rate = Math.max(rate, gates.flowInto(c) * grid.perVolume[c]);
    }
    double g =
        Math.sqrt(liquid.gravityX() * liquid.gravityX() + liquid.gravityY() * liquid.gravityY());
    double dt = Math.min(LONGEST, capillaryStep);
    dt = Math.min(dt, g > 0.0 ? Math.sqrt(courant * grid.dx / g) : LONGEST);
    dt = Math.min(dt, steps < 2 ? FIRST : GROWTH * lastStep);
    return Math.min(dt, rate > 0.0 ? courant / rate : LONGEST);
  }

  /**
   * Greatest speed along one axis at which metal leaves a cell [m/s]. A drop whose metal lies away
   * from a face, so that none crossed it in the last step, does not count: it would hold up all
   * others.
   */
  private double outwards(int c, double[] w, double[] flux, int d) {
    double some = state.active[c] ? -1.0 : CROSSED * grid.volume[c];
    double back = -flux[c] > some ? -w[c] : 0.0;
    double on = flux[c + d] > some ? w[c + d] : 0.0;
    return Math.max(0.0, Math.max(back, on));
  }

  /** One step [s] of metal and air. */
  public void step(double dt) {
    state.findWetPart(gates.cells);
    gates.enter(state, dt);
    transport.findVolumes(state, dt);
    momentum.carry(state);
    carried.carry(state, dt);
    transport.move(state);
    time += dt;
    pockets.sort(state, time, dt);
    carried.moved(state, dt);
    friction.find(state, shut, halted, dt);
    projection.project(state, dt);
    lastStep = dt;
    steps++;
  }

  public double time() {
    return time;
  }

  public int steps() {
    return steps;
  }
}
