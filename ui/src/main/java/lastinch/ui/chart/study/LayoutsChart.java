package lastinch.ui.chart.study;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.search.GatePlacement;
import lastinch.ui.chart.paper.Frame;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.paper.View;
import lastinch.ui.chart.pour.DrawnBar;
import lastinch.ui.chart.pour.MouldLayout;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.GatesText;

/** The best layout of gates and the others of each number, drawn on the piece to one scale. */
public final class LayoutsChart {
  private static final double WORDS = 20.0;
  private static final double BETWEEN = 14.0;
  private static final double RULER = 26.0;
  private static final double SIDE = 10.0;

  /** A ruler shows no less [m]. */
  private static final double RULER_SHOWS = 1e-3;

  private final List<GatePlacement.Answer> shown;
  private final Sentences sentences;
  private final Figures figures;
  private final GatesText text;
  private final AffineTransform turn = Frame.turned(1.0, 0.0, 0.0, 1.0);
  private final List<MouldLayout> layouts = new ArrayList<>();
  private final List<Rectangle2D> boxes = new ArrayList<>();
  private final double scale;

  private LayoutsChart(GatePlacement gates, Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
    this.text = new GatesText(sentences, figures);
    this.shown = GatesText.shown(gates);
    double wide = 0.0;
    for (GatePlacement.Answer a : shown) {
      MouldLayout layout = MouldLayout.of(a.job());
      Rectangle2D box = null;
      for (DrawnBar bar : drawn(layout, a)) {
        Rectangle2D b =
            turn.createTransformedShape(bar.outline(View.FACE, 0.0, bar.length())).getBounds2D();
        box = box == null ? b : box.createUnion(b);
      }
      layouts.add(layout);
      boxes.add(box == null ? new Rectangle2D.Double(0.0, 0.0, 1.0, 1.0) : box);
      wide = Math.max(wide, boxes.get(boxes.size() - 1).getWidth());
    }
    scale = (Paper.INNER - 2 * SIDE) / wide;
  }

  public static Picture of(GatePlacement gates, Sentences sentences, Figures figures) {
    LayoutsChart chart = new LayoutsChart(gates, sentences, figures);
    double tall = RULER;
    for (Rectangle2D box : chart.boxes) {
      tall += WORDS + chart.scale * box.getHeight() + BETWEEN;
    }
    return new Picture(
        sentences.say("chart.layouts.heading"),
        text(gates, sentences, figures),
        sentences.say("chart.layouts.caption"),
        tall,
        chart::draw);
  }

  private static String text(GatePlacement gates, Sentences sentences, Figures figures) {
    return PlainLetters.of(new GatesText(sentences, figures).verdict(gates));
  }

  /** Piece and gates. */
  private static List<DrawnBar> drawn(MouldLayout layout, GatePlacement.Answer a) {
    List<DrawnBar> all = new ArrayList<>(layout.piece().values());
    for (DrawnBar bar : layout.gating().values()) {
      if (isGate(a, bar)) {
        all.add(bar);
      }
    }
    return all;
  }

  private static boolean isGate(GatePlacement.Answer a, DrawnBar bar) {
    return a.job().gating().gates().stream().map(Gate::name).anyMatch(bar.name()::equals);
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    double y = area.getY();
    double right = 0.0;
    for (int i = 0; i < shown.size(); i++) {
      GatePlacement.Answer a = shown.get(i);
      g.setFont(i == 0 ? Look.LABEL : Look.AXIS);
      g.setPaint(Look.INK);
      g.drawString(
          PlainLetters.of(i == 0 ? text.cut(a) : text.other(a)),
          (float) area.getX(),
          (float) (y + 14.0));
      double tall = scale * boxes.get(i).getHeight();
      // all pieces with their tips under each other
      double left = area.getMaxX() - SIDE - scale * boxes.get(i).getWidth();
      Rectangle2D part =
          new Rectangle2D.Double(left, y + WORDS, scale * boxes.get(i).getWidth(), tall);
      Frame frame = Frame.fit(turn, boxes.get(i), part, scale);
      layout(g, frame, a, layouts.get(i), i == 0);
      right = Math.max(right, part.getMaxX());
      y += WORDS + tall + BETWEEN;
    }
    ruler(g, right, y + 4.0);
  }

  private static void layout(
      Graphics2D g, Frame frame, GatePlacement.Answer a, MouldLayout layout, boolean best) {
    for (DrawnBar bar : drawn(layout, a)) {
      Shape shape = frame.place(bar.outline(View.FACE, 0.0, bar.length()));
      if (isGate(a, bar) || a.glance().filled()) {
        g.setPaint(isGate(a, bar) ? Look.INK : best ? Look.RULE : Look.FROZEN);
        g.fill(shape);
        Pens.line(g, shape, Look.INK, Look.OUTLINE);
      } else {
        Pens.line(g, shape, Look.FAINT_INK, Look.DASHED);
        metal(g, frame, a, bar, layout);
      }
    }
  }

  /** Metal up to where it stops, where what is missing is the end of the piece. */
  private static void metal(
      Graphics2D g, Frame frame, GatePlacement.Answer a, DrawnBar bar, MouldLayout layout) {
    double length = a.job().piece().limbs().get(0).length();
    double off = Math.abs(a.glance().reach() + a.glance().missing() - length);
    boolean boss = bar == layout.piece().get("boss");
    if (a.job().piece().limbs().size() > 1 || off > RULER_SHOWS) {
      return;
    }
    double to = boss ? bar.length() : Math.min(bar.length(), a.glance().reach());
    if (to <= 0.0) {
      return;
    }
    Shape shape = frame.place(bar.outline(View.FACE, 0.0, to));
    g.setPaint(Look.FROZEN);
    g.fill(shape);
    Pens.line(g, shape, Look.INK, Look.OUTLINE);
  }

  private void ruler(Graphics2D g, double right, double y) {
    double metres = figures.lengthUnit().equals("mm") ? 0.05 : 0.0508;
    double left = right - scale * metres;
    Pens.line(g, new Line2D.Double(left, y, right, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(left, y - 4, left, y + 4), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(right, y - 4, right, y + 4), Look.INK, Look.OUTLINE);
    String words = figures.ruler(metres);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    g.drawString(words, (float) (left - Paper.wide(words, Look.TICK) - 8.0), (float) (y + 4.0));
    String thick = sentences.say("chart.layouts.thick");
    g.setFont(Look.NAME);
    g.setPaint(Look.FAINT_INK);
    g.drawString(thick, 24.0f, (float) (y + 4.0));
  }
}
