package lastinch.ui.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Names beside things, each moved until it lies over no other name and nothing it must not hide.
 */
final class Slips {
  private static final double NEAR = 5.0;
  private static final int RINGS = 9;
  private static final int TURNS = 16;
  private static final double RING = 11.0;
  private static final double TALL = 15.0;

  private final Rectangle2D area;
  private final List<Rectangle2D> taken = new ArrayList<>();

  Slips(Rectangle2D area) {
    this.area = area;
  }

  /** Keeps names away from a part of the paper. */
  void keepOff(Rectangle2D part) {
    taken.add(part);
  }

  /**
   * Writes a name near a place, with a thin line to it where it had to go further off.
   *
   * @param dx way to look first, across the paper
   * @param dy way to look first, down the paper
   */
  void write(
      Graphics2D g, String text, Font font, Color ink, double x, double y, double dx, double dy) {
    double wide = Paper.wide(text, font);
    double first = Math.atan2(dy, dx);
    for (int ring = 0; ring < RINGS; ring++) {
      for (int k = 0; k < TURNS; k++) {
        double turn = first + ((k + 1) / 2) * (k % 2 == 0 ? 1 : -1) * 2 * Math.PI / TURNS;
        double off = NEAR + ring * RING;
        double cx = x + Math.cos(turn) * (off + 0.5 * wide * Math.abs(Math.cos(turn)));
        double cy = y + Math.sin(turn) * (off + 0.5 * TALL);
        Rectangle2D box =
            new Rectangle2D.Double(cx - 0.5 * wide - 2, cy - 0.5 * TALL, wide + 4, TALL);
        if (area.contains(box) && isFree(box)) {
          taken.add(box);
          leader(g, ring, x, y, box);
          g.setFont(font);
          g.setPaint(ink);
          g.drawString(text, (float) (box.getX() + 2), (float) (box.getMaxY() - 4));
          return;
        }
      }
    }
  }

  private static void leader(Graphics2D g, int ring, double x, double y, Rectangle2D box) {
    if (ring < 2) {
      return;
    }
    double toX = Math.max(box.getMinX(), Math.min(x, box.getMaxX()));
    double toY = Math.max(box.getMinY(), Math.min(y, box.getMaxY()));
    Pens.line(g, new Line2D.Double(x, y, toX, toY), Look.FAINT_INK, Look.THIN);
  }

  private boolean isFree(Rectangle2D box) {
    for (Rectangle2D other : taken) {
      if (other.intersects(box)) {
        return false;
      }
    }
    return true;
  }
}
