package lastinch.ui.json;

import java.util.Optional;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.result.PourResult;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.OneAtATimeEffect;
import lastinch.solver.uncertainty.UncertainInput;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Reasons;

/**
 * How far an answer holds: the likeliest run, a bad and a good pour, and what each unknown does by
 * itself.
 */
final class BandJson {
  private static final double MILLI = 1e3;
  private static final int DIGITS = 6;

  private BandJson() {}

  static void put(JsonText json, PouredPlan plan) {
    json.open("band", '{');
    plan.bands().ifPresent(b -> run(json, "badPour", b.unlucky()));
    run(json, "best", plan.result());
    plan.bands().ifPresent(b -> run(json, "goodPour", b.lucky()));
    json.close('}');
    if (plan.bands().isPresent()) {
      unknowns(json, plan.bands().get());
    }
  }

  private static void run(JsonText json, String day, PourResult result) {
    json.open(day, '{')
        .put("outcome", Reasons.key(result.outcome()))
        .put("reach_mm", result.reach() * MILLI, DIGITS)
        .put("onePiece", lastinch.solver.study.VerdictWord.fills(result))
        .put("heatToSpare", result.margin().heat(), DIGITS)
        .close('}');
  }

  private static void unknowns(JsonText json, BandStudy study) {
    json.open("unknowns", '[');
    for (OneAtATimeEffect swing : study.swings()) {
      ParameterUnit unit = swing.unknown().parameter().unit();
      json.open('{')
          .put("name", ResultJson.camel(swing.unknown()))
          .put("unit", StudyJson.unit(unit))
          .put("best", StudyJson.number(unit, swing.band().value()), DIGITS)
          .put("low", StudyJson.number(unit, swing.band().low()), DIGITS)
          .put("high", StudyJson.number(unit, swing.band().high()), DIGITS)
          .put("marginLow", swing.low().signed(), DIGITS)
          .put("marginHigh", swing.high().signed(), DIGITS)
          .put("share", swing.share(), DIGITS)
          .close('}');
    }
    json.close(']');
    name(json, "weakest", study.weakest());
    name(json, "measureFirst", study.measure());
  }

  private static void name(JsonText json, String key, Optional<UncertainInput> unknown) {
    if (unknown.isPresent()) {
      json.put(key, ResultJson.camel(unknown.get()));
    } else {
      json.nothing(key);
    }
  }
}
