package lastinch.ui.chart.study;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.result.LapStretch;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.study.RunSummary;
import lastinch.ui.chart.paper.Drawing;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.LeverWords;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;

/**
 * Room to move: good land is toned; where metal fills with less than was asked there are dots, and
 * where it stops short the paper is empty but for sparse crosses. Each area carries its words.
 */
public final class RoomChart {
  private static final double TALL = 500.0;
  private static final double DOT_GAP = 8.0;
  private static final double DOT = 1.6;
  private static final double STROKE = 4.0;
  private static final double CROSS = 10.0;
  private static final double CROSSES = 44.0;
  private static final double HERE = 54.0;
  private static final Stroke SLIP = new BasicStroke(7f);
  private static final Stroke DASHED =
      new BasicStroke(
          1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {6f, 4f}, 0f);

  private final OperatingMap room;
  private final Sentences sentences;
  private final Figures figures;
  private final LeverWords levers;
  private Labels labels = new Labels(new Rectangle2D.Double());

  private RoomChart(OperatingMap room, Sentences sentences, Figures figures) {
    this.room = room;
    this.sentences = sentences;
    this.figures = figures;
    this.levers = new LeverWords(sentences, figures);
  }

  public static Picture of(OperatingMap room, Sentences sentences, Figures figures) {
    return new RoomChart(room, sentences, figures).draw();
  }

  private Picture draw() {
    XYPlot plot =
        Sheet.plot(axis(room.across(), room.acrossValues()), axis(room.up(), room.upValues()));
    plot.addAnnotation(
        new Drawing(
            (g, p, area) -> {
              labels = new Labels(area);
              regions(g, p, area);
            }));
    plot.addAnnotation(new Drawing(this::laps));
    plot.addAnnotation(new Drawing(this::beyond));
    plot.addAnnotation(new Drawing(this::lines));
    plot.addAnnotation(new Drawing(this::here));
    plot.addAnnotation(new Drawing(this::words));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return new Picture(
        sentences.say("room.chart.heading"),
        RoomWords.message(room, sentences, figures),
        hasLaps() ? sentences.say("room.chart.caption.laps") : "",
        TALL,
        Sheet.body(plot));
  }

  private NumberAxis axis(Lever lever, List<Double> values) {
    double low = levers.number(lever, values.get(0));
    double high = levers.number(lever, values.get(values.size() - 1));
    String unit = levers.unit(lever);
    String label =
        unit.isEmpty()
            ? levers.name(lever)
            : sentences.say("room.chart.axis", "lever", levers.name(lever), "unit", unit);
    return Sheet.axis(PlainLetters.of(label), low, high);
  }

  private double x(XYPlot plot, Rectangle2D area, double value) {
    return Sheet.x(plot, area, levers.number(room.across(), value));
  }

  private double y(XYPlot plot, Rectangle2D area, double value) {
    return Sheet.y(plot, area, levers.number(room.up(), value));
  }

  /** From values of the levers to the paper; both scales are straight. */
  private AffineTransform onPaper(XYPlot plot, Rectangle2D area) {
    double x0 = x(plot, area, 0.0);
    double y0 = y(plot, area, 0.0);
    double ax = room.acrossValues().get(room.acrossValues().size() - 1);
    double ay = room.upValues().get(room.upValues().size() - 1);
    double bx = room.acrossValues().get(0);
    double by = room.upValues().get(0);
    double sx = (x(plot, area, ax) - x(plot, area, bx)) / (ax - bx);
    double sy = (y(plot, area, ay) - y(plot, area, by)) / (ay - by);
    return new AffineTransform(sx, 0.0, 0.0, sy, x0, y0);
  }

  private void regions(Graphics2D g, XYPlot plot, Rectangle2D area) {
    AffineTransform paper = onPaper(plot, area);
    Shape fills =
        paper.createTransformedShape(new RoomCells(room, OperatingMap.Parts.FILLS).region());
    Shape spare =
        paper.createTransformedShape(new RoomCells(room, OperatingMap.Parts.SPARE).region());
    dots(g, area, fills);
    g.setPaint(Look.GOOD);
    g.fill(spare);
    crosses(g, area, fills);
  }

