package lastinch.solver.plane.record;

import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.PlaneFlow;
import lastinch.solver.plane.flow.PlaneGrid;

/**
 * Which gate the metal came through: one dye per gate, given to metal inside the gate and carried
 * with the metal's volumes.
 */
public final class GateTracer implements PlaneFlow.Carried {
  /** No gate: metal that came another way. */
  public static final int NONE = -1;

  private final PlaneGrid grid;
  private final int[] gateOfCell;
  private final double[][] dye;
  private final double[] flowX;
  private final double[] flowY;

  /**
   * Starts without dye.
   *
   * @param gates how many
   * @param gateOfCell gate whose channel a cell belongs to, {@link #NONE} elsewhere
   */
  public GateTracer(PlaneGrid grid, int gates, int[] gateOfCell) {
    this.grid = grid;
    this.gateOfCell = gateOfCell.clone();
    dye = new double[gates][grid.size];
    flowX = new double[grid.size];
    flowY = new double[grid.size];
  }

  @Override
  public void carry(FlowState s, double dt) {
    for (int k = 0; k < dye.length; k++) {
      carry(s, dye[k], k);
    }
  }

  private void carry(FlowState s, double[] d, int gate) {
    int n = grid.stride;
    for (int j = s.rowFrom; j <= s.rowTo + 1; j++) {
      int end = s.last[j] + 1;
      for (int c = s.first[j]; c <= end; c++) {
        flowX[c] = share(s, d, s.fluxX[c], s.fluxX[c] > 0.0 ? c - 1 : c);
        flowY[c] = share(s, d, s.fluxY[c], s.fluxY[c] > 0.0 ? c - n : c);
      }
    }
    for (int j = s.rowFrom; j <= s.rowTo; j++) {
      int end = s.last[j];
      for (int c = s.first[j]; c <= end; c++) {
        double net = (s.fluxX[c] - s.fluxX[c + 1]) + (s.fluxY[c] - s.fluxY[c + n]);
        double after = Math.max(0.0, s.liquid[c] + net + s.gateFlux[c]);
        int own = gateOfCell[c];
        if (own == NONE) {
          double in = (flowX[c] - flowX[c + 1]) + (flowY[c] - flowY[c + n]);
          d[c] = Math.max(0.0, Math.min(after, d[c] + in));
        } else {
          d[c] = own == gate ? after : 0.0;
        }
      }
    }
  }

  private static double share(FlowState s, double[] d, double flux, int donor) {
    return flux == 0.0 || d[donor] == 0.0 ? 0.0 : flux * Math.min(1.0, d[donor] / s.liquid[donor]);
  }

  /** Gate that most of the metal in a cell came through, or {@link #NONE}. */
  public int of(int c) {
    int best = NONE;
    double most = 0.0;
    for (int k = 0; k < dye.length; k++) {
      if (dye[k][c] > most) {
        most = dye[k][c];
        best = k;
      }
    }
    return best;
  }

  /** Share of a cell's metal that came through a gate [-]. */
  double share(FlowState s, int gate, int c) {
    return s.liquid[c] > 0.0 ? Math.min(1.0, dye[gate][c] / s.liquid[c]) : 0.0;
  }
}
