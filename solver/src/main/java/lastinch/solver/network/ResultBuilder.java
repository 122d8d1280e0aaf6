package lastinch.solver.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lastinch.solver.judge.Laps;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.FrontMarker;
import lastinch.solver.network.heat.RunOutExtrapolation;
import lastinch.solver.network.record.EdgeReport;
import lastinch.solver.network.record.FinalStops;
import lastinch.solver.network.record.NetworkFindings;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.HeatLossEntry;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.RunRecord;
import lastinch.solver.result.Stop;

/** Turns the state at the end of a run into a result. */
final class ResultBuilder {
  private static final String SOLVER = "network 1";

  private final NetworkRun run;
  private final NetworkState state;

  ResultBuilder(NetworkRun run) {
    this.run = run;
    this.state = run.state;
  }

  PourResult build(Outcome outcome) {
    run.finishHeat();
    boolean filled = outcome instanceof Outcome.Filled;
    List<PassageRecord> passages = run.recorder.passages(outcome.time());
    List<Stop> stops = filled ? List.of() : new FinalStops(run).list(outcome.time());
    ConservationFigures accounts = run.books.close(run.forcedMass(), run.work.error());
    Margin margin = margin(filled, stops);
    EdgeReport rim = new EdgeReport(run);
    rim.standUnderTheSprue();
    return new PourResult.Builder(outcome)
        .filledFraction(filled ? 1.0 : run.filledFraction())
        .reach(reach(filled))
        .flowLimitedBy(run.flowWatch.tally.limit())
        .entered(run.melt.temperatureIn())
        .mouldAtEdge(run.mouldHeat.atNearestEdge())
        .slurryShare(pieceChannel().mushShare)
        .sprueStanding(run.flowWatch.tally.mostStanding())
        .massToRim(run.massToRim)
        .stops(stops)
        .edges(rim.stretches())
        .edgeAtStations(rim.atStations())
        .gates(gates())
        .meetings(run.recorder.meetings())
        .laps(Laps.of(passages))
        .findings(new NetworkFindings(run, filled).list())
        .margin(margin)
        .ledger(ledger())
        .passages(passages)
        .track(run.recorder.track())
        .accounts(accounts)
        .record(record())
        .course(run.moments.course())
        .build();
  }

  private RunRecord record() {
    Map<String, Integer> counts = new LinkedHashMap<>(run.choice.counts());
    counts.put("table_clamped", run.melt.clamps());
    return new RunRecord(SOLVER, run.steps(), run.heatSteps(), counts);
  }

