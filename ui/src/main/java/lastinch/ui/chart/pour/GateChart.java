package lastinch.ui.chart.pour;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Pour;
import lastinch.solver.result.FillHistory;
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

/** Metal through each gate against time. */
public final class GateChart {
  private static final double ROOM = 1.2;

  /** Room below no flow, for marks on that line [-]. */
  private static final double FOOT = 0.05;

  /** Flows are shown as means over such a share of the pour, so that no single step shows. */
  private static final double MEAN_OVER = 0.02;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final FillHistory course;
  private final double end;
  private final double pour;
  private final boolean even;

  private GateChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    course = plan.result().course();
    end = Math.max(plan.result().outcome().time(), 0.1);
    even = !(plan.pourCase().pour() instanceof Pour.ByCurve);
    pour = plan.pourCase().pour().rate(plan.pourCase().metal().melted(), plan.result().massToRim());
  }

  /** The chart; none when metal needs no gate. */
  public static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
    FillHistory course = plan.result().course();
    boolean any = false;
    for (int gate = 0; gate < course.gates().size(); gate++) {
      any |= course.samples() > 2 && course.passed(gate, course.samples() - 1) > 0.0;
    }
    return any ? Optional.of(new GateChart(plan, sentences, figures).draw()) : Optional.empty();
  }

  private Picture draw() {
    double most = even ? pour : 0.0;
    double least = 0.0;
    for (int gate = 0; gate < course.gates().size(); gate++) {
      for (int k = 0; k < course.samples(); k++) {
        most = Math.max(most, flow(gate, k));
        least = Math.min(least, flow(gate, k));
      }
    }
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, end * 1.08),
            Sheet.axis(
                sentences.say("chart.axis.flow", "unit", figures.massRateUnit()),
                figures.massRate(Math.min(least * ROOM, -FOOT * most)),
                figures.massRate(most * ROOM)));
    plot.addAnnotation(new Drawing(this::flows));
    return new Picture(
        sentences.say("chart.gates.heading"),
        new Messages(plan, sentences, figures).gates(pour),
        least < 0.0 ? sentences.say("chart.gates.caption.back") : "",
        Sheet.TALL,
        Sheet.body(plot));
  }

  /** Flow about a sample [kg/s]. */
  private double flow(int gate, int k) {
    int from = k;
    int to = k;
    double half = 0.5 * MEAN_OVER * end;
    while (from > 0 && course.sampleTime(k) - course.sampleTime(from) < half) {
      from--;
    }
    while (to < course.samples() - 1 && course.sampleTime(to) - course.sampleTime(k) < half) {
      to++;
    }
    double seconds = course.sampleTime(to) - course.sampleTime(from);
    return seconds > 0.0 ? (course.passed(gate, to) - course.passed(gate, from)) / seconds : 0.0;
  }

  private void flows(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Labels labels = new Labels(area);
    double none = Sheet.y(plot, area, 0.0);
    Shape zero = new Line2D.Double(area.getMinX(), none, area.getMaxX(), none);
    Pens.line(g, zero, Look.INK, Look.THIN);
    labels.keepOffLine(zero);
    List<List<Point2D>> curves = new ArrayList<>();
    for (int gate = 0; gate < course.gates().size(); gate++) {
      List<Point2D> curve = curve(plot, area, gate);
      curves.add(curve);
      labels.keepOffLine(Labels.path(curve));
      Pens.line(g, Labels.path(curve), ink(gate), stroke(gate));
    }
    if (even) {
      double y = Sheet.y(plot, area, figures.massRate(pour));
      List<Point2D> level = new ArrayList<>();
      for (double x = area.getMinX(); x <= area.getMaxX(); x += 20.0) {
        level.add(new Point2D.Double(x, y));
      }
      labels.keepOffLine(Labels.path(level));
      Pens.line(g, Labels.path(level), Look.FAINT_INK, Look.DASHED);
      String words = sentences.say("chart.gates.pour");
      labels.along(g, words, Look.NAME, Look.FAINT_INK, level, 0.1, 1.0);
    }
    for (int gate = 0; gate < course.gates().size(); gate++) {
      froze(g, plot, area, gate, labels);
    }
    for (int gate = 0; gate < course.gates().size(); gate++) {
      name(g, gate, curves.get(gate), labels);
    }
  }

  private List<Point2D> curve(XYPlot plot, Rectangle2D area, int gate) {
    List<Point2D> points = new ArrayList<>();
    for (int k = 0; k < course.samples(); k++) {
      double x = Sheet.x(plot, area, course.sampleTime(k));
      points.add(new Point2D.Double(x, Sheet.y(plot, area, figures.massRate(flow(gate, k)))));
    }
    return points;
  }

  /** Names a gate where it passes most. */
  private static int peak(List<Point2D> curve) {
    int peak = 0;
    for (int k = 1; k < curve.size(); k++) {
      peak = curve.get(k).getY() < curve.get(peak).getY() ? k : peak;
    }
    return peak;
  }

  private void name(Graphics2D g, int gate, List<Point2D> curve, Labels labels) {
    String name = PlainLetters.of(course.gates().get(gate));
    double from = peak(curve) / (double) curve.size();
    labels.along(g, name, Look.LABEL_SMALL, ink(gate), curve, from, 1.0);
  }

  /** A cross where a gate closes by freezing, with its words. */
  private void froze(Graphics2D g, XYPlot plot, Rectangle2D area, int gate, Labels labels) {
    String name = course.gates().get(gate);
    OptionalDouble time =
        plan.result().gates().stream()
            .filter(r -> r.name().equals(name) && r.froze().isPresent())
            .mapToDouble(r -> r.froze().getAsDouble())
            .findFirst();
    if (time.isEmpty()) {
      return;
    }
    double x = Sheet.x(plot, area, time.getAsDouble());
    double y = Sheet.y(plot, area, 0.0);
    Pens.line(g, new Line2D.Double(x - 5, y - 5, x + 5, y + 5), ink(gate), Look.METAL);
    Pens.line(g, new Line2D.Double(x - 5, y + 5, x + 5, y - 5), ink(gate), Look.METAL);
    labels.keepOff(new Rectangle2D.Double(x - 6.0, y - 6.0, 12.0, 12.0));
    String words =
        sentences.say(
            "chart.gates.froze", "gate", name, "time", figures.seconds(time.getAsDouble()));
    labels.write(
        g,
        PlainLetters.of(words),
        Look.LABEL_SMALL,
        ink(gate),
        List.of(new Labels.Anchor(x, y - 6.0, 0.0, -1.0), new Labels.Anchor(x, y, -1.0, -0.5)));
  }

  private static Color ink(int gate) {
    return gate % 3 == 0 ? Look.INK : gate % 3 == 1 ? Look.SECOND_INK : Look.FAINT_INK;
  }

  private static Stroke stroke(int gate) {
    return gate == 0 ? Look.METAL : Look.EARLIER.get((gate - 1) % Look.EARLIER.size());
  }
}
