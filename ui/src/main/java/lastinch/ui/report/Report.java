package lastinch.ui.report;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Point;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.PourText;

/**
 * Everything a dry pour found: two pages to print with the verdict, what to do next, two pictures
 * and the cautions; then, folded, the other pictures, the answer in words, tables, where every
 * figure comes from, and the books. It fetches nothing.
 */
public final class Report {
  private static final Pattern SVG_HEAD = Pattern.compile("^.*?(?=<svg)", Pattern.DOTALL);
  private static final Pattern LINK_SPACE = Pattern.compile(" xmlns:xlink=\"[^\"]*\"");
  private static final Pattern NAME = Pattern.compile("( id=\"|url\\(#|href=\"#)");

  private static final String STYLE =
      """
      body { font: 16px/1.45 Georgia, 'Times New Roman', serif; color: #201d1a; background: #fff;
        margin: 2em auto; max-width: 54em; padding: 0 1em; }
      h1 { font-size: 1.25em; margin: 0 0 .2em; font-weight: normal; }
      .verdict { font-size: 1.6em; line-height: 1.25; font-weight: bold; margin: .2em 0 .4em; }
      h2 { font-size: 1.2em; margin: 1.8em 0 .4em; border-top: 2px solid #201d1a;
        padding-top: .5em; break-after: avoid; }
      h3 { font-size: 1em; margin: 1.2em 0 .3em; break-after: avoid; }
      p { margin: .4em 0; }
      figure { margin: 1.2em 0; break-inside: avoid; }
      figure svg { width: 100%; height: auto; display: block; max-height: 235mm;
        background: #fbf8f0; }
      figure h3 { margin-top: 0; }
      figcaption { font-size: .88em; }
      svg text { font-family: 'DejaVu Sans', Verdana, Arial, sans-serif; }
      pre { font: 13px/1.35 'DejaVu Sans Mono', Menlo, Consolas, monospace; overflow-x: auto; }
      table { border-collapse: collapse; width: 100%; font-size: .86em; margin: .5em 0; }
      th, td { text-align: left; padding: .18em .7em .18em 0; border-bottom: 1px solid #b8b2a4;
        vertical-align: top; }
      table.sheet { table-layout: fixed; }
      .sheet th:nth-child(1) { width: 19%; }
      .sheet th:nth-child(2) { width: 15%; }
      .sheet th:nth-child(3) { width: 14%; }
      .sheet th:nth-child(4) { width: 17%; }
      tr { break-inside: avoid; }
      .small { font-size: .86em; }
      .care { border: 2px solid #201d1a; padding: .5em .8em .5em 2em; margin: 1em 0; }
      dl { display: grid; grid-template-columns: max-content 1fr; gap: .3em .9em; margin: .6em 0; }
      dt { font-weight: bold; }
      dd { margin: 0; }
      code { overflow-wrap: anywhere; }
      details { overflow-x: auto; border-top: 1px solid #201d1a; }
      summary { font-size: 1.1em; font-weight: bold; padding: .5em 0; cursor: pointer; }
      @page { margin: 15mm 16mm; }
      @media print { body { margin: 0; max-width: none; padding: 0; font-size: 11.5px; }
        .verdict { font-size: 1.5em; } figure { margin: .6em 0; }
        body > figure svg { max-height: 95mm; }
        pre { font-size: 9.5px; white-space: pre-wrap; }
        details, .folded { display: none; } details[open] { display: block; } }
      @media (max-width: 34em) { body { margin: .8em auto; }
        .verdict { font-size: 1.3em; } dl { display: block; } dd { margin: 0 0 .5em; }
        h1, .verdict, p, dd, li { overflow-wrap: anywhere; } }
      """;

  /** How many pictures are shown, and printed, without being opened. */
  static final int SHOWN = 2;

  private final PouredPlan plan;
  private final List<MaterialSheet> sheets;
  private final Sentences sentences;
  private final Figures figures;
  private final String version;
  private final Html html = new Html();

  private Report(
      PouredPlan plan,
      List<MaterialSheet> sheets,
      Sentences sentences,
      Figures figures,
      String version) {
    this.plan = Objects.requireNonNull(plan, "plan");
    this.sheets = List.copyOf(sheets);
    this.sentences = sentences;
    this.figures = figures;
    this.version = version;
  }

