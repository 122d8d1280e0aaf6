package lastinch.solver.plane.record;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.PlaneField;

/**
 * Keeps how the plane looks every so often; when there are {@value #MOST} moments, or as many as
 * {@value #MOST_SQUARES} squares fit into, every second goes.
 */
public final class PlaneSnapshots {
  /** Most moments kept [-]; chosen, a film of some seconds. */
  private static final int MOST = 400;

  /** Moments kept however large the map [-]; chosen. */
  private static final int FEWEST = 8;

  /** Squares of all moments together [-]; chosen: some 100 MB. */
  private static final int MOST_SQUARES = 8_000_000;

  private final PlaneRun run;
  private final List<PlaneField.Moment> kept = new ArrayList<>();
  private double every;
  private double next;

  /**
   * Begins.
   *
   * @param every seconds between two moments [s]; infinite for the end alone
   */
  public PlaneSnapshots(PlaneRun run, double every) {
    this.run = run;
    this.every = every;
  }

  /** Keeps the present moment when it is due. */
  public void note() {
    if (run.flow.time() < next || run.filledFraction() == 0.0) {
      return;
    }
    keep();
    next = run.flow.time() + every;
    if (kept.size() >= Math.max(FEWEST, Math.min(MOST, MOST_SQUARES / run.mapCells()))) {
      for (int i = kept.size() - 2; i >= 0; i -= 2) {
        kept.remove(i);
      }
      every *= 2.0;
    }
  }

  private void keep() {
    int n = run.mapCells();
    float[] fill = new float[n];
    float[] temperature = new float[n];
    float[] pressure = new float[n];
    boolean[] stopped = new boolean[n];
    for (int k = 0; k < n; k++) {
      int c = run.gridCell(k);
      if (run.map.isOpen(k) && run.flow.state.liquid[c] > 0.0) {
        fill[k] = (float) Math.min(1.0, run.flow.state.fill(c));
        temperature[k] = (float) run.melt.table.temperature(run.heat.enthalpy[c]);
        pressure[k] = isClosedIn(c) ? 0.0f : (float) run.flow.state.pressure[c];
        stopped[k] = run.flow.shut[c] || run.flow.halted[c];
      }
    }
    kept.add(new PlaneField.Moment(run.flow.time(), fill, temperature, pressure, stopped));
  }

  /** Whether nothing can flow to or from a cell: its metal has no pressure that means anything. */
  private boolean isClosedIn(int c) {
    int n = run.grid.stride;
    return isClosed(c, c - 1, run.grid.faceX[c])
        && isClosed(c, c + 1, run.grid.faceX[c + 1])
        && isClosed(c, c - n, run.grid.faceY[c])
        && isClosed(c, c + n, run.grid.faceY[c + n]);
  }

  private boolean isClosed(int c, int other, double face) {
    return face == 0.0 || run.flow.shut[c] || run.flow.shut[other];
  }

  /** All moments, the present one the last. */
  public List<PlaneField.Moment> close() {
    keep();
    return List.copyOf(kept);
  }
}
