package lastinch.solver.geometry.solid;

import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.Solid;

/**
 * Where a drawn piece keeps a mould of two halves from coming apart, square by square of its map. A
 * square is marked when half of the lines through it or more say so.
 */
public final class UndercutAnalysis {
  /** What keeps the halves together at a place. */
  public enum Mark {
    /** Nothing; both halves come away. */
    NONE,
    /** Metal leans over the flat parting plane: it faces down above it or up below it. */
    OVERHANG,
    /** Sand shut in between metal above and metal below. */
    UNDERCUT
  }

  /** Lines along the edge of a square [-]; chosen, those of the map of a drawn piece. */
  private static final int FINE = 4;

  private static final byte OVER = 1;
  private static final byte SHUT = 2;

  private final byte[] marks;
  private final double cellArea;

  private final int held;

  private UndercutAnalysis(byte[] marks, int held, double cellArea) {
    this.marks = marks;
    this.held = held;
    this.cellArea = cellArea;
  }

  /**
   * Casts lines along the draw through every square.
   *
   * @param solid the piece, its parting plane at z = 0
   * @param grid the squares
   */
  public static UndercutAnalysis of(Solid solid, GapGrid grid) {
    SolidTree.Line line = new SolidTree(solid).line();
    double slack = PartingPlane.slack(solid.high(2) - solid.low(2));
    double small = grid.cell() / FINE;
    byte[] marks = new byte[grid.size()];
    int held = 0;
    for (int c = 0; c < marks.length; c++) {
      int over = 0;
      int shut = 0;
      int inside = 0;
      for (int k = 0; k < FINE * FINE; k++) {
        int column = FINE * (c % grid.nx()) + k % FINE;
        int row = FINE * (c / grid.nx()) + k / FINE;
        double x = grid.x0() + (column + 0.5) * small;
        double y = grid.y0() + (row + 0.5) * small;
        line.cast(x, y);
        inside += line.spans() > 0 ? 1 : 0;
        shut += line.spans() > 1 ? 1 : 0;
        over += line.leansOver(slack) ? 1 : 0;
      }
      held += 2 * inside >= FINE * FINE ? 1 : 0;
      if (2 * shut >= FINE * FINE) {
        marks[c] = SHUT;
      } else if (2 * over >= FINE * FINE) {
        marks[c] = OVER;
      }
    }
    return new UndercutAnalysis(marks, held, grid.cell() * grid.cell());
  }

  /** The mark of a square of the map. */
  public Mark at(int cell) {
    return switch (marks[cell]) {
      case SHUT -> Mark.UNDERCUT;
      case OVER -> Mark.OVERHANG;
      default -> Mark.NONE;
    };
  }

  /** Area of all squares with a mark [m2]. */
  public double area(Mark mark) {
    int count = 0;
    for (int c = 0; c < marks.length; c++) {
      count += at(c) == mark ? 1 : 0;
    }
    return count * cellArea;
  }

  /** The same as a share of the squares that hold metal [-]. */
  public double share(Mark mark) {
    return held == 0 ? 0.0 : area(mark) / (held * cellArea);
  }
}
