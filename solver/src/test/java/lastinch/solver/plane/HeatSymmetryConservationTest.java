package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.charge.MouldColumns;
import lastinch.solver.plane.flow.FlowState;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneFlow;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;
import lastinch.solver.plane.heat.PlaneHeat;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/**
 * A jet of cooling metal into a plate of varying gap, turned and mirrored: flow, heat, skins and
 * the marks of leading metal. Long enough for cells that are no longer new.
 */
class HeatSymmetryConservationTest {
  private static final int N = 24;
  private static final double END = 0.28;
  private static final double MOULD = 293.15;
  private static final double HEAT_STEP = 1.5e-3;

  /** Where cell (i, j) of the first case lies in a turned or mirrored one. */
  private interface Turn {
    int[] of(int i, int j);
  }

  private static final Turn SAME = (i, j) -> new int[] {i, j};

  private static double gap(int i, int j) {
    return j > 18 && i < 9 ? 0.0 : 2e-3 + 1.5e-3 * Math.cos(0.2 * i) * Math.sin(0.1 * j + 1.0);
  }

  /** Flow and heat, tied together as a whole run ties them. */
  private static final class Jet implements PlaneFlow.Carried {
    private final Turn turn;
    private final PlaneFlow flow;
    private final PlaneHeat heat;

    Jet(Turn turn, double x, double y) {
      this.turn = turn;
      double[] gap = new double[N * N];
      for (int j = 0; j < N; j++) {
        for (int i = 0; i < N; i++) {
          int[] at = turn.of(i, j);
          gap[at[1] * N + at[0]] = gap(i, j);
        }
      }
      PlaneGrid grid = PlaneGrid.of(N, N, 2e-3, gap);
      int[] cells = new int[3];
      for (int k = 0; k < 3; k++) {
        int[] at = turn.of(0, 8 + k);
        cells[k] = grid.cell(at[0], at[1]);
      }
      PlaneInlets.Gate gate =
          new PlaneInlets.Gate(cells, new double[] {1e-6, 2e-6, 2e-6}, x, y, 1.0);
      PourCase job =
          SampleJob.strip(0.1, 0.02, 2e-3)
              .alloy(SampleFoundry.tinBronze())
              .medium(SampleFoundry.roundMould(1200.0))
              .mouldAt(MOULD)
              .reads(1010.0 + SampleJob.ZERO)
              .checking(SampleJob.Options.ordinary())
              .build();
      MeltProperties melt = new MeltProperties(job, MOULD);
      FlowingLiquid l = FlowingLiquid.of(job, melt);
      FlowingLiquid pulled =
          new FlowingLiquid(
              l.density(),
              l.viscosity(),
              l.tension(),
              l.capillary(),
              l.keepsOpen(),
              l.flowStop(),
              3.0 * x,
              3.0 * y,
              l.friction(),
              false);
      flow =
          new PlaneFlow(
              grid, pulled, new PlaneInlets(List.of(gate)), AirEscapeLaw.NONE, this, 1e-14);
      heat =
          new PlaneHeat(grid, melt, job, new MouldColumns(job, melt, MOULD, 1.0), MOULD, flow.shut);
      heat.enters(melt.enthalpyIn);
      flow.gates.pressure[0] = 4500.0;
      flow.begin();
    }

    @Override
    public void carry(FlowState s, double dt) {
      heat.carry(s, dt);
    }

    @Override
    public void moved(FlowState s, double dt) {
      heat.moved(s, dt);
      System.arraycopy(heat.leading().halted, 0, flow.halted, 0, flow.halted.length);
    }

    Jet run() {
      double since = 0.0;
      while (flow.time() < END) {
        double dt = flow.chooseStep();
        flow.step(dt);
        since += dt;
        if (since >= HEAT_STEP) {
          heat.step(flow.state, since, false);
          since = 0.0;
        }
      }
      return this;
    }

    int cell(int i, int j) {
      int[] at = turn.of(i, j);
      return flow.grid.cell(at[0], at[1]);
    }
  }

  /** Largest differences: share of a cell, heat over 1e5 J/kg in a full one, mark over the same. */
  private static double[] apart(Jet a, Jet b) {
    double[] worst = new double[3];
    for (int j = 0; j < N; j++) {
      for (int i = 0; i < N; i++) {
        int c = a.cell(i, j);
        int d = b.cell(i, j);
        double fill = a.flow.state.fill(c) - b.flow.state.fill(d);
        double heat = a.heat.content[c] - b.heat.content[d];
        boolean front = a.heat.leading().atFront[c];
        double mark = a.heat.leading().enthalpy[c] - b.heat.leading().enthalpy[d];
        worst[0] = Math.max(worst[0], Math.abs(fill));
        double full = 1e5 * a.flow.grid.volume[c];
        worst[1] = Math.max(worst[1], full > 0.0 ? Math.abs(heat) / full : 0.0);
        worst[2] = Math.max(worst[2], front ? Math.abs(mark) / 1e5 : 0.0);
      }
    }
    return worst;
  }

  private static void areAlike(Jet a, Jet b) {
    for (double off : apart(a, b)) {
      assertThat(off).isLessThan(1e-10);
    }
  }

  @Test
  void mirroredCaseGivesTheMirroredAnswer() {
    Jet a = new Jet(SAME, 1.0, 0.0).run();
    assertThat(a.heat.mostSolidAnywhere()).isGreaterThan(0.05);
    areAlike(a, new Jet((i, j) -> new int[] {N - 1 - i, j}, -1.0, 0.0).run());
  }

  @Test
  void quarterTurnGivesTheTurnedAnswer() {
    areAlike(
        new Jet(SAME, 1.0, 0.0).run(), new Jet((i, j) -> new int[] {N - 1 - j, i}, 0.0, 1.0).run());
  }

  @Test
  void anotherPullIsNoticed() {
    double[] apart = apart(new Jet(SAME, 1.0, 0.0).run(), new Jet(SAME, 1.0, 0.001).run());
    for (double off : apart) {
      assertThat(off).isGreaterThan(1e-6);
    }
  }
}
