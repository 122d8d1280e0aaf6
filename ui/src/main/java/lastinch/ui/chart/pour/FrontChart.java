package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.chart.paper.Drawing;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.PourText;
import org.jfree.chart.plot.XYPlot;

/** Way of the leading metal from the sprue to where it ends, and when it was where. */
public final class FrontChart {
  private static final double ROOM = 1.22;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final WayAxis axis;
  private final PourText text;
  private final boolean falls;

  private FrontChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.text = new PourText(sentences, figures);
    this.falls = text.fillsFromTip(plan);
    this.axis =
        new WayAxis(
            sentences.say("chart.axis.way", "unit", figures.lengthUnit()), way(plan), figures);
  }

  public static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new FrontChart(plan, sentences, figures).draw();
  }

  /** Channels that metal runs along, in order; a pocket beside the way is not one of them. */
  private static List<WayAxis.Part> way(PouredPlan plan) {
    List<WayAxis.Part> way = new ArrayList<>();
    for (PassageRecord p : plan.result().passages()) {
      boolean piece = p.role() == PassageRecord.Role.PIECE;
      switch (p.role()) {
        case SPRUE, RUNNER, GATE, BOSS, PIECE ->
            way.add(new WayAxis.Part(p.name(), p.length(), p.start(), piece));
        case CUP, WELL, OVERFLOW, FEEDER -> {}
      }
    }
    return way;
  }

  private Picture draw() {
    double end = Math.max(plan.result().outcome().time(), 0.1);
    XYPlot plot = Sheet.plot(axis, Sheet.axis(sentences.say("chart.axis.time"), 0.0, end * ROOM));
    plot.addAnnotation(new Drawing(this::metal));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return new Picture(
        sentences.say("chart.front.heading"),
        new Messages(plan, sentences, figures).front(),
        falls ? sentences.say("chart.front.caption.fallen") : "",
        Sheet.TALL,
        Sheet.body(plot));
  }

  private void metal(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Labels labels = new Labels(area);
    List<Point2D> line = new ArrayList<>();
    FrontTrack track = plan.result().track();
    for (int i = 0; i < track.size(); i++) {
      double base = axis.base(track.passage(i));
      if (base >= 0.0) {
        line.add(
            new Point2D.Double(
                Sheet.x(plot, area, base + track.at(i)), Sheet.y(plot, area, track.time(i))));
      }
    }
    Path2D path = Labels.path(line);
    labels.keepOffLine(path);
    axis.bands(g, plot, area, labels);
    if (line.isEmpty()) {
      return;
    }
    Pens.line(g, path, Look.INK, Look.METAL);
    Point2D last = line.get(line.size() - 1);
    double x = last.getX();
    double y = last.getY();
    Pens.lip(g, EndShape.of(plan.result()), x, y, falls ? Pens.Way.LEFT : Pens.Way.RIGHT);
    labels.keepOff(new Rectangle2D.Double(x - 10.0, y - 10.0, 20.0, 20.0));
    labels.write(
        g,
        text.ending(plan),
        Look.LABEL,
        Look.INK,
        List.of(
            new Labels.Anchor(x, y - 6.0, falls ? 1.0 : -1.0, -1.0),
            new Labels.Anchor(x, y, falls ? 1.0 : -1.0, 0.0)));
  }
}
