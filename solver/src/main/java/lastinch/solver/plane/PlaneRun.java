package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.charge.Closures;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.flow.Downsprue;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneBreakdown;
import lastinch.solver.plane.flow.PlaneFlow;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;
import lastinch.solver.plane.heat.PlaneHeat;
import lastinch.solver.plane.record.GateRecorder;
import lastinch.solver.plane.record.GateTracer;
import lastinch.solver.plane.record.JetImpingement;
import lastinch.solver.plane.record.PlaneRecorder;
import lastinch.solver.plane.record.PlaneSnapshots;
import lastinch.solver.plane.record.SprueLimitRecorder;
import lastinch.solver.result.Outcome;

/** One run of the plane: builds everything, steps until the verdict stands. */
public final class PlaneRun {
  /** Longest filling that is followed [s]; chosen: a longer one counts as a breakdown. */
  private static final double HARD_END = 120.0;

  /** Usual step of the heat [s]; three quarters of it are enough to take one; chosen. */
  private static final double HEAT_STEP = 2e-3;

  /** How long nothing may move before metal counts as stopped [s]; chosen. */
  private static final double STILL = 0.15;

  /** Change of the metal, as a share of the whole map, that counts as moving [-]; chosen. */
  private static final double STILL_SHARE = 1e-4;

  /**
   * Filled share of the piece that counts as all of it [-]; chosen: the last corners fill slowly.
   */
  private static final double ALL = 0.9995;

  public final PourCase job;
  public final GapMap map;
  public final PlaneGrid grid;
  public final MeltProperties melt;
  public final double mouldTemperature;
  public final PlaneFlow flow;
  public final PlaneHeat heat;
  public final GateTracer origins;
  public final PlaneRecorder recorder;
  public final Downsprue sprue;
  public final GateRecorder gateWatch;
  public final SprueLimitRecorder watch;
  public final JetImpingement impacts;

  /** Whether a cell belongs to the piece. */
  public final boolean[] piece;

  /** Cell of the map by cell of the grid. */
  public final int[] mapCell;

  public final double pieceVolume;
  public final double airAtStart;
  private final double noticed;
  private double sinceHeat;
  private double lastFilled;
  private double lastAbove;
  private double lastChange;
  private double mostAirPush;
  private double airPush;
  private int heatSteps;
  private Optional<PlaneSnapshots> moments;

  public PlaneRun(PourCase job, GapMap map) {
    this(job, map, WorkerPair.alone());
  }

  public PlaneRun(PourCase job, GapMap map, WorkerPair team) {
    this.job = job;
    this.map = map;
    grid = PlaneGrid.over(map);
    mouldTemperature = new MouldTemperature(job.mould()).atNearestEdge();
    melt = new MeltProperties(job, mouldTemperature);
    piece = new boolean[grid.size];
    mapCell = new int[grid.size];
    int[] gateOfCell = new int[grid.size];
    double volume = 0.0;
    for (int j = 0; j < grid.ny; j++) {
      for (int i = 0; i < grid.nx; i++) {
        int c = grid.cell(i, j);
        int k = j * grid.nx + i;
        mapCell[c] = k;
        gateOfCell[c] = GateTracer.NONE;
        if (map.isOpen(k)) {
          GapMap.Part part = map.parts().get(map.part(k));
          piece[c] = part.kind() == GapMap.Kind.PIECE || part.kind() == GapMap.Kind.BOSS;
          volume += piece[c] ? grid.volume[c] : 0.0;
          gateOfCell[c] = part.kind() == GapMap.Kind.GATE ? gateNumber(job, part) : GateTracer.NONE;
        }
      }
    }
    pieceVolume = volume;
    noticed = STILL_SHARE * grid.totalVolume();
    PlaneInlets gates = new PlaneInlets(List.of(inlet()));
    origins = new GateTracer(grid, job.gating().gates().size(), gateOfCell);
    boolean[] shut = new boolean[grid.size];
    sprue = new Downsprue(job, melt, grid.totalVolume(), mouldTemperature);
    heat = new PlaneHeat(grid, melt, job, sprue.mould(), mouldTemperature, shut);
    boolean[] halted = heat.leading().halted;
    flow =
        new PlaneFlow(
            grid,
            FlowingLiquid.of(job, melt),
            gates,
            air(),
            new Load(heat, origins),
            shut,
            halted,
            team);
    recorder = new PlaneRecorder(grid, melt, heat, origins, mouldTemperature);
    gateWatch = new GateRecorder(this, job, map, gateOfCell);
    watch = new SprueLimitRecorder(this);
    impacts = new JetImpingement(grid);
    moments = Optional.empty();
    job.checking().frontCourant().ifPresent(flow::limitSteps);
    flow.begin();
    airAtStart = flow.pockets.held();
  }

