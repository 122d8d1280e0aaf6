package lastinch.ui.json;

import java.util.List;
import lastinch.cases.plan.Plan;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.OperatingMap;
import lastinch.ui.words.study.HowPoured;

/** Room to move, in the format {@value #FORMAT}; its schema lies beside it. */
public final class RoomJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch room 2";

  private RoomJson() {}

  /** The map as text, without a line end. */
  public static String of(Plan plan, String file, OperatingMap room, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", file)
        .put("title", plan.title())
        .put("digest", plan.digest())
        .put("spare_percent", 100.0 * room.goal().spare(), StudyJson.DIGITS)
        .put("whole", room.whole())
        .put("runs", room.runs());
    StudyJson.how(json, how);
    side(json, "across", room.across(), room.acrossValues());
    side(json, "up", room.up(), room.upValues());
    StudyJson.glance(json.open("plan", '{'), room.plan()).close('}');
    json.open("rows", '[');
    for (int row = 0; row < room.upValues().size(); row++) {
      json.open('[');
      for (int column = 0; column < room.acrossValues().size(); column++) {
        json.open('{');
        room.at(column, row).ifPresent(g -> StudyJson.glance(json, g));
        json.close('}');
      }
      json.close(']');
    }
    json.close(']').open("lines", '[');
    for (OperatingMap.Line line : room.lines()) {
      json.open('{').put("parts", ResultJson.camel(line.parts()));
      numbers(json, "across", room.across(), line.across());
      numbers(json, "up", room.up(), line.up());
      json.close('}');
    }
    return json.close(']').close('}').text();
  }

  private static void side(JsonText json, String key, Lever lever, List<Double> values) {
    StudyJson.lever(json.open(key, '{'), lever);
    StudyJson.value(json, "now", lever, lever.now());
    StudyJson.value(json, "nowLow", lever, lever.band().low());
    StudyJson.value(json, "nowHigh", lever, lever.band().high());
    StudyJson.value(json, "practicalLow", lever, lever.practical().low().value());
    StudyJson.value(json, "practicalHigh", lever, lever.practical().high().value());
    json.put("lowReason", ResultJson.camel(lever.practical().low().reason()))
        .put("highReason", ResultJson.camel(lever.practical().high().reason()));
    numbers(json, "values", lever, values);
    json.close('}');
  }

  private static void numbers(JsonText json, String key, Lever lever, List<Double> values) {
    json.open(key, '[');
    for (double value : values) {
      json.item(StudyJson.number(lever, value), StudyJson.DIGITS);
    }
    json.close(']');
  }
}
