package lastinch.ui.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names beside things, each moved until it lies over no other name and nothing it must not hide.
 */
final class Slips {
  private static final double NEAR = 5.0;
  private static final int RINGS = 9;
  private static final int TURNS = 18;
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
   * A place a name may be written near.
   *
   * @param x across the paper
   * @param y down the paper
   * @param dx way to look first, across the paper
   * @param dy way to look first, down the paper
   */
  record Anchor(double x, double y, double dx, double dy) {}

  /** Writes a name near a place, with a thin line to it where it had to go further off. */
  void write(
      Graphics2D g, String text, Font font, Color ink, double x, double y, double dx, double dy) {
    write(g, text, font, ink, List.of(new Anchor(x, y, dx, dy)));
  }

  /** Writes a name near the place that has room nearest to it. */
  void write(Graphics2D g, String text, Font font, Color ink, List<Anchor> anchors) {
    double wide = Paper.wide(text, font);
    for (int ring = 0; ring < RINGS; ring++) {
      for (Anchor anchor : anchors) {
        Optional<Rectangle2D> box = free(anchor, ring, wide);
        if (box.isPresent()) {
          taken.add(box.get());
          leader(g, ring, anchor.x(), anchor.y(), box.get());
          g.setFont(font);
          g.setPaint(ink);
          g.drawString(text, (float) (box.get().getX() + 2), (float) (box.get().getMaxY() - 4));
          return;
        }
      }
    }
  }

  private Optional<Rectangle2D> free(Anchor anchor, int ring, double wide) {
    double first = Math.atan2(anchor.dy(), anchor.dx());
    double off = NEAR + ring * RING;
    for (int k = 0; k < TURNS; k++) {
      double turn = first + ((k + 1) / 2) * (k % 2 == 0 ? 1 : -1) * Math.PI / TURNS;
      double cx = anchor.x() + Math.cos(turn) * (off + 0.5 * wide * Math.abs(Math.cos(turn)));
      double cy = anchor.y() + Math.sin(turn) * (off + 0.5 * TALL);
      Rectangle2D box =
          new Rectangle2D.Double(cx - 0.5 * wide - 2, cy - 0.5 * TALL, wide + 4, TALL);
      if (area.contains(box) && isFree(box)) {
        return Optional.of(box);
      }
    }
    return Optional.empty();
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
