package lastinch.ui.chart.model;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.IntToDoubleFunction;
import lastinch.cases.mesh.ModelLook;
import lastinch.solver.casting.Centreline;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.geometry.solid.ShapeReport;
import lastinch.solver.geometry.solid.UndercutAnalysis;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;

/** Maps of a model seen from the cope, in steps of ink, places printed along the edges. */
public final class GapPicture {
  private static final double LEFT = 62.0;
  private static final double RIGHT = 12.0;
  private static final double HEAD = 8.0;
  private static final double FOOT = 84.0;
  private static final double HATCH_KEY = 26.0;
  private static final double MOST_TALL = 520.0;
  private static final double LEAST_TALL = 90.0;
  private static final double TICK = 5.0;
  private static final int STEPS = 6;
  private static final int MARKS = 8;
  private static final Color FAINT = new Color(0xF1, 0xE3, 0xC4);
  private static final Color DARK = new Color(0x2C, 0x1D, 0x14);

  private final GapMap map;
  private final IntToDoubleFunction value;
  private final Figures figures;
  private final Sentences sentences;
  private final double step;
  private final double lowX;
  private final double highX;
  private final double lowY;
  private final double highY;
  private final double scale;
  private double foot = FOOT;

  private GapPicture(
      ModelLook look, IntToDoubleFunction value, Sentences sentences, Figures figures) {
    map = look.survey().map();
    this.value = value;
    this.sentences = sentences;
    this.figures = figures;
    double most = 0.0;
    for (int c = 0; c < map.grid().size(); c++) {
      most = Math.max(most, map.isOpen(c) ? value.applyAsDouble(c) : 0.0);
    }
    step = round(figures.length(most) / STEPS);
    GapGrid grid = map.grid();
    lowX = grid.x0();
    lowY = grid.y0();
    highX = lowX + grid.nx() * grid.cell();
    highY = lowY + grid.ny() * grid.cell();
    scale = Math.min((Paper.INNER - LEFT - RIGHT) / (highX - lowX), MOST_TALL / (highY - lowY));
  }

  /** How thick the piece is. */
  public static Picture gap(ModelLook look, Sentences sentences, Figures figures) {
    GapMap map = look.survey().map();
    GapPicture picture = new GapPicture(look, map::gap, sentences, figures);
    LockHatch hatch = new LockHatch(map.grid(), look.locking(), sentences);
    picture.foot = hatch.marks().isEmpty() ? FOOT : FOOT + HATCH_KEY;
    boolean line = !look.drawn().model().lines().isEmpty();
    StringBuilder caption = new StringBuilder();
    caption.append(
        sentences.say(
            line ? "chart.gap.caption" : "chart.gap.caption.wide", "unit", figures.lengthUnit()));
    for (UndercutAnalysis.Mark mark : hatch.marks()) {
      caption.append(' ').append(sentences.say("chart.gap.caption." + mark.name()));
    }
    return new Picture(
        sentences.say("chart.gap.heading"),
        caption.toString(),
        picture.tall(),
        (g, area) -> {
          picture.draw(g, area);
          hatch.draw(g, x -> picture.x(area, x), y -> picture.y(area, y));
          hatch.key(g, area.getX() + LEFT, area.getMaxY() + 12.0 - HATCH_KEY);
          look.drawn().model().lines().forEach(l -> picture.line(g, area, l));
          picture.ring(g, area, look.survey().thinnest());
          picture.dot(g, area, look.survey().thickest());
        });
  }

  /** Where it freezes last. */
  public static Picture last(ModelLook look, Sentences sentences, Figures figures) {
    GapMap map = look.survey().map();
    IntToDoubleFunction modulus =
        c -> map.wall(c) > 0.0 && map.open(c) > 0.5 ? map.volume(c) / map.wall(c) : 0.0;
    GapPicture picture = new GapPicture(look, modulus, sentences, figures);
    return new Picture(
        sentences.say("chart.last.heading"),
        sentences.say("chart.last.caption", "unit", figures.lengthUnit()),
        picture.tall(),
        (g, area) -> {
          picture.draw(g, area);
          picture.dot(g, area, look.survey().heaviest());
        });
  }

