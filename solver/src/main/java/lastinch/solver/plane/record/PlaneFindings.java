package lastinch.solver.plane.record;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.GapMap;
import lastinch.solver.physics.SplashLimit;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Finding.Kind;
import lastinch.solver.result.Finding.Severity;
import lastinch.solver.result.FindingList;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Spot;

/** What a caster should hear of a pour over the plane besides the verdict, heaviest first. */
public final class PlaneFindings {
  private final PlaneRun run;
  private final boolean filled;
  private final FindingList found = new FindingList();

  public PlaneFindings(PlaneRun run, boolean filled) {
    this.run = run;
    this.filled = filled;
  }

  public List<Finding> list(List<GateRecord> gates, double massToRim) {
    metal(massToRim);
    if (!run.sprue.isHeld() && !run.watch.wasFull()) {
      found.add(
          Kind.SPRUE_NEVER_FULL,
          Severity.NOTE,
          Optional.empty(),
          "standing",
          run.sprue.mostStanding(),
          "couldPass",
          run.watch.couldPass());
    }
    for (GateRecord gate : gates) {
      if (gate.peakSpeed() > SplashLimit.TRADE) {
        found.add(
            Kind.GATE_SPLASHES,
            gate.peakSpeed() > 2.0 * SplashLimit.TRADE ? Severity.SERIOUS : Severity.WATCH,
            Optional.of(new Spot(gate.name(), 0.0)),
            "speed",
            gate.peakSpeed(),
            "limit",
            SplashLimit.TRADE);
      }
    }
    fronts();
    impacts();
    puddles();
    if (run.mostAirPush() > FindingList.AIR_COUNTS) {
      found.add(
          Kind.AIR_PUSHES_BACK, Severity.WATCH, Optional.empty(), "pressure", run.mostAirPush());
    }
    mould();
    return found.heaviestFirst();
  }

  private void metal(double massToRim) {
    double melted = run.job.metal().melted();
    double needed = massToRim - run.job.gating().cup().volume() * run.melt.density;
    if (run.sprue.isHeld()) {
      return;
    }
    if (melted < needed) {
      found.add(
          Kind.TOO_LITTLE_METAL,
          Severity.SERIOUS,
          Optional.empty(),
          "needed",
          needed,
          "melted",
          melted);
    }
    if (run.sprue.cup().spilled() > 1e-3 * melted) {
      found.add(
          Kind.CUP_OVERFLOWS, Severity.WATCH, Optional.empty(), "mass", run.sprue.cup().spilled());
    }
    if (run.watch.ranDry() && !filled) {
      found.add(Kind.CUP_RUNS_EMPTY, Severity.SERIOUS, Optional.empty(), "time", run.flow.time());
    }
  }

  private Optional<Spot> spot(int c) {
    int k = run.mapCell[c];
    GapMap.Part part = run.map.parts().get(run.map.part(k));
    return Optional.of(new Spot(part.name(), Math.max(0.0, run.map.along(k))));
  }

  private void fronts() {
    if (run.melt.water) {
      return;
    }
    double limit =
        SplashLimit.speed(
            Math.max(1e-6, run.melt.alloy.surfaceTension().value()), run.melt.density);
    int fastest = run.recorder.fastestCell(run.piece);
    if (fastest >= 0 && run.recorder.speed[fastest] > limit) {
      found.add(
          Kind.FRONT_SPLASHES,
          Severity.NOTE,
          spot(fastest),
          "speed",
          run.recorder.speed[fastest],
          "limit",
          limit);
    }
  }

  /** The place of the piece where metal runs hardest against the mould. */
  private void impacts() {
    int hardest = 0;
    for (int c = 0; c < run.grid.size; c++) {
      if (run.piece[c] && run.impacts.speed[c] > run.impacts.speed[hardest]) {
        hardest = c;
      }
    }
    double speed = run.impacts.speed[hardest];
    if (speed > SplashLimit.TRADE) {
      found.add(
          Kind.RUNS_AGAINST_MOULD,
          Severity.NOTE,
          spot(hardest),
          "speed",
          speed,
          "limit",
          SplashLimit.TRADE);
    }
  }

  private void puddles() {
    if (run.job.mould().attitude().upright() || run.melt.water) {
      return;
    }
    double limit = FindingList.PUDDLE * run.melt.capillaryLength;
    int thickest = -1;
    for (int c = 0; c < run.grid.size; c++) {
      boolean thicker = thickest < 0 || run.grid.gap[c] > run.grid.gap[thickest];
      if (run.piece[c] && run.grid.gap[c] > limit && thicker) {
        thickest = c;
      }
    }
    if (thickest >= 0) {
      found.add(
          Kind.PUDDLES,
          Severity.NOTE,
          spot(thickest),
          "thickness",
          run.grid.gap[thickest],
          "limit",
          limit);
    }
  }

  private void mould() {
    double temperature = run.job.mould().temperature().value();
    double ceiling = run.job.mould().medium().ceiling().value();
    if (temperature > ceiling) {
      found.add(
          Kind.ABOVE_CEILING,
          Severity.SERIOUS,
          Optional.empty(),
          "temperature",
          temperature,
          "ceiling",
          ceiling);
    }
    if (temperature - run.mouldTemperature > FindingList.FLASK_APART) {
      found.add(
          Kind.FLASK_EDGE,
          Severity.NOTE,
          Optional.empty(),
          "kiln",
          temperature,
          "edge",
          run.mouldTemperature);
    }
    double solid = run.heat.mostSolidAnywhere();
    if (solid > run.job.mould().medium().skinFrees().value()) {
      found.add(Kind.GAP_COUNTS, Severity.NOTE, Optional.empty(), "solid", solid);
    }
    double share = run.mushShare();
    if (share > 0.1 && share < 0.9) {
      found.add(Kind.MUSH_SHARE_COUNTS, Severity.NOTE, Optional.empty(), "share", share);
    }
    if (run.recorder.beyondTable() > 0) {
      found.add(
          Kind.TABLE_CLAMPED,
          Severity.WATCH,
          Optional.empty(),
          "count",
          (double) run.recorder.beyondTable());
    }
  }
}
