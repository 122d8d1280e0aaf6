package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Stop;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PourText;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;

/** Along the piece: when metal gets there, and when it would have stopped flowing there. */
final class RaceChart {
  /** A spare longer than so many times the pour is cut off by the frame. */
  private static final double MOST = 2.5;

  private static final double ROOM = 1.15;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final double[] at;
  private final double[] arrives;
  private final double[] freezes;
  private final double length;
  private final double top;

  private RaceChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.length = plan.pourCase().piece().limbs().get(0).length();
    Optional<PassageRecord> piece =
        plan.result().passages().stream()
            .filter(p -> p.role() == PassageRecord.Role.PIECE)
            .findFirst();
    int wet = 0;
    if (piece.isPresent()) {
      while (wet < piece.get().size() && piece.get().reached(wet)) {
        wet++;
      }
    }
    boolean ended = wet > 0 && hasEnd(plan);
    int points = ended ? wet + 1 : wet;
    this.at = new double[points];
    this.arrives = new double[points];
    this.freezes = new double[points];
    double latest = Math.max(plan.result().outcome().time(), 0.1);
    double highest = latest;
    for (int cell = 0; cell < wet; cell++) {
      PassageRecord p = piece.orElseThrow();
      at[cell] = figures.length(p.start() + p.at(cell));
      arrives[cell] = p.arrivalTime(cell);
      freezes[cell] = Math.min(p.freezeTime(cell), MOST * ROOM * latest);
      highest = Math.max(highest, freezes[cell]);
    }
    if (ended) {
      at[wet] = figures.length(Math.min(plan.result().reach(), length));
      arrives[wet] = Math.max(arrives[wet - 1], endTime(plan));
      freezes[wet] =
          plan.result().outcome() instanceof Outcome.Filled ? freezes[wet - 1] : arrives[wet];
      for (int i = wet - 1; i >= 0 && at[i] > at[wet]; i--) {
        at[i] = at[wet];
      }
    }
    this.top = Math.min(highest, MOST * latest) * ROOM;
  }

  private static boolean hasEnd(PouredPlan plan) {
    return plan.result().outcome() instanceof Outcome.Filled || stoppedInPiece(plan).isPresent();
  }

  private static Optional<Stop> stoppedInPiece(PouredPlan plan) {
    return plan.result().stops().stream()
        .filter(
            s ->
                plan.result().passages().stream()
                    .anyMatch(
                        p -> p.role() == PassageRecord.Role.PIECE && p.name().equals(s.passage())))
        .findFirst();
  }

  private static double endTime(PouredPlan plan) {
    return stoppedInPiece(plan).map(Stop::time).orElse(plan.result().outcome().time());
  }

  static JFreeChart of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new RaceChart(plan, sentences, figures).draw();
  }

  private JFreeChart draw() {
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(
                sentences.say("chart.axis.piece", "unit", figures.lengthUnit()),
                0.0,
                figures.length(length)),
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, top));
    plot.addAnnotation(new Drawing(this::race));
    return Sheet.chart(
        plot,
        plan.pourCase().title(),
        new PourText(sentences, figures).headline(plan),
        sentences.say(
            plan.result().outcome() instanceof Outcome.Filled
                ? "chart.race.caption.full"
                : "chart.race.caption"));
  }

  private void race(Graphics2D g, XYPlot plot, Rectangle2D area) {
    if (at.length == 0) {
      Pens.words(
          g,
          area,
          sentences.say("chart.race.nothing"),
          Look.LABEL,
          Look.INK,
          area.getCenterX() - 100,
          area.getCenterY());
      return;
    }
    g.clip(area);
    empty(g, plot, area);
    Path2D metal = Pens.curve(plot, area, at, arrives);
    Path2D freezing = Pens.curve(plot, area, at, freezes);
    Pens.hatch(g, between(plot, area), Look.SECOND_INK);
    Pens.line(g, freezing, Look.SECOND_INK, Look.FREEZING);
    Pens.line(g, metal, Look.INK, Look.METAL);
    int last = at.length - 1;
    double x = Sheet.x(plot, area, at[last]);
    double y = Sheet.y(plot, area, arrives[last]);
    int third = last / 3;
    Pens.words(
        g,
        area,
        sentences.say("chart.race.arrives"),
        Look.LABEL,
        Look.INK,
        Sheet.x(plot, area, at[third]),
        Sheet.y(plot, area, arrives[third]) + 18);
    Pens.words(
        g,
        area,
        sentences.say("chart.race.freezes"),
        Look.LABEL,
        Look.SECOND_INK,
        Sheet.x(plot, area, at[third]),
        Sheet.y(plot, area, Math.min(freezes[third], top)) - 16);
    int half = last / 2;
    Pens.words(
        g,
        area,
        sentences.say("chart.race.spare"),
        Look.NAME,
        Look.INK,
        Sheet.x(plot, area, at[half]) - 30,
        Sheet.y(plot, area, (arrives[half] + Math.min(freezes[half], top)) / 2));
    Pens.line(g, new Line2D.Double(x, y, x, area.getMaxY()), Look.FAINT_INK, Look.THIN);
    Pens.wordsAtEnd(
        g, area, new PourText(sentences, figures).ending(plan), Look.LABEL, Look.INK, x, y + 34);
    Pens.lip(g, Ending.of(plan.result()), x, y, false);
  }

  /** The part of the piece that no metal reached. */
  private void empty(Graphics2D g, XYPlot plot, Rectangle2D area) {
    double from = Sheet.x(plot, area, at[at.length - 1]);
    if (plan.result().outcome() instanceof Outcome.Filled || from > area.getMaxX() - 2) {
      return;
    }
    g.setPaint(Look.BAND);
    g.fill(new Rectangle2D.Double(from, area.getMinY(), area.getMaxX() - from, area.getHeight()));
    g.setFont(Look.NAME);
    g.setPaint(Look.FAINT_INK);
    String words = sentences.say("chart.race.empty");
    double wide = g.getFontMetrics().stringWidth(words);
    g.drawString(
        words, (float) ((from + area.getMaxX() - wide) / 2), (float) (area.getMinY() + 18));
  }

  private Path2D between(XYPlot plot, Rectangle2D area) {
    Path2D region = Pens.curve(plot, area, at, arrives);
    for (int i = at.length - 1; i >= 0; i--) {
      region.lineTo(
          Sheet.x(plot, area, at[i]), Sheet.y(plot, area, Math.max(freezes[i], arrives[i])));
    }
    region.closePath();
    return region;
  }
}