  private double tall() {
    return HEAD + Math.max(LEAST_TALL, scale * (highY - lowY)) + foot;
  }

  /** The next 1, 2 or 5 of any power of ten. */
  private static double round(double value) {
    double power = Math.pow(10.0, Math.floor(Math.log10(value)));
    double lead = value / power;
    return (lead <= 1.0 ? 1.0 : lead <= 2.0 ? 2.0 : lead <= 5.0 ? 5.0 : 10.0) * power;
  }

  private double x(Rectangle2D area, double metres) {
    return area.getX() + LEFT + scale * (metres - lowX);
  }

  private double y(Rectangle2D area, double metres) {
    double middle = area.getY() + HEAD + 0.5 * (area.getHeight() - HEAD - foot);
    return middle - scale * (metres - 0.5 * (lowY + highY));
  }

  private void draw(Graphics2D g, Rectangle2D area) {
    squares(g, area);
    acrossTheFoot(g, area);
    upTheSide(g, area);
    key(g, area);
  }

  private int level(int cell) {
    return map.isOpen(cell)
        ? (int) Math.floor(figures.length(value.applyAsDouble(cell)) / step + 1e-9)
        : -1;
  }

  private static Color ink(int level) {
    double share = Math.min(1.0, level / (STEPS - 0.5));
    return new Color(
        (int) (FAINT.getRed() + share * (DARK.getRed() - FAINT.getRed())),
        (int) (FAINT.getGreen() + share * (DARK.getGreen() - FAINT.getGreen())),
        (int) (FAINT.getBlue() + share * (DARK.getBlue() - FAINT.getBlue())));
  }

