package lastinch.ui.json;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.EdgeAtStation;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Gap;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.OriginStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.solver.result.ToppedUp;
import lastinch.solver.search.GridSensitivity;
import lastinch.ui.words.Caution;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Reasons;
import lastinch.ui.words.pour.VerdictSentence;

/** A dry pour in the format {@value #FORMAT}; its schema is the resource result-schema.json. */
public final class ResultJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch result 2";

  private static final double MILLI = 1e3;
  private static final int DIGITS = 6;
  private static final int ERROR_DIGITS = 3;
  private static final Figures METRIC = new Figures(DisplayUnits.METRIC);

  private ResultJson() {}

  /** The answer as text, without a line end. */
  public static String of(PouredPlan plan) {
    PourResult result = plan.result();
    JsonText json = new JsonText();
    json.open('{').put("format", FORMAT);
    json.open("case", '{')
        .put("title", plan.pourCase().title())
        .put("file", plan.file())
        .put("digest", plan.digest())
        .close('}');
    if (plan.pourCase().checking().isOn()) {
      json.put("checking", true);
    }
    json.put("solver", result.record().solver());
    care(json, plan.pourCase());
    plan.spread().ifPresent(s -> squares(json, s));
    head(json, plan);
    plan.next().ifPresent(n -> NextJson.put(json, n));
    stops(json, result);
    gaps(json, result);
    edges(json, result);
    gates(json, result);
    meetings(json, result);
    origins(json, result);
    laps(json, result);
    findings(json, result);
    books(json, result);
    plan.toppedUp().ifPresent(stood -> toppedUp(json, stood));
    return json.close('}').text();
  }

  /** Keys of the cautions of a job, most serious first, into an object that is open. */
  private static void care(JsonText json, PourCase job) {
    json.open("care", '[');
    Caution.of(job).forEach(c -> json.item(camel(c)));
    json.close(']');
  }

  /** What came of pours over other squares. */
  private static void squares(JsonText json, GridSensitivity spread) {
    json.open("squares", '[');
    for (GridSensitivity.Run run : spread.runs()) {
      json.open('{');
      length(json, "square_mm", run.square());
      json.put("filled", run.filled());
      length(json, "reach_mm", run.reach());
      json.put("unfilled_percent", 100.0 * run.unfilled(), DIGITS).close('}');
    }
    json.close(']');
  }

  private static void head(JsonText json, PouredPlan plan) {
    PourResult result = plan.result();
    Optional<VerdictSentence> verdict = VerdictSentence.of(plan);
    if (verdict.isPresent()) {
      json.put("verdict", verdict.get().key());
    } else {
      json.nothing("verdict");
    }
    json.put("outcome", Reasons.key(result.outcome()));
    if (result.outcome() instanceof Outcome.BrokeDown b) {
      json.open("breakdown", '{')
          .put("place", b.place())
          .put("quantity", b.quantity())
          .put("reason", b.reason())
          .close('}');
    }
    if (verdict.isPresent()) {
      json.put("edgesRounded", lastinch.solver.study.VerdictWord.isEdgeRounded(result));
    } else {
      json.nothing("edgesRounded");
    }
    BandJson.put(json, plan);
    json.put("filledFraction", result.filledFraction(), DIGITS)
        .put("endTime_s", result.outcome().time(), DIGITS)
        .put("flowLimitedBy", Reasons.key(result.flowLimitedBy()));
    heat(json, "entered_degC", result.entered());
  }

  private static void stops(JsonText json, PourResult result) {
    json.open("stops", '[');
    for (Stop stop : result.stops()) {
      json.open('{').put("passage", stop.passage());
      length(json, "at_mm", stop.at());
      json.put("way", stop.way().name().toLowerCase(Locale.ROOT));
      length(json, "short_mm", stop.missing());
      json.put("time_s", stop.time(), DIGITS).put("reason", Reasons.key(stop.reason()));
      spot(json, "closedAt", stop.closedAt());
      heat(json, "temperature_degC", stop.temperature());
      json.put("solidFraction", stop.solidFraction(), DIGITS).close('}');
    }
    json.close(']');
  }

  private static void gaps(JsonText json, PourResult result) {
    json.open("gaps", '[');
    for (Gap gap : result.gaps()) {
      json.open('{').put("passage", gap.passage());
      length(json, "from_mm", gap.from());
      length(json, "to_mm", gap.to());
      json.put("hole", gap.hole()).close('}');
    }
    json.close(']');
  }

  private static void edges(JsonText json, PourResult result) {
    json.open("edges", '[');
    for (EdgeStretch edge : result.edges()) {
      json.open('{').put("passage", edge.passage());
      length(json, "from_mm", edge.from());
      length(json, "to_mm", edge.to());
      json.put("state", camel(edge.state()));
      if (edge.cause() != EdgeStretch.Cause.NONE) {
        json.put("cause", Reasons.key(edge.cause()));
      }
      json.close('}');
    }
    json.close(']');
    json.open("edgeAtStations", '[');
    for (EdgeAtStation station : result.edgeAtStations()) {
      json.open('{').put("passage", station.passage());
      length(json, "at_mm", station.at());
      length(json, "edge_mm", station.edge());
      json.put("state", camel(station.state()));
      heat(json, "temperature_degC", station.temperature());
      json.put("push_Pa", station.push(), DIGITS)
          .put("needed_Pa", station.needed(), DIGITS)
          .close('}');
    }
    json.close(']');
  }

  private static void gates(JsonText json, PourResult result) {
    json.open("gates", '[');
    for (GateRecord gate : result.gates()) {
      json.open('{').put("name", gate.name());
      length(json, "at_mm", gate.at());
      json.put("first_s", gate.first(), DIGITS)
          .put("froze_s", gate.froze(), DIGITS)
          .put("peakSpeed_m_s", gate.peakSpeed(), DIGITS)
          .put("share", gate.share(), DIGITS)
          .close('}');
    }
    json.close(']');
  }

  private static void meetings(JsonText json, PourResult result) {
    json.open("meetings", '[');
    for (Meeting meeting : result.meetings()) {
      json.open('{').put("passage", meeting.passage());
      length(json, "at_mm", meeting.at());
      json.put("time_s", meeting.time(), DIGITS);
      heat(json, "temperatureA_degC", meeting.temperatureA());
      heat(json, "temperatureB_degC", meeting.temperatureB());
      json.put("solidFraction", meeting.solidFraction(), DIGITS)
          .put("kind", Reasons.key(meeting.kind()))
          .put("gateA", meeting.gateA())
          .put("gateB", meeting.gateB())
          .close('}');
    }
    json.close(']');
  }

  private static void origins(JsonText json, PourResult result) {
    json.open("filledBy", '[');
    for (OriginStretch stretch : OriginStretch.of(result)) {
      json.open('{').put("passage", stretch.passage());
      length(json, "from_mm", stretch.from());
      length(json, "to_mm", stretch.to());
      json.put("gate", stretch.gate()).close('}');
    }
    json.close(']');
  }

  private static void laps(JsonText json, PourResult result) {
    json.open("laps", '[');
    for (LapStretch lap : result.laps()) {
      json.open('{').put("passage", lap.passage());
      length(json, "from_mm", lap.from());
      length(json, "to_mm", lap.to());
      json.put("worstIndex", lap.worstIndex(), DIGITS).close('}');
    }
    json.close(']');
  }

  private static void findings(JsonText json, PourResult result) {
    json.open("findings", '[');
    for (Finding finding : result.findings()) {
      json.open('{').put("kind", camel(finding.kind())).put("severity", camel(finding.severity()));
      spot(json, "where", finding.where());
      json.open("figures", '{');
      for (Map.Entry<String, Double> figure : finding.figures().entrySet()) {
        json.put(figure.getKey(), figure.getValue(), DIGITS);
      }
      json.close('}').close('}');
    }
    json.close(']');
  }

  private static void books(JsonText json, PourResult result) {
    Margin margin = result.margin();
    json.open("margin", '{').put("heat", margin.heat(), DIGITS);
    OptionalDouble distance = margin.distance();
    json.put(
            "distance_mm",
            distance.isPresent()
                ? OptionalDouble.of(distance.getAsDouble() * MILLI)
                : OptionalDouble.empty(),
            DIGITS)
        .put("limitedBy", Reasons.key(margin.limitedBy()))
        .close('}');
    ConservationFigures accounts = result.accounts();
    json.open("accounts", '{')
        .put("metalError", accounts.metalError(), ERROR_DIGITS)
        .put("heatError", accounts.heatError(), ERROR_DIGITS)
        .put("airError", accounts.airError(), ERROR_DIGITS)
        .put("poured_kg", accounts.poured(), DIGITS)
        .put("spilled_kg", accounts.spilled(), DIGITS)
        .put("left_kg", accounts.left(), DIGITS)
        .close('}');
    json.put("steps", result.record().steps());
    json.open("limiterCounts", '{');
    for (Map.Entry<String, Integer> count : result.record().limiterCounts().entrySet()) {
      json.put(count.getKey(), count.getValue());
    }
    json.close('}');
  }

  private static void toppedUp(JsonText json, ToppedUp stood) {
    json.open("toppedUp", '{')
        .put("time_s", stood.time(), DIGITS)
        .put("ended", camel(stood.ended()))
        .put("cupFullAt_s", stood.cupFullAt(), DIGITS);
    length(json, "cupLevel_mm", stood.cupLevel());
    length(json, "sprueStanding_mm", stood.sprueStanding());
    json.open("levels", '[');
    for (ToppedUp.Level level : stood.levels()) {
      json.open('{').put("name", level.name());
      length(json, "height_mm", level.height());
      json.put("filled", level.filled(), DIGITS).close('}');
    }
    json.close(']')
        .put("poured_kg", stood.poured(), DIGITS)
        .put("left_kg", stood.left(), DIGITS)
        .put("spilled_kg", stood.spilled(), DIGITS)
        .close('}');
  }

  private static void spot(JsonText json, String key, Optional<Spot> spot) {
    if (spot.isEmpty()) {
      json.nothing(key);
      return;
    }
    json.open(key, '{').put("passage", spot.get().passage());
    length(json, "at_mm", spot.get().at());
    json.close('}');
  }

  private static void length(JsonText json, String key, double metres) {
    json.put(key, metres * MILLI, DIGITS);
  }

  private static void heat(JsonText json, String key, double kelvin) {
    json.put(key, METRIC.heatValue(kelvin), DIGITS);
  }

  /** An enum constant as a camel-case word: {@code SPRUE_NEVER_FULL} to {@code sprueNeverFull}. */
  static String camel(Enum<?> constant) {
    StringBuilder out = new StringBuilder();
    boolean upper = false;
    for (char c : constant.name().toCharArray()) {
      if (c == '_') {
        upper = true;
      } else {
        out.append(upper ? c : Character.toLowerCase(c));
        upper = false;
      }
    }
    return out.toString();
  }
}
