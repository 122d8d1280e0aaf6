package lastinch.ui.json;

import lastinch.solver.diagnosis.HeatLossBudget;
import lastinch.solver.search.LeverAnswer;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.HowPoured;

/** Where the heat went, in the format {@value #FORMAT}; its schema lies beside it. */
public final class WhyJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch why 2";

  private static final double MILLI = 1e3;

  private WhyJson() {}

  /** The account and what single changes would do, as text, without a line end. */
  public static String of(Explained why, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", why.file())
        .put("title", why.plan().title())
        .put("digest", why.plan().digest())
        .put("spent_degC", why.account().spent(), StudyJson.DIGITS);
    StudyJson.how(json, how);
    StudyJson.glance(json.open("plan", '{'), why.changes().base()).close('}');
    json.open("account", '[');
    for (HeatLossBudget.Line line : why.account().lines()) {
      json.open('{').put("kind", ResultJson.camel(line.kind()));
      if (line.passage().isEmpty()) {
        json.nothing("channel");
      } else {
        json.put("channel", line.passage());
      }
      json.put("from_mm", MILLI * line.from(), StudyJson.DIGITS)
          .put("to_mm", MILLI * line.to(), StudyJson.DIGITS)
          .put("degrees_degC", line.degrees(), StudyJson.DIGITS)
          .put("percent", 100.0 * why.account().share(line), StudyJson.DIGITS)
          .put("seconds", line.seconds(), StudyJson.DIGITS);
      if (why.account().tellsWarmth()) {
        json.put("keptWarm_degC", line.kept(), StudyJson.DIGITS);
      } else {
        json.nothing("keptWarm_degC");
      }
      json.close('}');
    }
    json.close(']')
        .put("spare_percent", 100.0 * why.changes().goal().spare(), StudyJson.DIGITS)
        .open("changes", '[');
    for (LeverAnswer answer : why.changes().answers()) {
      LeastJson.answer(json, answer);
    }
    return json.close(']').close('}').text();
  }
}
