package lastinch.solver.plane.record;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.result.GateRecord;

/** Watches what the gates of the job do. */
public final class GateRecorder {
  /** Time that the front of metal takes to arrive [s]; estimate, no source. */
  private static final double ARRIVING = 20e-3;

  private final PlaneRun run;
  private final int[][] cells;
  private final double[] first;
  private final double[] froze;
  private final double[] speed;
  private final double[] peak;
  private final double[] at;

  public GateRecorder(PlaneRun run, PourCase job, GapMap map, int[] gateOfCell) {
    this.run = run;
    int n = job.gating().gates().size();
    cells = new int[n][];
    first = new double[n];
    froze = new double[n];
    speed = new double[n];
    peak = new double[n];
    at = new double[n];
    for (int g = 0; g < n; g++) {
      first[g] = Double.POSITIVE_INFINITY;
      froze[g] = Double.POSITIVE_INFINITY;
      List<Integer> found = new ArrayList<>();
      double sum = 0.0;
      for (int c = 0; c < gateOfCell.length; c++) {
        if (gateOfCell[c] == g) {
          found.add(c);
          sum += map.along(run.mapCell[c]);
        }
      }
      cells[g] = found.stream().mapToInt(Integer::intValue).toArray();
      at[g] = found.isEmpty() ? 0.0 : sum / found.size();
    }
  }

  /** Notes a step [s]. */
  public void note(double dt) {
    FlowState s = run.flow.state;
    int n = run.grid.stride;
    for (int g = 0; g < cells.length; g++) {
      double sum = 0.0;
      int wet = 0;
      int shut = 0;
      for (int c : cells[g]) {
        if (s.active[c]) {
          double u = 0.5 * (s.u[c] + s.u[c + 1]);
          double v = 0.5 * (s.v[c] + s.v[c + n]);
          sum += Math.sqrt(u * u + v * v);
          wet++;
          shut += run.flow.shut[c] ? 1 : 0;
        }
      }
      if (wet == 0) {
        continue;
      }
      first[g] = Math.min(first[g], run.flow.time());
      speed[g] += (sum / wet - speed[g]) * dt / (ARRIVING + dt);
      peak[g] = Math.max(peak[g], speed[g]);
      boolean closed = shut == wet && wet == cells[g].length;
      froze[g] = closed ? Math.min(froze[g], run.flow.time()) : Double.POSITIVE_INFINITY;
    }
  }

  /** Whether every gate is frozen. */
  boolean allFroze() {
    boolean all = froze.length > 0;
    for (double f : froze) {
      all &= f < Double.POSITIVE_INFINITY;
    }
    return all;
  }

  /** Speed in a gate now [m/s]. */
  double speed(int gate) {
    return speed[gate];
  }

  /** What each gate did, in the order of the case. */
  public List<GateRecord> records() {
    List<Gate> gates = run.job.gating().gates();
    double[] through = new double[gates.size()];
    double all = 0.0;
    for (int g = 0; g < through.length; g++) {
      for (int c = 0; c < run.grid.size; c++) {
        through[g] +=
            run.piece[c] ? run.origins.share(run.flow.state, g, c) * run.flow.state.liquid[c] : 0.0;
      }
      all += through[g];
    }
    List<GateRecord> records = new ArrayList<>();
    for (int g = 0; g < through.length; g++) {
      records.add(
          new GateRecord(
              gates.get(g).name(),
              at[g],
              when(first[g]),
              when(froze[g]),
              peak[g],
              all > 0.0 ? through[g] / all : 0.0));
    }
    return records;
  }

  private static OptionalDouble when(double time) {
    return time < Double.POSITIVE_INFINITY ? OptionalDouble.of(time) : OptionalDouble.empty();
  }
}
