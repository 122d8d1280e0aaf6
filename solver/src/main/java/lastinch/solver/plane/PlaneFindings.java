package lastinch.solver.plane;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastinch.solver.casting.GapMap;
import lastinch.solver.physics.SplashLimit;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Finding.Kind;
import lastinch.solver.result.Finding.Severity;
import lastinch.solver.result.GateRecord;
import lastinch.solver.result.Spot;

/** What a caster should hear of a pour over the plane besides the verdict, heaviest first. */
final class PlaneFindings {
  /** Gap in capillary lengths up to which metal fills it from face to face [-]. */
  private static final double PUDDLE = 1.5;

  private static final double AIR_COUNTS = 200.0;
  private static final double FLASK_APART = 5.0;

  private final PlaneRun run;
  private final boolean filled;
  private final List<Finding> found = new ArrayList<>();

  PlaneFindings(PlaneRun run, boolean filled) {
    this.run = run;
    this.filled = filled;
  }

  List<Finding> list(List<GateRecord> gates, double massToRim) {
    metal(massToRim);
    if (!run.sprue.isHeld() && !run.watch.wasFull()) {
      add(
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
        add(
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
    puddles();
    if (run.mostAirPush() > AIR_COUNTS) {
      add(Kind.AIR_PUSHES_BACK, Severity.WATCH, Optional.empty(), "pressure", run.mostAirPush());
    }
    mould();
    found.sort((a, b) -> b.severity().compareTo(a.severity()));
    return List.copyOf(found);
  }

  private void add(Kind kind, Severity severity, Optional<Spot> where, Object... figures) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int i = 0; i < figures.length; i += 2) {
      named.put((String) figures[i], (Double) figures[i + 1]);
    }
    found.add(new Finding(kind, severity, where, named));
  }

  private void metal(double massToRim) {
    double melted = run.job.metal().melted();
    double needed = massToRim - run.job.gating().cup().volume() * run.melt.density;
    if (run.sprue.isHeld()) {
      return;
    }
    if (melted < needed) {
      add(
          Kind.TOO_LITTLE_METAL,
          Severity.SERIOUS,
          Optional.empty(),
          "needed",
          needed,
          "melted",
          melted);
    }
    if (run.sprue.cup().spilled() > 1e-3 * melted) {
      add(Kind.CUP_OVERFLOWS, Severity.WATCH, Optional.empty(), "mass", run.sprue.cup().spilled());
    }
    if (run.watch.ranDry() && !filled) {
      add(Kind.CUP_RUNS_EMPTY, Severity.SERIOUS, Optional.empty(), "time", run.flow.time());
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
    double fastest = run.recorder.fastest();
    if (fastest > limit) {
      add(
          Kind.FRONT_SPLASHES,
          Severity.NOTE,
          spot(run.recorder.fastestCell()),
          "speed",
          fastest,
          "limit",
          limit);
    }
  }

  private void puddles() {
    if (run.job.mould().attitude().upright() || run.melt.water) {
      return;
    }
    double limit = PUDDLE * run.melt.capillaryLength;
    int thickest = -1;
    for (int c = 0; c < run.grid.size; c++) {
      boolean thicker = thickest < 0 || run.grid.gap[c] > run.grid.gap[thickest];
      if (run.piece[c] && run.grid.gap[c] > limit && thicker) {
        thickest = c;
      }
    }
    if (thickest >= 0) {
      add(
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
      add(
          Kind.ABOVE_CEILING,
          Severity.SERIOUS,
          Optional.empty(),
          "temperature",
          temperature,
          "ceiling",
          ceiling);
    }
    if (temperature - run.mouldTemperature > FLASK_APART) {
      add(
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
      add(Kind.GAP_COUNTS, Severity.NOTE, Optional.empty(), "solid", solid);
    }
    double share = run.mushShare();
    if (share > 0.1 && share < 0.9) {
      add(Kind.MUSH_SHARE_COUNTS, Severity.NOTE, Optional.empty(), "share", share);
    }
    if (run.melt.table.clamps() > 0) {
      add(
          Kind.TABLE_CLAMPED,
          Severity.WATCH,
          Optional.empty(),
          "count",
          (double) run.melt.table.clamps());
    }
  }
}
