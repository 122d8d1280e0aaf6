package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PourText;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Way of the leading metal from the sprue to where it ends, against time. */
final class FrontChart {
  private static final double NAME_INSET = 8.0;
  private static final double NAME_TALL = 14.0;
  private static final double ROOM = 1.18;

  /** Room above the tip for the mark of the end and its words [-]. */
  private static final double TOP_ROOM = 1.08;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final List<PassageRecord> way;
  private final double[] time;
  private final double[] distance;
  private final PourText text;
  private final boolean falls;

  private FrontChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.way = way(plan);
    this.text = new PourText(sentences, figures);
    this.falls = text.fillsFromTip(plan);
    FrontTrack track = plan.result().track();
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < track.size(); i++) {
      double start = start(track.passage(i));
      if (start >= 0.0) {
        points.add(new double[] {track.time(i), figures.length(start + track.at(i))});
      }
    }
    this.time = points.stream().mapToDouble(p -> p[0]).toArray();
    this.distance = points.stream().mapToDouble(p -> p[1]).toArray();
  }

  static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new FrontChart(plan, sentences, figures).draw();
  }

  /** Channels that metal runs along, in order; a pocket beside the way is not one of them. */
  private static List<PassageRecord> way(PouredPlan plan) {
    List<PassageRecord> way = new ArrayList<>();
    for (PassageRecord passage : plan.result().passages()) {
      switch (passage.role()) {
        case SPRUE, RUNNER, GATE, BOSS, PIECE -> way.add(passage);
        case WELL, OVERFLOW, FEEDER -> {}
      }
    }
    return way;
  }

  private double start(String channel) {
    double start = 0.0;
    for (PassageRecord passage : way) {
      if (passage.name().equals(channel)) {
        return start;
      }
      start += passage.length();
    }
    return -1.0;
  }

  private Picture draw() {
    double whole = 0.0;
    for (PassageRecord passage : way) {
      whole += passage.length();
    }
    double end = Math.max(plan.result().outcome().time(), 0.1);
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, end * ROOM),
            Sheet.axis(
                sentences.say("chart.axis.way", "unit", figures.lengthUnit()),
                0.0,
                figures.length(falls ? whole : whole * TOP_ROOM)));
    plot.addAnnotation(new Drawing(this::bands));
    plot.addAnnotation(new Drawing(this::metal));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return new Picture(
        sentences.say("chart.front.heading"),
        sentences.say(falls ? "chart.front.caption.fallen" : "chart.front.caption"),
        Sheet.TALL,
        Sheet.body(plot));
  }

  private void bands(Graphics2D g, XYPlot plot, Rectangle2D area) {
    double from = 0.0;
    double lowestFree = area.getMaxY();
    for (int i = 0; i < way.size(); i++) {
      double to = from + way.get(i).length();
      double bottom = Sheet.y(plot, area, figures.length(from));
      double top = Sheet.y(plot, area, figures.length(to));
      // The piece, last on the way, stays on plain paper.
      if ((way.size() - i) % 2 == 0) {
        g.setPaint(Look.BAND);
        g.fill(new Rectangle2D.Double(area.getMinX(), top, area.getWidth(), bottom - top));
      }
      Pens.line(
          g, new Line2D.Double(area.getMinX(), top, area.getMaxX(), top), Look.RULE, Look.THIN);
      g.setFont(Look.NAME);
      g.setPaint(Look.FAINT_INK);
      double baseline = Math.min((bottom + top) / 2 + 4, lowestFree - 2);
      String name = PlainLetters.of(way.get(i).name());
      double wide = g.getFontMetrics().stringWidth(name);
      g.drawString(name, (float) (area.getMaxX() - wide - NAME_INSET), (float) baseline);
      lowestFree = baseline - NAME_TALL + 2;
      from = to;
    }
  }

  private void metal(Graphics2D g, XYPlot plot, Rectangle2D area) {
    if (time.length == 0) {
      return;
    }
    double[] x = new double[time.length];
    double[] y = new double[time.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = Sheet.x(plot, area, time[i]);
      y[i] = Sheet.y(plot, area, distance[i]);
    }
    Pens.line(g, Pens.curve(x, y), Look.INK, Look.METAL);
    int last = x.length - 1;
    String words = text.ending(plan);
    if (falls) {
      double beside = plan.result().outcome() instanceof Outcome.Filled ? -34 : 34;
      Pens.words(g, area, words, Look.LABEL, Look.INK, x[last] - 40, y[last] + beside);
    } else {
      Pens.wordsAtEnd(g, area, words, Look.LABEL, Look.INK, x[last], y[last] - 24);
    }
    Pens.lip(g, Ending.of(plan.result()), x[last], y[last], falls ? Pens.Way.DOWN : Pens.Way.UP);
  }
}
