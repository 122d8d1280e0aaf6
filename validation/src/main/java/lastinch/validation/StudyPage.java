package lastinch.validation;

import java.util.List;
import java.util.Locale;

/** The page of all comparisons, one file without anything fetched, readable in grey print. */
final class StudyPage {
  private static final String STYLE =
      """
      body { font: 15px/1.45 Georgia, serif; color: #111; background: #fff; margin: 2em auto;
        max-width: 60em; padding: 0 1em; }
      h1 { font-size: 1.7em; margin-bottom: .2em; }
      h2 { font-size: 1.15em; margin: 2em 0 .3em; border-top: 2px solid #111; padding-top: .6em; }
      p { margin: .3em 0; }
      table { border-collapse: collapse; margin: .7em 0; width: 100%; font-size: .93em; }
      th, td { text-align: left; padding: .2em .7em .2em 0; border-bottom: 1px solid #bbb;
        vertical-align: top; }
      td.figure, th.figure { text-align: right; font-variant-numeric: tabular-nums; }
      figure { margin: 1em 0; break-inside: avoid; }
      figure img { width: 560px; max-width: 100%; height: auto; }
      figcaption { font-size: .9em; }
      .off { font-weight: bold; text-decoration: underline; }
      .label { font-variant: small-caps; color: #444; }
      @media print { body { margin: 0; max-width: none; font-size: 11px; }
        table, tr { page-break-inside: avoid; } }
      """;

  private final StringBuilder html = new StringBuilder();

  private StudyPage() {}

  /** The page as text. */
  static String of(List<StudyOutcome> outcomes) {
    StudyPage page = new StudyPage();
    page.head(outcomes);
    page.summary(outcomes);
    for (int i = 0; i < outcomes.size(); i++) {
      page.study(i + 1, outcomes.get(i));
    }
    page.html.append("</body>\n</html>\n");
    return page.html.toString();
  }

  private void head(List<StudyOutcome> outcomes) {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.append("<title>Last Inch: what it was held against</title>\n");
    html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
    html.append("<h1>Last Inch: what it was held against</h1>\n");
    long figures = count(outcomes, false);
    long off = count(outcomes, true);
    paragraph(
        "",
        outcomes.size()
            + " studies, "
            + figures
            + " lines, "
            + (off == 0 ? "all within their tolerance." : off + " off.")
            + " Every figure comes from the product's own code, run when this page was made."
            + " No input and no published figure was tuned. Trends have no figure to meet and prove"
            + " little; what is only told is held against nothing.");
  }

  private static long count(List<StudyOutcome> outcomes, boolean onlyOff) {
    return outcomes.stream()
        .flatMap(o -> o.rows().stream())
        .filter(r -> !(r instanceof Row.Told))
        .filter(r -> !onlyOff || !r.agrees())
        .count();
  }

  private void summary(List<StudyOutcome> outcomes) {
    html.append("<table>\n<tr><th>No.</th><th>Study</th><th>Held against</th>");
    html.append("<th class=\"figure\">Lines</th><th>Verdict</th></tr>\n");
    int number = 1;
    for (StudyOutcome o : outcomes) {
      html.append("<tr><td>").append(number).append("</td><td><a href=\"#s").append(number);
      html.append("\">").append(escape(o.study().title())).append("</a></td><td>");
      html.append(o.study().kind().words()).append("</td><td class=\"figure\">");
      html.append(o.rows().stream().filter(r -> !(r instanceof Row.Told)).count()).append("</td>");
      verdict(o.agrees(), o.study().kind() == StudyKind.TREND);
      html.append("</tr>\n");
      number++;
    }
    html.append("</table>\n");
  }

  private void study(int number, StudyOutcome o) {
    Study s = o.study();
    html.append("<h2 id=\"s").append(number).append("\">").append(number).append(". ");
    html.append(escape(s.title())).append("</h2>\n");
    paragraph("Held against", s.kind().words() + ". " + s.source() + ".");
    paragraph("Inputs", s.setting() + ".");
    if (!s.note().isEmpty()) {
      paragraph("Tolerance and remarks", s.note());
    }
    html.append("<table>\n<tr><th>What</th><th class=\"figure\">Expected</th>");
    html.append("<th class=\"figure\">Got</th><th>Unit</th><th class=\"figure\">Error</th>");
    html.append("<th class=\"figure\">Allowed</th><th>Verdict</th></tr>\n");
    for (Row row : o.rows()) {
      html.append("<tr><td>").append(escape(row.what())).append("</td>");
      if (row instanceof Row.Figure f) {
        cell(number(f.expected()));
        cell(number(f.got()));
        html.append("<td>").append(escape(f.unit())).append("</td>");
        cell(number(f.error()) + percent(f.error(), f.expected()));
        cell(number(f.tolerance()) + percent(f.tolerance(), f.expected()));
        verdict(f.agrees(), false);
      } else if (row instanceof Row.Trend t) {
        cell(t.expected());
        cell(t.got());
        html.append("<td></td><td></td><td></td>");
        verdict(t.agrees(), true);
      } else if (row instanceof Row.Told t) {
        cell("");
        cell(t.got());
        html.append("<td></td><td></td><td></td><td>only told</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</table>\n");
    for (StudyCurve curve : o.curves()) {
      curve(curve);
    }
  }

  private void curve(StudyCurve curve) {
    html.append("<figure><img alt=\"").append(escape(curve.title())).append("\" src=\"");
    html.append(CurveChart.dataUri(curve)).append("\"/>\n<figcaption>");
    html.append(escape(curve.title()));
    html.append(". Line: expected. Rings: got; they should lie on the line.");
    if (curve.points().stream().anyMatch(StudyCurve.Point::isRange)) {
      html.append(" Thin lines: the range of what was got.");
    }
    html.append("</figcaption></figure>\n");
  }

  private void verdict(boolean agrees, boolean trend) {
    String yes = trend ? "trend holds" : "agrees";
    String no = trend ? "trend fails" : "off";
    html.append(agrees ? "<td>" + yes : "<td class=\"off\">" + no).append("</td>");
  }

  private void cell(String text) {
    html.append("<td class=\"figure\">").append(escape(text)).append("</td>");
  }

  private void paragraph(String label, String text) {
    html.append("<p>");
    if (!label.isEmpty()) {
      html.append("<span class=\"label\">").append(label).append("</span> ");
    }
    html.append(escape(text)).append("</p>\n");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6g", value);
  }

  private static String percent(double part, double whole) {
    return whole == 0.0 ? "" : String.format(Locale.ROOT, " (%.2g %%)", 100.0 * part / whole);
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
