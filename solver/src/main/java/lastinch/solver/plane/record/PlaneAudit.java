package lastinch.solver.plane.record;

import lastinch.solver.plane.PlaneRun;
import lastinch.solver.result.ConservationFigures;

/** Books of a pour over the plane, from what is stored where, never from the flows it used. */
public final class PlaneAudit {
  private final PlaneRun run;

  public PlaneAudit(PlaneRun run) {
    this.run = run;
  }

  /** Closes the books; a plane that is fed without cup and sprue counts what came in. */
  public ConservationFigures close() {
    double density = run.melt.density;
    boolean held = run.sprue.isHeld();
    double inPlane = run.flow.state.totalLiquid() * density;
    double poured = held ? run.flow.gates.passed(0) * density : run.sprue.cup().poured();
    double spilled = held ? 0.0 : run.sprue.cup().spilled();
    double there = inPlane + (held ? 0.0 : run.sprue.above() * density);
    double metal = poured > 0.0 ? (poured - there - spilled) / poured : 0.0;
    double in =
        held ? run.heat.carriedIn() : poured * run.melt.enthalpyIn - run.sprue.spilledHeat();
    double inMetal = run.heat.heldInMetal() + (held ? 0.0 : run.sprue.heatAbove());
    double inMould = run.heat.heldInMould() + (held ? 0.0 : run.sprue.heatInWalls());
    double toAir = run.heat.lostToAir() + (held ? 0.0 : run.sprue.lostToAir());
    double reference = run.melt.table.latentHeat() + Math.abs(run.melt.enthalpyIn);
    double scale = Math.max(1e-12, poured) * reference;
    double heat = run.melt.water ? 0.0 : (in - inMetal - inMould - toAir) / scale;
    double air = run.airAtStart;
    double airError =
        air > 0.0 ? (air - run.flow.pockets.held() - run.flow.pockets.leaked()) / air : 0.0;
    boolean pushes = run.job.checking().pushesBack() && !run.melt.water;
    return new ConservationFigures(
        metal,
        heat,
        pushes ? airError : 0.0,
        0.0,
        poured,
        spilled,
        held ? 0.0 : run.sprue.cup().left(),
        in,
        inMetal,
        inMould,
        toAir);
  }
}
