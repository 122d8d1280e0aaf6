package lastinch.ui.chart.plane;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Orientation;
import lastinch.ui.chart.paper.Contour;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.words.Figures;

/**
 * Squares of a map on paper, to one scale, lying as the mould stands when it is poured: from above
 * when it lies or is tilted, thick end at the left; upright with its weight pulling down the page.
 */
final class PlaneSheet {
  static final double LEFT = 14.0;
  static final double HEAD = 8.0;
  static final double RULER = 30.0;
  private static final double MOST_TALL = 560.0;
  private static final double MOST_SCALE = 6000.0;

  final GapMap map;
  private final boolean upright;
  private final boolean tipUp;
  private final double scale;
  private final double wide;
  private final double high;

  PlaneSheet(GapMap map, Orientation stands) {
    this.map = map;
    upright = stands.upright();
    tipUp = stands.angle() > 0.0;
    GapGrid grid = map.grid();
    double x = grid.nx() * grid.cell();
    double y = grid.ny() * grid.cell();
    wide = upright ? y : x;
    high = upright ? x : y;
    double fits = Math.min((Paper.INNER - 2 * LEFT) / wide, MOST_TALL / high);
    scale = Math.min(fits, MOST_SCALE);
  }

  /** Height of the map with its ruler in dots. */
  double tall() {
    return HEAD + scale * high + RULER;
  }

  /** Dots per metre. */
  double scale() {
    return scale;
  }

  /** Where a place of the map, counted in cells from its lower left corner, lies on paper. */
  Point2D at(Rectangle2D area, double i, double j) {
    double c = scale * map.cell();
    double left = area.getX() + LEFT + 0.5 * (Paper.INNER - 2 * LEFT - scale * wide);
    double top = area.getY() + HEAD;
    if (!upright) {
      return new Point2D.Double(left + c * i, top + scale * high - c * j);
    }
    double across = tipUp ? scale * wide - c * j : c * j;
    double down = tipUp ? scale * high - c * i : c * i;
    return new Point2D.Double(left + across, top + down);
  }

  /** A run of squares of one row as a rectangle. */
  private Rectangle2D run(Rectangle2D area, int from, int to, int j) {
    Point2D a = at(area, from, j);
    Point2D b = at(area, to, j + 1.0);
    Rectangle2D r = new Rectangle2D.Double();
    r.setFrameFromDiagonal(a, b);
    return r;
  }

  /**
   * Paints squares; runs of one colour in one go, with hard edges so that no seam shows.
   *
   * @param ink of an open cell of the map; paper is left as it is
   */
  void squares(Graphics2D g, Rectangle2D area, IntFunction<Color> ink) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    for (int j = 0; j < map.ny(); j++) {
      int start = 0;
      for (int i = 1; i <= map.nx(); i++) {
        Color color = color(start, j, ink);
        if (i == map.nx() || !color.equals(color(i, j, ink))) {
          if (!color.equals(Look.PAPER)) {
            g.setPaint(color);
            g.fill(run(area, start, i, j));
          }
          start = i;
        }
      }
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
  }

  private Color color(int i, int j, IntFunction<Color> ink) {
    int k = map.grid().index(i, j);
    return map.isOpen(k) ? ink.apply(k) : Look.PAPER;
  }

  /** Outline of the cavity, through its squares as they are open. */
  Path2D outline(Rectangle2D area) {
    return contour(area, k -> map.isOpen(k) ? map.open(k) : 0.0);
  }

  /** The line where a value by square passes one half; meant to be seen inside the outline. */
  Path2D contour(Rectangle2D area, IntToDoubleFunction value) {
    return Contour.of(map.nx(), map.ny(), value, (i, j) -> at(area, i, j));
  }

  /**
   * Border round what squares hold, up to the outline: a closed square counts as the fullest beside
   * it.
   *
   * @param share by open square [-]
   */
  Path2D border(Rectangle2D area, IntToDoubleFunction share) {
    double[] value = new double[map.grid().size()];
    for (int k = 0; k < value.length; k++) {
      if (map.isOpen(k)) {
        value[k] = share.applyAsDouble(k);
        continue;
      }
      int i = k % map.nx();
      int j = k / map.nx();
      for (int b = Math.max(0, j - 1); b <= Math.min(map.ny() - 1, j + 1); b++) {
        for (int a = Math.max(0, i - 1); a <= Math.min(map.nx() - 1, i + 1); a++) {
          int other = map.grid().index(a, b);
          value[k] = Math.max(value[k], map.isOpen(other) ? share.applyAsDouble(other) : 0.0);
        }
      }
    }
    return contour(area, k -> value[k]);
  }

  /** Paints squares up to the outline of the cavity and no further. */
  void inside(Graphics2D g, Rectangle2D area, IntFunction<Color> ink) {
    Shape clip = g.getClip();
    Path2D outline = outline(area);
    g.clip(outline);
    squares(g, area, ink);
    g.setClip(clip);
    Pens.line(g, outline, Look.FAINT_INK, Look.THIN);
  }

  /** A length to compare with, under the map. */
  void ruler(Graphics2D g, Rectangle2D area, Figures figures) {
    boolean metric = figures.lengthUnit().equals("mm");
    double length = metric ? 0.05 : 0.0508;
    while (length > 0.6 * wide) {
      length *= 0.5;
    }
    double x = area.getX() + LEFT;
    double y = area.getY() + tall() - 12.0;
    double to = x + scale * length;
    Pens.line(g, new Line2D.Double(x, y, to, y), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(x, y - 4, x, y + 4), Look.INK, Look.OUTLINE);
    Pens.line(g, new Line2D.Double(to, y - 4, to, y + 4), Look.INK, Look.OUTLINE);
    g.setFont(Look.TICK);
    g.setPaint(Look.INK);
    g.drawString(figures.ruler(length), (float) (to + 8.0), (float) (y + 4.0));
  }
}