  Channel pieceChannel() {
    Channel piece = state.channels[0];
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE) {
        piece = c;
      }
    }
    return piece;
  }

  /** Metal without a break from the thick end of the first limb [m]; from its tip if fed there. */
  private double reach(boolean filled) {
    String limb = run.job.piece().limbs().get(0).name();
    double reached = 0.0;
    for (Channel c : state.channels) {
      if (c.shape.role == Role.PIECE && c.shape.limb.equals(limb)) {
        if (filled || c.full) {
          reached = c.shape.start + c.shape.length;
          continue;
        }
        boolean fromA = c.hasPlugA() && c.volumeA > 0.0;
        return fromA
            ? c.shape.start + c.positionA()
            : c.volumeB > 0.0 && reached == 0.0 ? c.shape.start + c.positionB() : reached;
      }
    }
    return reached;
  }

  private Margin margin(boolean filled, List<Stop> stops) {
    if (!filled) {
      if (stops.isEmpty()) {
        return new Margin(0.0, OptionalDouble.empty(), Margin.LimitedBy.METAL);
      }
      Stop stop = stops.get(0);
      Margin.LimitedBy by = stop.reason().lacked();
      return new Margin(0.0, OptionalDouble.of(-new FinalStops(run).missing()), by);
    }
    double spendable = state.melt.enthalpyIn - state.melt.enthalpyStop;
    double least = 1.0;
    double open = 1.0;
    for (Channel c : state.channels) {
      boolean piece = c.shape.isPiece();
      for (int i = 0; i < c.shape.cells; i++) {
        int cell = c.firstCell + i;
        if (piece && Double.isFinite(run.recorder.arrivalTime[cell])) {
          double left = (run.recorder.arrivalEnthalpy[cell] - state.melt.enthalpyStop) / spendable;
          least = Math.min(least, left);
        }
        if (c.wet[i] > 0.0 && c.shape.role != Role.WELL) {
          open = Math.min(open, run.heat.openMargin(c, i));
        }
      }
    }
    double heat = Math.max(0.0, Math.min(least, open));
    RunOutExtrapolation beyond = new RunOutExtrapolation(run);
    return new Margin(heat, beyond.distance(), beyond.limitedBy());
  }

  private List<GateRecord> gates() {
    List<GateRecord> records = new ArrayList<>();
    double through = 0.0;
    for (Channel c : state.channels) {
      through += c.shape.role == Role.GATE ? c.mostPassed : 0.0;
    }
    for (Channel c : state.channels) {
      if (c.shape.role == Role.GATE) {
        double first = run.recorder.firstTime[c.index];
        records.add(
            new GateRecord(
                c.shape.name,
                c.shape.start,
                Double.isFinite(first) ? OptionalDouble.of(first) : OptionalDouble.empty(),
                c.isFrozen()
                    ? OptionalDouble.of(c.frozenFront().frozenSince)
                    : OptionalDouble.empty(),
                run.recorder.peakSpeed[c.index],
                through > 0.0 ? c.mostPassed / through : 0.0));
      }
    }
    return records;
  }

  /** Heat the leading metal spent, by passage and, in limbs, by quarters of them. */
  private List<HeatLossEntry> ledger() {
    FrontMarker front = ledgerFront();
    List<HeatLossEntry> lines = new ArrayList<>();
    for (Channel c : state.channels) {
      int parts =
          c.shape.role == Role.PIECE
              ? Math.max(1, (int) Math.rint(4.0 * c.shape.length / limbLength(c)))
              : 1;
      for (int k = 0; k < Math.min(parts, c.shape.cells); k++) {
        addLine(lines, front, c, c.shape.cells * k / parts, c.shape.cells * (k + 1) / parts);
      }
    }
    return lines;
  }

  private double limbLength(Channel c) {
    double sum = 0.0;
    for (Channel other : state.channels) {
      boolean same = other.shape.limb.equals(c.shape.limb);
      sum += same ? other.shape.length : 0.0;
    }
    return sum;
  }

  private void addLine(List<HeatLossEntry> lines, FrontMarker front, Channel c, int from, int to) {
    double lost = 0.0;
    double gained = 0.0;
    double seconds = 0.0;
    for (int i = from; i < to; i++) {
      lost += front.lost[c.firstCell + i];
      gained += front.gained[c.firstCell + i];
      seconds += front.seconds[c.firstCell + i];
    }
    if (lost != 0.0 || gained != 0.0 || seconds != 0.0) {
      double offset = run.recorder.offset(c);
      lines.add(
          new HeatLossEntry(
              c.shape.limb,
              offset + from * c.shape.dx,
              offset + to * c.shape.dx,
              seconds,
              lost,
              gained));
    }
  }

  /**
   * The front whose story is told: where a limb stays empty, else the coldest in the limbs. The
   * boss counts only where no limb has metal: poured from above it fills last, with metal that
   * never enters the piece.
   */
  private FrontMarker ledgerFront() {
    Channel told = run.ending.leadingChannel();
    int most = 0;
    double coldest = Double.POSITIVE_INFINITY;
    for (Channel c : state.channels) {
      boolean metal = c.full || c.volumeA > 0.0 || c.volumeB > 0.0;
      if (!c.shape.isPiece() || !metal) {
        continue;
      }
      int telling = (c.shape.role == Role.PIECE ? 2 : 0) + (c.full ? 0 : 1);
      double h = c.leadingFront().enthalpy;
      if (telling > most || (telling == most && h < coldest)) {
        told = c;
        most = telling;
        coldest = h;
      }
    }
    return told.leadingFront();
  }
}
