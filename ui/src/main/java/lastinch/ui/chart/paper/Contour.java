package lastinch.ui.chart.paper;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;

/**
 * The line at which a value known in the middles of squares passes one half, between the middles as
 * straight as the value goes: closed loops, smooth where the squares are not. Outside of the grid
 * the value is 0.
 */
public final class Contour {
  private static final double LEVEL = 0.5;
  private static final int[][] CORNERS = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};

  private final int nx;
  private final int ny;
  private final IntToDoubleFunction value;
  private final TreeMap<Long, Long> next = new TreeMap<>();

  private Contour(int nx, int ny, IntToDoubleFunction value) {
    this.nx = nx;
    this.ny = ny;
    this.value = value;
  }

  /** Puts a place, counted in squares from the lower left corner of the grid, on paper. */
  @FunctionalInterface
  public interface Placing {
    Point2D at(double i, double j);
  }

  /**
   * Draws it.
   *
   * @param value by index of a square, row by row from the lowest
   */
  public static Path2D of(int nx, int ny, IntToDoubleFunction value, Placing placing) {
    Contour contour = new Contour(nx, ny, value);
    for (int j = -1; j < ny; j++) {
      for (int i = -1; i < nx; i++) {
        contour.link(i, j);
      }
    }
    return contour.loops(placing);
  }

  private double value(int i, int j) {
    return i >= 0 && j >= 0 && i < nx && j < ny ? value.applyAsDouble(j * nx + i) : 0.0;
  }

  private boolean isInside(int i, int j, int corner) {
    int[] c = CORNERS[corner % 4];
    return value(i + c[0], j + c[1]) >= LEVEL;
  }

  /** Side of the square between four middles that starts at its lower left middle or beside it. */
  private long side(int i, int j, int k) {
    int fromI = k == 1 ? i + 1 : i;
    int fromJ = k == 2 ? j + 1 : j;
    long upright = k % 2;
    return 2L * ((fromJ + 1L) * (nx + 2L) + fromI + 1L) + upright;
  }

  private void link(int i, int j) {
    for (int k = 0; k < 4; k++) {
      if (isInside(i, j, k) && !isInside(i, j, k + 1)) {
        int m = k + 1;
        while (!isInside(i, j, m + 1)) {
          m++;
        }
        next.put(side(i, j, k), side(i, j, m % 4));
      }
    }
  }

  private Point2D place(long side, Placing placing) {
    boolean upright = side % 2 == 1;
    long from = side / 2;
    int i = (int) (from % (nx + 2)) - 1;
    int j = (int) (from / (nx + 2)) - 1;
    double a = value(i, j);
    double b = upright ? value(i, j + 1) : value(i + 1, j);
    double share = (LEVEL - a) / (b - a);
    return placing.at(i + 0.5 + (upright ? 0.0 : share), j + 0.5 + (upright ? share : 0.0));
  }

  private Path2D loops(Placing placing) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    while (!next.isEmpty()) {
      Long side = next.firstKey();
      boolean begun = false;
      while (side != null) {
        Point2D p = place(side, placing);
        if (begun) {
          path.lineTo(p.getX(), p.getY());
        } else {
          path.moveTo(p.getX(), p.getY());
        }
        begun = true;
        side = next.remove(side);
      }
      path.closePath();
    }
    return path;
  }
}
