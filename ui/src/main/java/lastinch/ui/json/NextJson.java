package lastinch.ui.json;

import lastinch.solver.search.NextStep;
import lastinch.solver.search.Trouble;
import lastinch.solver.study.RunSummary;

/** What to change first, for other programs. */
final class NextJson {
  private NextJson() {}

  static void put(JsonText json, NextStep next) {
    json.open("next", '{').open("troubles", '[');
    for (Trouble trouble : next.troubles()) {
      json.item(ResultJson.camel(trouble));
    }
    json.close(']').put("tried", next.tried());
    if (next.change().isEmpty()) {
      json.nothing("change");
    } else {
      change(json, next.change().get());
    }
    json.close('}');
  }

  private static void change(JsonText json, NextStep.Change change) {
    StudyJson.lever(json.open("change", '{'), change.lever());
    StudyJson.value(json, "now", change.lever(), change.lever().now());
    StudyJson.value(json, "value", change.lever(), change.value());
    json.put("helps", ResultJson.camel(change.helps())).put("mended", change.mended());
    run(json, "best", change.best());
    run(json, "bad", change.bad());
    json.close('}');
  }

  private static void run(JsonText json, String name, RunSummary glance) {
    json.open(name, '{')
        .put("filled", glance.filled())
        .put("reach_mm", 1e3 * glance.reach(), StudyJson.DIGITS)
        .put("heatToSpare", glance.heat(), StudyJson.DIGITS)
        .put("gateSpeed_m_s", glance.gateSpeed(), StudyJson.DIGITS)
        .close('}');
  }
}
