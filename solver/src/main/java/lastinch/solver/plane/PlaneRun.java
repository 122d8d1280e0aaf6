package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.numerics.Team;
import lastinch.solver.physics.AirEscape;
import lastinch.solver.result.Outcome;
import lastinch.solver.shape.CavityMap;

/** One run of the plane: builds everything, steps until the verdict stands. */
final class PlaneRun {
  private static final double HARD_END = 120.0;
  private static final double HEAT_STEP = 2e-3;
  private static final double STILL = 0.15;
  private static final double STILL_SHARE = 1e-4;
  private static final double ALL = 0.9995;

  final PourCase job;
  final GapMap map;
  final PlaneGrid grid;
  final PlaneMelt melt;
  final double mouldTemperature;
  final PlaneFlow flow;
  final PlaneHeat heat;
  final Origins origins;
  final PlaneRecorder recorder;
  final Downsprue sprue;
  final GateWatch gateWatch;
  final SprueWatch watch;
  final Impacts impacts;

  /** Whether a cell belongs to the piece. */
  final boolean[] piece;

  /** Cell of the map by cell of the grid. */
  final int[] mapCell;

  final double pieceVolume;
  final double airAtStart;
  private final double noticed;
  private double sinceHeat;
  private double lastFilled;
  private double lastAbove;
  private double lastChange;
  private double mostAirPush;
  private double airPush;
  private int heatSteps;
  private Optional<PlaneMoments> moments;

  PlaneRun(PourCase job, GapMap map) {
    this(job, map, Team.alone());
  }

  PlaneRun(PourCase job, GapMap map, Team team) {
    this.job = job;
    this.map = map;
    grid = PlaneGrid.over(map);
    mouldTemperature = MouldBefore.atNearestEdge(job.mould());
    melt = new PlaneMelt(job, mouldTemperature);
    piece = new boolean[grid.size];
    mapCell = new int[grid.size];
    int[] gateOfCell = new int[grid.size];
    double volume = 0.0;
    for (int j = 0; j < grid.ny; j++) {
      for (int i = 0; i < grid.nx; i++) {
        int c = grid.cell(i, j);
        int k = j * grid.nx + i;
        mapCell[c] = k;
        gateOfCell[c] = Origins.NONE;
        if (map.isOpen(k)) {
          GapMap.Part part = map.parts().get(map.part(k));
          piece[c] = part.kind() == GapMap.Kind.PIECE || part.kind() == GapMap.Kind.BOSS;
          volume += piece[c] ? grid.volume[c] : 0.0;
          gateOfCell[c] = part.kind() == GapMap.Kind.GATE ? gateNumber(job, part) : Origins.NONE;
        }
      }
    }
    pieceVolume = volume;
    noticed = STILL_SHARE * grid.totalVolume();
    Gates gates = new Gates(List.of(inlet()));
    origins = new Origins(grid, job.gating().gates().size(), gateOfCell);
    boolean[] shut = new boolean[grid.size];
    heat = new PlaneHeat(grid, melt, job, mouldTemperature, shut);
    boolean[] halted = heat.leading().halted;
    flow =
        new PlaneFlow(
            grid, melt.liquid(job), gates, air(), new Load(heat, origins), shut, halted, team);
    recorder = new PlaneRecorder(grid, melt, heat, origins, mouldTemperature);
    sprue = new Downsprue(job, melt, grid.totalVolume(), mouldTemperature);
    gateWatch = new GateWatch(this, job, map, gateOfCell);
    watch = new SprueWatch(this);
    impacts = new Impacts(grid);
    moments = Optional.empty();
    job.checking().frontCourant().ifPresent(flow::limitSteps);
    flow.begin();
    airAtStart = flow.pockets.held();
  }

  /** What travels with the metal: its heat and the dye of the gates. */
  private record Load(PlaneHeat heat, Origins origins) implements PlaneFlow.Carried {
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
    return Origins.NONE;
  }

  /** Has moments kept from now on. */
  void keep(PlaneMoments kept) {
    moments = Optional.of(kept);
  }

