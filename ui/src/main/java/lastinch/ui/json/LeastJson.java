package lastinch.ui.json;

import java.util.Optional;
import lastinch.cases.plan.Plan;
import lastinch.solver.levers.Lever;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.PairAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.search.SureChange;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.Trial;
import lastinch.ui.words.study.HowPoured;

/** The smallest change that fills, in the format {@value #FORMAT}; its schema lies beside it. */
public final class LeastJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch least 2";

  private LeastJson() {}

  /** The answer as text, without a line end, with what makes it sure where that was asked. */
  public static String of(
      Plan plan,
      String file,
      SmallestChange least,
      Optional<SureChange.Wanted> sure,
      HowPoured how) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", FORMAT)
        .put("file", file)
        .put("title", plan.title())
        .put("digest", plan.digest())
        .put("spare_percent", 100.0 * least.goal().spare(), StudyJson.DIGITS)
        .put("fullEdge", least.goal().fullEdge())
        .put("already", least.already())
        .put("whole", least.whole())
        .put("runs", least.runs());
    StudyJson.how(json, how);
    StudyJson.glance(json.open("base", '{'), least.base()).close('}');
    json.open("levers", '[');
    for (LeverAnswer answer : least.answers()) {
      answer(json, answer);
    }
    json.close(']').open("pairs", '[');
    for (PairAnswer pair : least.pairs()) {
      pair(json, pair);
    }
    json.close(']');
    pick(json, least);
    sure.ifPresent(wanted -> surer(json, wanted));
    return json.close('}').text();
  }

  private static void surer(JsonText json, SureChange.Wanted wanted) {
    json.open("sure", '{').put("share", wanted.share(), StudyJson.DIGITS).open("changes", '[');
    for (SureChange change : wanted.changes()) {
      StudyJson.lever(json.open('{'), change.lever());
      StudyJson.value(json, "value", change.lever(), change.value());
      json.put("share", change.chance().share(), StudyJson.DIGITS)
          .put("low", change.chance().low(), StudyJson.DIGITS)
          .put("high", change.chance().high(), StudyJson.DIGITS)
          .put("enough", change.enough())
          .close('}');
    }
    json.close(']').close('}');
  }

  /** What a lever does, into a list that is open. */
  static void answer(JsonText json, LeverAnswer a) {
    Lever lever = a.lever();
    StudyJson.lever(json.open('{'), lever)
        .put("outcome", ResultJson.camel(a.kind()))
        .put("inert", a.inert());
    StudyJson.value(json, "now", lever, lever.now());
    tried(json, "smallest", lever, a.at());
    tried(json, "justShort", lever, a.justShort());
    tried(json, "stopsAt", lever, a.stopsAt());
    tried(json, "withTool", lever, a.withTool());
    tried(json, "best", lever, Optional.of(a.best()));
    if (a.end().isPresent()) {
      json.put("limit", ResultJson.camel(a.end().get().reason()));
    } else {
      json.nothing("limit");
    }
    lookOuts(json, a.lookOuts());
    json.open("tried", '[');
    for (Trial t : a.tried()) {
      StudyJson.value(json.open('{'), "value", lever, t.value());
      StudyJson.glance(json, t.glance()).close('}');
    }
    json.close(']').close('}');
  }

  private static void lookOuts(JsonText json, Iterable<LookOut> all) {
    json.open("lookOut", '[');
    for (LookOut look : all) {
      json.item(ResultJson.camel(look));
    }
    json.close(']');
  }

  private static void tried(JsonText json, String key, Lever lever, Optional<Trial> t) {
    if (t.isEmpty()) {
      json.nothing(key);
      return;
    }
    StudyJson.value(json.open(key, '{'), "value", lever, t.get().value());
    StudyJson.glance(json, t.get().glance()).close('}');
  }

  private static void pair(JsonText json, PairAnswer pair) {
    json.open('{');
    StudyJson.lever(json.open("first", '{'), pair.first());
    StudyJson.value(json, "value", pair.first(), pair.firstValue());
    StudyJson.value(json, "justShort", pair.first(), pair.shortFirst());
    json.close('}');
    StudyJson.lever(json.open("second", '{'), pair.second());
    StudyJson.value(json, "value", pair.second(), pair.secondValue());
    StudyJson.value(json, "justShort", pair.second(), pair.shortSecond());
    json.close('}');
    StudyJson.glance(json.open("fills", '{'), pair.glance()).close('}');
    StudyJson.glance(json.open("justShort", '{'), pair.justShort()).close('}');
    lookOuts(json, pair.lookOuts());
    json.close('}');
  }

  private static void pick(JsonText json, SmallestChange least) {
    if (least.pick().isEmpty()) {
      json.nothing("pick");
      return;
    }
    SmallestChange.Pick pick = least.pick().get();
    json.open("pick", '{').put("because", ResultJson.camel(pick.because())).open("levers", '[');
    pick.answer().ifPresent(a -> change(json, a.lever(), a.chosen().orElseThrow().value()));
    pick.pair()
        .ifPresent(
            p -> {
              change(json, p.first(), p.firstValue());
              change(json, p.second(), p.secondValue());
            });
    json.close(']').close('}');
  }

  private static void change(JsonText json, Lever lever, double value) {
    StudyJson.lever(json.open('{'), lever);
    StudyJson.value(json, "value", lever, value);
    json.close('}');
  }
}
