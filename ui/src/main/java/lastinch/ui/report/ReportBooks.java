package lastinch.ui.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.Finding;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;

/** Books of metal and heat, and what is needed to repeat the sum. */
final class ReportBooks {
  private static final double KILO = 1e3;

  private final Html html;
  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;

  ReportBooks(Html html, PouredPlan plan, Sentences sentences, Figures figures) {
    this.html = html;
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
  }

  private String say(String key, String... values) {
    return sentences.say(key, values);
  }

  void add(String version) {
    ConservationFigures a = plan.result().accounts();
    html.element("p", say("report.books.why"), "class", "small");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(say("report.books.poured"), figures.mass(a.poured())));
    rows.add(List.of(say("report.books.spilled"), figures.mass(a.spilled())));
    rows.add(List.of(say("report.books.left"), figures.mass(a.left())));
    rows.add(List.of(say("report.books.heatIn"), kilojoules(a.heatIn())));
    rows.add(List.of(say("report.books.heatInMetal"), kilojoules(a.heatInMetal())));
    rows.add(List.of(say("report.books.heatInMould"), kilojoules(a.heatInMould())));
    rows.add(List.of(say("report.books.heatToAir"), kilojoules(a.heatToAir())));
    rows.add(List.of(say("report.books.metalError"), small(a.metalError())));
    rows.add(List.of(say("report.books.heatError"), small(a.heatError())));
    rows.add(List.of(say("report.books.airError"), small(a.airError())));
    rows.add(List.of(say("report.books.workError"), small(a.workError())));
    html.table("plain", List.of(say("report.what"), say("report.figure")), rows);
    repeat(version);
  }

  private void repeat(String version) {
    html.element("h3", say("report.repeat"));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(say("report.repeat.version"), version));
    rows.add(List.of(say("report.repeat.solver"), plan.result().record().solver()));
    rows.add(List.of(say("report.repeat.digest"), plan.digest()));
    rows.add(List.of(say("report.repeat.steps"), Integer.toString(plan.result().record().steps())));
    rows.add(
        List.of(
            say("report.repeat.heatSteps"), Integer.toString(plan.result().record().heatSteps())));
    for (Finding f : plan.result().findings()) {
      for (Map.Entry<String, Double> figure : f.figures().entrySet()) {
        rows.add(
            List.of(
                say("report.repeat.finding", "kind", f.kind().name().toLowerCase(Locale.ROOT))
                    + " "
                    + figure.getKey(),
                String.format(Locale.ROOT, "%.4g", figure.getValue())));
      }
    }
    html.table("plain", List.of(say("report.what"), say("report.figure")), rows);
  }

  private static String kilojoules(double joules) {
    return String.format(Locale.ROOT, "%.1f kJ", joules / KILO);
  }

  private static String small(double share) {
    return String.format(Locale.ROOT, "%.1e", share);
  }
}
