package lastinch.solver.result;

import java.util.List;
import java.util.Objects;

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

  public PourResult {
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(flowLimitedBy, "flowLimitedBy");
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

  /** The same result, to be changed part by part. */
  public Builder changed() {
    return new Builder(this);
  }

  /** Takes the parts of a result by name; a list that nobody gives is empty. */
  public static final class Builder {
    private Outcome outcome;
    private double filledFraction;
    private double reach;
    private FlowLimit flowLimitedBy;
    private double entered;
    private double mouldAtEdge;
    private double slurryShare;
    private double sprueStanding;
    private double massToRim;
    private List<Stop> stops = List.of();
    private List<EdgeStretch> edges = List.of();
    private List<EdgeAtStation> edgeAtStations = List.of();
    private List<GateRecord> gates = List.of();
    private List<Meeting> meetings = List.of();
    private List<LapStretch> laps = List.of();
    private List<Finding> findings = List.of();
    private Margin margin;
    private List<HeatLossEntry> ledger = List.of();
    private List<PassageRecord> passages = List.of();
    private FrontTrack track;
    private ConservationFigures accounts;
    private RunRecord record;
    private FillHistory course = FillHistory.UNKNOWN;

    /** A result of which only the end is known so far. */
    public Builder(Outcome outcome) {
      this.outcome = outcome;
    }

    private Builder(PourResult of) {
      outcome = of.outcome;
      filledFraction = of.filledFraction;
      reach = of.reach;
      flowLimitedBy = of.flowLimitedBy;
      entered = of.entered;
      mouldAtEdge = of.mouldAtEdge;
      slurryShare = of.slurryShare;
      sprueStanding = of.sprueStanding;
      massToRim = of.massToRim;
      stops = of.stops;
      edges = of.edges;
      edgeAtStations = of.edgeAtStations;
      gates = of.gates;
      meetings = of.meetings;
      laps = of.laps;
      findings = of.findings;
      margin = of.margin;
      ledger = of.ledger;
      passages = of.passages;
      track = of.track;
      accounts = of.accounts;
      record = of.record;
      course = of.course;
    }

    public Builder outcome(Outcome value) {
      outcome = value;
      return this;
    }

    public Builder filledFraction(double value) {
      filledFraction = value;
      return this;
    }

    public Builder reach(double value) {
      reach = value;
      return this;
    }

    public Builder flowLimitedBy(FlowLimit value) {
      flowLimitedBy = value;
      return this;
    }

    public Builder entered(double value) {
      entered = value;
      return this;
    }

    public Builder mouldAtEdge(double value) {
      mouldAtEdge = value;
      return this;
    }

    public Builder slurryShare(double value) {
      slurryShare = value;
      return this;
    }

    public Builder sprueStanding(double value) {
      sprueStanding = value;
      return this;
    }

    public Builder massToRim(double value) {
      massToRim = value;
      return this;
    }

    public Builder stops(List<Stop> value) {
      stops = value;
      return this;
    }

    public Builder edges(List<EdgeStretch> value) {
      edges = value;
      return this;
    }

    public Builder edgeAtStations(List<EdgeAtStation> value) {
      edgeAtStations = value;
      return this;
    }

    public Builder gates(List<GateRecord> value) {
      gates = value;
      return this;
    }

    public Builder meetings(List<Meeting> value) {
      meetings = value;
      return this;
    }

    public Builder laps(List<LapStretch> value) {
      laps = value;
      return this;
    }

    public Builder findings(List<Finding> value) {
      findings = value;
      return this;
    }

    public Builder margin(Margin value) {
      margin = value;
      return this;
    }

    public Builder ledger(List<HeatLossEntry> value) {
      ledger = value;
      return this;
    }

    public Builder passages(List<PassageRecord> value) {
      passages = value;
      return this;
    }

    public Builder track(FrontTrack value) {
      track = value;
      return this;
    }

    public Builder accounts(ConservationFigures value) {
      accounts = value;
      return this;
    }

    public Builder record(RunRecord value) {
      record = value;
      return this;
    }

    public Builder course(FillHistory value) {
      course = value;
      return this;
    }

    public PourResult build() {
      return new PourResult(
          outcome,
          filledFraction,
          reach,
          flowLimitedBy,
          entered,
          mouldAtEdge,
          slurryShare,
          sprueStanding,
          massToRim,
          stops,
          edges,
          edgeAtStations,
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
  }
}
