package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Along the piece: how plainly lap lines will show. */
final class LapChart {
  private static final double LEAST_TOP = 1.25;
  private static final double MOST_TOP = 2.0;
  private static final double TALL = 330.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final PassageRecord limb;

  private LapChart(PouredPlan plan, Sentences sentences, Figures figures, PassageRecord limb) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.limb = limb;
  }

  /** The chart; none when no metal got into the piece. */
  static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
    return ToldLimb.of(plan.result())
        .filter(LapChart::isReached)
        .map(p -> new LapChart(plan, sentences, figures, p).draw());
  }

  private static boolean isReached(PassageRecord p) {
    boolean any = false;
    for (int i = 0; i < p.size(); i++) {
      any |= p.reached(i);
    }
    return any;
  }

  private Picture draw() {
    double most = 0.0;
    for (int i = 0; i < limb.size(); i++) {
      most = limb.reached(i) ? Math.max(most, limb.lapIndex(i)) : most;
    }
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(
                sentences.say(
                    "chart.axis.limb",
                    "limb",
                    PlainLetters.of(limb.name()),
                    "unit",
                    figures.lengthUnit()),
                figures.length(limb.start()),
                figures.length(limb.start() + limb.length())),
            Sheet.axis(
                sentences.say("chart.axis.laps"),
                0.0,
                Math.max(LEAST_TOP, Math.min(MOST_TOP, 1.1 * most))));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.addAnnotation(new Drawing(this::laps));
    return new Picture(
        sentences.say("chart.laps.heading"),
        sentences.say("chart.laps.caption"),
        TALL,
        Sheet.body(plot));
  }

  private void laps(Graphics2D g, XYPlot plot, Rectangle2D area) {
    double top = plot.getRangeAxis().getUpperBound();
    zone(g, plot, area, 0.0, LapStretch.CLEAN, "chart.laps.clean", false);
    zone(g, plot, area, LapStretch.CLEAN, LapStretch.PLAIN, "chart.laps.faint", true);
    zone(g, plot, area, LapStretch.PLAIN, LapStretch.HALTS, "chart.laps.plain", false);
    zone(g, plot, area, LapStretch.HALTS, top, "chart.laps.pulses", true);
    g.clip(area);
    Path2D path = new Path2D.Double();
    boolean open = false;
    for (int i = 0; i < limb.size(); i++) {
      if (!limb.reached(i)) {
        open = false;
        continue;
      }
      double x = Sheet.x(plot, area, figures.length(limb.start() + limb.at(i)));
      double y = Sheet.y(plot, area, Math.min(limb.lapIndex(i), 1.02 * top));
      if (open) {
        path.lineTo(x, y);
      } else {
        path.moveTo(x, y);
      }
      open = true;
    }
    Pens.line(g, path, Look.INK, Look.METAL);
    Slips slips = new Slips(area);
    for (Meeting m : plan.result().meetings()) {
      if (m.passage().equals(limb.name())) {
        double x = Sheet.x(plot, area, figures.length(limb.start() + m.at()));
        Pens.line(
            g, new Line2D.Double(x, area.getMinY(), x, area.getMaxY()), Look.INK, Look.DASHED);
        slips.write(
            g,
            sentences.say("chart.meeting." + m.kind().name()),
            Look.LABEL_SMALL,
            Look.INK,
            x,
            area.getMinY() + 12.0,
            1.0,
            0.0);
      }
    }
  }

  private void zone(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D area,
      double from,
      double to,
      String words,
      boolean dark) {
    double bottom = Sheet.y(plot, area, from);
    double top = Sheet.y(plot, area, to);
    if (dark) {
      g.setPaint(Look.BAND);
      g.fill(new Rectangle2D.Double(area.getMinX(), top, area.getWidth(), bottom - top));
    }
    g.setFont(Look.NAME);
    g.setPaint(Look.FAINT_INK);
    g.drawString(sentences.say(words), (float) (area.getMinX() + 8.0), (float) (top + 15.0));
  }
}
