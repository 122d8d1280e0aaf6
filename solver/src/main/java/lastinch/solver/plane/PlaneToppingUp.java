package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.GapMap;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.inlet.PouringCup;
import lastinch.solver.plane.flow.PlaneBreakdown;
import lastinch.solver.result.ToppedUp;

/**
 * After the verdict: metal flows on over the plane only while a feeder or an overflow of the map
 * fills; from then on the map is closed, and the hand fills sprue and cup by themselves.
 */
final class PlaneToppingUp {
  /**
   * Metal that must come in to count as filling, as a share of the map's room a second [1/s];
   * chosen.
   */
  private static final double FILLS = 1e-3;

  /** Seconds over which that is measured [s]; chosen. */
  private static final double WINDOW = 0.1;

  /** Step while the map is closed [s]; chosen. */
  private static final double STEP = 5e-3;

  private final PlaneRun run;
  private final double begun;
  private double told;
  private ToppedUp.Ended ended = ToppedUp.Ended.AT_REST;

  PlaneToppingUp(PlaneRun run) {
    this.run = run;
    begun = run.flow.time();
    told = begun;
  }

  ToppedUp run(RunObserver observer, BooleanSupplier stop) {
    double now = begun;
    try {
      if (hasPockets()) {
        flowOn(observer, stop);
      }
      now = run.flow.time();
      boolean rest = run.sprue.isHeld();
      while (!rest && ended == ToppedUp.Ended.AT_REST) {
        double level = run.sprue.cup().level();
        run.sprue.closed(now, STEP);
        now += STEP;
        run.sprue.heat(now, STEP);
        PouringCup cup = run.sprue.cup();
        boolean still = Math.abs(cup.level() - level) <= ToppedUp.AT_REST * STEP;
        rest = (cup.crucibleEmpty() || cup.isFull()) && still && !run.sprue.falls();
        check(now, rest, observer, stop);
      }
    } catch (PlaneBreakdown b) {
      ended = ToppedUp.Ended.BROKE_DOWN;
    }
    run.finishHeat();
    return result(Math.max(now, run.flow.time()));
  }

  private void flowOn(RunObserver observer, BooleanSupplier stop) {
    double inside = run.flow.state.totalLiquid();
    double since = run.flow.time();
    boolean fills = true;
    while (fills && ended == ToppedUp.Ended.AT_REST) {
      run.step();
      double now = run.flow.time();
      if (now - since >= WINDOW) {
        double more = run.flow.state.totalLiquid() - inside;
        fills = more > FILLS * run.grid.totalVolume() * (now - since);
        inside += more;
        since = now;
      }
      check(now, !fills, observer, stop);
    }
  }

  private void check(double now, boolean rest, RunObserver observer, BooleanSupplier stop) {
    if (stop.getAsBoolean()) {
      ended = ToppedUp.Ended.CANCELLED;
    } else if (!rest && now - begun > ToppedUp.LONGEST) {
      ended = ToppedUp.Ended.TOO_LONG;
    }
    if (now - told > ToppedUp.TOLD_EVERY) {
      told = now;
      observer.onStep(now, run.filledFraction());
    }
  }

  private static boolean isPocket(GapMap.Part part) {
    return part.kind() == GapMap.Kind.FEEDER || part.kind() == GapMap.Kind.OVERFLOW;
  }

  private boolean hasPockets() {
    return run.map.parts().stream().anyMatch(PlaneToppingUp::isPocket);
  }

  /** The plane has no height across itself: a feeder's level is the share of its room. */
  private List<ToppedUp.Level> levels() {
    List<GapMap.Part> parts = run.map.parts();
    double[] room = new double[parts.size()];
    double[] metal = new double[parts.size()];
    double[] tall = new double[parts.size()];
    for (int k = 0; k < run.mapCells(); k++) {
      if (run.map.isOpen(k)) {
        int p = run.map.part(k);
        int c = run.gridCell(k);
        double cell = run.map.cell() * run.map.cell() * run.map.gap(k);
        room[p] += cell;
        metal[p] += cell * Math.min(1.0, run.flow.state.fill(c));
        tall[p] = Math.max(tall[p], run.map.gap(k));
      }
    }
    List<ToppedUp.Level> levels = new ArrayList<>();
    for (int p = 0; p < parts.size(); p++) {
      if (isPocket(parts.get(p)) && room[p] > 0.0) {
        double share = metal[p] / room[p];
        levels.add(new ToppedUp.Level(parts.get(p).name(), share * tall[p], share));
      }
    }
    return levels;
  }

  private ToppedUp result(double now) {
    PouringCup cup = run.sprue.cup();
    return new ToppedUp(
        now,
        ended,
        cup.fullAt(),
        cup.level(),
        run.sprue.standing(),
        levels(),
        cup.poured(),
        cup.left(),
        cup.spilled());
  }
}
