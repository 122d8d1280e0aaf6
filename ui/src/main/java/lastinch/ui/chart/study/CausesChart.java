package lastinch.ui.chart.study;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.Limb;
import lastinch.solver.diagnosis.BrokenOut;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.BlameText;

/** Every cause at its best value: how far the metal comes with it, against what was found. */
public final class CausesChart {
  private static final double ROW = 40.0;
  private static final double TOP = 26.0;
  private static final double BAR = 13.0;
  private static final double WORDS = 16.0;
  private static final double RULER = 34.0;
  private static final double SIDE = 12.0;
  private static final double STEPS = 8.0;

  private final Diagnosis blame;
  private final Sentences sentences;
  private final Figures figures;
  private final BlameText text;
  private final double length;

  private CausesChart(Plan plan, Diagnosis blame, Sentences sentences, Figures figures) {
    this.blame = blame;
    this.sentences = sentences;
    this.figures = figures;
    this.text = new BlameText(sentences, figures);
    this.length =
        plan.pourCase().piece().limbs().stream()
            .filter(l -> blame.found().limb().map(l.name()::equals).orElse(true))
            .mapToDouble(Limb::length)
            .sum();
  }

  public static Picture of(Plan plan, Diagnosis blame, Sentences sentences, Figures figures) {
    CausesChart chart = new CausesChart(plan, blame, sentences, figures);
    return new Picture(
        sentences.say("chart.causes.heading"),
        text(chart.text.verdict(blame)),
        chart.others(),
        TOP + ROW * (chart.explaining().size() + 1) + RULER,
        chart::draw);
  }

  private static String text(String words) {
    return PlainLetters.of(words);
  }

  private List<Diagnosis.Cause> explaining() {
    return blame.causes().stream().filter(Diagnosis.Cause::explains).toList();
  }

  /** Causes that do not explain it, in one line. */
  private String others() {
    List<String> others = new ArrayList<>();
    for (Diagnosis.Cause cause : blame.causes()) {
      if (!cause.explains()) {
        others.add(text.what(cause));
      }
    }
    return others.isEmpty()
        ? ""
        : text(sentences.say("chart.causes.caption", "causes", String.join("; ", others)));
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double left = area.getX() + SIDE;
    double wide = area.getWidth() - 2 * SIDE - 24.0;
    double y = area.getY() + TOP;
    double bottom = y + ROW * (explaining().size() + 1);
    String asPlanned =
        sentences.say(
            "chart.causes.cause",
            "cause",
            sentences.say("chart.causes.plan"),
            "seen",
            text.seen(blame, blame.planned()));
    row(g, left, wide, y, asPlanned, blame.planned(), blame.asPlanned());
    int number = 0;
    for (Diagnosis.Cause cause : explaining()) {
      y += ROW;
      number++;
      String words =
          sentences.say(
              "chart.causes.explains",
              "number",
              Integer.toString(number),
              "cause",
              text.what(cause),
              "seen",
              text.seen(blame, cause.seen()));
      row(g, left, wide, y, words, cause.seen(), true);
    }
    found(g, left, wide, area.getY(), bottom);
    ruler(g, left, wide, bottom);
  }

  private void row(
      Graphics2D g,
      double left,
      double wide,
      double y,
      String words,
      BrokenOut seen,
      boolean explains) {
    Font font = explains ? Look.LABEL_SMALL : Look.TICK;
    String plain = PlainLetters.of(words);
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(left, y, Paper.wide(plain, font) + 4.0, WORDS));
    g.setFont(font);
    g.setPaint(Look.INK);
    g.drawString(plain, (float) left, (float) (y + WORDS - 4.0));
    Rectangle2D whole = new Rectangle2D.Double(left, y + WORDS, wide, BAR);
    Pens.line(g, whole, Look.FAINT_INK, Look.DASHED);
    double share = Math.max(0.0, Math.min(1.0, seen.stopped() / length));
    Rectangle2D metal = new Rectangle2D.Double(left, y + WORDS, wide * share, BAR);
    if (explains) {
      g.setPaint(Look.RULE);
      g.fill(metal);
      Pens.hatch(g, metal, Look.FAINT_INK, Pens.FINE);
    }
    Pens.line(g, metal, Look.INK, Look.OUTLINE);
  }

  /** Where the metal was found to end, across all bars. */
  private void found(Graphics2D g, double left, double wide, double top, double bottom) {
    OptionalDouble at = blame.found().stopped();
    if (at.isEmpty()) {
      return;
    }
    double x = left + wide * Math.min(1.0, at.getAsDouble() / length);
    // across the bars, not through the words between them
    for (double bar = top + TOP + WORDS; bar < bottom; bar += ROW) {
      Pens.line(g, new Line2D.Double(x, bar - 2.0, x, bar + BAR + 2.0), Look.SECOND_INK, Look.MARK);
    }
    String words = sentences.say("chart.causes.found", "at", figures.ruler(at.getAsDouble()));
    g.setFont(Look.LABEL);
    g.setPaint(Look.SECOND_INK);
    double half = 0.5 * Paper.wide(words, Look.LABEL);
    double start = Math.max(left, Math.min(x - half, left + wide - 2 * half));
    g.drawString(words, (float) start, (float) (top + 13.0));
  }

  private void ruler(Graphics2D g, double left, double wide, double y) {
    Pens.line(g, new Line2D.Double(left, y, left + wide, y), Look.INK, Look.OUTLINE);
    boolean metric = figures.lengthUnit().equals("mm");
    double step = metric ? 0.01 : 0.0254;
    while (length / step > STEPS) {
      step *= 2.0;
    }
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    for (double s = 0.0; s < length + 1e-9; s += step) {
      double x = left + wide * s / length;
      Pens.line(g, new Line2D.Double(x, y, x, y + 5.0), Look.INK, Look.THIN);
      String place = s == 0.0 ? figures.ruler(s) : figures.rulerBare(s);
      double half = s == 0.0 ? 0.0 : 0.5 * Paper.wide(place, Look.TICK);
      g.drawString(place, (float) (x - half), (float) (y + 18.0));
    }
  }
}
