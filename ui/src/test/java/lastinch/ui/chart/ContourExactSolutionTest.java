package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import lastinch.ui.chart.paper.Contour;
import org.junit.jupiter.api.Test;

/** Outlines through squares that are open in part. */
class ContourExactSolutionTest {
  private static final int N = 24;

  /** Share of a square on the near side of a line that leans, by 16 by 16 points. */
  private static double share(int k, Inside inside) {
    int row = k / N;
    int hits = 0;
    for (int a = 0; a < 16; a++) {
      for (int b = 0; b < 16; b++) {
        hits += inside.holds(k % N + (a + 0.5) / 16.0, row + (b + 0.5) / 16.0) ? 1 : 0;
      }
    }
    return hits / 256.0;
  }

  private interface Inside {
    boolean holds(double x, double y);
  }

  @Test
  void aDiscIsOutlinedWithinATenthOfASquare() {
    double r = 8.3;
    Path2D path =
        Contour.of(
            N,
            N,
            k -> share(k, (x, y) -> Math.hypot(x - 12.2, y - 11.7) <= r),
            Point2D.Double::new);
    double worst = 0.0;
    int loops = 0;
    double[] at = new double[6];
    for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      loops += kind == PathIterator.SEG_CLOSE ? 1 : 0;
      if (kind != PathIterator.SEG_CLOSE) {
        worst = Math.max(worst, Math.abs(Math.hypot(at[0] - 12.2, at[1] - 11.7) - r));
      }
    }
    assertThat(loops).isOne();
    // a staircase along the squares is off by up to half a diagonal, 0.7
    assertThat(worst).isLessThan(0.1);
  }

  @Test
  void aHoleStaysOpenAndAPieceAtTheBorderOfTheGridIsClosed() {
    Path2D path =
        Contour.of(
            N,
            N,
            k -> {
              int row = k / N;
              return Math.abs(k % N - 12) <= 2 && Math.abs(row - 12) <= 2 ? 0.0 : 1.0;
            },
            Point2D.Double::new);
    assertThat(path.contains(12.5, 12.5)).isFalse();
    assertThat(path.contains(5.0, 5.0)).isTrue();
    assertThat(path.contains(0.1, 12.0)).isTrue();
    assertThat(path.contains(-0.1, 12.0)).isFalse();
  }
}
