package lastinch.ui.json;

import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.search.GatePlacement;
import lastinch.ui.words.study.HowPoured;

/** Where to gate, in the format {@value #FORMAT}; its schema lies beside it. */
public final class GatesJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch gates 2";

  private static final double MILLI = 1e3;

  private GatesJson() {}

  /** The answer as text, without a line end. */
  public static String of(Plan plan, String file, GatePlacement gates, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", file)
        .put("title", plan.title())
        .put("digest", plan.digest())
        .put("asked_percent", 100.0 * gates.goal().spare(), StudyJson.DIGITS)
        .put("solved", gates.solved());
    StudyJson.how(json, how);
    StudyJson.glance(json.open("plan", '{'), gates.plan()).close('}');
    json.open("layouts", '[');
    for (GatePlacement.Answer a : gates.answers()) {
      json.open('{')
          .put("loses", ResultJson.camel(a.why()))
          .put("melted_kg", a.job().metal().melted(), StudyJson.DIGITS);
      StudyJson.glance(json.open("outcome", '{'), a.glance()).close('}');
      json.open("gates", '[');
      for (Gate gate : a.job().gating().gates()) {
        gate(json, gate);
      }
      json.close(']').close('}');
    }
    return json.close(']').close('}').text();
  }

  private static void gate(JsonText json, Gate gate) {
    json.open('{').put("name", gate.name());
    if (gate.place() instanceof Place.At at) {
      json.put("at_mm", MILLI * at.distance(), StudyJson.DIGITS)
          .put("side", ResultJson.camel(at.side()));
    } else {
      json.nothing("at_mm").nothing("side");
    }
    json.put("wide_mm", MILLI * gate.width(), StudyJson.DIGITS)
        .put("thick_mm", MILLI * gate.thickness(), StudyJson.DIGITS)
        .put("long_mm", MILLI * gate.length(), StudyJson.DIGITS)
        .close('}');
  }
}
