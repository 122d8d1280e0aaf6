package lastinch.ui.chart.pour;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.material.Alloy;
import lastinch.solver.result.FillHistory;
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
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;

/** Along the piece at chosen times: how hot the metal is, and how much of it has frozen. */
public final class HeatChart {
  private static final int CURVES = 4;
  private static final double TALL = 520.0;
  private static final double GAP = 14.0;
  private static final double ROOM = 12.0;
  private static final double PERCENT = 100.0;

  private final Sentences sentences;
  private final Figures figures;
  private final PassageRecord limb;
  private final FillHistory course;
  private final List<Integer> moments;
  private final Alloy alloy;
  private final String message;

  private HeatChart(PouredPlan plan, Sentences sentences, Figures figures, PassageRecord limb) {
    this.sentences = sentences;
    this.figures = figures;
    this.limb = limb;
    course = plan.result().course();
    alloy = plan.pourCase().metal().alloy();
    moments = moments();
    message =
        moments.isEmpty()
            ? ""
            : new Messages(plan, sentences, figures)
                .heat(limb, course, moments.get(moments.size() - 1));
  }

  /** The chart; none when no metal ever stood in the piece. */
  public static Optional<Picture> of(PouredPlan plan, Sentences sentences, Figures figures) {
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
        message,
        sentences.say("chart.heat.caption"),
        TALL,
        Sheet.body(both));
  }

  private void heat(Graphics2D g, XYPlot plot, Rectangle2D area) {
    curves(
        g,
        plot,
        area,
        k -> i -> figures.heatValue(course.temperature(limb.name(), k, i)),
        figures.heatValue(alloy.freezing().liquidus()),
        sentences.say("chart.scale.starts"));
  }

  private void frozen(Graphics2D g, XYPlot plot, Rectangle2D area) {
    curves(
        g,
        plot,
        area,
        k -> i -> PERCENT * course.solid(limb.name(), k, i),
        PERCENT * alloy.flowStop().value(),
        sentences.say("chart.scale.frozen"));
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

  /** A line for each moment with its time on it, over a level with its meaning. */
  private void curves(
      Graphics2D g, XYPlot plot, Rectangle2D area, ByMoment figure, double level, String meaning) {
    Labels labels = new Labels(area);
    List<List<List<Point2D>>> all = new ArrayList<>();
    for (int k : moments) {
      all.add(lines(plot, area, k, figure.at(k)));
    }
    double y = Sheet.y(plot, area, level);
    List<Point2D> across = new ArrayList<>();
    for (double x = area.getMinX(); x <= area.getMaxX(); x += 10.0) {
      across.add(new Point2D.Double(x, y));
    }
    Pens.line(g, Labels.path(across), Look.FAINT_INK, Look.DASHED);
    labels.keepOffLine(Labels.path(across));
    for (int c = 0; c < all.size(); c++) {
      for (List<Point2D> line : all.get(c)) {
        Pens.line(g, Labels.path(line), ink(c), stroke(c));
        labels.keepOffLine(Labels.path(line));
      }
    }
    labels.along(g, meaning, Look.NAME, Look.FAINT_INK, across, 0.85, 1.0);
    for (int c = all.size() - 1; c >= 0; c--) {
      String words =
          sentences.say("chart.heat.at", "time", figures.seconds(course.time(moments.get(c))));
      Font font = c == all.size() - 1 ? Look.LABEL_SMALL : Look.TICK;
      labels.write(g, words, font, ink(c), ends(all.get(c)));
    }
  }

  /** Ends of lines, where the leading metal stood, and then the rest of them. */
  private static List<Labels.Anchor> ends(List<List<Point2D>> lines) {
    List<Labels.Anchor> anchors = new ArrayList<>();
    for (List<Point2D> line : lines) {
      Point2D end = line.get(line.size() - 1);
      anchors.add(new Labels.Anchor(end.getX(), end.getY(), 1.0, 0.0));
    }
    for (List<Point2D> line : lines) {
      for (Point2D p : line) {
        anchors.add(new Labels.Anchor(p.getX(), p.getY(), 0.0, -1.0));
        anchors.add(new Labels.Anchor(p.getX(), p.getY(), 0.0, 1.0));
      }
    }
    return anchors;
  }

  private List<List<Point2D>> lines(XYPlot plot, Rectangle2D area, int moment, ByCell value) {
    List<List<Point2D>> lines = new ArrayList<>();
    boolean open = false;
    for (int i = 0; i < limb.size(); i++) {
      boolean wet = course.fill(limb.name(), moment, i) > 0.0;
      if (wet && !open) {
        lines.add(new ArrayList<>());
      }
      if (wet) {
        double x = Sheet.x(plot, area, figures.length(limb.start() + limb.at(i)));
        lines.get(lines.size() - 1).add(new Point2D.Double(x, Sheet.y(plot, area, value.at(i))));
      }
      open = wet;
    }
    return lines;
  }

  /** Earlier moments are fainter. */
  private Color ink(int c) {
    return c == moments.size() - 1 ? Look.INK : c % 2 == 0 ? Look.FAINT_INK : Look.SECOND_INK;
  }

  private Stroke stroke(int c) {
    return c == moments.size() - 1 ? Look.METAL : Look.EARLIER.get(c % Look.EARLIER.size());
  }
}