  /** Names every area in it. */
  private void words(Graphics2D g, XYPlot plot, Rectangle2D area) {
    AffineTransform paper = onPaper(plot, area);
    Area fills =
        new Area(
            paper.createTransformedShape(new RoomCells(room, OperatingMap.Parts.FILLS).region()));
    Area good =
        new Area(
            paper.createTransformedShape(new RoomCells(room, OperatingMap.Parts.SPARE).region()));
    Area stops = new Area(area);
    stops.subtract(fills);
    fills.subtract(good);
    String spare = figures.percent(room.goal().spare());
    inside(g, area, good, sentences.say("room.chart.good", "spare", spare));
    inside(g, area, fills, sentences.say("room.chart.less"));
    inside(g, area, stops, sentences.say("room.chart.stops"));
  }

  /** Writes words where they fit into an area, nearest to its middle. */
  private void inside(Graphics2D g, Rectangle2D area, Area part, String words) {
    double wide = Paper.wide(words, Look.LABEL) + 16.0;
    List<Point2D> fit = new ArrayList<>();
    double x = 0.0;
    double y = 0.0;
    for (double px = area.getMinX(); px < area.getMaxX(); px += 12.0) {
      for (double py = area.getMinY(); py < area.getMaxY(); py += 10.0) {
        if (part.contains(px - 0.5 * wide, py - 10.0, wide, 20.0)) {
          fit.add(new Point2D.Double(px, py));
          x += px;
          y += py;
        }
      }
    }
    Point2D middle = new Point2D.Double(x / Math.max(1, fit.size()), y / Math.max(1, fit.size()));
    fit.sort(Comparator.comparingDouble(p -> p.distance(middle)));
    int before = labels.written().size();
    for (int i = 0; i < fit.size() && labels.written().size() == before; i++) {
      labels.inside(g, words, Look.LABEL, Look.INK, fit.get(i).getX(), fit.get(i).getY());
    }
  }

  private static void crosses(Graphics2D g, Rectangle2D area, Shape fills) {
    for (double x = area.getMinX() + CROSSES / 2; x < area.getMaxX(); x += CROSSES) {
      for (double y = area.getMinY() + CROSSES / 2; y < area.getMaxY(); y += CROSSES) {
        if (!fills.contains(x, y)) {
          Pens.line(g, new Line2D.Double(x - 3, y - 3, x + 3, y + 3), Look.FAINT_INK, Look.THIN);
          Pens.line(g, new Line2D.Double(x - 3, y + 3, x + 3, y - 3), Look.FAINT_INK, Look.THIN);
        }
      }
    }
  }

  private static void dots(Graphics2D g, Rectangle2D area, Shape region) {
    g.setPaint(Look.FAINT_INK);
    for (double x = area.getMinX() + DOT_GAP / 2; x < area.getMaxX(); x += DOT_GAP) {
      for (double y = area.getMinY() + DOT_GAP / 2; y < area.getMaxY(); y += DOT_GAP) {
        if (region.contains(x, y)) {
          g.fill(new Ellipse2D.Double(x - DOT / 2, y - DOT / 2, DOT, DOT));
        }
      }
    }
  }

  private boolean hasLaps() {
    return room.glances().stream().flatMap(Optional::stream).anyMatch(RoomChart::laps);
  }

  private static boolean laps(RunSummary glance) {
    return glance.filled() && glance.worstLap() >= LapStretch.PLAIN;
  }

  private void laps(Graphics2D g, XYPlot plot, Rectangle2D area) {
    for (int row = 0; row < room.upValues().size(); row++) {
      for (int column = 0; column < room.acrossValues().size(); column++) {
        if (room.at(column, row).filter(RoomChart::laps).isPresent()) {
          double x = x(plot, area, room.acrossValues().get(column));
          double y = y(plot, area, room.upValues().get(row));
          Pens.line(
              g,
              new Line2D.Double(x - STROKE, y + STROKE, x + STROKE, y - STROKE),
              Look.SECOND_INK,
              Look.HATCH);
        }
      }
    }
  }

