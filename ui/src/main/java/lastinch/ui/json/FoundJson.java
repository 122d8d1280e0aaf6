package lastinch.ui.json;

import java.util.OptionalDouble;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.BrokenOut;
import lastinch.solver.diagnosis.CandidateCause;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.diagnosis.Observation;
import lastinch.ui.words.study.HowPoured;

/** What explains a casting, in the format {@value #FORMAT}; its schema lies beside it. */
public final class FoundJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch found 2";

  private static final double MILLI = 1e3;

  private FoundJson() {}

  /** The answer as text, without a line end. */
  public static String of(Plan plan, String file, Diagnosis blame, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", file)
        .put("title", plan.title())
        .put("digest", plan.digest());
    if (blame.found().limb().isPresent()) {
      json.put("limb", blame.found().limb().get());
    } else {
      json.nothing("limb");
    }
    json.put("explained", blame.explained())
        .put("asPlanned", blame.asPlanned())
        .put("alike", blame.alike());
    StudyJson.how(json, how);
    seen(json.open("planned", '{'), blame.planned()).close('}');
    json.open("causes", '[');
    for (Diagnosis.Cause cause : blame.causes()) {
      CandidateCause s = cause.suspect();
      json.open('{').put("cause", s.key());
      if (s.part().isEmpty()) {
        json.nothing("part");
      } else {
        json.put("part", s.part());
      }
      json.put("unit", StudyJson.unit(s.unit()))
          .put("planned", StudyJson.number(s.unit(), s.now()), StudyJson.DIGITS)
          .put("value", StudyJson.number(s.unit(), cause.value()), StudyJson.DIGITS)
          .put("misfit", cause.misfit(), StudyJson.DIGITS)
          .put("worst", ResultJson.camel(cause.worst().getKey()))
          .put("explains", cause.explains());
      seen(json.open("seen", '{'), cause.seen()).close('}').close('}');
    }
    json.close(']');
    if (blame.tell().isEmpty()) {
      return json.nothing("findOut").close('}').text();
    }
    Diagnosis.Tell tell = blame.tell().get();
    json.open("findOut", '{').put("cause", tell.measure());
    if (tell.look().isPresent()) {
      json.put("look", ResultJson.camel(tell.look().get()));
    } else {
      json.nothing("look");
    }
    return json.close('}').close('}').text();
  }

  private static JsonText seen(JsonText json, BrokenOut seen) {
    json.put("stopped_mm", MILLI * seen.stopped(), StudyJson.DIGITS)
        .put("lap_mm", milli(seen.plainLaps()), StudyJson.DIGITS)
        .put("roundedFrom_mm", milli(seen.roundedFrom()), StudyJson.DIGITS)
        .put("weighs_kg", seen.mass(), StudyJson.DIGITS)
        .open("lips", '[');
    for (Observation.Lip lip : Observation.Lip.values()) {
      if (seen.lips().contains(lip)) {
        json.item(ResultJson.camel(lip));
      }
    }
    json.close(']').open("closedGates", '[');
    seen.closedGates().forEach(json::item);
    return json.close(']');
  }

  private static OptionalDouble milli(OptionalDouble metres) {
    return metres.isPresent() ? OptionalDouble.of(MILLI * metres.getAsDouble()) : metres;
  }
}
