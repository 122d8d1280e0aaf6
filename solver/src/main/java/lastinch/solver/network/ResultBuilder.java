package lastinch.solver.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.physics.LapIndex;
import lastinch.solver.result.Accounts;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.LedgerLine;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.RunRecord;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;

/** Turns the state at the end of a run into a result. */
final class ResultBuilder {
  private static final String SOLVER = "network 1";

  private final NetworkRun run;
  private final State state;

  ResultBuilder(NetworkRun run) {
    this.run = run;
    this.state = run.state;
  }

  PourResult build(Outcome outcome) {
    run.finishHeat();
    boolean filled = outcome instanceof Outcome.Filled;
    List<PassageRecord> passages = run.recorder.passages(outcome.time());
    List<Stop> stops = filled ? List.of() : List.of(stop(outcome.time()));
    Accounts accounts = run.books.close(run.forcedMass(), run.work.error());
    Margin margin = margin(filled, passages, stops);
    return new PourResult(
        outcome,
        filled ? 1.0 : run.filledFraction(),
        reach(filled),
        run.flowWatch.limit(),
        run.melt.temperatureIn(),
        run.mouldHeat.atNearestEdge(),
        pieceChannel().mushShare,
        run.flowWatch.mostStanding(),
        OptionalDouble.empty(),
        run.massToRim,
        stops,
        List.of(),
        gates(),
        List.of(),
        laps(passages),
        new Findings(run, filled).list(),
        margin,
        ledger(),
        passages,
        run.recorder.track(),
        accounts,
        record());
  }

