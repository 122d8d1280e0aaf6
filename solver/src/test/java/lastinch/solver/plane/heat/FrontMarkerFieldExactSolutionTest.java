package lastinch.solver.plane.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.material.Band;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/**
 * Leading metal in a flat channel whose walls stay at their heat: its heat over that of the wall
 * falls with exp(-2 h t / (rho b c)), t the time it has been under way.
 */
class FrontMarkerFieldExactSolutionTest {
  private static final double GAP = 1.2e-3;
  private static final double CONTACT = 1000.0;
  private static final double SPECIFIC_HEAT = 450.0;

  private static PlaneRun poured() {
    PourCase job =
        SampleJob.strip(0.16, 0.02, GAP)
            .medium(SampleFoundry.roundMould(CONTACT))
            .alloy(SampleFoundry.neverFreezes())
            .sprue(0.1, 0.014, 0.01)
            .gateAt(Side.THICK_END, 0.02, GAP, 0.006)
            .pour(new Pour.AtRate(Band.typed(0.12)))
            .checking(SampleJob.Options.bare().mouldStays())
            .build();
    PlaneRun run = new PlaneRun(job, CavityMap.of(job, 2e-3));
    run.run((time, filled) -> {}, () -> run.filledFraction() > 0.95);
    return run;
  }

  private static int cell(PlaneRun run, double along) {
    int best = -1;
    for (int c = 0; c < run.grid.size; c++) {
      boolean middle = run.piece[c] && c / run.grid.stride == run.grid.ny / 2 + PlaneGrid.HALO;
      double off = middle ? Math.abs(run.map.along(run.mapCell[c]) - along) : 1.0;
      if (middle && (best < 0 || off < Math.abs(run.map.along(run.mapCell[best]) - along))) {
        best = c;
      }
    }
    return best;
  }

  /** Measured over stated loss between two places. */
  private static double ratio(PlaneRun run, double faces) {
    int a = cell(run, 0.05);
    int b = cell(run, 0.14);
    double wall = run.mouldTemperature;
    double hotA = run.melt.table.temperature(run.recorder.enthalpy[a]) - wall;
    double hotB = run.melt.table.temperature(run.recorder.enthalpy[b]) - wall;
    double way = run.recorder.time[b] - run.recorder.time[a];
    double stated = faces * CONTACT * way / (run.melt.density * GAP * SPECIFIC_HEAT);
    return Math.log(hotA / hotB) / stated;
  }

  /** Within 1 %: steps of flow of a millisecond or two, taken explicitly, cost a few tenths. */
  @Test
  void itCoolsByBothFacesAllTheWay() {
    assertThat(ratio(poured(), 2.0)).isCloseTo(1.0, offset(0.01));
  }

  /** A metal that loses heat through one face only would be off by half. */
  @Test
  void aLawWithOneFaceIsFarOff() {
    assertThat(Math.abs(ratio(poured(), 1.0) - 1.0)).isGreaterThan(0.5);
  }
}