  /** What travels with the metal: its heat and the dye of the gates. */
  private record Load(PlaneHeat heat, GateTracer origins) implements PlaneFlow.Carried {
    @Override
    public void carry(FlowState s, double dt) {
      heat.carry(s, dt);
      origins.carry(s, dt);
    }

    @Override
    public void moved(FlowState s, double dt) {
      heat.moved(s, dt);
    }
  }

  private static int gateNumber(PourCase job, GapMap.Part part) {
    for (int g = 0; g < job.gating().gates().size(); g++) {
      if (job.gating().gates().get(g).name().equals(part.name())) {
        return g;
      }
    }
    return GateTracer.NONE;
  }

  /** Has moments kept from now on. */
  void keep(PlaneSnapshots kept) {
    moments = Optional.of(kept);
  }

  /** Gate that the first metal of a cell came through, empty for none. */
  public String gateName(int c) {
    int gate = recorder.gate[c];
    return gate == GateTracer.NONE ? "" : job.gating().gates().get(gate).name();
  }

  /** Number of cells of the map. */
  public int mapCells() {
    return map.nx() * map.ny();
  }

  /** Cell of the grid that holds what the map has in a cell. */
  public int gridCell(int mapIndex) {
    return grid.home(grid.cell(mapIndex % grid.nx, mapIndex / grid.nx));
  }

  private PlaneInlets.Gate inlet() {
    int n = map.inlets().size();
    int[] cells = new int[n];
    double[] area = new double[n];
    for (int k = 0; k < n; k++) {
      cells[k] = gridCell(map.inlets().get(k).cell());
      area[k] = map.inlets().get(k).area();
    }
    boolean mouth = n > 0 && map.inlets().get(0).name().equals(CavityMap.MOUTH);
    return new PlaneInlets.Gate(cells, area, mouth ? 1.0 : 0.0, 0.0, 0.0);
  }

  private AirEscapeLaw air() {
    if (!job.checking().pushesBack() || melt.water) {
      return AirEscapeLaw.NONE;
    }
    double discharge = job.laws().ventDischarge().value();
    List<AirEscapeLaw.Hole> holes = new ArrayList<>();
    for (GapMap.Opening o : map.vents()) {
      holes.add(new AirEscapeLaw.Hole(gridCell(o.cell()), discharge * o.area()));
    }
    return Closures.air(job, melt, holes);
  }

  /** Runs to the end. */
  public Outcome run(RunObserver watch, BooleanSupplier stop) {
    Optional<Outcome> outcome = Optional.empty();
    double most = 0.0;
    try {
      while (outcome.isEmpty()) {
        step();
        outcome = ending();
        if (outcome.isEmpty() && stop.getAsBoolean()) {
          outcome = Optional.of(new Outcome.Cancelled(flow.time()));
        }
        if (flow.steps() % 32 == 0) {
          most = Math.max(most, filledFraction());
          watch.onStep(flow.time(), most);
        }
      }
    } catch (PlaneBreakdown b) {
      outcome = Optional.of(new Outcome.BrokeDown(b.time, "plane", b.quantity, b.reason));
    }
    finishHeat();
    moments = Optional.empty();
    return outcome.orElseThrow();
  }

