package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Optional;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PourText;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Along the piece: when metal gets there, and when it would have stopped flowing there. */
final class RaceChart {
  /** A spare longer than so many times the pour is cut off by the frame. */
  private static final double MOST = 2.5;

  private static final double ROOM = 1.15;
  private static final double LABEL_TALL = 18.0;
  private static final double LEAST_GAP = 26.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final PourText text;
  private final Race race;
  private final Optional<PassageRecord> limb;
  private final double top;

  private RaceChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.text = new PourText(sentences, figures);
    this.race = Race.of(plan);
    this.limb = ToldLimb.of(plan.result());
    double latest = Math.max(plan.result().outcome().time(), 0.1);
    double highest = latest;
    for (int i = 0; i < race.size(); i++) {
      highest = Math.max(highest, race.freezes(i));
    }
    this.top = Math.min(highest, MOST * latest) * ROOM;
  }

  static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new RaceChart(plan, sentences, figures).draw();
  }

  private Picture draw() {
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(
                sentences.say(
                    "chart.axis.limb",
                    "limb",
                    PlainLetters.of(limb.map(PassageRecord::name).orElse("piece")),
                    "unit",
                    figures.lengthUnit()),
                0.0,
                figures.length(limb.map(PassageRecord::length).orElse(1.0))),
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, top));
    plot.addAnnotation(new Drawing(this::race));
    boolean filled = plan.result().outcome() instanceof Outcome.Filled;
    return new Picture(
        sentences.say("chart.race.heading"),
        sentences.say(filled ? "chart.race.caption.full" : "chart.race.caption"),
        Sheet.TALL,
        Sheet.body(plot));
  }

  private void race(Graphics2D g, XYPlot plot, Rectangle2D area) {
    if (race.size() == 0) {
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
    double[] x = new double[race.size()];
    double[] metal = new double[race.size()];
    double[] freezing = new double[race.size()];
    for (int i = 0; i < race.size(); i++) {
      x[i] = Sheet.x(plot, area, figures.length(race.at(i)));
      metal[i] = Sheet.y(plot, area, race.arrives(i));
      freezing[i] = Sheet.y(plot, area, Math.min(race.freezes(i), ROOM * top));
    }
    double dry = area.getMinX();
    for (int[] run : race.runs()) {
      double[] rx = Arrays.copyOfRange(x, run[0], run[1] + 1);
      double[] rm = Arrays.copyOfRange(metal, run[0], run[1] + 1);
      double[] rf = Arrays.copyOfRange(freezing, run[0], run[1] + 1);
      empty(g, area, dry, rx[0]);
      Pens.hatch(g, between(rx, rm, rf), Look.SECOND_INK);
      Pens.line(g, Pens.curve(rx, rf), Look.SECOND_INK, Look.FREEZING);
      Pens.line(g, Pens.curve(rx, rm), Look.INK, Look.METAL);
      dry = rx[rx.length - 1];
    }
    empty(g, area, dry, area.getMaxX());
    names(g, area, x, metal, freezing);
    ending(g, area, x, metal);
  }

  /** Where no metal came. */
  private void empty(Graphics2D g, Rectangle2D area, double from, double to) {
    String words = sentences.say("chart.race.empty");
    double wide = g.getFontMetrics(Look.NAME).stringWidth(words);
    if (plan.result().outcome() instanceof Outcome.Filled || to - from < wide / 2) {
      return;
    }
    g.setPaint(Look.BAND);
    g.fill(new Rectangle2D.Double(from, area.getMinY(), to - from, area.getHeight()));
    if (to - from > wide) {
      g.setFont(Look.NAME);
      g.setPaint(Look.FAINT_INK);
      g.drawString(words, (float) ((from + to - wide) / 2), (float) (area.getMinY() + LABEL_TALL));
    }
  }

  private static Path2D between(double[] x, double[] metal, double[] freezing) {
    Path2D region = Pens.curve(x, metal);
    for (int i = x.length - 1; i >= 0; i--) {
      region.lineTo(x[i], Math.min(freezing[i], metal[i]));
    }
    region.closePath();
    return region;
  }

  private void names(
      Graphics2D g, Rectangle2D area, double[] x, double[] metal, double[] freezing) {
    int early = x.length / 6;
    Pens.words(
        g,
        area,
        sentences.say("chart.race.arrives"),
        Look.LABEL,
        Look.INK,
        x[early],
        lowest(x, metal, x[early], x[early] + 120) + LABEL_TALL);
    int seen = firstSeen(area, freezing);
    int name = Math.min(x.length - 1, seen + (x.length - seen) / 5);
    Pens.words(
        g,
        area,
        sentences.say("chart.race.freezes"),
        Look.LABEL,
        Look.SECOND_INK,
        x[name],
        highest(x, freezing, x[name], x[name] + 180) - LABEL_TALL);
    int widest = 0;
    for (int i = 0; i < x.length; i++) {
      if (gap(area, metal, freezing, i) > gap(area, metal, freezing, widest)) {
        widest = i;
      }
    }
    int middle = (widest + x.length / 2) / 2;
    if (gap(area, metal, freezing, middle) > LEAST_GAP) {
      Pens.words(
          g,
          area,
          sentences.say("chart.race.spare"),
          Look.NAME,
          Look.INK,
          x[middle] - 30,
          metal[middle] - gap(area, metal, freezing, middle) / 2);
    }
  }

  private static double gap(Rectangle2D area, double[] metal, double[] freezing, int i) {
    return metal[i] - Math.max(freezing[i], area.getMinY());
  }

  /** First place whose freezing line the frame does not cut off; the last one if it cuts all. */
  private static int firstSeen(Rectangle2D area, double[] freezing) {
    int seen = 0;
    while (seen < freezing.length - 1 && freezing[seen] < area.getMinY() + LABEL_TALL) {
      seen++;
    }
    return seen;
  }

  private static double lowest(double[] x, double[] y, double from, double to) {
    double lowest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      if (x[i] >= from && x[i] <= to) {
        lowest = Math.max(lowest, y[i]);
      }
    }
    return lowest == Double.NEGATIVE_INFINITY ? y[y.length - 1] : lowest;
  }

  private static double highest(double[] x, double[] y, double from, double to) {
    double highest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      if (x[i] >= from && x[i] <= to) {
        highest = Math.min(highest, y[i]);
      }
    }
    return highest == Double.POSITIVE_INFINITY ? y[y.length - 1] : highest;
  }

  private void ending(Graphics2D g, Rectangle2D area, double[] x, double[] metal) {
    int last = 0;
    for (int i = 1; i < x.length; i++) {
      last = race.arrives(i) >= race.arrives(last) ? i : last;
    }
    boolean backwards = last < x.length / 2;
    Pens.line(
        g,
        new Line2D.Double(x[last], metal[last], x[last], area.getMaxY()),
        Look.FAINT_INK,
        Look.THIN);
    String words =
        plan.result().outcome() instanceof Outcome.Filled
            ? sentences.say("ending.filled", "time", figures.seconds(race.arrives(last)))
            : text.ending(plan);
    double wide = g.getFontMetrics(Look.LABEL).stringWidth(words);
    boolean beside = !backwards && x[last] + wide + 2 * LABEL_TALL < area.getMaxX();
    if (beside) {
      Pens.words(g, area, words, Look.LABEL, Look.INK, x[last] + LABEL_TALL, metal[last]);
    } else if (backwards) {
      Pens.words(
          g,
          area,
          words,
          Look.LABEL,
          Look.INK,
          x[last] + LABEL_TALL,
          highest(x, metal, x[last], x[last] + wide) - LABEL_TALL);
    } else {
      double low = lowest(x, metal, x[last] - wide - LABEL_TALL, x[last]) + LABEL_TALL;
      Pens.wordsAtEnd(g, area, words, Look.LABEL, Look.INK, x[last], low);
    }
    // A mark right at the tip stands half outside the frame.
    Shape frame = g.getClip();
    g.setClip(null);
    Pens.lip(
        g,
        Ending.of(plan.result()),
        x[last],
        metal[last],
        backwards ? Pens.Way.LEFT : Pens.Way.RIGHT);
    g.setClip(frame);
  }
}
