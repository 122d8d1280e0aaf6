package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.result.GateRecord;
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

/** Several fronts at once: when metal got to each place of boss and limbs, with where it ended. */
public final class ManyFrontsChart {
  private static final double ROOM = 1.22;
  private static final double TALL = 460.0;
  private static final double CROSS = 6.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final List<PassageRecord> parts;
  private final WayAxis axis;

  private ManyFrontsChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.parts = Fronts.parts(plan.result());
    boolean one = plan.pourCase().piece().limbs().size() == 1;
    axis =
        new WayAxis(
            sentences.say(
                one ? "chart.axis.piece" : "chart.axis.parts", "unit", figures.lengthUnit()),
            Fronts.axisParts(plan.result()),
            figures);
  }

  /** Whether more than one way leads through the mould. */
  public static boolean suits(PourCase job) {
    return job.gating().gates().size() > 1
        || job.piece().limbs().size() > 1
        || job.gating().runner().filter(r -> r instanceof Runner.Alongside).isPresent();
  }

  public static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new ManyFrontsChart(plan, sentences, figures).draw();
  }

  private Picture draw() {
    double end = Math.max(plan.result().outcome().time(), 0.1);
    XYPlot plot = Sheet.plot(axis, Sheet.axis(sentences.say("chart.axis.time"), 0.0, end * ROOM));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.addAnnotation(new Drawing(this::fronts));
    return new Picture(
        sentences.say("chart.front.heading"),
        new Messages(plan, sentences, figures).fronts(),
        "",
        TALL,
        Sheet.body(plot));
  }

  private void fronts(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Labels labels = new Labels(area);
    List<Path2D> paths = new ArrayList<>();
    List<Race> races = new ArrayList<>();
    for (PassageRecord part : parts) {
      Race race = Race.of(plan.result(), part);
      races.add(race);
      for (List<Point2D> line : Fronts.lines(race, part, plot, area)) {
        paths.add(Labels.path(line));
      }
    }
    paths.forEach(labels::keepOffLine);
    List<Shape> gates = new ArrayList<>();
    plan.result().gates().forEach(r -> gates.add(gate(plot, area, r)));
    gates.forEach(labels::keepOffLine);
    axis.bands(g, plot, area, labels);
    gates.forEach(line -> Pens.line(g, line, Look.FAINT_INK, Look.DASHED));
    paths.forEach(path -> Pens.line(g, path, Look.INK, Look.METAL));
    for (int k = 0; k < parts.size(); k++) {
      marks(g, plot, area, races.get(k), parts.get(k), labels);
    }
    for (int k = 0; k < gates.size(); k++) {
      Rectangle2D line = gates.get(k).getBounds2D();
      String name = PlainLetters.of(plan.result().gates().get(k).name());
      labels.write(
          g, name, Look.NAME, Look.FAINT_INK, line.getX(), area.getMaxY() - 14.0, 1.0, 0.0);
    }
  }

  private void marks(
      Graphics2D g, XYPlot plot, Rectangle2D area, Race race, PassageRecord part, Labels labels) {
    for (Race.End end : race.ends()) {
      Point2D p = Fronts.point(part, end.at(), end.stop().time(), plot, area);
      Pens.Way way = end.up() ? Pens.Way.RIGHT : Pens.Way.LEFT;
      Pens.lip(g, Body.lip(end.stop().reason()), p.getX(), p.getY(), way);
      mark(
          g,
          p,
          sentences.say("chart.broken.stop", "place", figures.ruler(end.stop().at())),
          end.up() ? 1.0 : -1.0,
          labels);
    }
    for (Meeting m : race.meetings()) {
      Point2D p = Fronts.point(part, part.start() + m.at(), m.time(), plot, area);
      Pens.cross(g, p.getX(), p.getY(), CROSS, Look.INK);
      mark(g, p, sentences.say("chart.meeting." + m.kind().name()), 1.0, labels);
    }
  }

  private static void mark(Graphics2D g, Point2D p, String words, double side, Labels labels) {
    double x = p.getX();
    double y = p.getY();
    labels.keepOff(new Rectangle2D.Double(x - CROSS, y - CROSS, 2 * CROSS, 2 * CROSS));
    labels.write(
        g,
        words,
        Look.LABEL_SMALL,
        Look.INK,
        List.of(
            new Labels.Anchor(x, y, side, 0.0),
            new Labels.Anchor(x, y, -side, 0.0),
            new Labels.Anchor(x, y, 0.0, -1.0)));
  }

  /** From the bottom to when metal first came in through a gate. */
  private Shape gate(XYPlot plot, Rectangle2D area, GateRecord record) {
    double x = Sheet.x(plot, area, onAxis(record));
    double first = record.first().orElse(0.0);
    return new Line2D.Double(x, area.getMaxY(), x, Sheet.y(plot, area, first));
  }

  private double onAxis(GateRecord record) {
    for (Gate gate : plan.pourCase().gating().gates()) {
      if (gate.name().equals(record.name()) && gate.place() instanceof Place.At at) {
        double base = axis.base(at.limb());
        if (base >= 0.0) {
          return base + at.distance();
        }
      }
    }
    boolean boss = !parts.isEmpty() && parts.get(0).role() == PassageRecord.Role.BOSS;
    double at = boss ? parts.get(0).length() + Math.min(0.0, record.at()) : 0.0;
    return Math.max(0.0, at);
  }
}