  private RunRecord record() {
    Map<String, Integer> counts = new LinkedHashMap<>(run.choice.counts());
    counts.put("table_clamped", run.melt.table.clamps());
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

  /** Furthest metal on the piece's ruler, from the thick end [m]. */
  private double reach(boolean filled) {
    Channel piece = pieceChannel();
    if (filled || piece.full) {
      return piece.shape.length;
    }
    Channel leading = run.ending.leadingChannel();
    if (leading != piece) {
      return leading.shape.role == Role.BOSS ? leading.shape.start + leading.positionA() : 0.0;
    }
    if (leading.hasPlugA() && leading.volumeA > 0.0) {
      return leading.positionA();
    }
    return leading.jointB == Graph.CLOSED ? leading.shape.length : 0.0;
  }

  private Stop stop(double time) {
    Channel leading = run.ending.leadingChannel();
    boolean byA = leading.full || leading.hasPlugA();
    Front front = byA ? leading.frontA : leading.frontB;
    double at = byA ? leading.positionA() : leading.positionB();
    double missing = leading.full ? 0.0 : byA ? leading.shape.length - at : at;
    for (Channel c : state.channels) {
      if (c.index > leading.index && c.shape.role == Role.PIECE && !c.full) {
        missing += c.shape.length;
      }
    }
    StopReason reason = run.ending.reason();
    Optional<Spot> closed = Optional.empty();
    if (reason == StopReason.FROZE_UPSTREAM) {
      closed =
          run.ending
              .frozenOnTheWay()
              .map(c -> new Spot(c.shape.name, (c.frozenCell + 0.5) * c.shape.dx));
    }
    double enthalpy = front.enthalpy;
    double height = leading.shape.heightAt(at);
    return new Stop(
        leading.shape.name,
        at,
        missing,
        time,
        reason,
        closed,
        state.melt.table.temperature(enthalpy),
        state.melt.table.solid(enthalpy),
        new PushBalance(
            run.work.weightOver(height),
            run.work.friction(),
            run.ending.capillaryAt(leading),
            run.air.overpressure(leading)));
  }

  private Margin margin(boolean filled, List<PassageRecord> passages, List<Stop> stops) {
    if (!filled) {
      Stop stop = stops.get(0);
      Margin.LimitedBy by =
          switch (stop.reason()) {
            case SLUSH, SKIN, FROZE_UPSTREAM -> Margin.LimitedBy.HEAT;
            case NO_METAL -> Margin.LimitedBy.METAL;
            case AIR -> Margin.LimitedBy.AIR;
            case CAPILLARITY -> Margin.LimitedBy.PUSH;
          };
      return new Margin(0.0, OptionalDouble.of(-stop.missing()), by);
    }
    double spendable = state.melt.enthalpyIn - state.melt.enthalpyStop;
    double least = 1.0;
    double open = 1.0;
    for (Channel c : state.channels) {
      boolean piece = NetworkRun.isPiece(c.shape);
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
    return new Margin(heat, beyondTip(passages), Margin.LimitedBy.HEAT);
  }

  /**
   * Way that the last metal would still have gone in a channel like the end of the piece, at the
   * speed it arrived with [m].
   */
  private OptionalDouble beyondTip(List<PassageRecord> passages) {
    Channel piece = pieceChannel();
    PassageRecord record = passages.get(piece.index);
    int last = piece.shape.cells - 1;
    int cell = piece.firstCell + last;
    if (!record.reached(last) || state.melt.water) {
      return OptionalDouble.empty();
    }
    double at = (last + 0.5) * piece.shape.dx;
    double seconds = run.tips.secondsLeft(piece, at, run.recorder.arrivalEnthalpy[cell]);
    return OptionalDouble.of(Math.max(0.0, seconds) * record.arrivalSpeed(last));
  }

  private List<GateRecord> gates() {
    List<GateRecord> records = new ArrayList<>();
    for (Channel c : state.channels) {
      if (c.shape.role == Role.GATE) {
        double first = run.recorder.firstTime[c.index];
        records.add(
            new GateRecord(
                c.shape.name,
                c.shape.start,
                Double.isFinite(first) ? OptionalDouble.of(first) : OptionalDouble.empty(),
                c.frozen ? OptionalDouble.of(c.frozenSince) : OptionalDouble.empty(),
                run.recorder.peakSpeed[c.index],
                Double.isFinite(first) ? 1.0 : 0.0));
      }
    }
    return records;
  }

  private static List<LapStretch> laps(List<PassageRecord> passages) {
    List<LapStretch> laps = new ArrayList<>();
    for (PassageRecord p : passages) {
      if (p.role() != Role.PIECE && p.role() != Role.BOSS) {
        continue;
      }
      double half = 0.5 * p.length() / p.size();
      int i = 0;
      while (i < p.size()) {
        int from = i;
        double worst = 0.0;
        int grade = grade(p, i);
        while (i < p.size() && grade(p, i) == grade) {
          worst = Math.max(worst, p.lapIndex(i));
          i++;
        }
        if (grade > 0) {
          laps.add(new LapStretch(p.name(), p.at(from) - half, p.at(i - 1) + half, worst));
        }
      }
    }
    return laps;
  }

  /** 0 = clean or empty, 1 = faint, 2 = plain, 3 = pulses. */
  private static int grade(PassageRecord p, int i) {
    double index = p.lapIndex(i);
    if (!p.reached(i) || index < LapIndex.CLEAN) {
      return 0;
    }
    if (index < LapIndex.PLAIN) {
      return 1;
    }
    return index < LapIndex.HALTS ? 2 : 3;
  }

  /** Heat the leading metal spent, by channel and, in the piece, by its stretches of cells. */
  private List<LedgerLine> ledger() {
    Channel leading = run.ending.leadingChannel();
    Front front = leading.leadingFront();
    List<LedgerLine> lines = new ArrayList<>();
    for (Channel c : state.channels) {
      int parts = c.shape.role == Role.PIECE ? Math.min(4, c.shape.cells) : 1;
      for (int k = 0; k < parts; k++) {
        int from = c.shape.cells * k / parts;
        int to = c.shape.cells * (k + 1) / parts;
        double lost = 0.0;
        double gained = 0.0;
        double seconds = 0.0;
        for (int i = from; i < to; i++) {
          lost += front.lost[c.firstCell + i];
          gained += front.gained[c.firstCell + i];
          seconds += front.seconds[c.firstCell + i];
        }
        if (lost != 0.0 || gained != 0.0 || seconds != 0.0) {
          lines.add(
              new LedgerLine(
                  c.shape.name, from * c.shape.dx, to * c.shape.dx, seconds, lost, gained));
        }
      }
    }
    return lines;
  }
}
