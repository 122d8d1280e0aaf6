package lastinch.ui.chart.paper;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Hatching, curves, marks and words on paper. */
public final class Pens {
  private static final double HATCH_GAP = 9.0;

  /** Distance of the lines that stand for frozen metal. */
  public static final double FINE = 5.0;

  private static final double MARK = 9.0;
  private static final double WORDS_GAP = 5.0;

  private Pens() {}

  /** Way the metal went, on the paper. */
  public enum Way {
    RIGHT(0.0),
    UP(-Math.PI / 2),
    LEFT(Math.PI),
    DOWN(Math.PI / 2);

    private final double turn;

    Way(double turn) {
      this.turn = turn;
    }

    double turn() {
      return turn;
    }
  }

  /** Shape of the end of the metal. */
  public enum Lip {
    ROUNDED,
    LEVEL,
    RAGGED,
    FULL
  }

  /** Slanting lines over a region. */
  public static void hatch(Graphics2D g, Shape region, Paint ink) {
    hatch(g, region, ink, HATCH_GAP);
  }

  /** Slanting lines over a region, so far apart. */
  public static void hatch(Graphics2D g, Shape region, Paint ink, double gap) {
    if (region.getBounds2D().isEmpty()) {
      return;
    }
    Shape before = g.getClip();
    g.clip(region);
    g.setPaint(ink);
    g.setStroke(Look.HATCH);
    Rectangle2D box = region.getBounds2D();
    double tall = box.getHeight();
    for (double x = box.getMinX() - tall; x < box.getMaxX(); x += gap) {
      g.draw(new Line2D.Double(x, box.getMaxY(), x + tall, box.getMinY()));
    }
    g.setClip(before);
  }

  public static void line(Graphics2D g, Shape shape, Paint ink, Stroke stroke) {
    g.setPaint(ink);
    g.setStroke(stroke);
    g.draw(shape);
  }

  /** Words on a slip of paper, so that no line runs through them; kept inside the plot. */
  static void words(
      Graphics2D g, Rectangle2D area, String text, Font font, Paint ink, double x, double middle) {
    g.setFont(font);
    FontMetrics metrics = g.getFontMetrics();
    double wide = metrics.stringWidth(text);
    double tall = metrics.getHeight();
    double left = Math.max(area.getMinX() + 3, Math.min(x, area.getMaxX() - wide - 2 * WORDS_GAP));
    double top =
        Math.max(area.getMinY() + 2, Math.min(middle - tall / 2, area.getMaxY() - tall - 2));
    g.setPaint(Look.PAPER);
    g.fill(new Rectangle2D.Double(left - 2, top, wide + 4, tall));
    g.setPaint(ink);
    g.drawString(text, (float) left, (float) (top + metrics.getAscent()));
  }

  /** The end of the metal; it points the way the metal went. */
  public static void lip(Graphics2D g, Lip lip, double x, double y, Way way) {
    AffineTransform before = g.getTransform();
    g.translate(x, y);
    g.rotate(way.turn());
    g.setPaint(Look.INK);
    g.setStroke(Look.MARK);
    switch (lip) {
      case ROUNDED ->
          g.draw(new Arc2D.Double(-MARK, -MARK, 2 * MARK, 2 * MARK, -70, 140, Arc2D.OPEN));
      case LEVEL -> g.draw(new Line2D.Double(0, -MARK, 0, MARK));
      case RAGGED -> g.draw(ragged());
      case FULL -> {
        Shape dot = new Ellipse2D.Double(-MARK / 2, -MARK / 2, MARK, MARK);
        g.setPaint(Look.PAPER);
        g.fill(dot);
        g.setPaint(Look.INK);
        g.draw(dot);
      }
    }
    g.setTransform(before);
  }

  /** An upright cross. */
  public static void cross(Graphics2D g, double x, double y, double arm, Paint ink) {
    line(g, new Line2D.Double(x, y - arm, x, y + arm), ink, Look.METAL);
    line(g, new Line2D.Double(x - arm, y, x + arm, y), ink, Look.METAL);
  }

  private static Shape ragged() {
    Path2D path = new Path2D.Double();
    path.moveTo(-MARK / 3, -MARK);
    for (int i = 1; i <= 4; i++) {
      path.lineTo(i % 2 == 0 ? -MARK / 3 : MARK / 3, -MARK + i * MARK / 2);
    }
    return path;
  }
}