  /** Heat still due at the end of a phase. */
  void finishHeat() {
    heat.step(flow.state, sinceHeat, true);
    sprue.heat(flow.time(), sinceHeat);
    sinceHeat = 0.0;
  }

  /** One step: the hand, the flow, what it carries, heat when due, and the record. */
  void step() {
    double dt = flow.chooseStep();
    if (!(dt > 1e-9)) {
      throw new PlaneBreakdown(flow.time(), "step", "too short");
    }
    sprue.before(flow.gates, flow.time(), dt);
    heat.enters(sprue.footEnthalpy());
    flow.step(dt);
    sprue.after(flow.gates, heat.carriedIn() / melt.density);
    sinceHeat += dt;
    if (sinceHeat >= HEAT_STEP * 0.75) {
      heat.step(flow.state, sinceHeat, false);
      sprue.heat(flow.time(), sinceHeat);
      sinceHeat = 0.0;
      heatSteps++;
    }
    recorder.note(flow.state, flow.time(), piece);
    impacts.note(flow.state, dt);
    airPush = 0.0;
    for (int p = 0; p < flow.pockets.count(); p++) {
      airPush = Math.max(airPush, flow.pockets.pressure[p]);
    }
    mostAirPush = Math.max(mostAirPush, airPush);
    gateWatch.note(dt);
    watch.note(dt);
    if (moments.isPresent()) {
      moments.get().note();
    }
  }

  private Optional<Outcome> ending() {
    double filled = filledFraction();
    double now = flow.time();
    if (filled >= ALL) {
      return Optional.of(new Outcome.Filled(now));
    }
    double inside = flow.state.totalLiquid();
    double above = sprue.above();
    boolean stands = heat.leading().halts() > 0 && heat.leading().running() == 0;
    boolean pours = above > lastAbove + noticed && !stands && !sprue.isFull();
    if (Math.abs(inside - lastFilled) > noticed || pours) {
      lastFilled = inside;
      lastAbove = above;
      lastChange = now;
    }
    if (now - lastChange > STILL && inside > 0.0) {
      return Optional.of(new Outcome.Misrun(now));
    }
    if (now > HARD_END) {
      throw new PlaneBreakdown(now, "time", "metal still runs");
    }
    return Optional.empty();
  }

  /** Share of the piece that holds metal [-]. */
  public double filledFraction() {
    double sum = 0.0;
    FlowState s = flow.state;
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        sum += piece[c] ? Math.min(s.liquid[c], grid.volume[c]) : 0.0;
      }
    }
    return Math.min(1.0, sum / pieceVolume);
  }

  /** Greatest pressure of air in the cavity now, above open air [Pa]. */
  public double airPush() {
    return airPush;
  }

  /** Share of new solid that rides along, over the piece [-]. */
  public double mushShare() {
    double sum = 0.0;
    for (int c = 0; c < grid.size; c++) {
      sum += piece[c] ? heat.mushShare[c] * grid.volume[c] : 0.0;
    }
    return sum / pieceVolume;
  }

  /** Seconds that leading metal of an enthalpy [J/kg] would last in a cell [s]. */
  public double secondsLeft(int c, double h) {
    double stop = melt.enthalpyStop;
    if (melt.water || h <= stop) {
      return melt.water ? Double.POSITIVE_INFINITY : 0.0;
    }
    double seconds = h > 0.0 ? h / heat.leading().lossRate(c, 0.5 * h) : 0.0;
    double top = Math.min(0.0, h);
    double share = Math.max(1e-9, heat.mushShare[c]);
    return seconds + (top - stop) / (share * heat.leading().lossRate(c, 0.5 * (top + stop)));
  }

  public double mostAirPush() {
    return mostAirPush;
  }

  int heatSteps() {
    return heatSteps;
  }
}
