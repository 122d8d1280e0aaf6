package lastinch.solver.network;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.filling.FilledState;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.network.flow.AirPockets;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.ColumnFlowSolver;
import lastinch.solver.network.flow.ColumnSeparation;
import lastinch.solver.network.flow.ColumnTransport;
import lastinch.solver.network.flow.EnergyBudget;
import lastinch.solver.network.flow.FallingMetal;
import lastinch.solver.network.flow.MetalInPlace;
import lastinch.solver.network.flow.NetworkBreakdown;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.flow.StepChoice;
import lastinch.solver.network.flow.Topology;
import lastinch.solver.network.heat.CellHeat;
import lastinch.solver.network.heat.EdgeStrips;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.heat.FrontMarkers;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelLayout;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.record.ConservationAudit;
import lastinch.solver.network.record.FlowLimitRecorder;
import lastinch.solver.network.record.FrontRecorder;
import lastinch.solver.network.record.Snapshots;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.ToppedUp;

/** One run: builds everything, steps until the verdict stands, hands over the result. */
public final class NetworkRun implements Filling {
  /**
   * A run that still moves after this long has lost its way [s]; chosen, well over any pour by
   * hand.
   */
  private static final double HARD_END = 120.0;

  /**
   * Solves of a step that an event shortens [-]; chosen: twice as many change no bit of ten plans.
   */
  private static final int SOLVES = 4;

  /**
   * Share of a step from which an event in it is its end, so that no other solve is made [-];
   * chosen: with half the distance to 1 stops move by 0.04 mm at most.
   */
  private static final double EVENT_NEAR = 0.98;

  /**
   * Joints that may run dry in one step [-]; chosen: with half as many ten plans stay as they are.
   */
  private static final int MOST_DRY = 4;

  /**
   * An event that comes this many times later than a longer step let fear is gone for [-]; chosen:
   * with half the distance to 1 ten plans stay as they are.
   */
  private static final double EVENT_FAR = 1.5;

  public final PourCase job;
  public final MouldTemperature mouldHeat;
  final ChannelGraph graph;
  public final MeltProperties melt;
  public final NetworkState state;
  public final AirPockets air;
  public final CellHeat heat;
  final ColumnFlowSolver hydraulics;
  final ColumnTransport transport;
  public final FallingMetal falls;
  final Topology topology;
  final ColumnSeparation lettingGo;
  final FrontMarkers tips;
  public final FrontRecorder recorder;
  final Snapshots moments;
  public final EdgeStrips rims;
  public final EnergyBudget work;
  final ConservationAudit books;
  final StepChoice choice;
  public final RunEnding ending;
  public final FlowLimitRecorder flowWatch;
  public final double massToRim;
  public final double pieceVolume;
  private double sinceHeat;
  private int steps;
  private int heatSteps;
  private double forcedMass;

  public NetworkRun(PourCase job) {
    this(job, ChannelLayout.of(job, new MouldTemperature(job.mould())));
  }

