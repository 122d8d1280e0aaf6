package lastinch.solver.plane.record;

import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.flow.Downsprue;
import lastinch.solver.result.FlowLimit;

/** Adds up what held the flow back, by time, and what the sprue could have passed. */
public final class SprueLimitRecorder {
  private final PlaneRun run;
  private double byHand;
  private double byGates;
  private double byHead;
  private double byAir;
  private double passed;
  private double could;
  private boolean full;

  public SprueLimitRecorder(PlaneRun run) {
    this.run = run;
  }

  /** Books a step [s]. */
  public void note(double dt) {
    Downsprue sprue = run.sprue;
    if (sprue.isHeld()) {
      byHead += dt;
      return;
    }
    full |= sprue.isFull();
    double flow = run.flow.gates.flow(0);
    double standing = sprue.standing();
    if (!sprue.isFull()) {
      byHand += dt;
      if (flow > 0.0 && standing > 0.0) {
        passed += flow * dt;
        could += flow * Math.sqrt(run.job.gating().sprue().tall() / standing) * dt;
      }
      return;
    }
    double push = head();
    double speed = 0.0;
    for (int g = 0; g < run.job.gating().gates().size(); g++) {
      speed = Math.max(speed, run.gateWatch.speed(g));
    }
    double gates = 0.75 * run.melt.density * speed * speed;
    if (run.airPush() > 0.5 * push) {
      byAir += dt;
    } else if (gates > 0.5 * push) {
      byGates += dt;
    } else {
      byHead += dt;
    }
  }

  /** Weight of the metal that stands over the inlet now [Pa]. */
  double head() {
    return run.flow.gates.pressure[0];
  }

  /** What held the flow back for most of the pour. */
  public FlowLimit limit() {
    double most = Math.max(Math.max(byHand, byGates), Math.max(byHead, byAir));
    if (most == byHand) {
      return FlowLimit.HAND;
    }
    if (most == byGates) {
      return FlowLimit.GATES;
    }
    return most == byHead ? FlowLimit.HEAD : FlowLimit.AIR;
  }

  /** Whether metal ever stood up to the cup. */
  boolean wasFull() {
    return full;
  }

  /** How many times the pour a full sprue could pass [-]; 1 when nothing passed. */
  double couldPass() {
    return passed > 0.0 ? could / passed : 1.0;
  }

  /** Whether crucible, cup and sprue hold no more metal. */
  boolean ranDry() {
    Downsprue sprue = run.sprue;
    return !sprue.isHeld()
        && sprue.cup().crucibleEmpty()
        && sprue.above() < 1e-3 * run.grid.totalVolume();
  }
}
