package lastinch.ui.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.plot.XYPlot;

/** Hatching, curves, marks and words on paper. */
final class Pens {
  private static final double HATCH_GAP = 9.0;
  private static final double MARK = 9.0;
  private static final double WORDS_GAP = 5.0;

  private Pens() {}

  /** Shape of the end of the metal. */
  enum Lip {
    ROUNDED,
    LEVEL,
    RAGGED,
    FULL
  }

  /** Slanting lines over a region. */
  static void hatch(Graphics2D g, Shape region, Paint ink) {
    Shape before = g.getClip();
    g.clip(region);
    g.setPaint(ink);
    g.setStroke(Look.HATCH);
    Rectangle2D box = region.getBounds2D();
    double tall = box.getHeight();
    for (double x = box.getMinX() - tall; x < box.getMaxX(); x += HATCH_GAP) {
      g.draw(new Line2D.Double(x, box.getMaxY(), x + tall, box.getMinY()));
    }
    g.setClip(before);
  }

  /** A curve through points of the plot. */
  static Path2D curve(XYPlot plot, Rectangle2D area, double[] across, double[] up) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < across.length; i++) {
      double x = Sheet.x(plot, area, across[i]);
      double y = Sheet.y(plot, area, up[i]);
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    return path;
  }

  static void line(Graphics2D g, Shape shape, Paint ink, Stroke stroke) {
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

  /** Words that end at {@code x}, or begin there when they find no room before it. */
  static void wordsAtEnd(
      Graphics2D g, Rectangle2D area, String text, Font font, Paint ink, double x, double middle) {
    double wide = g.getFontMetrics(font).stringWidth(text);
    boolean before = x - wide > area.getMinX() + WORDS_GAP;
    words(g, area, text, font, ink, before ? x - wide - WORDS_GAP : x + WORDS_GAP, middle);
  }

  /** The end of the metal; it points the way the metal went. */
  static void lip(Graphics2D g, Lip lip, double x, double y, boolean upwards) {
    g.setPaint(Look.INK);
    g.setStroke(Look.MARK);
    switch (lip) {
      case ROUNDED ->
          g.draw(
              new Arc2D.Double(
                  x - MARK, y - MARK, 2 * MARK, 2 * MARK, upwards ? 20 : -70, 140, Arc2D.OPEN));
      case LEVEL ->
          g.draw(
              upwards
                  ? new Line2D.Double(x - MARK, y, x + MARK, y)
                  : new Line2D.Double(x, y - MARK, x, y + MARK));
      case RAGGED -> g.draw(ragged(x, y, upwards));
      case FULL -> {
        Shape dot = new Ellipse2D.Double(x - MARK / 2, y - MARK / 2, MARK, MARK);
        g.setPaint(Look.PAPER);
        g.fill(dot);
        g.setPaint(Look.INK);
        g.draw(dot);
      }
    }
  }

  private static Shape ragged(double x, double y, boolean upwards) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i <= 4; i++) {
      double along = -MARK + i * MARK / 2;
      double out = i % 2 == 0 ? -MARK / 3 : MARK / 3;
      double px = upwards ? x + along : x + out;
      double py = upwards ? y + out : y + along;
      if (i == 0) {
        path.moveTo(px, py);
      } else {
        path.lineTo(px, py);
      }
    }
    return path;
  }
}