  /** A run over channels laid out otherwise than {@link ChannelLayout} does. */
  public NetworkRun(PourCase job, ChannelGraph graph) {
    this.job = job;
    this.graph = graph;
    mouldHeat = new MouldTemperature(job.mould());
    double coldest = job.mould().temperature().value();
    for (ChannelShape shape : graph.channels()) {
      for (double t : shape.mouldTemperature) {
        coldest = Math.min(coldest, t);
      }
    }
    melt = new MeltProperties(job, coldest);
    double volume = job.gating().cup().volume();
    double piece = 0.0;
    for (ChannelShape shape : graph.channels()) {
      volume += shape.totalVolume();
      piece += shape.isPiece() ? shape.totalVolume() : 0.0;
    }
    pieceVolume = piece;
    massToRim = volume * melt.density;
    ChannelShape first = graph.channels().get(0);
    Checking checking = job.checking();
    PouringCup cup =
        new PouringCup(
            job.pour(),
            job.gating().cup(),
            melt.density,
            job.metal().melted(),
            massToRim,
            first.faceArea[0],
            melt.entryLoss);
    state = new NetworkState(job, graph, melt, cup);
    air = new AirPockets(state, job);
    double cupHeat = mouldHeat.at(mouldHeat.depthUnderWall(job.gating().cup().across()));
    double least = Math.min(job.mould().temperature().value(), cupHeat);
    heat = new CellHeat(state, job, new MouldColumns(job, melt, least, massToRim), cupHeat);
    recorder = new FrontRecorder(state, job.metal().alloy());
    hydraulics = new ColumnFlowSolver(state, air, checking);
    transport = new ColumnTransport(state);
    falls = new FallingMetal(state, recorder);
    lettingGo = new ColumnSeparation(state, air);
    topology = new Topology(state, air, falls, recorder);
    tips = new FrontMarkers(state, transport, heat);
    rims = new EdgeStrips(state, job, heat, air);
    recorder.watch(tips, rims);
    moments = new Snapshots(state, job.gating().cup().volume());
    work = new EnergyBudget(state);
    books = new ConservationAudit(state, heat, air, job.metal().melted());
    choice = new StepChoice(state, checking, tips);
    ending = new RunEnding(this);
    flowWatch = new FlowLimitRecorder(state, air);
    forcedMass = new MetalInPlace(state, topology, recorder).lay(checking.startsWet());
    if (isFedDirectly()) {
      state.cupIsHeld = true;
      state.heldPressure = melt.density * Gravity.G * checking.cupKeptAt().orElse(0.0);
      state.forcedFlow = checking.entersAt().orElse(0.0) * first.faceArea[0];
      topology.openInlet();
    }
  }

  /** Whether checking options feed the channels without cup and sprue. */
  public boolean isFedDirectly() {
    return job.checking().cupKeptAt().isPresent() || job.checking().entersAt().isPresent();
  }

  @Override
  public PourResult fill(RunObserver watch, BooleanSupplier stop) {
    Optional<Outcome> outcome = Optional.empty();
    int told = 0;
    double most = 0.0;
    try {
      while (outcome.isEmpty()) {
        step();
        outcome = ending.outcome();
        if (outcome.isEmpty() && state.time > HARD_END) {
          throw new NetworkBreakdown(state.time, ending.place(), "time", "metal still runs");
        }
        if (outcome.isEmpty() && stop.getAsBoolean()) {
          outcome = Optional.of(new Outcome.Cancelled(state.time));
        }
        if (steps / 16 > told) {
          told = steps / 16;
          most = Math.max(most, filledFraction());
          watch.onStep(state.time, most);
        }
      }
    } catch (NetworkBreakdown b) {
      outcome = Optional.of(new Outcome.BrokeDown(b.time, b.place, b.quantity, b.reason));
    }
    return new ResultBuilder(this).build(outcome.orElseThrow());
  }

  @Override
  public ToppedUp topUp(RunObserver watch, BooleanSupplier stop) {
    return new NetworkToppingUp(this).run(watch, stop);
  }

  @Override
  public FilledState state(double seconds) {
    return new NetworkHandover(this, seconds).state();
  }

  /** One flow step: the hand, the columns, what falls, what closes or opens, and heat when due. */
  void step() {
    work.beginStep();
    double dt = solveFlows(choice.next());
    recorder.beginStep();
    pour(dt);
    tips.advance(dt);
    flowWatch.book(hydraulics, dt);
    transport.advance(dt);
    hydraulics.endStep();
    work.columnsMoved(hydraulics, dt);
    falls.advance(dt);
    if (!state.cupIsHeld) {
      falls.drainCup(dt);
    }
    falls.land(dt);
    state.time += dt;
    recorder.endStep(dt);
    air.endStep(dt);
    falls.countLanding(dt);
    topology.settle();
    falls.send(dt);
    work.eventsSettled();
    steps++;
    heatWhenDue(dt);
    moments.endStep();
  }

