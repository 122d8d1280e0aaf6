package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.filling.FilledState;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.judge.Laps;
import lastinch.solver.numerics.WorkerPair;
import lastinch.solver.plane.record.MeetingLines;
import lastinch.solver.plane.record.PlaneAudit;
import lastinch.solver.plane.record.PlaneFindings;
import lastinch.solver.plane.record.PlaneLimbs;
import lastinch.solver.plane.record.PlaneSnapshots;
import lastinch.solver.plane.record.PlaneStops;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.RunRecord;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.solver.result.ToppedUp;

/** One pour over the plane, from the empty map to its result. */
final class PlaneFilling implements Filling {
  private static final String SOLVER = "plane 1";

  private final WorkerPair team;
  private final PlaneRun run;
  private final PlaneSnapshots moments;
  private Optional<PlaneField> field = Optional.empty();

  PlaneFilling(PourCase job, GapMap map, PlaneSettings settings) {
    team = WorkerPair.of(settings.threads());
    run = new PlaneRun(job, map, team);
    moments = new PlaneSnapshots(run, settings.every());
    run.keep(moments);
  }

  @Override
  public PourResult fill(RunObserver observer, BooleanSupplier stop) {
    Outcome ended = run.run(observer, stop);
    PlaneLimbs lines = new PlaneLimbs(run);
    PlaneStops stops = new PlaneStops(run, lines);
    List<MeetingLines.Line> met = new MeetingLines(run).find();
    Outcome outcome =
        ended instanceof Outcome.Misrun && stops.onlyRims()
            ? new Outcome.Filled(ended.time())
            : ended;
    field = Optional.of(field(run, met, moments));
    return result(run, lines, stops, met, outcome);
  }

  @Override
  public ToppedUp topUp(RunObserver observer, BooleanSupplier stop) {
    return new PlaneToppingUp(run).run(observer, stop);
  }

  @Override
  public FilledState state(double seconds) {
    return new PlaneHandover(run, seconds).state();
  }

  @Override
  public Optional<PlaneField> field() {
    return field;
  }

  @Override
  public void close() {
    team.close();
  }

  private static PourResult result(
      PlaneRun run,
      PlaneLimbs lines,
      PlaneStops stops,
      List<MeetingLines.Line> met,
      Outcome outcome) {
    boolean filled = outcome instanceof Outcome.Filled;
    double massToRim =
        run.melt.density
            * (run.grid.totalVolume() + run.sprue.totalRoom() + run.job.gating().cup().volume());
    List<PassageRecord> passages = lines.passages();
    List<Stop> where = filled ? List.of() : stops.list(outcome.time());
    List<GateRecord> gates = run.gateWatch.records();
    return new PourResult.Builder(outcome)
        .filledFraction(run.filledFraction())
        .reach(filled ? lines.limbs().get(0).count * lines.limbs().get(0).stretch : stops.reach())
        .flowLimitedBy(run.watch.tally.limit())
        .entered(run.melt.table.temperature(run.melt.enthalpyIn))
        .mouldAtEdge(run.mouldTemperature)
        .slurryShare(run.mushShare())
        .sprueStanding(run.sprue.mostStanding())
        .massToRim(massToRim)
        .stops(where)
        .edges(stops.edges())
        .gates(gates)
        .meetings(met.stream().map(MeetingLines.Line::meeting).toList())
        .laps(Laps.of(passages))
        .findings(new PlaneFindings(run, filled).list(gates, massToRim))
        .margin(margin(run, lines, stops, filled, where))
        .passages(passages)
        .track(track(passages))
        .accounts(accounts(run))
        .record(new RunRecord(SOLVER, run.flow.steps(), run.heatSteps(), counts(run)))
        .course(FillHistory.UNKNOWN)
        .build();
  }

  private static Map<String, Integer> counts(PlaneRun run) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("table_clamped", run.melt.clamps());
    return counts;
  }

  private static Margin margin(
      PlaneRun run, PlaneLimbs lines, PlaneStops stops, boolean filled, List<Stop> where) {
    if (!filled) {
      Margin.LimitedBy by =
          (where.isEmpty() ? StopReason.NO_METAL : where.get(0).reason()).lacked();
      return new Margin(0.0, OptionalDouble.of(-stops.missing()), by);
    }
    double least = 1.0;
    for (int c = 0; c < run.grid.size; c++) {
      if (run.piece[c] && !lines.rim[c] && run.recorder.reached(c)) {
        double left = run.recorder.enthalpy[c] - run.melt.enthalpyStop;
        least = Math.min(least, left / (run.melt.enthalpyIn - run.melt.enthalpyStop));
      }
    }
    double heat = Math.max(0.0, Math.min(least, run.heat.leastOpen()));
    return new Margin(heat, OptionalDouble.empty(), Margin.LimitedBy.HEAT);
  }

  /** The front along the middle of the parts, in the order of arrival. */
  private static FrontTrack track(List<PassageRecord> passages) {
    List<double[]> rows = new ArrayList<>();
    for (int p = 0; p < passages.size(); p++) {
      PassageRecord r = passages.get(p);
      for (int i = 0; i < r.size(); i++) {
        if (r.reached(i)) {
          rows.add(
              new double[] {
                r.arrivalTime(i), p, r.at(i), r.arrivalSpeed(i), r.arrivalTemperature(i)
              });
        }
      }
    }
    rows.sort((a, b) -> Double.compare(a[0], b[0]));
    return new FrontTrack(
        rows.stream().map(r -> passages.get((int) r[1]).name()).toArray(String[]::new),
        column(rows, 0),
        column(rows, 2),
        column(rows, 3),
        column(rows, 4));
  }

  private static double[] column(List<double[]> rows, int k) {
    return rows.stream().mapToDouble(r -> r[k]).toArray();
  }

  private static ConservationFigures accounts(PlaneRun run) {
    return new PlaneAudit(run).close();
  }

  private static PlaneField field(
      PlaneRun run, List<MeetingLines.Line> met, PlaneSnapshots moments) {
    PlaneField.Left left = new PlaneField.Left(run.mapCells());
    for (int k = 0; k < run.mapCells(); k++) {
      int c = run.gridCell(k);
      if (!run.map.isOpen(k)) {
        continue;
      }
      if (run.recorder.reached(c)) {
        double h = run.recorder.enthalpy[c];
        left.arrival(
            k,
            run.recorder.time[c],
            run.melt.table.temperature(h),
            run.melt.table.solid(h),
            run.recorder.speed[c],
            run.recorder.lap[c]);
      }
      left.end(k, Math.min(1.0, run.flow.state.fill(c)), run.origins.of(c));
      left.impact(k, run.impacts.speed[c]);
    }
    for (MeetingLines.Line line : met) {
      for (int c : line.cells()) {
        left.line(run.mapCell[c], line.meeting().kind());
      }
    }
    List<String> gates = run.job.gating().gates().stream().map(Gate::name).toList();
    return new PlaneField(run.map, gates, left, moments.close());
  }
}
