package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.chart.paper.Drawing;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Along the piece: how plainly lap lines will show. */
public final class LapChart {
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
  public static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
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
        new Messages(plan, sentences, figures).laps(limb),
        sentences.say("chart.laps.caption"),
        TALL,
        Sheet.body(plot));
  }

  private void laps(Graphics2D g, XYPlot plot, Rectangle2D area) {
    double top = plot.getRangeAxis().getUpperBound();
    band(g, plot, area, LapStretch.CLEAN, LapStretch.PLAIN);
    band(g, plot, area, LapStretch.HALTS, top);
    Labels labels = new Labels(area);
    g.clip(area);
    Path2D path = curve(plot, area, top);
    Pens.line(g, path, Look.INK, Look.METAL);
    labels.keepOffLine(path);
    List<Meeting> here =
        plan.result().meetings().stream().filter(m -> m.passage().equals(limb.name())).toList();
    for (Meeting m : here) {
      Shape line = meeting(plot, area, m);
      Pens.line(g, line, Look.INK, Look.DASHED);
      labels.keepOffLine(line);
    }
    zone(g, plot, area, LapStretch.HALTS, top, "chart.laps.pulses", labels);
    zone(g, plot, area, LapStretch.PLAIN, LapStretch.HALTS, "chart.laps.plain", labels);
    zone(g, plot, area, LapStretch.CLEAN, LapStretch.PLAIN, "chart.laps.faint", labels);
    zone(g, plot, area, 0.0, LapStretch.CLEAN, "chart.laps.clean", labels);
    for (Meeting m : here) {
      String words = sentences.say("chart.meeting." + m.kind().name());
      double x = meeting(plot, area, m).getBounds2D().getX();
      List<Labels.Anchor> anchors = new ArrayList<>();
      for (double y = area.getMinY() + 10.0; y < area.getMaxY(); y += 18.0) {
        anchors.add(new Labels.Anchor(x, y, 1.0, 0.0));
        anchors.add(new Labels.Anchor(x, y, -1.0, 0.0));
      }
      labels.write(g, words, Look.LABEL_SMALL, Look.INK, anchors);
    }
  }

  private Path2D curve(XYPlot plot, Rectangle2D area, double top) {
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
    return path;
  }

  private Shape meeting(XYPlot plot, Rectangle2D area, Meeting m) {
    double x = Sheet.x(plot, area, figures.length(limb.start() + m.at()));
    return new Line2D.Double(x, area.getMinY(), x, area.getMaxY());
  }

  private static void band(Graphics2D g, XYPlot plot, Rectangle2D area, double from, double to) {
    double bottom = Sheet.y(plot, area, from);
    double top = Sheet.y(plot, area, to);
    g.setPaint(Look.BAND);
    g.fill(new Rectangle2D.Double(area.getMinX(), top, area.getWidth(), bottom - top));
  }

  /** Names a zone within it, where no line runs. */
  private void zone(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D area,
      double from,
      double to,
      String words,
      Labels labels) {
    double y = 0.5 * (Sheet.y(plot, area, from) + Sheet.y(plot, area, to));
    List<Labels.Anchor> anchors = new ArrayList<>();
    for (double x = area.getMinX() + 2.0; x < area.getMaxX(); x += 30.0) {
      anchors.add(new Labels.Anchor(x, y, 1.0, 0.0));
    }
    labels.write(g, sentences.say(words), Look.NAME, Look.FAINT_INK, anchors);
  }
}
