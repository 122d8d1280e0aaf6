package lastinch.solver.network;

import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SeededJobs;
import lastinch.solver.run.SeededNetworks;

/** One job poured step by step to its end, with what no result tells noted on the way. */
final class SeededPour {
  /** No job of the set needs a fifth of these. */
  static final int MOST_STEPS = 50_000;

  final NetworkRun run;
  final PourResult result;
  private double overBound;
  private double fallen;

  private SeededPour(PourCase job) {
    run = new NetworkRun(job);
    double lowest = Double.POSITIVE_INFINITY;
    double highest = run.state.jointHeight[ChannelGraph.CUP] + run.state.rim;
    for (Channel c : run.state.channels) {
      lowest = Math.min(lowest, Math.min(c.shape.heightA, c.shape.heightB));
      highest = Math.max(highest, Math.max(c.shape.heightA, c.shape.heightB));
    }
    fallen = Math.sqrt(2.0 * Gravity.G * (highest - lowest));
    result = run.fill(RunObserver.NONE, this::note);
  }

  static SeededPour of(SampleJob job) {
    return new SeededPour(job.build());
  }

  static SeededPour of(PourCase job) {
    return new SeededPour(job);
  }

  static SeededPour number(int number) {
    return of(SeededJobs.job(number));
  }

  static SeededPour network(int number) {
    return new SeededPour(SeededNetworks.job(number));
  }

  boolean ended() {
    return result.outcome() instanceof Outcome.Filled || result.outcome() instanceof Outcome.Misrun;
  }

  /**
   * Highest speed anywhere over what a fall from the rim to the lowest place gives, times the
   * widest section of moving metal over the section there [-].
   */
  double speedOverBound() {
    return overBound;
  }

  private boolean note() {
    double widest = 0.0;
    for (Channel c : run.state.channels) {
      if (c.full || c.volumeA > 0.0 || c.volumeB > 0.0) {
        for (double area : c.shape.faceArea) {
          widest = Math.max(widest, area);
        }
      }
    }
    for (Channel c : run.state.channels) {
      int n = c.shape.cells;
      double fromA = c.full ? c.shape.length : c.positionA();
      double fromB = c.full ? c.shape.length : c.positionB();
      for (int f = 0; f <= n; f++) {
        double at = f * c.shape.dx;
        double flow = at <= fromA ? c.flowA : at >= fromB ? c.flowB : 0.0;
        // continuity: a speed here times the area here passes the widest place too
        overBound = Math.max(overBound, Math.abs(flow) / (fallen * Math.max(widest, 1e-12)));
      }
    }
    return run.steps() > MOST_STEPS;
  }
}