  /** Solves the flows of a step and shortens it to the first event; returns the step [s]. */
  private double solveFlows(double longest) {
    double dt = longest;
    hydraulics.keepOldFlows();
    for (int k = 0; k < SOLVES; k++) {
      air.beginStep();
      hydraulics.solve(dt);
      int dry = 0;
      while (k == 0 && dry < MOST_DRY && lettingGo.breakPulledColumn(hydraulics)) {
        dry++;
        work.columnsBroke();
        hydraulics.keepOldFlows();
        air.beginStep();
        hydraulics.solve(dt);
      }
      boolean changed = lettingGo.letGoOfDryEnds(hydraulics);
      double shorter = choice.trim(dt);
      double later = k == 1 && shorter >= dt ? choice.trim(longest) : dt;
      boolean early = later > EVENT_FAR * dt;
      if (k == SOLVES - 1 || (shorter >= EVENT_NEAR * dt && !early && !changed)) {
        return shorter;
      }
      dt = early ? later : shorter;
    }
    return dt;
  }

  private void pour(double dt) {
    if (state.cupIsHeld) {
      forcedMass += hydraulics.drawnFromCup() * dt * melt.density;
    } else {
      double before = state.cup.volume();
      double spilled = state.cup.spilled();
      work.handPours(false);
      double mass = state.cup.pour(state.time, dt);
      work.handPours(true);
      state.spilledHeat += (state.cup.spilled() - spilled) * melt.enthalpyIn;
      double added = state.cup.volume() - before;
      if (mass > 0.0 && added > 0.0) {
        state.cupEnthalpy =
            (state.cupEnthalpy * before + melt.enthalpyIn * added) / (before + added);
      }
    }
  }

  private void heatWhenDue(double dt) {
    sinceHeat += dt;
    if (sinceHeat < choice.heatStep() * (1.0 - 1e-9)) {
      return;
    }
    transport.spread(sinceHeat);
    heat.step(sinceHeat);
    sinceHeat = 0.0;
    heatSteps++;
    freezeAndThaw();
  }

  /** Heat still due at the end of a run. */
  void finishHeat() {
    heat.finish(sinceHeat);
    sinceHeat = 0.0;
  }

  private void freezeAndThaw() {
    boolean any = false;
    for (Channel c : state.channels) {
      any |= thaws(c, c.frontA);
      any |= thaws(c, c.frontB);
      for (int i = 0; i < c.shape.cells; i++) {
        FrontMarker front = c.frontOf(i);
        if (!front.isFrozen() && isOnTheWay(c, i) && heat.isShut(c, i)) {
          front.freeze(i, state.time);
          tips.frozeBehind(c, front);
          any = true;
        }
      }
    }
    if (any) {
      work.columnsFroze();
      air.relabel();
    }
  }

  private boolean thaws(Channel c, FrontMarker front) {
    boolean opens = front.isFrozen() && heat.isOpenAgain(c, front.frozenCell);
    if (opens) {
      front.thaw();
    }
    return opens;
  }

  /** Whether metal must pass a cell to get on: not in a pool at a closed end. */
  private static boolean isOnTheWay(Channel c, int i) {
    if (c.wet[i] <= 0.0) {
      return false;
    }
    if (c.full) {
      return c.jointA != ChannelGraph.CLOSED && c.jointB != ChannelGraph.CLOSED;
    }
    return c.frontOf(i) == c.frontA
        ? c.jointA != ChannelGraph.CLOSED
        : c.jointB != ChannelGraph.CLOSED;
  }

  double filledFraction() {
    double volume = 0.0;
    for (Channel c : state.channels) {
      if (c.shape.isPiece()) {
        volume += c.full ? c.shape.totalVolume() : c.volumeA + c.volumeB;
      }
    }
    return Math.min(1.0, volume / pieceVolume);
  }

  int steps() {
    return steps;
  }

  int heatSteps() {
    return heatSteps;
  }

  double forcedMass() {
    return forcedMass;
  }
}
