package lastinch.ui.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lastinch.solver.casting.Pour;
import lastinch.solver.result.Course;
import lastinch.solver.result.GateRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Metal through each gate against time. */
final class GateChart {
  private static final double ROOM = 1.2;

  /** Flows are shown as means over such a share of the pour, so that no single step shows. */
  private static final double MEAN_OVER = 0.02;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final Course course;
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
  static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
    Course course = plan.result().course();
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
                figures.massRate(least * ROOM),
                figures.massRate(most * ROOM)));
    plot.addAnnotation(new Drawing(this::flows));
    return new Picture(
        sentences.say("chart.gates.heading"),
        sentences.say("chart.gates.caption"),
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
    Slips slips = new Slips(area);
    if (even) {
      double y = Sheet.y(plot, area, figures.massRate(pour));
      Pens.line(
          g, new Line2D.Double(area.getMinX(), y, area.getMaxX(), y), Look.FAINT_INK, Look.DASHED);
      slips.write(
          g,
          sentences.say("chart.gates.pour"),
          Look.NAME,
          Look.FAINT_INK,
          area.getMinX() + 70.0,
          y,
          0.0,
          -1.0);
    }
    for (int gate = 0; gate < course.gates().size(); gate++) {
      curve(g, plot, area, gate, slips);
    }
  }

  private void curve(Graphics2D g, XYPlot plot, Rectangle2D area, int gate, Slips slips) {
    Path2D path = new Path2D.Double();
    double peakX = area.getMinX();
    double peakY = area.getMaxY();
    for (int k = 0; k < course.samples(); k++) {
      double x = Sheet.x(plot, area, course.sampleTime(k));
      double y = Sheet.y(plot, area, figures.massRate(flow(gate, k)));
      if (k == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      if (y < peakY) {
        peakX = x;
        peakY = y;
      }
    }
    Pens.line(g, path, ink(gate), stroke(gate));
    String name = PlainLetters.of(course.gates().get(gate));
    Optional<GateRecord> record = record(course.gates().get(gate));
    boolean froze = record.isPresent() && record.get().froze().isPresent();
    slips.write(
        g,
        froze
            ? sentences.say(
                "chart.gates.froze",
                "gate",
                name,
                "time",
                figures.seconds(record.get().froze().getAsDouble()))
            : name,
        Look.LABEL_SMALL,
        ink(gate),
        peakX,
        peakY,
        0.3,
        -1.0);
    if (froze) {
      double x = Sheet.x(plot, area, record.get().froze().getAsDouble());
      double y = Sheet.y(plot, area, 0.0);
      Pens.line(g, new Line2D.Double(x - 5, y - 5, x + 5, y + 5), ink(gate), Look.METAL);
      Pens.line(g, new Line2D.Double(x - 5, y + 5, x + 5, y - 5), ink(gate), Look.METAL);
    }
  }

  private Optional<GateRecord> record(String name) {
    return plan.result().gates().stream().filter(r -> r.name().equals(name)).findFirst();
  }

  private static Color ink(int gate) {
    return gate % 3 == 0 ? Look.INK : gate % 3 == 1 ? Look.SECOND_INK : Look.FAINT_INK;
  }

  private static Stroke stroke(int gate) {
    return gate == 0 ? Look.METAL : Look.EARLIER[(gate - 1) % Look.EARLIER.length];
  }
}