  /** Hatches what lies beyond practice and says why. */
  private void beyond(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Bound left = room.across().practical().low();
    Bound right = room.across().practical().high();
    double from = Math.min(area.getMaxX(), Math.max(area.getMinX(), x(plot, area, left.value())));
    double to = Math.min(area.getMaxX(), Math.max(area.getMinX(), x(plot, area, right.value())));
    strip(g, area, area.getMinX(), area.getMinY(), from - area.getMinX(), area.getHeight(), left);
    strip(g, area, to, area.getMinY(), area.getMaxX() - to, area.getHeight(), right);
    Bound low = room.up().practical().low();
    Bound high = room.up().practical().high();
    double bottom = Math.min(area.getMaxY(), Math.max(area.getMinY(), y(plot, area, low.value())));
    double top = Math.min(area.getMaxY(), Math.max(area.getMinY(), y(plot, area, high.value())));
    strip(g, area, area.getMinX(), bottom, area.getWidth(), area.getMaxY() - bottom, low);
    strip(g, area, area.getMinX(), area.getMinY(), area.getWidth(), top - area.getMinY(), high);
  }

  private void strip(
      Graphics2D g, Rectangle2D area, double x, double y, double wide, double tall, Bound why) {
    if (wide < 2.0 || tall < 2.0) {
      return;
    }
    Rectangle2D strip = new Rectangle2D.Double(x, y, wide, tall);
    Pens.hatch(g, strip, Look.INK);
    String words = levers.reason(why);
    double half = 0.5 * Paper.wide(words, Look.NAME) + 8.0;
    double middle =
        Math.max(area.getMinX() + half, Math.min(strip.getCenterX(), area.getMaxX() - half));
    double first = strip.getMinY() + Math.min(0.5 * tall, 20.0);
    int before = labels.written().size();
    for (double at = first; labels.written().size() == before && at < area.getMaxY(); at += 18.0) {
      labels.inside(g, words, Look.NAME, Look.INK, middle, at);
    }
  }

  private void lines(Graphics2D g, XYPlot plot, Rectangle2D area) {
    for (OperatingMap.Line line : room.lines()) {
      Path2D path = new Path2D.Double();
      for (int i = 0; i < line.across().size(); i++) {
        double x = x(plot, area, line.across().get(i));
        double y = y(plot, area, line.up().get(i));
        if (i == 0) {
          path.moveTo(x, y);
        } else {
          path.lineTo(x, y);
        }
      }
      labels.keepOffLine(path);
      boolean fills = line.parts() == OperatingMap.Parts.FILLS;
      Pens.line(g, path, Look.INK, fills ? Look.METAL : DASHED);
    }
  }

  /** A cross where the plan stands; its arms are as long as the plan is unsure. */
  private void here(Graphics2D g, XYPlot plot, Rectangle2D area) {
    double x = x(plot, area, room.across().now());
    double y = y(plot, area, room.up().now());
    if (!area.contains(x, y)) {
      return;
    }
    double left = x(plot, area, room.across().band().low());
    double right = x(plot, area, room.across().band().high());
    double low = y(plot, area, room.up().band().low());
    double high = y(plot, area, room.up().band().high());
    Shape clip = g.getClip();
    g.clip(area);
    Shape across = new Line2D.Double(Math.min(left, x - CROSS), y, Math.max(right, x + CROSS), y);
    Shape up = new Line2D.Double(x, Math.min(high, y - CROSS), x, Math.max(low, y + CROSS));
    for (Shape arm : List.of(across, up)) {
      Pens.line(g, arm, Look.PAPER, SLIP);
    }
    for (Shape arm : List.of(across, up)) {
      Pens.line(g, arm, Look.INK, Look.MARK);
    }
    g.setClip(clip);
    labels.keepOff(across.getBounds2D());
    labels.keepOff(up.getBounds2D());
    String words = sentences.say("room.chart.here");
    int before = labels.written().size();
    for (double side : new double[] {HERE, -HERE}) {
      for (double down : new double[] {18.0, -18.0, 36.0, -36.0}) {
        if (labels.written().size() == before) {
          labels.inside(g, words, Look.LABEL, Look.INK, x + side, y + down);
        }
      }
    }
  }
}
