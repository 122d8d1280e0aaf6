package lastinch.ui.chart.study;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.chart.paper.Drawing;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.chart.pour.Body;
import lastinch.ui.chart.pour.Fronts;
import lastinch.ui.chart.pour.Race;
import lastinch.ui.chart.pour.WayAxis;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.Compared;
import org.jfree.chart.plot.XYPlot;

/** When metal got to each place of the piece, one line for each of several plans. */
public final class ComparedFronts {
  private static final double ROOM = 1.15;
  private static final double TALL = 460.0;
  private static final double CROSS = 6.0;
  private static final float[][] DASHES = {{}, {9f, 5f}, {2f, 4f}, {12f, 4f, 2f, 4f}};

  private final Compared compared;
  private final Sentences sentences;
  private final Figures figures;
  private final WayAxis axis;

  /** A part of one plan's piece on the paper. */
  private record Drawn(int plan, PassageRecord part, Race race, List<List<Point2D>> lines) {}

  private ComparedFronts(Compared compared, Sentences sentences, Figures figures) {
    this.compared = compared;
    this.sentences = sentences;
    this.figures = figures;
    Map<String, WayAxis.Part> parts = new LinkedHashMap<>();
    for (Compared.Poured p : compared.plans()) {
      for (WayAxis.Part part : Fronts.axisParts(p.result())) {
        parts.merge(part.name(), part, (a, b) -> a.length() >= b.length() ? a : b);
      }
    }
    axis =
        new WayAxis(
            sentences.say("compare.chart.axis", "unit", figures.lengthUnit()),
            List.copyOf(parts.values()),
            figures);
  }

  public static Picture of(Compared compared, Sentences sentences, Figures figures) {
    return new ComparedFronts(compared, sentences, figures).draw();
  }

  private Picture draw() {
    double time = 0.1;
    for (Compared.Poured p : compared.plans()) {
      for (PassageRecord part : Fronts.parts(p.result())) {
        Race race = Race.of(p.result(), part);
        for (int i = 0; i < race.size(); i++) {
          time = Math.max(time, race.arrives(i));
        }
      }
    }
    XYPlot plot = Sheet.plot(axis, Sheet.axis(sentences.say("chart.axis.time"), 0.0, time * ROOM));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.addAnnotation(new Drawing(this::fronts));
    return new Picture(
        sentences.say("compare.chart.heading"),
        ComparedWords.message(compared, sentences),
        "",
        TALL,
        Sheet.body(plot));
  }

  private void fronts(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Labels labels = new Labels(area);
    List<Drawn> all = new ArrayList<>();
    for (int n = 0; n < compared.plans().size(); n++) {
      for (PassageRecord part : Fronts.parts(compared.plans().get(n).result())) {
        Race race = Race.of(compared.plans().get(n).result(), part);
        all.add(new Drawn(n, part, race, Fronts.lines(race, part, plot, area)));
      }
    }
    all.forEach(d -> d.lines().forEach(l -> labels.keepOffLine(Labels.path(l))));
    axis.bands(g, plot, area, labels);
    for (Drawn d : all) {
      for (List<Point2D> line : d.lines()) {
        Path2D path = Labels.path(line);
        Pens.line(g, path, ink(d.plan()), stroke(d.plan()));
      }
      marks(g, plot, area, d, labels);
    }
    for (int n = 0; n < compared.plans().size(); n++) {
      name(g, n, all, labels);
    }
  }

  private void marks(Graphics2D g, XYPlot plot, Rectangle2D area, Drawn d, Labels labels) {
    for (Race.End end : d.race().ends()) {
      Point2D p = Fronts.point(d.part(), end.at(), end.stop().time(), plot, area);
      Pens.Way way = end.up() ? Pens.Way.RIGHT : Pens.Way.LEFT;
      Pens.lip(g, Body.lip(end.stop().reason()), p.getX(), p.getY(), way);
      String words = sentences.say("chart.broken.stop", "place", figures.ruler(end.stop().at()));
      label(g, p, words, labels);
    }
    for (Meeting m : d.race().meetings()) {
      Point2D p = Fronts.point(d.part(), d.part().start() + m.at(), m.time(), plot, area);
      Pens.cross(g, p.getX(), p.getY(), CROSS, Look.INK);
      label(g, p, sentences.say("chart.meeting." + m.kind().name()), labels);
    }
  }

  private static void label(Graphics2D g, Point2D p, String words, Labels labels) {
    labels.keepOff(
        new Rectangle2D.Double(p.getX() - CROSS, p.getY() - CROSS, 2 * CROSS, 2 * CROSS));
    labels.write(g, words, Look.LABEL_SMALL, Look.INK, p.getX() + CROSS, p.getY(), 1.0, 0.0);
  }

  /** Names a plan on the longest of its lines. */
  private void name(Graphics2D g, int n, List<Drawn> all, Labels labels) {
    List<Point2D> longest = List.of();
    for (Drawn d : all) {
      for (List<Point2D> line : d.plan() == n ? d.lines() : List.<List<Point2D>>of()) {
        longest = wide(line) > wide(longest) ? line : longest;
      }
    }
    Compared.Poured p = compared.plans().get(n);
    String whole = PlainLetters.of(p.letter() + "  " + p.plan().title());
    if (!labels.along(g, whole, Look.LABEL_SMALL, ink(n), longest, 0.5, 1.0)) {
      labels.along(g, p.letter(), Look.LABEL_SMALL, ink(n), longest, 0.5, 1.0);
    }
  }

  private static double wide(List<Point2D> line) {
    return line.isEmpty() ? 0.0 : line.get(line.size() - 1).getX() - line.get(0).getX();
  }

  private static Color ink(int number) {
    return number % 2 == 0 ? Look.INK : Look.SECOND_INK;
  }

  private static Stroke stroke(int number) {
    float[] dash = DASHES[number % DASHES.length];
    return dash.length == 0
        ? Look.METAL
        : new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, dash, 0f);
  }
}