  /** Runs of squares of one step, row by row; with hard edges, so that no seam shows. */
  private void squares(Graphics2D g, Rectangle2D area) {
    GapGrid grid = map.grid();
    double size = scale * grid.cell();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    for (int j = 0; j < grid.ny(); j++) {
      int start = 0;
      for (int i = 1; i <= grid.nx(); i++) {
        int level = level(grid.index(start, j));
        if (i == grid.nx() || level(grid.index(i, j)) != level) {
          if (level >= 0) {
            g.setPaint(ink(level));
            g.fill(
                new Rectangle2D.Double(
                    x(area, grid.x0() + start * grid.cell()),
                    y(area, grid.y0() + (j + 1) * grid.cell()),
                    (i - start) * size,
                    size));
          }
          start = i;
        }
      }
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
  }

  private double mark() {
    return round(figures.length(Math.max(highX - lowX, highY - lowY)) / MARKS);
  }

  private double metres(double shown) {
    return shown / figures.length(1.0);
  }

  private void acrossTheFoot(Graphics2D g, Rectangle2D area) {
    double foot = y(area, lowY) + 4.0;
    Pens.line(g, new Line2D.Double(x(area, lowX), foot, x(area, highX), foot), Look.INK, Look.THIN);
    double every = mark();
    for (double v = Math.ceil(figures.length(lowX) / every) * every;
        v <= figures.length(highX);
        v += every) {
      double at = x(area, metres(v));
      Pens.line(g, new Line2D.Double(at, foot, at, foot + TICK), Look.INK, Look.THIN);
      centred(g, figures.trimmed(v, 2), at, foot + 18.0);
    }
    g.setFont(Look.AXIS);
    g.setPaint(Look.INK);
    String words = sentences.say("chart.map.along", "unit", figures.lengthUnit());
    double wide = Paper.wide(words, Look.AXIS);
    g.drawString(
        words, (float) (0.5 * (x(area, lowX) + x(area, highX) - wide)), (float) (foot + 36.0));
  }

  private void upTheSide(Graphics2D g, Rectangle2D area) {
    double side = x(area, lowX) - 4.0;
    Pens.line(g, new Line2D.Double(side, y(area, lowY), side, y(area, highY)), Look.INK, Look.THIN);
    double every = Math.min(mark(), round(figures.length(highY - lowY) / 5.0));
    g.setFont(Look.TICK);
    for (double v = Math.ceil(figures.length(lowY) / every) * every;
        v <= figures.length(highY);
        v += every) {
      double at = y(area, metres(v));
      Pens.line(g, new Line2D.Double(side - TICK, at, side, at), Look.INK, Look.THIN);
      String text = figures.trimmed(v, 2);
      g.setFont(Look.TICK);
      g.setPaint(Look.INK);
      g.drawString(
          text, (float) (side - TICK - 3.0 - Paper.wide(text, Look.TICK)), (float) (at + 4.0));
    }
    String words = sentences.say("chart.map.across", "unit", figures.lengthUnit());
    if (Paper.wide(words, Look.AXIS) > area.getHeight() - foot) {
      words = sentences.say("chart.map.across.short", "unit", figures.lengthUnit());
    }
    double middle = 0.5 * (y(area, lowY) + y(area, highY));
    g.setFont(Look.AXIS);
    g.setPaint(Look.INK);
    AffineTransform before = g.getTransform();
    g.translate(area.getX() + 12.0, middle + 0.5 * Paper.wide(words, Look.AXIS));
    g.rotate(-Math.PI / 2);
    g.drawString(words, 0f, 0f);
    g.setTransform(before);
  }

  private static void centred(Graphics2D g, String text, double at, double base) {
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    g.drawString(text, (float) (at - 0.5 * Paper.wide(text, Look.TICK)), (float) base);
  }

  /** The steps of ink with figures between them. */
  private void key(Graphics2D g, Rectangle2D area) {
    int most = 0;
    for (int c = 0; c < map.grid().size(); c++) {
      most = Math.max(most, level(c));
    }
    double box = 46.0;
    double left = area.getX() + LEFT;
    double top = area.getMaxY() - 36.0 - (foot - FOOT);
    for (int level = 0; level <= most; level++) {
      Rectangle2D patch = new Rectangle2D.Double(left + level * box, top, box, 12.0);
      g.setPaint(ink(level));
      g.fill(patch);
      Pens.line(g, patch, Look.FAINT_INK, Look.THIN);
    }
    for (int level = 0; level <= most + 1; level++) {
      centred(g, figures.trimmed(level * step, 3), left + level * box, top + 27.0);
    }
    g.drawString(
        figures.lengthUnit(), (float) (left + (most + 1) * box + 22.0), (float) (top + 27.0));
  }

  private void line(Graphics2D g, Rectangle2D area, Centreline line) {
    Path2D path = new Path2D.Double();
    for (int k = 0; k <= 200; k++) {
      double s = line.length() * k / 200.0;
      double px = x(area, line.xAt(s));
      double py = y(area, line.yAt(s));
      if (k == 0) {
        path.moveTo(px, py);
      } else {
        path.lineTo(px, py);
      }
    }
    Pens.line(g, path, Look.PAPER, Look.MARK);
    Pens.line(g, path, Look.INK, Look.DASHED);
  }

  private void ring(Graphics2D g, Rectangle2D area, ShapeReport.Spot spot) {
    double px = x(area, spot.x());
    double py = y(area, spot.y());
    Pens.line(g, new Ellipse2D.Double(px - 7, py - 7, 14, 14), Look.PAPER, Look.MARK);
    Pens.line(g, new Ellipse2D.Double(px - 7, py - 7, 14, 14), Look.INK, Look.METAL);
  }

  private void dot(Graphics2D g, Rectangle2D area, ShapeReport.Spot spot) {
    double px = x(area, spot.x());
    double py = y(area, spot.y());
    g.setPaint(Look.PAPER);
    g.fill(new Ellipse2D.Double(px - 7, py - 7, 14, 14));
    g.setPaint(Look.INK);
    g.fill(new Ellipse2D.Double(px - 5, py - 5, 10, 10));
  }
}
