package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.result.Outcome;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Books of whole runs of the plane: hand, sprue, metal and heat. */
class PlaneRunConservationTest {
  private static PourCase job() {
    return SampleJob.strip(0.2, 0.012, 0.0015)
        .sprue(0.1, 0.014, 0.01)
        .well(0.016, 0.01)
        .gateAt(Side.THICK_END, 0.012, 0.0015, 0.008)
        .checking(SampleJob.Options.bare())
        .build();
  }

  @Test
  void metalAndHeatAreKeptFromTheCrucibleToTheStop() {
    PlaneRun run = new PlaneRun(job(), CavityMap.of(job(), 2e-3));
    Outcome outcome = run.run((time, filled) -> {}, () -> run.flow.time() > 0.8);
    assertThat(outcome).isNotInstanceOf(Outcome.BrokeDown.class);
    assertThat(run.filledFraction()).isGreaterThan(0.1);
    double poured = run.sprue.cup().poured() / run.melt.density;
    double there = run.sprue.above() + run.flow.state.totalLiquid();
    assertThat(there).isCloseTo(poured, offset(1e-10 * poured));
    double brought = run.heat.carriedIn();
    double kept = run.heat.heldInMetal() + run.heat.heldInMould() + run.heat.lostToAir();
    double scale = run.heat.heldInMould();
    assertThat(kept).isCloseTo(brought, offset(1e-9 * scale));
    double above = poured * run.melt.density * run.melt.enthalpyIn;
    double all = kept + run.sprue.heatAbove() + run.sprue.heatInWalls();
    assertThat(all).isCloseTo(above, offset(1e-6 * above));
  }

  @Test
  void sameJobGivesTheSameBits() {
    PlaneRun one = new PlaneRun(job(), CavityMap.of(job(), 3e-3));
    PlaneRun two = new PlaneRun(job(), CavityMap.of(job(), 3e-3));
    one.run((time, filled) -> {}, () -> one.flow.time() > 0.3);
    two.run((time, filled) -> {}, () -> two.flow.time() > 0.3);
    assertThat(two.heat.content).containsExactly(one.heat.content);
    assertThat(two.recorder.time).containsExactly(one.recorder.time);
  }
}
