package lastinch.ui.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.solver.casting.PourCase;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.Table;

/**
 * One page with everything a study of many dry pours found: what it comes to first, then pictures,
 * the answer in words, tables, what was assumed and where every figure comes from, and the
 * cautions. It fetches nothing.
 *
 * @param title what was studied
 * @param verdict what it comes to
 * @param plans the plans it was made of
 * @param how they were poured
 * @param charts its pictures
 * @param answer in words, line by line
 * @param tables its tables
 * @param sheets metals and mould materials, with their sources
 */
public record StudyReport(
    String title,
    String verdict,
    List<Described> plans,
    String how,
    ChartFiles charts,
    List<String> answer,
    List<Table> tables,
    List<MaterialSheet> sheets) {
  public StudyReport {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(verdict, "verdict");
    plans = List.copyOf(plans);
    Objects.requireNonNull(how, "how");
    Objects.requireNonNull(charts, "charts");
    answer = List.copyOf(answer);
    tables = List.copyOf(tables);
    sheets = List.copyOf(sheets);
  }

  /**
   * A plan that was studied.
   *
   * @param title of the plan
   * @param file as the person named it
   * @param digest of the case as read
   * @param assumed what was taken where the file says nothing, one line each
   * @param job whose cautions belong on the page
   */
  public record Described(
      String title, String file, String digest, List<String> assumed, PourCase job) {
    public Described {
      Objects.requireNonNull(job, "job");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(digest, "digest");
      assumed = List.copyOf(assumed);
    }
  }

  /**
   * The page as text.
   *
   * @param version of the program
   * @throws IOException when a picture cannot be drawn
   */
  public String page(Sentences sentences, Figures figures, String version) throws IOException {
    Html html = new Html();
    Report.head(html, sentences.say("report.study.title", "title", title), verdict);
    for (Described plan : plans) {
      html.element("p", sentences.say("report.file", "file", plan.file()), "class", "small");
    }
    html.open("pre").text(String.join("\n", answer)).close("pre");
    Report.pictures(html, charts, sentences, 0, 1);
    Report.care(html, new Care(sentences).all(plans.stream().map(Described::job).toList()));
    html.element("p", sentences.say("report.study.limits"), "class", "small");
    html.element("p", sentences.say("report.folded"), "class", "folded small");
    Report.morePictures(html, charts, sentences, 1);
    if (!tables.isEmpty()) {
      html.fold(sentences.say("report.study.tables"), () -> tables(html));
    }
    html.fold(sentences.say("report.study.assumed"), () -> assumed(html, sentences));
    html.fold(
        sentences.say("report.materials"),
        () -> new ReportSources(html, sentences, figures).add(sheets));
    html.fold(sentences.say("report.repeat"), () -> repeat(html, sentences, version));
    return html.close("body").close("html").toString();
  }

  private void tables(Html html) {
    for (Table table : tables) {
      html.element("h3", table.heading());
      html.table("plain", table.head(), table.rows());
    }
  }

  private void assumed(Html html, Sentences sentences) {
    for (Described plan : plans) {
      if (plans.size() > 1) {
        html.element("h3", plan.title());
      }
      if (plan.assumed().isEmpty()) {
        html.element("p", sentences.say("report.study.assumed.none"));
      } else {
        html.open("ul");
        plan.assumed().forEach(line -> html.element("li", line));
        html.close("ul");
      }
    }
  }

  private void repeat(Html html, Sentences sentences, String version) {
    List<List<String>> rows =
        new ArrayList<>(
            List.of(
                List.of(sentences.say("report.repeat.version"), version),
                List.of(sentences.say("report.repeat.solver"), how)));
    for (Described plan : plans) {
      rows.add(List.of(plan.file(), plan.digest()));
    }
    html.table(
        "plain",
        List.of(sentences.say("report.what"), sentences.say("report.repeat.digest")),
        rows);
  }
}
