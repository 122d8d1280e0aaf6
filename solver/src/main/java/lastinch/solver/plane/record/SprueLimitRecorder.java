package lastinch.solver.plane.record;

import lastinch.solver.judge.FlowLimitTally;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.flow.Downsprue;
import lastinch.solver.result.FlowLimit;

/** Adds up what held the flow back, by time, and what the sprue could have passed. */
public final class SprueLimitRecorder {
  /** Share of the weight over the inlet from which air or gates hold the flow back [-]; chosen. */
  private static final double MOST_OF = 0.5;

  /** Lost in a gate, over density and speed squared [-]: half of entry 0.5 and exit 1. */
  private static final double LOST = 0.75;

  private final PlaneRun run;

  /** What held the flow back, by time. */
  public final FlowLimitTally tally = new FlowLimitTally();

  public SprueLimitRecorder(PlaneRun run) {
    this.run = run;
  }

  /** Books a step [s]. */
  public void note(double dt) {
    Downsprue sprue = run.sprue;
    if (sprue.isHeld()) {
      tally.by(FlowLimit.HEAD, dt);
      return;
    }
    double standing = sprue.standing();
    tally.stands(standing, sprue.isFull());
    if (!sprue.isFull()) {
      tally.byHand(run.flow.gates.flow(0), standing, run.job.gating().sprue().tall(), dt);
      return;
    }
    double push = MOST_OF * head();
    double speed = 0.0;
    for (int g = 0; g < run.job.gating().gates().size(); g++) {
      speed = Math.max(speed, run.gateWatch.speed(g));
    }
    double gates = LOST * run.melt.density * speed * speed;
    if (run.airPush() > push) {
      tally.by(FlowLimit.AIR, dt);
    } else {
      tally.by(gates > push ? FlowLimit.GATES : FlowLimit.HEAD, dt);
    }
  }

  /** Weight of the metal that stands over the inlet now [Pa]. */
  double head() {
    return run.flow.gates.pressure[0];
  }

  /** Whether crucible, cup and sprue hold no more metal. */
  boolean ranDry() {
    Downsprue sprue = run.sprue;
    return !sprue.isHeld()
        && sprue.cup().crucibleEmpty()
        && sprue.above() < 1e-3 * run.grid.totalVolume();
  }
}
