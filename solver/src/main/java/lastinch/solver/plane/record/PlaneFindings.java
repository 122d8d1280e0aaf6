package lastinch.solver.plane.record;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.GapMap;
import lastinch.solver.judge.Judge;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.Finding;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Spot;

/** Hands what a run over the plane saw to the judge. */
public final class PlaneFindings {
  private final PlaneRun run;
  private final boolean filled;
  private final Judge judge;

  public PlaneFindings(PlaneRun run, boolean filled) {
    this.run = run;
    this.filled = filled;
    judge = new Judge(run.job, run.melt);
  }

  /** What a caster should hear besides the verdict, heaviest first. */
  public List<Finding> list(List<GateRecord> gates, double massToRim) {
    boolean held = run.sprue.isHeld();
    judge.metal(massToRim, held);
    if (!held) {
      judge.spilled(run.sprue.cup().spilled());
    }
    if (run.watch.ranDry() && !filled) {
      judge.ranDry(run.flow.time());
    }
    if (!held && !run.watch.tally.wasFull()) {
      judge.sprueNeverFull(run.sprue.mostStanding(), run.watch.tally.couldPass());
    }
    for (GateRecord gate : gates) {
      judge.gate(gate.name(), gate.peakSpeed());
    }
    int fastest = run.recorder.fastestCell(run.piece);
    if (fastest >= 0) {
      judge.front(spot(fastest), run.recorder.speed[fastest]);
    }
    int hardest = most(run.impacts.speed);
    int thickest = most(run.grid.gap);
    if (hardest >= 0) {
      judge.against(spot(hardest), run.impacts.speed[hardest]);
      judge.thick(spot(thickest), run.grid.gap[thickest]);
    }
    judge.air(run.mostAirPush());
    judge.mould(run.mouldTemperature);
    judge.solid(run.heat.mostSolidAnywhere());
    judge.mush(Optional.empty(), run.mushShare());
    judge.clamped(run.recorder.beyondTable());
    return judge.heaviestFirst();
  }

  /** The square of the piece with the largest value; negative if there is none. */
  private int most(double[] values) {
    int most = -1;
    for (int c = 0; c < run.grid.size; c++) {
      if (run.piece[c] && (most < 0 || values[c] > values[most])) {
        most = c;
      }
    }
    return most;
  }

  private Spot spot(int c) {
    int k = run.mapCell[c];
    GapMap.Part part = run.map.parts().get(run.map.part(k));
    return new Spot(part.name(), Math.max(0.0, run.map.along(k)));
  }
}
