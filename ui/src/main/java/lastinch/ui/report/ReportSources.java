package lastinch.ui.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.units.DisplayUnits;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** Every figure of metal and mould with its range and where it comes from. */
final class ReportSources {
  private final Html html;
  private final Sentences sentences;
  private final Figures figures;

  ReportSources(Html html, Sentences sentences, Figures figures) {
    this.html = html;
    this.sentences = sentences;
    this.figures = figures;
  }

  private String say(String key, String... values) {
    return sentences.say(key, values);
  }

  void add(List<MaterialSheet> sheets) {
    html.element("p", say("material.range"), "class", "small");
    Map<String, String> sources = new LinkedHashMap<>();
    for (MaterialSheet sheet : sheets) {
      html.element("h3", sheet.name());
      String about = (sheet.madeOf() + " " + sheet.note()).strip();
      if (!about.isEmpty()) {
        html.element("p", about, "class", "small");
      }
      List<List<String>> rows = new ArrayList<>();
      for (MaterialSheet.Row row : sheet.rows()) {
        rows.add(List.of(row.property(), value(row), range(row), from(row), note(row)));
      }
      html.table(
          "sheet",
          List.of(
              say("material.head.what"),
              say("material.head.value"),
              say("material.head.range"),
              say("material.head.from"),
              say("report.note")),
          rows);
      sheet.sources().forEach(s -> sources.put(s.mark(), s.reference()));
    }
    html.element("h3", say("material.sources"));
    List<List<String>> rows = new ArrayList<>();
    sources.forEach((mark, reference) -> rows.add(List.of(mark, reference)));
    html.table("plain", List.of(say("report.mark"), say("report.reference")), rows);
  }

  private boolean asWritten(MaterialSheet.Row row) {
    return figures.units() == DisplayUnits.METRIC || row.figure().isEmpty();
  }

  private String value(MaterialSheet.Row row) {
    return asWritten(row)
        ? (row.value() + " " + row.unit()).strip()
        : figures.shown(row.figure().get().dimension(), row.figure().get().quantity().best().si());
  }

  private String range(MaterialSheet.Row row) {
    if (row.low().isEmpty() || row.high().isEmpty()) {
      return "";
    }
    return asWritten(row)
        ? say("material.between", "low", row.low(), "high", row.high())
        : say(
            "material.between",
            "low",
            figures.shownBare(row.figure().get().dimension(), row.figure().get().quantity().low()),
            "high",
            figures.shownBare(
                row.figure().get().dimension(), row.figure().get().quantity().high()));
  }

  private String from(MaterialSheet.Row row) {
    String basis = say("basis." + row.basis().name());
    return row.source().isEmpty() ? basis : basis + ", " + row.source();
  }

  private static String note(MaterialSheet.Row row) {
    return row.changed().map(c -> (row.note() + " " + c).strip()).orElse(row.note());
  }
}
