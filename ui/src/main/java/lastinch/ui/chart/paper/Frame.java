package lastinch.ui.chart.paper;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** How a view lies on the paper: turned as the mould stands, to scale, gravity down the page. */
public final class Frame {
  private final AffineTransform turn;
  private final AffineTransform whole;
  private final double scale;

  private Frame(AffineTransform turn, double scale, AffineTransform whole) {
    this.turn = turn;
    this.scale = scale;
    this.whole = whole;
  }

  /** A turn of the view: u and v of the page's across and up. */
  public static AffineTransform turned(double acrossU, double acrossV, double upU, double upV) {
    return new AffineTransform(acrossU, -upU, acrossV, -upV, 0.0, 0.0);
  }

  /**
   * Fits a region of a turned view to a part of the paper.
   *
   * @param turn from {@link #turned}
   * @param bounds of what is to be seen, after the turn [m], y down
   * @param area part of the paper
   * @param scale dots to the metre
   */
  public static Frame fit(
      AffineTransform turn, Rectangle2D bounds, Rectangle2D area, double scale) {
    AffineTransform whole =
        AffineTransform.getTranslateInstance(
            area.getCenterX() - scale * bounds.getCenterX(),
            area.getCenterY() - scale * bounds.getCenterY());
    whole.scale(scale, scale);
    whole.concatenate(turn);
    return new Frame(turn, scale, whole);
  }

  /** Dots to the metre. */
  public double scale() {
    return scale;
  }

  public Shape place(Shape shape) {
    return whole.createTransformedShape(shape);
  }

  public Point2D place(double u, double v) {
    return whole.transform(new Point2D.Double(u, v), null);
  }

  /** Way on the paper of a way in the view, of length 1. */
  public Point2D way(double u, double v) {
    Point2D p = turn.deltaTransform(new Point2D.Double(u, v), null);
    double size = Math.max(1e-12, p.distance(0.0, 0.0));
    return new Point2D.Double(p.getX() / size, p.getY() / size);
  }
}
