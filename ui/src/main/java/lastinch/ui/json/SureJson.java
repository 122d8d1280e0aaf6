package lastinch.ui.json;

import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.solver.uncertainty.Influence;
import lastinch.ui.words.study.HowPoured;

/** How sure a plan is, in the format {@value #FORMAT}; its schema lies beside it. */
public final class SureJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch sure 2";

  private static final double MILLI = 1e3;

  private SureJson() {}

  /** The answer as text, without a line end. */
  public static String of(Plan plan, String file, FillProbability sure, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", file)
        .put("title", plan.title())
        .put("digest", plan.digest())
        .put("pours", sure.days())
        .put("fills", sure.fills())
        .put("stops", sure.stopped().size())
        .put("notInOnePiece", sure.apart())
        .put("noAnswer", sure.silent());
    StudyJson.how(json, how);
    json.open("chance", '{')
        .put("share", sure.chance().share(), StudyJson.DIGITS)
        .put("low", sure.chance().low(), StudyJson.DIGITS)
        .put("high", sure.chance().high(), StudyJson.DIGITS)
        .close('}');
    StudyJson.glance(json.open("plan", '{'), sure.plan()).close('}');
    json.open("stoppedPours", '[');
    for (RunSummary g : sure.stopped()) {
      json.open('{')
          .put("reach_mm", MILLI * g.reach(), StudyJson.DIGITS)
          .put("missing_mm", MILLI * g.missing(), StudyJson.DIGITS)
          .close('}');
    }
    json.close(']').open("matters", '[');
    for (int i = 0; i < sure.influences().size(); i++) {
      Influence influence = sure.influences().get(i);
      json.open('{')
          .put("name", ResultJson.camel(influence.unknown()))
          .put("share", influence.alone(), StudyJson.DIGITS)
          .put("low", influence.low(), StudyJson.DIGITS)
          .put("high", influence.high(), StudyJson.DIGITS);
      if (sure.inAll().isEmpty()) {
        json.nothing("together");
      } else {
        json.put("together", sure.inAll().get(i), StudyJson.DIGITS);
      }
      json.close('}');
    }
    json.close(']');
    Optional<String> first = sure.measure().map(ResultJson::camel);
    if (first.isPresent()) {
      json.put("measureFirst", first.get());
    } else {
      json.nothing("measureFirst");
    }
    return json.close('}').text();
  }
}
