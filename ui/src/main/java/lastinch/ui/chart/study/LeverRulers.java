package lastinch.ui.chart.study;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.search.LeverAnswer;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.LeverWords;

/** One ruler for each lever that already shows what comes of it: every bar is a run. */
public final class LeverRulers {
  private static final double ROW = 52.0;
  private static final double NAME_WIDE = 224.0;
  private static final double END_WIDE = 112.0;
  private static final double MET = 16.0;
  private static final double FILLS = 9.0;
  private static final double STOPS = 3.0;
  private static final double BAR = 5.0;
  private static final double POINT = 6.0;
  private static final double LINE = 32.0;

  private final SmallestChange least;
  private final LeverWords levers;
  private final List<LeverAnswer> answers;
  private final String heading;
  private final String now;
  private final String message;
  private final String caption;

  private LeverRulers(SmallestChange least, Sentences sentences, Figures figures) {
    this.least = least;
    this.levers = new LeverWords(sentences, figures);
    List<LeverAnswer> known =
        least.answers().stream()
            .filter(a -> a.lever().unit() != ParameterUnit.CHOICE)
            .filter(a -> a.kind() != LeverAnswer.Kind.NO_ANSWER)
            .toList();
    this.answers = known.stream().filter(this::isTelling).toList();
    this.heading = sentences.say("rulers.heading");
    this.now = sentences.say("rulers.now");
    this.message = message(sentences);
    this.caption = caption(known, sentences, figures);
  }

  public static Picture of(SmallestChange least, Sentences sentences, Figures figures) {
    LeverRulers rulers = new LeverRulers(least, sentences, figures);
    double tall = ROW * Math.max(1, rulers.answers.size()) + POINT;
    return new Picture(rulers.heading, rulers.message, rulers.caption, tall, rulers::draw);
  }

  /** Whether some value of a lever turns out another way than the others. */
  private boolean isTelling(LeverAnswer answer) {
    long ends = answer.tried().stream().map(t -> outcome(t.glance())).distinct().count();
    return answer.chosen().isPresent() || ends > 1;
  }

  private int outcome(RunSummary glance) {
    return least.goal().isMetBy(glance) ? 2 : glance.filled() ? 1 : 0;
  }

  private String message(Sentences sentences) {
    List<String> does = new ArrayList<>();
    for (LeverAnswer a : answers) {
      a.chosen()
          .ifPresent(
              t ->
                  does.add(
                      sentences.say(
                          "rulers.change",
                          "lever",
                          levers.name(a.lever()),
                          "value",
                          levers.value(a.lever(), t.value()))));
    }
    if (does.isEmpty()) {
      return PlainLetters.of(
          sentences.say(least.already() ? "rulers.says.holds" : "rulers.says.none"));
    }
    String list =
        String.join(sentences.say("rulers.or"), does.subList(0, Math.min(3, does.size())));
    return PlainLetters.of(
        sentences.say(least.already() ? "rulers.says.slip" : "rulers.says.does", "changes", list));
  }

  /** What the bars mean, and the levers that change nothing, in one line. */
  private String caption(List<LeverAnswer> known, Sentences sentences, Figures figures) {
    String bars = sentences.say("rulers.caption", "spare", figures.percent(least.goal().spare()));
    List<String> same = new ArrayList<>();
    for (LeverAnswer a : known) {
      if (!answers.contains(a)) {
        same.add(levers.name(a.lever()));
      }
    }
    String left =
        same.isEmpty()
            ? ""
            : " " + sentences.say("rulers.caption.same", "levers", String.join(", ", same));
    return PlainLetters.of(bars + left);
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double top = area.getMinY();
    for (LeverAnswer answer : answers) {
      row(g, new Rectangle2D.Double(area.getMinX(), top, area.getWidth(), ROW), answer);
      top += ROW;
    }
  }

  private void row(Graphics2D g, Rectangle2D row, LeverAnswer answer) {
    Lever lever = answer.lever();
    double y = row.getMinY() + LINE;
    double left = row.getMinX() + NAME_WIDE + END_WIDE;
    double right = row.getMaxX() - END_WIDE;
    double low = lever.practical().low().value();
    double high = lever.practical().high().value();
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    g.drawString(PlainLetters.of(levers.name(lever)), (float) row.getMinX(), (float) (y + 4));
    g.setPaint(Look.FAINT_INK);
    String from = PlainLetters.of(levers.value(lever, low));
    double wide = g.getFontMetrics().stringWidth(from);
    g.drawString(from, (float) (left - wide - 10), (float) (y + 4));
    g.drawString(PlainLetters.of(levers.value(lever, high)), (float) (right + 10), (float) (y + 4));
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.FAINT_INK, Look.THIN);
    double scale = high > low ? (right - left) / (high - low) : 0.0;
    for (Trial t : answer.tried()) {
      if (lever.practical().holds(t.value())) {
        bar(g, left + scale * (t.value() - low), y, t.glance());
      }
    }
    double here = left + scale * (lever.now() - low);
    plan(g, here, y);
    Labels labels = new Labels(row);
    labels.keepOff(new Rectangle2D.Double(here - POINT, y, 2 * POINT, 3 * POINT));
    labels.write(
        g,
        PlainLetters.of(now + " " + levers.value(lever, lever.now())),
        Look.TICK,
        Look.SECOND_INK,
        here + POINT,
        y + 11.0,
        1.0,
        0.0);
    answer
        .chosen()
        .ifPresent(
            t -> arrow(g, row, left + scale * (t.value() - low), levers.value(lever, t.value())));
  }

  private void bar(Graphics2D g, double x, double y, RunSummary glance) {
    if (!glance.answered()) {
      return;
    }
    boolean met = least.goal().isMetBy(glance);
    double tall = met ? MET : glance.filled() ? FILLS : STOPS;
    Shape bar = new Rectangle2D.Double(x - BAR / 2, y - tall, BAR, tall);
    g.setPaint(met ? Look.INK : Look.PAPER);
    if (glance.filled()) {
      g.fill(bar);
    }
    Pens.line(
        g,
        glance.filled() ? bar : new Line2D.Double(x, y - STOPS, x, y),
        glance.filled() ? Look.INK : Look.FAINT_INK,
        Look.HATCH);
  }

  /** Where the plan stands. */
  private static void plan(Graphics2D g, double x, double y) {
    Path2D point = new Path2D.Double();
    point.moveTo(x, y + 2);
    point.lineTo(x - POINT, y + 2 + 1.5 * POINT);
    point.lineTo(x + POINT, y + 2 + 1.5 * POINT);
    point.closePath();
    g.setPaint(Look.SECOND_INK);
    g.fill(point);
  }

  private static void arrow(Graphics2D g, Rectangle2D row, double x, String value) {
    double tip = row.getMinY() + LINE - MET - 2;
    Path2D arrow = new Path2D.Double();
    arrow.moveTo(x, tip);
    arrow.lineTo(x - POINT, tip - POINT);
    arrow.lineTo(x + POINT, tip - POINT);
    arrow.closePath();
    g.setPaint(Look.INK);
    g.fill(arrow);
    g.setFont(Look.LABEL_SMALL);
    g.drawString(PlainLetters.of(value), (float) (x + POINT + 4), (float) (tip + 1));
  }
}
