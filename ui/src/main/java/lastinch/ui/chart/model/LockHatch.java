package lastinch.ui.chart.model;

import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.geometry.solid.UndercutAnalysis;
import lastinch.solver.geometry.solid.UndercutAnalysis.Mark;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Pens;
import lastinch.ui.words.Sentences;

/**
 * Where a piece locks its mould, hatched over a map: lines one way where it leans over the parting,
 * crossed lines where sand is shut in. Each line is ink on paper, to be seen on any step of ink.
 */
final class LockHatch {
  private static final double APART = 8.0;
  private static final double BOX = 30.0;
  private static final double TALL = 12.0;
  private static final double SPACE = 8.0;

  private final GapGrid grid;
  private final UndercutAnalysis locking;
  private final Sentences sentences;

  LockHatch(GapGrid grid, UndercutAnalysis locking, Sentences sentences) {
    this.grid = grid;
    this.locking = locking;
    this.sentences = sentences;
  }

  /** The marks that stand anywhere, in the order of the key. */
  List<Mark> marks() {
    List<Mark> found = new ArrayList<>();
    for (Mark mark : List.of(Mark.OVERHANG, Mark.UNDERCUT)) {
      if (locking.area(mark) > 0.0) {
        found.add(mark);
      }
    }
    return found;
  }

  /**
   * Hatches the squares.
   *
   * @param x where a distance along the piece [m] stands on the paper
   * @param y where a distance to its left [m] stands on the paper
   */
  void draw(Graphics2D g, DoubleUnaryOperator x, DoubleUnaryOperator y) {
    for (Mark mark : marks()) {
      hatch(g, squares(mark, x, y), mark);
    }
  }

  /** Patches of hatching with their words, side by side. */
  void key(Graphics2D g, double left, double top) {
    double at = left;
    for (Mark mark : marks()) {
      Rectangle2D patch = new Rectangle2D.Double(at, top, BOX, TALL);
      hatch(g, patch, mark);
      Pens.line(g, patch, Look.FAINT_INK, Look.THIN);
      String words = sentences.say("chart.gap.mark." + mark.name());
      g.setFont(Look.TICK);
      g.setPaint(Look.INK);
      g.drawString(words, (float) (at + BOX + SPACE), (float) (top + TALL - 1.0));
      at += BOX + 4.0 * SPACE + Paper.wide(words, Look.TICK);
    }
  }

  private Shape squares(Mark mark, DoubleUnaryOperator x, DoubleUnaryOperator y) {
    Path2D region = new Path2D.Double();
    for (int j = 0; j < grid.ny(); j++) {
      int start = 0;
      for (int i = 1; i <= grid.nx(); i++) {
        Mark here = locking.at(grid.index(start, j));
        if (i == grid.nx() || locking.at(grid.index(i, j)) != here) {
          if (here == mark) {
            double left = x.applyAsDouble(grid.x0() + start * grid.cell());
            double right = x.applyAsDouble(grid.x0() + i * grid.cell());
            double high = y.applyAsDouble(grid.y0() + (j + 1) * grid.cell());
            double low = y.applyAsDouble(grid.y0() + j * grid.cell());
            region.append(new Rectangle2D.Double(left, high, right - left, low - high), false);
          }
          start = i;
        }
      }
    }
    return region;
  }

  private static void hatch(Graphics2D g, Shape region, Mark mark) {
    Shape before = g.getClip();
    g.clip(region);
    Rectangle2D box = region.getBounds2D();
    lines(g, box, mark, Look.PAPER, Look.MARK);
    lines(g, box, mark, Look.INK, Look.OUTLINE);
    g.setClip(before);
  }

  private static void lines(Graphics2D g, Rectangle2D box, Mark mark, Paint ink, Stroke stroke) {
    double tall = box.getHeight();
    for (double x = box.getMinX() - tall; x < box.getMaxX(); x += APART) {
      Pens.line(g, new Line2D.Double(x, box.getMaxY(), x + tall, box.getMinY()), ink, stroke);
      if (mark == Mark.UNDERCUT) {
        Pens.line(g, new Line2D.Double(x, box.getMinY(), x + tall, box.getMaxY()), ink, stroke);
      }
    }
  }
}