  /** Gate that the first metal of a cell came through, empty for none. */
  String gateName(int c) {
    int gate = recorder.gate[c];
    return gate == Origins.NONE ? "" : job.gating().gates().get(gate).name();
  }

  /** Number of cells of the map. */
  int mapCells() {
    return map.nx() * map.ny();
  }

  /** Cell of the grid that holds what the map has in a cell. */
  int gridCell(int mapIndex) {
    return grid.home(grid.cell(mapIndex % grid.nx, mapIndex / grid.nx));
  }

  private Gates.Gate inlet() {
    int n = map.inlets().size();
    int[] cells = new int[n];
    double[] area = new double[n];
    for (int k = 0; k < n; k++) {
      cells[k] = gridCell(map.inlets().get(k).cell());
      area[k] = map.inlets().get(k).area();
    }
    boolean mouth = n > 0 && map.inlets().get(0).name().equals(CavityMap.MOUTH);
    return new Gates.Gate(cells, area, mouth ? 1.0 : 0.0, 0.0, 0.0);
  }

  private AirLaw air() {
    if (!job.checking().pushesBack() || melt.water) {
      return AirLaw.NONE;
    }
    MouldMedium medium = job.mould().medium();
    List<AirLaw.Hole> holes = new ArrayList<>();
    for (GapMap.Opening o : map.vents()) {
      holes.add(new AirLaw.Hole(gridCell(o.cell()), AirEscape.VENT_DISCHARGE * o.area()));
    }
    double temperature =
        0.5 * (melt.table.temperature(melt.enthalpyIn) + job.mould().temperature().value());
    return new AirLaw(
        true,
        temperature,
        lastinch.solver.physics.Air.OPEN_AIR,
        job.mould().behindPressure(),
        medium.permeability().value(),
        Math.max(1e-3, medium.porosity()),
        job.gating().sprue().tall(),
        job.mould().partingCrack().value(),
        job.gating().sprue().tall(),
        holes);
  }

  /** Told of progress after accepted steps, at most a few hundred times a run. */
  @FunctionalInterface
  interface Watch {
    /** Called with the time [s] and the filled share of the piece [-]. */
    void onStep(double time, double filled);
  }

  /** Runs to the end. */
  Outcome run(Watch watch, BooleanSupplier stop) {
    Optional<Outcome> outcome = Optional.empty();
    try {
      while (outcome.isEmpty()) {
        step();
        outcome = ending();
        if (outcome.isEmpty() && stop.getAsBoolean()) {
          outcome = Optional.of(new Outcome.Cancelled(flow.time()));
        }
        if (flow.steps() % 32 == 0) {
          watch.onStep(flow.time(), filledFraction());
        }
      }
    } catch (PlaneBreakdown b) {
      outcome = Optional.of(new Outcome.BrokeDown(b.time, "plane", b.quantity, b.reason));
    }
    heat.step(flow.state, sinceHeat, true);
    sprue.heat(flow.time(), sinceHeat);
    return outcome.orElseThrow();
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
  double filledFraction() {
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
  double airPush() {
    return airPush;
  }

  /** Share of new solid that rides along, over the piece [-]. */
  double mushShare() {
    double sum = 0.0;
    for (int c = 0; c < grid.size; c++) {
      sum += piece[c] ? heat.mushShare[c] * grid.volume[c] : 0.0;
    }
    return sum / pieceVolume;
  }

  /** Seconds that leading metal of an enthalpy [J/kg] would last in a cell [s]. */
  double secondsLeft(int c, double h) {
    double stop = melt.enthalpyStop;
    if (melt.water || h <= stop) {
      return melt.water ? Double.POSITIVE_INFINITY : 0.0;
    }
    double seconds = h > 0.0 ? h / heat.leading().lossRate(c, 0.5 * h) : 0.0;
    double top = Math.min(0.0, h);
    double share = Math.max(1e-9, heat.mushShare[c]);
    return seconds + (top - stop) / (share * heat.leading().lossRate(c, 0.5 * (top + stop)));
  }

  double mostAirPush() {
    return mostAirPush;
  }

  int heatSteps() {
    return heatSteps;
  }
}