  /**
   * The page as text.
   *
   * @param plan what was poured and found
   * @param charts its pictures
   * @param sheets metals and mould materials that it used, with their sources
   * @param version of the program
   * @throws IOException when a picture cannot be drawn
   */
  public static String of(
      PouredPlan plan,
      ChartFiles charts,
      List<MaterialSheet> sheets,
      Sentences sentences,
      Figures figures,
      String version)
      throws IOException {
    Report report = new Report(plan, sheets, sentences, figures, version);
    report.head();
    pictures(report.html, charts, sentences, 0, SHOWN);
    report.cautions();
    report.details(charts);
    return report.html.close("body").close("html").toString();
  }

  private String say(String key, String... values) {
    return sentences.say(key, values);
  }

  private void head() {
    PourText text = new PourText(sentences, figures);
    head(
        html,
        say("report.title", "title", plan.pourCase().title()),
        String.join(" ", text.verdict(plan)));
    points(html, text.points(plan));
    html.element("p", say("report.file", "file", plan.file()), "class", "small");
  }

  /** What limits it, what to do next and what is least sure. */
  private static void points(Html html, List<Point> points) {
    List<Point> labelled = points.stream().filter(p -> !p.label().isEmpty()).toList();
    points.stream().filter(p -> p.label().isEmpty()).forEach(p -> html.element("p", p.text()));
    if (labelled.isEmpty()) {
      return;
    }
    html.open("dl");
    for (Point point : labelled) {
      html.element("dt", point.label());
      html.open("dd").text(point.text());
      if (!point.command().isEmpty()) {
        html.text(" ").element("code", point.command());
      }
      html.close("dd");
    }
    html.close("dl");
  }

  private void cautions() {
    care(html, new Care(sentences).all(plan.pourCase()));
    html.element(
        "p",
        say(plan.field().isPresent() ? "report.limits.plane" : "report.limits"),
        "class",
        "small");
    html.element("p", say("report.folded"), "class", "folded small");
  }

  private void details(ChartFiles charts) throws IOException {
    morePictures(html, charts, sentences, SHOWN);
    html.fold(say("report.words"), this::words);
    html.fold(say("report.tables"), () -> new ReportTables(html, plan, sentences, figures).add());
    html.fold(
        say("report.materials"), () -> new ReportSources(html, sentences, figures).add(sheets));
    html.fold(
        say("report.books"), () -> new ReportBooks(html, plan, sentences, figures).add(version));
  }

  private static final String XHTML = "http://www.w3.org/1999/xhtml";

  /** The beginning of a page, down to the verdict. */
  static void head(Html html, String title, String verdict) {
    html.raw("<!DOCTYPE html>\n").open("html", "lang", "en", "xmlns", XHTML).raw("\n");
    html.open("head").raw("<meta charset=\"utf-8\"/>\n");
    html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    html.element("title", title);
    html.open("style").raw("\n" + STYLE).close("style").close("head").open("body").raw("\n");
    html.element("h1", title);
    html.element("p", verdict, "class", "verdict");
  }

  /** Pictures from one number up to another, with their captions, one under the other. */
  static void pictures(Html html, ChartFiles charts, Sentences sentences, int from, int to)
      throws IOException {
    int number = 0;
    for (String name : charts.names()) {
      number++;
      if (number <= from || number > to) {
        continue;
      }
      html.open("figure", "id", name);
      String message = charts.message(name);
      html.element("h3", message.isEmpty() ? charts.heading(name) : message);
      StringWriter svg = new StringWriter();
      charts.body(name, svg);
      html.raw(inline(svg.toString(), name));
      html.element("figcaption", (charts.heading(name) + ". " + charts.caption(name)).strip());
      html.close("figure");
    }
  }

  /** Those beyond a number, folded; nothing where there are no more. */
  static void morePictures(Html html, ChartFiles charts, Sentences sentences, int shown)
      throws IOException {
    if (charts.count() > shown) {
      html.fold(
          sentences.say("report.pictures"),
          () -> pictures(html, charts, sentences, shown, charts.count()));
    }
  }

  /** A picture as part of a page: names inside it must not meet those of other pictures. */
  static String inline(String svg, String name) {
    String bare = SVG_HEAD.matcher(svg).replaceFirst("");
    String clean = LINK_SPACE.matcher(bare).replaceAll("");
    return NAME.matcher(clean).replaceAll("$1" + name + "-");
  }

  private void words() {
    List<String> lines = new PourText(sentences, figures).full(plan);
    html.open("pre").text(String.join("\n", lines)).close("pre");
  }

  /** Cautions in a box. */
  static void care(Html html, List<String> cautions) {
    html.open("ul", "class", "care");
    cautions.forEach(caution -> html.element("li", caution));
    html.close("ul");
  }
}
