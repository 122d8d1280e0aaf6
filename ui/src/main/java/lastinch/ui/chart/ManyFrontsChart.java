package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Gate;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Runner;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Stop;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import org.jfree.chart.plot.XYPlot;

/** Several fronts at once: when metal got to each place of boss and limbs, with where it ended. */
final class ManyFrontsChart {
  private static final double ROOM = 1.22;
  private static final double TALL = 500.0;

  /** Neighbouring places reached so much of the pour apart belong to two fronts [-]. */
  private static final double ANOTHER = 0.08;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;
  private final List<PassageRecord> parts = new ArrayList<>();
  private final List<Double> base = new ArrayList<>();
  private final double whole;

  private ManyFrontsChart(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
    double at = 0.0;
    for (PassageRecord p : plan.result().passages()) {
      if (p.role() == PassageRecord.Role.BOSS || p.role() == PassageRecord.Role.PIECE) {
        parts.add(p);
        base.add(at);
        at += p.length();
      }
    }
    whole = at;
  }

  /** Whether more than one way leads through the mould. */
  static boolean suits(PourCase job) {
    return job.gating().gates().size() > 1
        || job.piece().limbs().size() > 1
        || job.gating().runner().filter(r -> r instanceof Runner.Alongside).isPresent();
  }

  static Picture of(PouredPlan plan, Sentences sentences, Figures figures) {
    return new ManyFrontsChart(plan, sentences, figures).draw();
  }

  private Picture draw() {
    double end = Math.max(plan.result().outcome().time(), 0.1);
    XYPlot plot =
        Sheet.plot(
            Sheet.axis(sentences.say("chart.axis.time"), 0.0, end * ROOM),
            Sheet.axis(
                sentences.say("chart.axis.parts", "unit", figures.lengthUnit()),
                0.0,
                figures.length(whole)));
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.addAnnotation(new Drawing(this::fronts));
    return new Picture(
        sentences.say("chart.front.heading"),
        sentences.say("chart.front.caption.many"),
        TALL,
        Sheet.body(plot));
  }

  private void fronts(Graphics2D g, XYPlot plot, Rectangle2D area) {
    Slips slips = new Slips(area);
    for (int k = 0; k < parts.size(); k++) {
      band(g, plot, area, k);
    }
    for (int k = 0; k < parts.size(); k++) {
      curve(g, plot, area, k);
    }
    for (GateRecord gate : plan.result().gates()) {
      gate(g, plot, area, gate, slips);
    }
    for (Meeting m : plan.result().meetings()) {
      mark(
          g,
          new double[] {Sheet.x(plot, area, m.time()), y(plot, area, m.passage(), m.at())},
          sentences.say("chart.meeting." + m.kind().name()),
          slips);
    }
    for (Stop stop : plan.result().stops()) {
      double x = Sheet.x(plot, area, stop.time());
      double y = y(plot, area, stop.passage(), stop.at());
      if (y > 0.0) {
        Pens.lip(g, Body.lip(stop.reason()), x, y, Pens.Way.RIGHT);
        slips.write(
            g,
            sentences.say("chart.broken.stop", "place", figures.ruler(stop.at())),
            Look.LABEL_SMALL,
            Look.INK,
            x + 8.0,
            y,
            1.0,
            0.0);
      }
    }
  }

  private void band(Graphics2D g, XYPlot plot, Rectangle2D area, int k) {
    double bottom = Sheet.y(plot, area, figures.length(base.get(k)));
    double top = Sheet.y(plot, area, figures.length(base.get(k) + parts.get(k).length()));
    if (k % 2 == 0) {
      g.setPaint(Look.BAND);
      g.fill(new Rectangle2D.Double(area.getMinX(), top, area.getWidth(), bottom - top));
    }
    Pens.line(g, new Line2D.Double(area.getMinX(), top, area.getMaxX(), top), Look.RULE, Look.THIN);
    String name = PlainLetters.of(parts.get(k).name());
    g.setFont(Look.NAME);
    g.setPaint(Look.FAINT_INK);
    double wide = Paper.wide(name, Look.NAME);
    g.drawString(name, (float) (area.getMaxX() - wide - 8.0), (float) (0.5 * (top + bottom) + 4.0));
  }

  private void curve(Graphics2D g, XYPlot plot, Rectangle2D area, int k) {
    PassageRecord p = parts.get(k);
    Path2D path = new Path2D.Double();
    boolean open = false;
    double apart = ANOTHER * Math.max(plan.result().outcome().time(), 0.1);
    for (int i = 0; i < p.size(); i++) {
      if (!p.reached(i)) {
        open = false;
        continue;
      }
      open &= i > 0 && Math.abs(p.arrivalTime(i) - p.arrivalTime(i - 1)) < apart;
      double x = Sheet.x(plot, area, p.arrivalTime(i));
      double y = Sheet.y(plot, area, figures.length(base.get(k) + p.at(i)));
      if (open) {
        path.lineTo(x, y);
      } else {
        path.moveTo(x, y);
      }
      open = true;
    }
    Pens.line(g, path, Look.INK, Look.METAL);
  }

  private double y(XYPlot plot, Rectangle2D area, String part, double at) {
    for (int k = 0; k < parts.size(); k++) {
      if (parts.get(k).name().equals(part)) {
        return Sheet.y(plot, area, figures.length(base.get(k) + at));
      }
    }
    return -1.0;
  }

  private void gate(Graphics2D g, XYPlot plot, Rectangle2D area, GateRecord record, Slips slips) {
    for (Gate gate : plan.pourCase().gating().gates()) {
      if (gate.name().equals(record.name()) && record.first().isPresent()) {
        double x = Sheet.x(plot, area, record.first().getAsDouble());
        double y = gateHeight(plot, area, gate, record);
        Pens.line(g, new Line2D.Double(area.getMinX(), y, x, y), Look.FAINT_INK, Look.DASHED);
        slips.write(
            g,
            PlainLetters.of(gate.name()),
            Look.NAME,
            Look.FAINT_INK,
            area.getMinX() + 8.0 + 0.5 * Paper.wide(gate.name(), Look.NAME),
            y,
            0.0,
            -1.0);
      }
    }
  }

  private double gateHeight(XYPlot plot, Rectangle2D area, Gate gate, GateRecord record) {
    double y = gate.place() instanceof Place.At at ? y(plot, area, at.limb(), at.distance()) : -1.0;
    if (y >= 0.0) {
      return y;
    }
    boolean boss = !parts.isEmpty() && parts.get(0).role() == PassageRecord.Role.BOSS;
    double at = boss ? parts.get(0).length() + Math.min(0.0, record.at()) : 0.0;
    return Sheet.y(plot, area, figures.length(Math.max(0.0, at)));
  }

  private static void mark(Graphics2D g, double[] at, String words, Slips slips) {
    if (at[1] < 0.0) {
      return;
    }
    Pens.line(g, new Line2D.Double(at[0], at[1] - 6, at[0], at[1] + 6), Look.INK, Look.METAL);
    Pens.line(g, new Line2D.Double(at[0] - 6, at[1], at[0] + 6, at[1]), Look.INK, Look.METAL);
    slips.write(g, words, Look.LABEL_SMALL, Look.INK, at[0] + 6.0, at[1], 1.0, 0.0);
  }
}
