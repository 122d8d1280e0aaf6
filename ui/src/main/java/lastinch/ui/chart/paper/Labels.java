package lastinch.ui.chart.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Labels beside things, each moved until it lies over no other label, no line and nothing else it
 * must not hide. All pictures place their labels through this class.
 */
public final class Labels {
  private static final double NEAR = 5.0;
  private static final int RINGS = 12;
  private static final int TURNS = 36;
  private static final double RING = 9.0;
  private static final double TALL = 15.0;

  /** Room left before and after a label. */
  private static final double PAD = 4.0;

  /** A label further off its place than this is tied to it by a thin line. */
  private static final double TIED = 20.0;

  private static final Stroke LINE_ROOM = new BasicStroke(4f);

  private final Rectangle2D area;
  private final List<Shape> taken = new ArrayList<>();
  private final List<Rectangle2D> written = new ArrayList<>();

  public Labels(Rectangle2D area) {
    this.area = area;
  }

  /**
   * A place a label may be written near.
   *
   * @param x across the paper
   * @param y down the paper
   * @param dx way to look first, across the paper
   * @param dy way to look first, down the paper
   */
  public record Anchor(double x, double y, double dx, double dy) {}

  /** Keeps labels away from a part of the paper. */
  public void keepOff(Shape part) {
    taken.add(part);
  }

  /** Keeps labels away from a line. */
  public void keepOffLine(Shape line) {
    taken.add(LINE_ROOM.createStrokedShape(line));
  }

  /** Boxes of the labels written so far. */
  public List<Rectangle2D> written() {
    return List.copyOf(written);
  }

  /** Writes a label near a place, with a thin line to it where it had to go further off. */
  public void write(
      Graphics2D g, String text, Font font, Color ink, double x, double y, double dx, double dy) {
    write(g, text, font, ink, List.of(new Anchor(x, y, dx, dy)));
  }

  /**
   * Writes a label near the place that has room nearest to it; earlier places go first; false
   * without room.
   */
  public boolean write(Graphics2D g, String text, Font font, Color ink, List<Anchor> anchors) {
    double wide = Paper.wide(text, font);
    for (int ring = 0; ring < RINGS; ring++) {
      for (Anchor anchor : anchors) {
        Optional<Rectangle2D> box = free(anchor, ring, wide);
        if (box.isPresent()) {
          put(g, text, font, ink, anchor, box.get());
          return true;
        }
      }
    }
    return false;
  }

  /** Writes a label along a line: from its middle outwards, above it or below. */
  public boolean along(
      Graphics2D g, String text, Font font, Color ink, List<Point2D> line, double from, double up) {
    List<Anchor> anchors = new ArrayList<>();
    int n = line.size();
    int first = (int) Math.min(n - 1.0, from * n);
    for (int k = 0; k < n; k++) {
      for (int i : k == 0 ? new int[] {first} : new int[] {first + k, first - k}) {
        if (i >= 0 && i < n) {
          Point2D p = line.get(i);
          anchors.add(new Anchor(p.getX(), p.getY(), 0.0, -up));
          anchors.add(new Anchor(p.getX(), p.getY(), 0.0, up));
        }
      }
    }
    return write(g, text, font, ink, anchors);
  }

  /** Writes a label around a place on a slip of paper, if that is free; for hatched ground. */
  public void inside(Graphics2D g, String text, Font font, Color ink, double x, double y) {
    double wide = Paper.wide(text, font) + 2 * PAD;
    Rectangle2D box = new Rectangle2D.Double(x - 0.5 * wide, y - 0.5 * TALL, wide, TALL);
    if (area.contains(box) && isFree(box)) {
      g.setPaint(Look.PAPER);
      g.fill(box);
      put(g, text, font, ink, new Anchor(x, y, 0.0, 0.0), box);
    }
  }

  private void put(
      Graphics2D g, String text, Font font, Color ink, Anchor anchor, Rectangle2D box) {
    taken.add(box);
    written.add(box);
    tie(anchor, box)
        .ifPresent(
            line -> {
              Pens.line(g, line, Look.FAINT_INK, Look.THIN);
              keepOffLine(line);
            });
    g.setFont(font);
    g.setPaint(ink);
    g.drawString(text, (float) (box.getX() + PAD), (float) (box.getMaxY() - 4));
  }

  private Optional<Rectangle2D> free(Anchor anchor, int ring, double wide) {
    double first = Math.atan2(anchor.dy(), anchor.dx());
    double off = NEAR + ring * RING;
    for (int k = 0; k < TURNS; k++) {
      double turn = first + ((k + 1) / 2) * (k % 2 == 0 ? 1 : -1) * 2.0 * Math.PI / TURNS;
      double cx = anchor.x() + Math.cos(turn) * (off + 0.5 * wide * Math.abs(Math.cos(turn)));
      double cy = anchor.y() + Math.sin(turn) * (off + 0.5 * TALL);
      Rectangle2D box =
          new Rectangle2D.Double(cx - 0.5 * wide - PAD, cy - 0.5 * TALL, wide + 2 * PAD, TALL);
      if (area.contains(box) && isFree(box) && !crosses(anchor, box)) {
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }

  /** The line from a place to a label that lies further off. */
  private static Optional<Line2D> tie(Anchor anchor, Rectangle2D box) {
    double x = Math.max(box.getMinX(), Math.min(anchor.x(), box.getMaxX()));
    double y = Math.max(box.getMinY(), Math.min(anchor.y(), box.getMaxY()));
    return Point2D.distance(anchor.x(), anchor.y(), x, y) < TIED
        ? Optional.empty()
        : Optional.of(new Line2D.Double(anchor.x(), anchor.y(), x, y));
  }

  /** Whether the line to a label would run through another label. */
  private boolean crosses(Anchor anchor, Rectangle2D box) {
    Optional<Line2D> tie = tie(anchor, box);
    return tie.isPresent() && written.stream().anyMatch(w -> w.intersectsLine(tie.get()));
  }

  private boolean isFree(Rectangle2D box) {
    for (Shape other : taken) {
      if (other.intersects(box)) {
        return false;
      }
    }
    return true;
  }

  /** Points of a path on the paper. */
  static List<Point2D> points(double[] x, double[] y) {
    List<Point2D> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(new Point2D.Double(x[i], y[i]));
    }
    return points;
  }

  /** A path of points; kept here so that lines and labels use the same points. */
  public static Path2D path(List<Point2D> points) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < points.size(); i++) {
      if (i == 0) {
        path.moveTo(points.get(i).getX(), points.get(i).getY());
      } else {
        path.lineTo(points.get(i).getX(), points.get(i).getY());
      }
    }
    return path;
  }
}
