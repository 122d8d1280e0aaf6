package lastinch.solver.plane.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.solver.physics.Gravity;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.heat.FrontMarkerField;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.PushBalance;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;

/**
 * Where and why metal stands for good. A stretch of a limb stays empty when metal never came to its
 * middle; a piece stops short also when more than its rim stays empty beside the middle.
 */
public final class PlaneStops {
  /**
   * Air ahead counts as the reason when it takes this share of the push [-]; our own limit, no
   * source.
   */
  private static final double AIR_COUNTS = 0.5;

  /** Share of a rim that rounds it when it stays open [-]; our own limit, no source. */
  private static final double ROUNDS = 0.1;

  /** Half the length of rim that is judged together [m]; our own limit, no source. */
  private static final double TOGETHER = 8e-3;

  /**
   * Share of a cell that metal fills for it to count as there [-]; chosen, that at which it carries
   * a pressure.
   */
  private static final double THERE = 0.5;

  private final PlaneRun run;
  private final PlaneLimbs lines;

  public PlaneStops(PlaneRun run, PlaneLimbs lines) {
    this.run = run;
    this.lines = lines;
  }

  /** A cell of the piece that metal never came to, or that it has left again. */
  private boolean isEmpty(int c) {
    return run.piece[c] && run.grid.volume[c] > 0.0 && !isThere(c);
  }

  private boolean isThere(int c) {
    return run.recorder.reached(c) && run.flow.state.fill(c) >= THERE;
  }

