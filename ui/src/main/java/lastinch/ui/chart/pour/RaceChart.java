package lastinch.ui.chart.pour;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.ui.chart.paper.Drawing;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Messages;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.Sheet;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Along the piece: when metal gets there, and when it would have turned to mush there. */
public final class RaceChart {
  /** A spare longer than so many times the pour is cut off by the frame. */
  private static final double MOST = 2.5;

  private static final double ROOM = 1.15;
  private static final double WORDS_TALL = 20.0;
  private static final double CROSS = 6.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final Race race;
  private final Optional<PassageRecord> limb;
  private final double top;

  /** One stretch of metal on the paper. */
  private record Run(List<Point2D> metal, List<Point2D> freezing) {
    double from() {
      return metal.get(0).getX();
    }

    double to() {
      return metal.get(metal.size() - 1).getX();
    }
  }

  private RaceChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    this.race = Race.of(plan);
    this.limb = ToldLimb.of(plan.result());
    double latest = Math.max(plan.result().outcome().time(), 0.1);
    double highest = latest;
    for (int i = 0; i < race.size(); i++) {
      highest = Math.max(highest, race.freezes(i));
    }
    this.top = Math.min(highest, MOST * latest) * ROOM;
  }

  public static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new RaceChart(plan, sentences, figures).draw();
  }

  private Picture draw() {
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(
                sentences.say(
                    "chart.axis.limb",
                    "limb",
                    PlainLetters.of(limb.map(PassageRecord::name).orElse("piece")),
                    "unit",
                    figures.lengthUnit()),
                0.0,
                figures.length(limb.map(PassageRecord::length).orElse(1.0))),
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, top));
    plot.addAnnotation(new Drawing(this::race));
    return new Picture(
        sentences.say("chart.race.heading"),
        new Messages(plan, sentences, figures).race(race, limb),
        "",
        Sheet.TALL,
        Sheet.body(plot));
  }

  private List<Run> runs(XYPlot plot, Rectangle2D area) {
    List<Run> runs = new ArrayList<>();
    for (int[] ends : race.runs()) {
      Run run = new Run(new ArrayList<>(), new ArrayList<>());
      for (int i = ends[0]; i <= ends[1]; i++) {
        double x = x(plot, area, race.at(i));
        double freezes = Math.min(race.freezes(i), ROOM * top);
        run.metal().add(new Point2D.Double(x, Sheet.y(plot, area, race.arrives(i))));
        run.freezing().add(new Point2D.Double(x, Sheet.y(plot, area, freezes)));
      }
      runs.add(run);
    }
    return runs;
  }

  private double x(XYPlot plot, Rectangle2D area, double onRuler) {
    return Sheet.x(plot, area, figures.length(onRuler));
  }

  private void race(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Labels labels = new Labels(area);
    g.clip(area);
    List<Run> runs = runs(plot, area);
    double dry = area.getMinX();
    for (Run run : runs) {
      empty(g, area, dry, run.from(), labels);
      dry = run.to();
    }
    empty(g, area, dry, area.getMaxX(), labels);
    for (Run run : runs) {
      Shape gap = between(run);
      Path2D freezing = Labels.path(run.freezing());
      Path2D metal = Labels.path(run.metal());
      Pens.hatch(g, gap, Look.SECOND_INK);
      Pens.line(g, freezing, Look.SECOND_INK, Look.FREEZING);
      Pens.line(g, metal, Look.INK, Look.METAL);
      labels.keepOffLine(freezing);
      labels.keepOffLine(metal);
    }
    spare(g, area, runs, labels);
    runs.forEach(run -> labels.keepOff(between(run)));
    ends(g, plot, area, labels);
    names(g, area, runs, labels);
  }

  /** Where no metal came. */
  private void empty(Graphics2D g, Rectangle2D area, double from, double to, Labels labels) {
    String words = sentences.say("chart.race.empty");
    double wide = Paper.wide(words, Look.NAME);
    if (plan.result().outcome() instanceof Outcome.Filled || to - from < 3.0) {
      return;
    }
    g.setPaint(Look.BAND);
    g.fill(new Rectangle2D.Double(from, area.getMinY(), to - from, area.getHeight()));
    double middle = 0.5 * (from + to);
    if (to - from > wide + WORDS_TALL) {
      labels.write(g, words, Look.NAME, Look.FAINT_INK, middle, area.getMinY() + 2.0, 0.0, 1.0);
    }
  }

  private static Shape between(Run run) {
    List<Point2D> back = new ArrayList<>();
    for (int i = 0; i < run.metal().size(); i++) {
      double y = Math.min(run.metal().get(i).getY(), run.freezing().get(i).getY());
      back.add(new Point2D.Double(run.metal().get(i).getX(), y));
    }
    Collections.reverse(back);
    List<Point2D> all = new ArrayList<>(run.metal());
    all.addAll(back);
    Path2D region = Labels.path(all);
    region.closePath();
    return region;
  }

  /** Names the time to spare where the gap is wide enough for the words. */
  private void spare(Graphics2D g, Rectangle2D area, List<Run> runs, Labels labels) {
    String words = sentences.say("chart.race.spare");
    double half = 0.5 * Paper.wide(words, Look.NAME) + 6.0;
    double best = WORDS_TALL;
    Point2D at = null;
    for (Run run : runs) {
      for (Point2D p : run.metal()) {
        double low = Double.POSITIVE_INFINITY;
        double high = area.getMinY();
        for (int i = 0; i < run.metal().size(); i++) {
          if (Math.abs(run.metal().get(i).getX() - p.getX()) <= half) {
            low = Math.min(low, run.metal().get(i).getY());
            high = Math.max(high, run.freezing().get(i).getY());
          }
        }
        boolean holds = p.getX() - half >= run.from() && p.getX() + half <= run.to();
        if (holds && low - high > best) {
          best = low - high;
          at = new Point2D.Double(p.getX(), 0.5 * (low + high));
        }
      }
    }
    if (at != null) {
      labels.inside(g, words, Look.NAME, Look.INK, at.getX(), at.getY());
    }
  }

  private void names(Graphics2D g, Rectangle2D area, List<Run> runs, Labels labels) {
    Optional<Run> longest =
        runs.stream().max((a, b) -> Double.compare(a.to() - a.from(), b.to() - b.from()));
    if (longest.isEmpty()) {
      return;
    }
    labels.along(
        g,
        sentences.say("chart.race.arrives"),
        Look.LABEL,
        Look.INK,
        longest.get().metal(),
        0.35,
        -1.0);
    List<Point2D> seen = new ArrayList<>(longest.get().freezing());
    seen.removeIf(p -> p.getY() < area.getMinY() + WORDS_TALL);
    if (!seen.isEmpty()) {
      labels.along(
          g, sentences.say("chart.race.freezes"), Look.LABEL, Look.SECOND_INK, seen, 0.35, 1.0);
    }
  }

  /** Marks where metal stopped, where it did not join, or where it filled last. */
  private void ends(Graphics2D g, XYPlot plot, Rectangle2D area, Labels labels) {
    // A mark right at the tip stands half outside the frame.
    Shape frame = g.getClip();
    g.setClip(null);
    for (Race.End end : race.ends()) {
      double x = x(plot, area, end.at());
      double y = Sheet.y(plot, area, end.stop().time());
      Pens.lip(g, Body.lip(end.stop().reason()), x, y, end.up() ? Pens.Way.RIGHT : Pens.Way.LEFT);
      labels.keepOff(new Rectangle2D.Double(x - 10.0, y - 10.0, 20.0, 20.0));
      String words = sentences.say("chart.broken.stop", "place", figures.ruler(end.stop().at()));
      label(g, labels, words, x, y, end.up() ? 1.0 : -1.0);
    }
    double start = limb.map(PassageRecord::start).orElse(0.0);
    for (Meeting m : race.meetings()) {
      double x = x(plot, area, start + m.at());
      double y = Sheet.y(plot, area, m.time());
      Pens.cross(g, x, y, CROSS, Look.INK);
      labels.keepOff(new Rectangle2D.Double(x - CROSS, y - CROSS, 2 * CROSS, 2 * CROSS));
      label(g, labels, sentences.say("chart.meeting." + m.kind().name()), x, y, 1.0);
    }
    boolean shut = race.meetings().stream().anyMatch(m -> m.kind() == Meeting.Kind.COLD_SHUT);
    if (plan.result().outcome() instanceof Outcome.Filled && race.size() > 0 && !shut) {
      int last = 0;
      for (int i = 1; i < race.size(); i++) {
        last = race.arrives(i) >= race.arrives(last) ? i : last;
      }
      double x = x(plot, area, race.at(last));
      double y = Sheet.y(plot, area, race.arrives(last));
      Pens.lip(g, Pens.Lip.FULL, x, y, Pens.Way.RIGHT);
      labels.keepOff(new Rectangle2D.Double(x - CROSS, y - CROSS, 2 * CROSS, 2 * CROSS));
      String words = sentences.say("ending.filled", "time", figures.seconds(race.arrives(last)));
      label(g, labels, words, x, y, x > area.getCenterX() ? -1.0 : 1.0);
    }
    g.setClip(frame);
  }

  private static void label(
      Graphics2D g, Labels labels, String words, double x, double y, double side) {
    labels.write(
        g,
        words,
        Look.LABEL,
        Look.INK,
        List.of(new Labels.Anchor(x, y + 8.0, side, 0.6), new Labels.Anchor(x, y, side, 0.0)));
  }
}
