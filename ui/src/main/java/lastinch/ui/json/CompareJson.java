package lastinch.ui.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.study.RunSummary;
import lastinch.ui.words.study.Compared;
import lastinch.ui.words.study.HowPoured;

/** A comparison of plans, in the format {@value #FORMAT}; its schema lies beside it. */
public final class CompareJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch compare 2";

  private CompareJson() {}

  /** The comparison as text, without a line end. */
  public static String of(Compared compared, HowPoured how) {
    JsonText json = new JsonText();
    json.open('{').put("format", FORMAT).put("whole", true).put("runs", compared.runs());
    StudyJson.how(json, how);
    json.open("plans", '[');
    for (Compared.Poured p : compared.plans()) {
      plan(json, p);
    }
    json.close(']').open("differing", '[');
    for (Map.Entry<String, List<Optional<String>>> word : compared.differing().entrySet()) {
      json.open('{').put("word", word.getKey()).open("values", '[');
      word.getValue().forEach(v -> v.ifPresentOrElse(json::item, json::nothing));
      json.close(']').close('}');
    }
    json.close(']').open("differences", '[');
    for (int i = 0; i < compared.differences().size(); i++) {
      difference(json, compared, i);
    }
    json.close(']');
    if (compared.pick().isPresent()) {
      json.put("pick", compared.pick().get().letter());
    } else {
      json.nothing("pick");
    }
    return json.close('}').text();
  }

  private static void plan(JsonText json, Compared.Poured p) {
    RunSummary glance = p.glance();
    json.open('{')
        .put("letter", p.letter())
        .put("file", p.file())
        .put("title", p.plan().title())
        .put("digest", p.plan().digest());
    StudyJson.glance(json.open("glance", '{'), glance).close('}');
    if (glance.coldest() > 0.0) {
      double cold = DisplayUnits.METRIC.unit(Dimension.HEAT).fromSi(glance.coldest());
      json.put("coldest_degC", cold, StudyJson.DIGITS);
    } else {
      json.nothing("coldest_degC");
    }
    json.put("melted_kg", p.plan().pourCase().metal().melted(), StudyJson.DIGITS)
        .open("loafingGates", '[');
    p.loafingGates().forEach(json::item);
    json.close(']').close('}');
  }

  private static void difference(JsonText json, Compared compared, int i) {
    Difference d = compared.differences().get(i);
    json.open('{')
        .put("first", compared.plans().get(0).letter())
        .put("second", compared.plans().get(i + 1).letter())
        .put("kind", ResultJson.camel(d.kind()))
        .open("parts", '[');
    for (Difference.Swap swap : d.swaps()) {
      json.open('{').put("part", swap.key());
      StudyJson.glance(json.open("taken", '{'), swap.taken()).close('}');
      StudyJson.glance(json.open("givenBack", '{'), swap.givenBack()).close('}');
      json.close('}');
    }
    json.close(']').close('}');
  }
}