  /** Whether all that stays empty is rim. */
  public boolean onlyRims() {
    for (int c = 0; c < run.grid.size; c++) {
      if (isEmpty(c) && !lines.rim[c]) {
        return false;
      }
    }
    for (PlaneLimbs.Line line : lines.limbs()) {
      for (int c : line.middle) {
        if (isEmpty(c)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Metal without a break from the thick end of the first limb [m]; from its tip if fed there. */
  public double reach() {
    PlaneLimbs.Line line = lines.limbs().get(0);
    int n = line.count;
    if (!isEmpty(line.middle[0])) {
      int i = 0;
      while (i < n && !isEmpty(line.middle[i])) {
        i++;
      }
      return i * line.stretch;
    }
    int i = n;
    while (i > 0 && !isEmpty(line.middle[i - 1])) {
      i--;
    }
    return i < n ? i * line.stretch : 0.0;
  }

  /** Length of the limbs that stays empty along the middle, or beside it as a share of it [m]. */
  public double missing() {
    double along = 0.0;
    double length = 0.0;
    for (PlaneLimbs.Line line : lines.limbs()) {
      for (int c : line.middle) {
        along += isEmpty(c) ? line.stretch : 0.0;
      }
      length += line.count * line.stretch;
    }
    return along > 0.0 ? along : (1.0 - run.filledFraction()) * length;
  }

  /** All stops of a piece that stops short; the one with most left empty first. */
  public List<Stop> list(double time) {
    List<Stop> stops = new ArrayList<>();
    for (PlaneLimbs.Line line : lines.limbs()) {
      addAlong(stops, line, time);
    }
    if (stops.isEmpty()) {
      addBeside(stops, time);
    }
    stops.sort((a, b) -> Double.compare(b.missing(), a.missing()));
    return stops;
  }

  private void addAlong(List<Stop> stops, PlaneLimbs.Line line, double time) {
    int i = 0;
    while (i < line.count) {
      int from = i;
      while (i < line.count && isEmpty(line.middle[i])) {
        i++;
      }
      if (i > from) {
        double missing = (i - from) * line.stretch;
        boolean below = from > 0;
        int front = below ? line.middle[from - 1] : i < line.count ? line.middle[i] : -1;
        double at = (below || front < 0 ? from : i) * line.stretch;
        int beyond = line.middle[below || front < 0 ? from : i - 1];
        boolean down = !below && front >= 0;
        stops.add(stop(line, at, down ? Stop.Way.DOWN : Stop.Way.UP, missing, front, beyond, time));
        if (below && i < line.count) {
          int last = line.middle[i - 1];
          stops.add(stop(line, i * line.stretch, Stop.Way.DOWN, 0.0, line.middle[i], last, time));
        }
      }
      i++;
    }
  }

  /** The middle is there but more than a rim beside it is not. */
  private void addBeside(List<Stop> stops, double time) {
    for (PlaneLimbs.Line line : lines.limbs()) {
      double[] gone = new double[line.count];
      int[] front = new int[line.count];
      int[] beyond = new int[line.count];
      java.util.Arrays.fill(front, -1);
      int worst = -1;
      double all = 0.0;
      for (int c = 0; c < run.grid.size; c++) {
        if (isEmpty(c) && lines.of(run.map.part(run.mapCell[c])) == line) {
          int i = lines.stretchOf(line, run.map.along(run.mapCell[c]));
          gone[i] += run.grid.volume[c];
          all += run.grid.volume[c];
          int wet = wetBeside(c);
          front[i] = wet >= 0 ? wet : front[i];
          beyond[i] = wet >= 0 || beyond[i] == 0 ? c : beyond[i];
          worst = worst < 0 || gone[i] > gone[worst] ? i : worst;
        }
      }
      if (worst >= 0) {
        double share = all / run.pieceVolume * line.count * line.stretch;
        int cell = front[worst] >= 0 ? front[worst] : line.middle[worst];
        stops.add(stop(line, line.at(worst), Stop.Way.ASIDE, share, cell, beyond[worst], time));
      }
    }
  }

  private int wetBeside(int c) {
    int n = run.grid.stride;
    for (int other : new int[] {c - 1, c + 1, c - n, c + n}) {
      if (isThere(other)) {
        return other;
      }
    }
    return -1;
  }

  private Stop stop(
      PlaneLimbs.Line line,
      double at,
      Stop.Way way,
      double missing,
      int front,
      int beyond,
      double time) {
    double h = front < 0 ? run.melt.enthalpyIn : run.heat.leading().enthalpy[front];
    double air = run.flow.state.airPressure[beyond];
    double capillary = run.melt.capillary(run.grid.gap[beyond]);
    double head = run.watch.head() - below(beyond);
    return new Stop(
        line.part.name(),
        at,
        way,
        missing,
        time,
        reason(front, head, air),
        Optional.empty(),
        run.melt.table.temperature(h),
        run.melt.table.solid(h),
        new PushBalance(Math.max(0.0, head), 0.0, capillary, Math.max(0.0, air)));
  }

  /** Weight of metal from the inlet up to a cell [Pa]. */
  private double below(int c) {
    double inlet = run.map.height(run.mapCell[run.flow.gates.cells[0]]);
    return run.melt.density * Gravity.G * (run.map.height(run.mapCell[c]) - inlet);
  }

  private StopReason reason(int front, double head, double air) {
    boolean pressed = air > AIR_COUNTS * Math.max(1.0, head);
    if (front < 0) {
      return supply(pressed);
    }
    if (!frozeOnItsWay(front)) {
      return supply(pressed);
    }
    boolean slush = run.heat.leading().halted[front] && run.heat.mushShare[front] >= 0.5;
    return slush ? StopReason.SLUSH : StopReason.SKIN;
  }

  private boolean frozeOnItsWay(int c) {
    FrontMarkerField leading = run.heat.leading();
    return (leading.halted[c] || run.flow.shut[c]) && !leading.stoodFirst(c);
  }

  private StopReason supply(boolean pressed) {
    if (run.gateWatch.allFroze()) {
      return StopReason.FROZE_UPSTREAM;
    }
    if (run.watch.ranDry()) {
      return StopReason.NO_METAL;
    }
    return pressed ? StopReason.AIR : StopReason.CAPILLARITY;
  }

  /** State of the rim along each limb. */
  public List<EdgeStretch> edges() {
    List<EdgeStretch> found = new ArrayList<>();
    for (PlaneLimbs.Line line : lines.limbs()) {
      addEdges(found, line);
    }
    return found;
  }

  private void addEdges(List<EdgeStretch> found, PlaneLimbs.Line line) {
    double[] all = new double[line.count];
    double[] gone = new double[line.count];
    double[] pushed = new double[line.count];
    for (int c = 0; c < run.grid.size; c++) {
      if (lines.rim[c] && lines.of(run.map.part(run.mapCell[c])) == line) {
        int i = lines.stretchOf(line, run.map.along(run.mapCell[c]));
        double area = run.grid.volume[c] / run.grid.gap[c];
        all[i] += area;
        gone[i] += isEmpty(c) ? area : 0.0;
        int wet = isEmpty(c) ? wetBeside(c) : -1;
        pushed[i] += wet >= 0 && !frozeOnItsWay(wet) ? area : 0.0;
      }
    }
    int half = (int) Math.rint(TOGETHER / line.stretch);
    EdgeStretch.State[] state = new EdgeStretch.State[line.count];
    EdgeStretch.Cause[] cause = new EdgeStretch.Cause[line.count];
    for (int i = 0; i < line.count; i++) {
      double open = around(gone, i, half);
      boolean rounded = open > ROUNDS * around(all, i, half);
      boolean pressed = around(pushed, i, half) > 0.5 * open;
      state[i] =
          isEmpty(line.middle[i])
              ? EdgeStretch.State.EMPTY
              : rounded ? EdgeStretch.State.ROUNDED : EdgeStretch.State.FULL;
      cause[i] =
          state[i] != EdgeStretch.State.ROUNDED
              ? EdgeStretch.Cause.NONE
              : pressed ? EdgeStretch.Cause.PUSH : EdgeStretch.Cause.HEAT;
    }
    double from = 0.0;
    for (int i = 0; i < line.count; i++) {
      boolean ends = i + 1 == line.count || state[i] != state[i + 1] || cause[i] != cause[i + 1];
      if (ends) {
        double to = (i + 1) * line.stretch;
        found.add(new EdgeStretch(line.part.name(), from, to, state[i], cause[i]));
        from = to;
      }
    }
  }

  private static double around(double[] values, int at, int half) {
    double sum = 0.0;
    for (int i = Math.max(0, at - half); i <= Math.min(values.length - 1, at + half); i++) {
      sum += values[i];
    }
    return sum;
  }
}
