package lastinch.ui.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.material.Alloy;
import lastinch.solver.result.Course;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;

/** Along the piece at chosen times: how hot the metal is, and how much of it has frozen. */
final class HeatChart {
  private static final int CURVES = 4;
  private static final double TALL = 520.0;
  private static final double GAP = 14.0;
  private static final double ROOM = 12.0;
  private static final double PERCENT = 100.0;

  private final Sentences sentences;
  private final Figures figures;
  private final PassageRecord limb;
  private final Course course;
  private final List<Integer> moments;
  private final Alloy alloy;

  private HeatChart(PouredPlan plan, Sentences sentences, Figures figures, PassageRecord limb) {
    this.sentences = sentences;
    this.figures = figures;
    this.limb = limb;
    course = plan.result().course();
    alloy = plan.pourCase().metal().alloy();
    moments = moments();
  }

  /** The chart; none when no metal ever stood in the piece. */
  static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
    return ToldLimb.of(plan.result())
        .filter(p -> plan.result().course().knows(p.name()))
        .map(p -> new HeatChart(plan, sentences, figures, p))
        .filter(c -> !c.moments.isEmpty())
        .map(HeatChart::draw);
  }

  /** Moments with metal in the limb, spread evenly, the last one among them. */
  private List<Integer> moments() {
    List<Integer> wet = new ArrayList<>();
    for (int k = 0; k < course.size(); k++) {
      boolean any = false;
      for (int i = 0; i < limb.size(); i++) {
        any |= course.fill(limb.name(), k, i) > 0.0;
      }
      if (any) {
        wet.add(k);
      }
    }
    if (wet.size() <= CURVES) {
      return wet;
    }
    List<Integer> chosen = new ArrayList<>();
    for (int c = 1; c <= CURVES; c++) {
      chosen.add(wet.get((int) Math.rint(c * (wet.size() - 1.0) / CURVES)));
    }
    return chosen;
  }

  private Picture draw() {
    NumberAxis across =
        Sheet.axis(
            sentences.say(
                "chart.axis.limb",
                "limb",
                PlainLetters.of(limb.name()),
                "unit",
                figures.lengthUnit()),
            figures.length(limb.start()),
            figures.length(limb.start() + limb.length()));
    double low = figures.heatValue(alloy.freezing().liquidus());
    double high = low;
    double most = 0.0;
    for (int k : moments) {
      for (int i = 0; i < limb.size(); i++) {
        if (course.fill(limb.name(), k, i) > 0.0) {
          double t = figures.heatValue(course.temperature(limb.name(), k, i));
          low = Math.min(low, t);
          high = Math.max(high, t);
          most = Math.max(most, PERCENT * course.solid(limb.name(), k, i));
        }
      }
    }
    XYPlot heat =
        Sheet.plot(
            null,
            Sheet.axis(
                sentences.say("chart.axis.heat", "unit", figures.heatUnit()),
                low - ROOM,
                high + ROOM));
    double stop = PERCENT * alloy.flowStop().value();
    XYPlot frozen =
        Sheet.plot(
            null,
            Sheet.axis(
                sentences.say("chart.axis.frozen"),
                0.0,
                Math.min(PERCENT, 1.15 * Math.max(most, stop))));
    heat.addAnnotation(new Drawing((g, plot, area) -> heat(g, plot, area)));
    frozen.addAnnotation(new Drawing((g, plot, area) -> frozen(g, plot, area)));
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(across);
    both.setGap(GAP);
    both.add(heat, 3);
    both.add(frozen, 2);
    return new Picture(
        sentences.say("chart.heat.heading"),
        sentences.say("chart.heat.caption"),
        TALL,
        Sheet.body(both));
  }

  private void heat(Graphics2D g, XYPlot plot, Rectangle2D area) {
    curves(g, plot, area, k -> i -> figures.heatValue(course.temperature(limb.name(), k, i)));
    level(
        g,
        plot,
        area,
        figures.heatValue(alloy.freezing().liquidus()),
        sentences.say("chart.scale.starts"));
    key(g, area);
  }

  private void frozen(Graphics2D g, XYPlot plot, Rectangle2D area) {
    curves(g, plot, area, k -> i -> PERCENT * course.solid(limb.name(), k, i));
    level(g, plot, area, PERCENT * alloy.flowStop().value(), sentences.say("chart.scale.frozen"));
  }

  private static void level(
      Graphics2D g, XYPlot plot, Rectangle2D area, double value, String words) {
    double y = Sheet.y(plot, area, value);
    Pens.line(
        g, new Line2D.Double(area.getMinX(), y, area.getMaxX(), y), Look.FAINT_INK, Look.DASHED);
    Pens.words(g, area, words, Look.NAME, Look.FAINT_INK, area.getMinX() + 12.0, y - 11.0);
  }

  /** A figure by cell. */
  @FunctionalInterface
  private interface ByCell {
    double at(int cell);
  }

  /** A figure by moment and cell. */
  @FunctionalInterface
  private interface ByMoment {
    ByCell at(int moment);
  }

  private void curves(Graphics2D g, XYPlot plot, Rectangle2D area, ByMoment figure) {
    for (int c = 0; c < moments.size(); c++) {
      int k = moments.get(c);
      ByCell value = figure.at(k);
      Path2D path = new Path2D.Double();
      boolean open = false;
      for (int i = 0; i < limb.size(); i++) {
        if (course.fill(limb.name(), k, i) <= 0.0) {
          open = false;
          continue;
        }
        double x = Sheet.x(plot, area, figures.length(limb.start() + limb.at(i)));
        double y = Sheet.y(plot, area, value.at(i));
        if (open) {
          path.lineTo(x, y);
        } else {
          path.moveTo(x, y);
        }
        open = true;
      }
      Pens.line(g, path, ink(c), stroke(c));
    }
  }

  /** Which line belongs to which moment, where lines seldom run. */
  private void key(Graphics2D g, Rectangle2D area) {
    double x = area.getMinX() + 12.0;
    double y = area.getMaxY() - 16.0 * moments.size() - 4.0;
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(x - 6.0, y - 6.0, 118.0, 16.0 * moments.size() + 6.0));
    for (int c = 0; c < moments.size(); c++) {
      double middle = y + 16.0 * c + 6.0;
      Pens.line(g, new Line2D.Double(x, middle, x + 44.0, middle), ink(c), stroke(c));
      g.setFont(Look.TICK);
      g.setPaint(Look.INK);
      g.drawString(
          sentences.say("chart.heat.at", "time", figures.seconds(course.time(moments.get(c)))),
          (float) (x + 52.0),
          (float) (middle + 4.0));
    }
  }

  /** Earlier moments are fainter. */
  private Color ink(int c) {
    return c == moments.size() - 1 ? Look.INK : c % 2 == 0 ? Look.FAINT_INK : Look.SECOND_INK;
  }

  private Stroke stroke(int c) {
    return c == moments.size() - 1 ? Look.METAL : Look.EARLIER[c % Look.EARLIER.length];
  }
}
