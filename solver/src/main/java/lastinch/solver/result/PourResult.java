package lastinch.solver.result;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Everything one dry pour found.
 *
 * @param outcome how it ended
 * @param filledFraction of the piece's volume [-]
 * @param reach metal without a break on the ruler of the first limb, from the end it came from [m]
 * @param flowLimitedBy what held the flow back
 * @param entered temperature of the metal entering the cup [K]
 * @param mouldAtEdge mould temperature at the nearest edge as metal arrives [K]
 * @param slurryShare chi, share of new solid that rides along in the piece [-]
 * @param sprueStanding greatest height of standing metal in the sprue [m]
 * @param cupFullAt time the cup was full with the mould filled [s], if it came to that
 * @param massToRim metal that fills everything to the rim [kg]
 * @param stops fronts that stand for good
 * @param edges state of the rim, along each limb whose rim is thinner than its middle
 * @param edgeAtStations the same at the stations of those limbs
 * @param gates in the order of the case
 * @param meetings in time order
 * @param laps along the piece
 * @param findings in order of weight
 * @param margin what was to spare
 * @param ledger heat the leading metal spent, by place, in order of its way
 * @param passages channels in order of the way
 * @param track path of the leading metal
 * @param accounts books
 * @param record how the run was made
 * @param course how the pour went on
 */
public record PourResult(
    Outcome outcome,
    double filledFraction,
    double reach,
    FlowLimit flowLimitedBy,
    double entered,
    double mouldAtEdge,
    double slurryShare,
    double sprueStanding,
    OptionalDouble cupFullAt,
    double massToRim,
    List<Stop> stops,
    List<EdgeStretch> edges,
    List<EdgeAtStation> edgeAtStations,
    List<GateRecord> gates,
    List<Meeting> meetings,
    List<LapStretch> laps,
    List<Finding> findings,
    Margin margin,
    List<HeatLossEntry> ledger,
    List<PassageRecord> passages,
    FrontTrack track,
    ConservationFigures accounts,
    RunRecord record,
    FillHistory course) {

  /** A result that says nothing of the rim at single stations. */
  public PourResult(
      Outcome outcome,
      double filledFraction,
      double reach,
      FlowLimit flowLimitedBy,
      double entered,
      double mouldAtEdge,
      double slurryShare,
      double sprueStanding,
      OptionalDouble cupFullAt,
      double massToRim,
      List<Stop> stops,
      List<EdgeStretch> edges,
      List<GateRecord> gates,
      List<Meeting> meetings,
      List<LapStretch> laps,
      List<Finding> findings,
      Margin margin,
      List<HeatLossEntry> ledger,
      List<PassageRecord> passages,
      FrontTrack track,
      ConservationFigures accounts,
      RunRecord record,
      FillHistory course) {
    this(
        outcome,
        filledFraction,
        reach,
        flowLimitedBy,
        entered,
        mouldAtEdge,
        slurryShare,
        sprueStanding,
        cupFullAt,
        massToRim,
        stops,
        edges,
        List.of(),
        gates,
        meetings,
        laps,
        findings,
        margin,
        ledger,
        passages,
        track,
        accounts,
        record,
        course);
  }

  public PourResult {
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(flowLimitedBy, "flowLimitedBy");
    Objects.requireNonNull(cupFullAt, "cupFullAt");
    stops = List.copyOf(stops);
    edges = List.copyOf(edges);
    edgeAtStations = List.copyOf(edgeAtStations);
    gates = List.copyOf(gates);
    meetings = List.copyOf(meetings);
    laps = List.copyOf(laps);
    findings = List.copyOf(findings);
    Objects.requireNonNull(margin, "margin");
    ledger = List.copyOf(ledger);
    passages = List.copyOf(passages);
    Objects.requireNonNull(track, "track");
    Objects.requireNonNull(accounts, "accounts");
    Objects.requireNonNull(record, "record");
    Objects.requireNonNull(course, "course");
  }

  /** Stretches of the piece that stay empty right across, when it stops short. */
  public List<Gap> gaps() {
    return Gap.of(this);
  }
}
