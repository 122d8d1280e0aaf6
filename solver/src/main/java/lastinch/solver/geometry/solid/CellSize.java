package lastinch.solver.geometry.solid;

/** How fine the cells of a map are by default. */
public final class CellSize {
  /** Sizes to choose from [m]; chosen, round. */
  private static final double[] ROUND = {0.25e-3, 0.5e-3, 1e-3, 2e-3, 5e-3, 10e-3, 20e-3};

  /** Most cells along the piece [-]; our choice. */
  private static final double MOST = 400.0;

  private CellSize() {}

  /**
   * The usual size of a cell: the least round one that needs no more than 400 along the piece, our
   * choice.
   *
   * @param longest longest size of the piece [m]
   * @return edge length of a cell [m]
   */
  public static double usual(double longest) {
    for (double cell : ROUND) {
      if (longest / cell <= MOST) {
        return cell;
      }
    }
    return ROUND[ROUND.length - 1];
  }
}
