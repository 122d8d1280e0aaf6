package lastinch.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.casting.gating.Well;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.Hazard;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.RunRecord;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import lastinch.solver.result.ToppedUp;
import lastinch.ui.words.PouredPlan;

/** Invented plans and results, one for every way a pour can end. No figure here is a forecast. */
public final class HandMade {
  private static final double LENGTH = 0.320;
  private static final int CELLS = 32;
  private static final double ZERO_C = 273.15;

  private HandMade() {}

  public static PouredPlan plan(PourResult result) {
    return plan(pourCase(Checking.NONE), result);
  }

  public static PouredPlan plan(PourCase pourCase, PourResult result) {
    return new PouredPlan(
            pourCase,
            result,
            "feather.yaml",
            "0f".repeat(32),
            List.of("seconds from reading to first metal: 20 s (usual)"),
            List.of(),
            OptionalDouble.of(0.55),
            OptionalLong.of(1700))
        .with(toppedUp(result));
  }

  /** How it stood when the hand had stopped, for results whose cup came to its rim. */
  private static Optional<ToppedUp> toppedUp(PourResult result) {
    ConservationFigures books = result.accounts();
    return !(result.outcome() instanceof Outcome.Filled) || result.gates().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ToppedUp(
                3.0,
                ToppedUp.Ended.AT_REST,
                OptionalDouble.of(2.6),
                0.03,
                0.12,
                List.of(),
                books.poured(),
                books.left(),
                books.spilled()));
  }

  public static PourCase pourCase(Checking checking) {
    return new PourCase(
        "Tail feather, flat, slow pour",
        new Piece(
            List.of(
                new Limb(
                    Limb.ONLY,
                    List.of(
                        new Station(0.0, 0.034, 0.006, OptionalDouble.of(0.0014)),
                        new Station(LENGTH, 0.012, 0.0012, OptionalDouble.of(0.0006))),
                    SectionForm.LENS,
                    "",
                    "",
                    0.0)),
            Optional.of(new Boss(0.040, 0.022, 0.018))),
        new Mould(
            sand(),
            Band.typed(ZERO_C + 20),
            0.0,
            Optional.empty(),
            Orientation.FLAT,
            0.0,
            101_325.0),
        new Gating(
            new Cup(0.045, 0.030),
            new Sprue(0.120, 0.018, 0.014, Optional.empty()),
            Optional.of(new Well(0.025, 0.015)),
            Optional.of(new Runner.Straight(0.060, 0.015, 0.012, 0.0)),
            List.of(new Gate("end gate", new Place.Into("boss"), 0.020, 0.003, 0.015)),
            List.of(new Vent("tip vent", new Place.At(Limb.ONLY, 0.315, Side.TIP), 0.003)),
            List.of(),
            List.of()),
        new Metal(
            bronze(),
            1.1,
            Band.typed(ZERO_C + 1150, 15),
            Band.typed(20),
            Band.typed(2),
            Band.typed(15)),
        new Pour.Empties(Band.typed(5.0)),
        checking);
  }

  private static Alloy bronze() {
    Band one = Band.typed(1.0);
    return new Alloy(
        "tin bronze",
        new FreezingCurve.Straight(ZERO_C + 999, ZERO_C + 854),
        Band.typed(220e3),
        Band.typed(480),
        Band.typed(430),
        Band.typed(30),
        Band.typed(60),
        Band.typed(7900),
        -0.8,
        Band.typed(8770),
        Band.typed(4e-3),
        Band.typed(1.2),
        Band.typed(Math.PI),
        one,
        FilmForming.NO,
        Band.typed(0.3),
        Band.typed(0.04),
        Band.typed(ZERO_C + 1150));
  }

  private static MouldMedium sand() {
    return new MouldMedium(
        "oil-bonded sand",
        MouldFamily.SAND,
        Curve.constant(0.6),
        Band.typed(1.0),
        Curve.constant(1050),
        Band.typed(1500),
        0.4,
        Band.typed(1e-10),
        Band.typed(900),
        Band.typed(300),
        Band.typed(0.4),
        Band.typed(0.9),
        Band.typed(0.0),
        Band.typed(ZERO_C + 1400),
        List.of(Hazard.BINDER_SMOKE, Hazard.SILICA_DUST));
  }

  /** Freezes to a stop at 214 mm. */
  public static PourResult slush() {
    return misrun(
        new Stop(
            "piece",
            0.214,
            Stop.Way.UP,
            0.106,
            1.9,
            StopReason.SLUSH,
            Optional.empty(),
            ZERO_C + 950,
            0.3,
            new PushBalance(2800, 450, 700, 80)),
        0.214,
        FlowLimit.HAND,
        List.of(
            new Finding(
                Finding.Severity.WATCH, Optional.empty(), new Finding.SprueNeverFull(0.035, 2.1))),
        List.of(
            new LapStretch("piece", 0.06, 0.12, 0.4), new LapStretch("piece", 0.12, 0.214, 0.8)),
        List.of(
            new EdgeStretch(0.0, 0.110, EdgeStretch.State.FULL),
            new EdgeStretch(0.110, 0.214, EdgeStretch.State.ROUNDED),
            new EdgeStretch(0.214, 0.320, EdgeStretch.State.EMPTY)));
  }

  /** Any stop in the piece, nothing else known. */
  public static PourResult stopped(StopReason reason, double at) {
    boolean frozen = reason == StopReason.FROZE_UPSTREAM;
    return misrun(
        new Stop(
            "piece",
            at,
            Stop.Way.UP,
            LENGTH - at,
            1.9,
            reason,
            frozen ? Optional.of(new Spot("piece", 0.08)) : Optional.empty(),
            ZERO_C + (reason == StopReason.SKIN ? 940 : 1020),
            reason == StopReason.SKIN ? 0.4 : 0.0,
            reason == StopReason.AIR
                ? new PushBalance(3000, 200, 600, 2200)
                : new PushBalance(2500, 600, reason == StopReason.CAPILLARITY ? 2000 : 700, 40)),
        at,
        FlowLimit.HEAD,
        List.of(),
        List.of(),
        List.of());
  }

  /** Freezes in the gate; nothing reaches the piece. */
  public static PourResult stoppedInGate() {
    PourResult base =
        misrun(
            new Stop(
                "end gate",
                0.009,
                Stop.Way.UP,
                0.006,
                0.9,
                StopReason.SKIN,
                Optional.empty(),
                ZERO_C + 940,
                0.35,
                new PushBalance(2800, 450, 700, 0)),
            0.0,
            FlowLimit.GATES,
            List.of(),
            List.of(),
            List.of());
    return base;
  }

  /** Fills with heat to spare. */
  public static PourResult filled(double heatToSpare, List<Finding> findings) {
    return filled(heatToSpare, findings, List.of());
  }

  /** Fills with heat to spare and lap lines. */
  public static PourResult filled(
      double heatToSpare, List<Finding> findings, List<LapStretch> laps) {
    return result(
        new Outcome.Filled(1.41),
        1.0,
        LENGTH,
        FlowLimit.HAND,
        List.of(),
        findings,
        laps,
        List.of(),
        new Margin(heatToSpare, OptionalDouble.of(0.045), Margin.LimitedBy.HEAT));
  }

  public static PourResult roundedEdges() {
    return result(
        new Outcome.Filled(1.41),
        1.0,
        LENGTH,
        FlowLimit.HAND,
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new EdgeStretch(0.0, 0.2, EdgeStretch.State.FULL),
            new EdgeStretch(0.2, LENGTH, EdgeStretch.State.ROUNDED)),
        new Margin(0.2, OptionalDouble.of(0.045), Margin.LimitedBy.METAL));
  }

  public static PourResult cancelled() {
    return result(
        new Outcome.Cancelled(1.6),
        0.3,
        0.1,
        FlowLimit.HAND,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new Margin(0.0, OptionalDouble.empty(), Margin.LimitedBy.HEAT));
  }

  public static PourResult brokeDown() {
    return brokeDown(List.of());
  }

  public static PourResult brokeDown(List<EdgeStretch> edges) {
    return result(
        new Outcome.BrokeDown(1.6, "piece at 0.1 m", "temperature", "not finite"),
        0.3,
        0.1,
        FlowLimit.HAND,
        List.of(),
        List.of(),
        List.of(),
        edges,
        new Margin(0.0, OptionalDouble.empty(), Margin.LimitedBy.HEAT));
  }

  /** One of every kind. */
  public static List<Finding> everyFinding() {
    Spot piece = new Spot("piece", 0.1);
    return Stream.of(
            new Finding.SprueNeverFull(0.024, 2.1),
            new Finding.Puddles(0.024, 0.5),
            new Finding.GateSplashes(0.8, 0.5),
            new Finding.FrontSplashes(0.8, 0.5),
            new Finding.RunsAgainstMould(0.8, 0.5),
            new Finding.Falls(0.024, 0.5),
            new Finding.AirPushesBack(1200.0),
            new Finding.MushShareCounts(0.6),
            new Finding.GapCounts(0.5),
            new Finding.TooLittleMetal(1.3, 1.1),
            new Finding.PourTimesDisagree(5.0, 3.6),
            new Finding.WidePiece(0.024, 0.024),
            new Finding.AboveCeiling(1003.15, 1003.15),
            new Finding.FlaskEdge(1003.15, 1003.15),
            new Finding.CupOverflows(0.05),
            new Finding.CupRunsEmpty(3.2),
            new Finding.TableClamped(4.0))
        .map(
            detail ->
                detail instanceof Finding.GateSplashes
                    ? new Finding(
                        Finding.Severity.SERIOUS, Optional.of(new Spot("end gate", 0.01)), detail)
                    : new Finding(Finding.Severity.WATCH, Optional.of(piece), detail))
        .toList();
  }

  /** Falls to the tip and fills upwards from there. */
  public static PourResult filledFromTip() {
    return fromTip(filled(0.4, List.of()), 0.0);
  }

  /** Falls to the tip and stands at 90 mm on its way up. */
  public static PourResult stoppedFromTip() {
    Stop stop =
        new Stop(
            "piece",
            0.09,
            Stop.Way.DOWN,
            0.09,
            1.7,
            StopReason.SLUSH,
            Optional.empty(),
            ZERO_C + 950,
            0.3,
            new PushBalance(2800, 450, 700, 80));
    return fromTip(
        misrun(stop, LENGTH, FlowLimit.HAND, List.of(), List.of(), List.of()), stop.at());
  }

  /** Full, but two fronts met at 195 mm and did not join. */
  public static PourResult coldShut() {
    return coldShut(1);
  }

  /** The same in so many places alike. */
  public static PourResult coldShut(int places) {
    PourResult base = filled(0.05, List.of());
    return base.changed()
        .meetings(
            Collections.nCopies(
                places,
                new Meeting(
                    "piece",
                    0.195,
                    1.35,
                    ZERO_C + 955,
                    ZERO_C + 950,
                    0.24,
                    Meeting.Kind.COLD_SHUT,
                    "left gate",
                    "right gate")))
        .build();
  }

  /** Metal comes from both ends and leaves 152 to 164 mm empty. */
  public static PourResult hole() {
    PushBalance balance = new PushBalance(2300, 100, 310, 0);
    double solid = 0.3;
    Stop low =
        new Stop(
            "piece",
            0.152,
            Stop.Way.UP,
            0.012,
            3.6,
            StopReason.SLUSH,
            Optional.empty(),
            ZERO_C + 950,
            solid,
            balance);
    Stop high =
        new Stop(
            "piece",
            0.164,
            Stop.Way.DOWN,
            0.0,
            3.1,
            StopReason.SLUSH,
            Optional.empty(),
            ZERO_C + 950,
            solid,
            balance);
    PourResult base = misrun(low, low.at(), FlowLimit.HAND, List.of(), List.of(), List.of());
    List<PassageRecord> upper = fromTip(base, high.at()).passages();
    List<PassageRecord> passages =
        base.passages().stream()
            .map(p -> p.role() == PassageRecord.Role.PIECE ? joined(p, upper) : p)
            .toList();
    return base.changed()
        .filledFraction(0.98)
        .stops(List.of(low, high))
        .margin(new Margin(0.0, OptionalDouble.of(-low.missing()), Margin.LimitedBy.HEAT))
        .passages(passages)
        .course(HandMadeCourse.of(passages))
        .build();
  }

  /** One limb with what either pour reached of it. */
  private static PassageRecord joined(PassageRecord p, List<PassageRecord> others) {
    PassageRecord q =
        others.stream().filter(o -> o.name().equals(p.name())).findFirst().orElseThrow();
    int n = p.size();
    double[][] c = new double[12][n];
    for (int i = 0; i < n; i++) {
      PassageRecord r = p.reached(i) ? p : q;
      c[0][i] = p.at(i);
      c[1][i] = p.width(i);
      c[2][i] = p.thickness(i);
      c[3][i] = p.height(i);
      c[4][i] = r.arrivalTime(i);
      c[5][i] = r.arrivalTemperature(i);
      c[6][i] = r.arrivalSolid(i);
      c[7][i] = r.arrivalSpeed(i);
      c[8][i] = r.freezeTime(i);
      c[9][i] = r.finalTemperature(i);
      c[10][i] = r.finalSolid(i);
      c[11][i] = r.lapIndex(i);
    }
    return new PassageRecord(
        p.name(),
        p.role(),
        p.length(),
        p.start(),
        c[0],
        c[1],
        c[2],
        c[3],
        c[4],
        c[5],
        c[6],
        c[7],
        c[8],
        c[9],
        c[10],
        c[11],
        Collections.nCopies(n, ""));
  }

  private static PourResult fromTip(PourResult base, double standing) {
    List<PassageRecord> passages = new ArrayList<>();
    for (PassageRecord p : base.passages()) {
      switch (p.role()) {
        case SPRUE -> passages.add(p);
        case BOSS ->
            passages.add(
                channel(
                    p.name(),
                    p.role(),
                    p.length(),
                    0.022,
                    0.018,
                    2.3,
                    2.0,
                    standing > 0.0 ? 0.0 : p.length()));
        case PIECE -> passages.add(upwards(p, standing));
        default -> {}
      }
    }
    double end = standing > 0.0 ? 1.7 : 2.3;
    FrontTrack track =
        new FrontTrack(
            new String[] {"sprue", "sprue", "boss", "boss", "piece", "piece", "piece"},
            new double[] {0.0, 0.1, 0.1, 0.15, 0.15, 0.3, end},
            new double[] {0.0, 0.12, 0.0, 0.04, 0.0, LENGTH, standing},
            new double[7],
            new double[7]);
    return base.changed()
        .outcome(standing > 0.0 ? new Outcome.Misrun(end) : new Outcome.Filled(end))
        .sprueStanding(0.0)
        .gates(List.of())
        .passages(passages)
        .track(track)
        .course(HandMadeCourse.of(passages))
        .build();
  }

  private static PassageRecord upwards(PassageRecord p, double standing) {
    int n = p.size();
    double[][] column = new double[8][n];
    for (int i = 0; i < n; i++) {
      boolean wet = p.at(i) >= standing;
      column[0][i] = p.at(i);
      column[1][i] = p.width(i);
      column[2][i] = p.thickness(i);
      column[3][i] = wet ? 0.3 + 1.7 * (1 - p.at(i) / LENGTH) : Double.POSITIVE_INFINITY;
      column[4][i] = ZERO_C + 1060 - 20 * p.at(i) / LENGTH;
      column[5][i] = 0.4;
      column[6][i] = column[3][i] + 0.6;
    }
    return new PassageRecord(
        p.name(),
        p.role(),
        p.length(),
        p.start(),
        column[0],
        column[1],
        column[2],
        column[7],
        column[3],
        column[4],
        column[7],
        column[5],
        column[6],
        column[4],
        column[7],
        column[7],
        Collections.nCopies(p.size(), ""));
  }

  private static PourResult misrun(
      Stop stop,
      double reach,
      FlowLimit limit,
      List<Finding> findings,
      List<LapStretch> laps,
      List<EdgeStretch> edges) {
    return result(
        new Outcome.Misrun(stop.time() + 0.1),
        0.78 * reach / LENGTH,
        reach,
        limit,
        List.of(stop),
        findings,
        laps,
        edges,
        new Margin(0.0, OptionalDouble.of(reach - LENGTH), Margin.LimitedBy.HEAT));
  }

  private static PourResult result(
      Outcome outcome,
      double filled,
      double reach,
      FlowLimit limit,
      List<Stop> stops,
      List<Finding> findings,
      List<LapStretch> laps,
      List<EdgeStretch> edges,
      Margin margin) {
    boolean gatePassed = reach > 0.0;
    return new PourResult.Builder(outcome)
        .filledFraction(filled)
        .reach(reach)
        .flowLimitedBy(limit)
        .entered(ZERO_C + 1098)
        .mouldAtEdge(ZERO_C + 20)
        .slurryShare(0.9)
        .sprueStanding(0.035)
        .massToRim(shortOfMetal(stops) ? 1.31 : 0.96)
        .stops(stops)
        .edges(edges)
        .gates(
            List.of(
                new GateRecord(
                    "end gate",
                    -0.040,
                    OptionalDouble.of(0.8),
                    gatePassed ? OptionalDouble.empty() : OptionalDouble.of(0.9),
                    0.46,
                    gatePassed ? 1.0 : 0.0)))
        .laps(laps)
        .findings(findings)
        .margin(margin)
        .passages(passages(reach))
        .track(track(reach))
        .accounts(
            shortOfMetal(stops)
                ? new ConservationFigures(
                    2e-13, 3e-8, 1e-9, 1e-4, 1.1, 0.0, 0.0, 5e5, 3e5, 2e5, 0.0)
                : new ConservationFigures(
                    2e-13, 3e-8, 1e-9, 1e-4, 0.96, 0.0, 0.14, 5e5, 3e5, 2e5, 0.0))
        .record(new RunRecord("quick look 1", 1800, 400, Map.of("courant", 1700)))
        .course(HandMadeCourse.of(passages(reach)))
        .build();
  }

  private static boolean shortOfMetal(List<Stop> stops) {
    return stops.stream().anyMatch(s -> s.reason() == StopReason.NO_METAL);
  }

  private static List<PassageRecord> passages(double reach) {
    return List.of(
        channel("sprue", PassageRecord.Role.SPRUE, 0.12, 0.014, 0.014, 0.05, 0.3, 0.12),
        channel("runner", PassageRecord.Role.RUNNER, 0.06, 0.015, 0.012, 0.4, 0.7, 0.06),
        channel(
            "end gate",
            PassageRecord.Role.GATE,
            0.015,
            0.02,
            0.003,
            0.8,
            0.85,
            reach > 0.0 ? 0.015 : 0.009),
        channel(
            "boss",
            PassageRecord.Role.BOSS,
            0.04,
            0.022,
            0.018,
            0.9,
            1.25,
            reach > 0.0 ? 0.04 : 0.0),
        channel(
            "piece",
            PassageRecord.Role.PIECE,
            LENGTH,
            0.034,
            0.006,
            1.3,
            reach < LENGTH ? 1.9 : 1.4,
            reach));
  }

  private static PassageRecord channel(
      String name,
      PassageRecord.Role role,
      double length,
      double width,
      double thickness,
      double from,
      double to,
      double wet) {
    double[] at = new double[CELLS];
    double[] wide = new double[CELLS];
    double[] thick = new double[CELLS];
    double[] arrival = new double[CELLS];
    double[] heat = new double[CELLS];
    double[] freeze = new double[CELLS];
    for (int i = 0; i < CELLS; i++) {
      double share = (i + 0.5) / CELLS;
      at[i] = share * length;
      boolean tapers = role == PassageRecord.Role.PIECE;
      wide[i] = tapers ? 0.034 - 0.022 * share : width;
      thick[i] = tapers ? 0.006 - 0.0048 * share : thickness;
      arrival[i] =
          at[i] <= wet
              ? from + (to - from) * (wet > 0 ? at[i] / wet : 0)
              : Double.POSITIVE_INFINITY;
      heat[i] = ZERO_C + (tapers ? 999 - 49 * share * length / Math.max(wet, 1e-3) : 1060);
      freeze[i] = tapers ? (wet < LENGTH ? 3.2 - 1.94 * share : 3.4 - 1.3 * share) : 6.0;
    }
    double[] zero = new double[CELLS];
    double[] speed = new double[CELLS];
    Arrays.fill(speed, 0.4);
    return new PassageRecord(
        name,
        role,
        length,
        0.0,
        at,
        wide,
        thick,
        zero,
        arrival,
        heat,
        zero,
        speed,
        freeze,
        heat,
        zero,
        zero,
        Collections.nCopies(CELLS, ""));
  }

  private static FrontTrack track(double reach) {
    String[] names = {
      "sprue",
      "sprue",
      "runner",
      "runner",
      "end gate",
      "end gate",
      "boss",
      "boss",
      "piece",
      "piece",
      "piece",
      "piece"
    };
    double late = reach < LENGTH ? 0.0 : 0.5;
    double[] time = {
      0.0,
      0.3,
      0.4,
      0.7,
      0.8,
      0.85,
      0.9,
      1.25,
      1.3,
      1.45 - 0.2 * late,
      1.65 - 0.54 * late,
      1.9 - late
    };
    double[] at = {
      0.0, 0.12, 0.0, 0.06, 0.0, 0.015, 0.0, 0.04, 0.0, reach * 0.4, reach * 0.75, reach
    };
    int n = reach > 0.0 ? names.length : 6;
    double[] speed = new double[n];
    double[] heat = new double[n];
    Arrays.fill(speed, 0.4);
    Arrays.fill(heat, ZERO_C + 1000);
    return new FrontTrack(
        Arrays.copyOf(names, n), Arrays.copyOf(time, n), Arrays.copyOf(at, n), speed, heat);
  }
}
