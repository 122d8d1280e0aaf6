package lastinch.solver.network.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.Side;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.NetworkRun;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Heat of single places of the network, without any flow: the cup, and a cell that melts again. */
class CellHeatExactSolutionTest {
  private static final double CONTACT = 1000.0;
  private static final double WALL = 500.0 + SampleJob.ZERO;

  @Test
  void metalInTheCupCoolsByContactOfItsWettedWall() {
    NetworkRun run =
        new NetworkRun(
            SampleJob.strip(0.3, 0.03, 3e-3)
                .alloy(SampleFoundry.neverFreezes())
                .medium(SampleFoundry.roundMould(CONTACT))
                .mouldAt(WALL)
                .cup(0.06, 0.04)
                .sprueAt(0.1, 0.018, 0.014, Side.THICK_END)
                .melted(2.0)
                .empties(1.0)
                .checking(SampleJob.Options.bare().mouldStays())
                .build());
    NetworkState state = run.state;
    state.cup.pour(0.0, 0.2);
    double start = 1100.0 + SampleJob.ZERO;
    state.cupEnthalpy = state.melt.table.enthalpy(start);
    double dt = 1e-3;
    run.heat.step(dt);
    double cooled = start - state.melt.table.temperature(state.cupEnthalpy);
    double area = state.cup.wettedShare() * state.cup.wall();
    double rate =
        CONTACT
            * area
            * (start - WALL)
            / (state.melt.density * state.cup.volume() * state.melt.specificHeat);
    // a step of 1 ms is a thousandth of the time it takes; a conductance 5 % low is ten times that
    assertThat(cooled).isCloseTo(rate * dt, withinPercentage(0.5));
  }

  @Test
  void whatMeltsAgainComesOffTheSkin() {
    double hotWall = 1150.0 + SampleJob.ZERO;
    NetworkRun run =
        new NetworkRun(
            SampleJob.strip(0.3, 0.03, 3e-3)
                .alloy(SampleFoundry.tinBronze())
                .medium(SampleFoundry.roundMould(CONTACT))
                .mouldAt(hotWall)
                .sprueAt(0.1, 0.018, 0.014, Side.THICK_END)
                .checking(SampleJob.Options.bare().mush(0.5).mouldStays())
                .build());
    Channel c = run.state.channels[run.state.channels.length - 1];
    MeltProperties melt = run.state.melt;
    double before = 0.5;
    double mass = melt.density * c.shape.volume[0];
    c.wet[0] = c.shape.volume[0];
    c.middle.heat[0] = mass * melt.table.enthalpyAtSolid(before);
    c.middle.skin[0] = 0.4 * mass;
    run.heat.step(1.0);
    double after = melt.table.solid(c.middle.heat[0] / mass);
    // a good part melts, and some solid beside the skin is left
    assertThat(after).isBetween(0.2, before - 0.02);
    assertThat(c.middle.skin[0] / mass).isCloseTo(0.4 - (before - after), withinPercentage(1e-9));
    assertThat(c.middle.openShare[0])
        .isCloseTo(1.0 - c.middle.skin[0] / mass, withinPercentage(1e-9));
  }
}
