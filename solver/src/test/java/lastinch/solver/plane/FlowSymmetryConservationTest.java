package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;
import org.junit.jupiter.api.Test;

/**
 * A jet into a plate of varying gap: turned, mirrored, with gates in another order, and its books.
 */
class FlowSymmetryConservationTest {
  private static final int N = 24;

  /** Where cell (i, j) of the first case lies in a turned or mirrored one. */
  private interface Turn {
    int[] of(int i, int j);
  }

  private static double gap(int i, int j) {
    return j > 18 && i < 9 ? 0.0 : 2e-3 + 1.5e-3 * Math.cos(0.2 * i) * Math.sin(0.1 * j + 1.0);
  }

  private static PlaneInlets.Gate gate(
      PlaneGrid g, Turn turn, int i, int from, double x, double y) {
    int[] cells = new int[3];
    for (int k = 0; k < 3; k++) {
      int[] at = turn.of(i, from + k);
      cells[k] = g.cell(at[0], at[1]);
    }
    return new PlaneInlets.Gate(cells, new double[] {1e-6, 2e-6, 2e-6}, x, y, 1.0);
  }

  private static Basin run(Turn turn, double[] axis, boolean swapped) {
    double[] gap = new double[N * N];
    for (int j = 0; j < N; j++) {
      for (int i = 0; i < N; i++) {
        int[] at = turn.of(i, j);
        gap[at[1] * N + at[0]] = gap(i, j);
      }
    }
    PlaneGrid g = PlaneGrid.of(N, N, 2e-3, gap);
    double gx = 3.0 * axis[0];
    double gy = 3.0 * axis[1];
    PlaneInlets.Gate one = gate(g, turn, 0, 4, axis[0], axis[1]);
    PlaneInlets.Gate two = gate(g, turn, 0, 14, axis[0], axis[1]);
    FlowingLiquid l = new FlowingLiquid(8000.0, 4e-3, 1.2, 1.9, 0.0, gx, gy, false);
    Basin b =
        new Basin(
            g,
            l,
            swapped ? List.of(two, one) : List.of(one, two),
            AirEscapeLaw.tight(600.0),
            1e-14);
    b.flow.gates.pressure[0] = 9000.0;
    b.flow.gates.pressure[1] = 9000.0;
    b.fill((x, y) -> -1.0);
    for (int k = 0; k < 70; k++) {
      b.flow.step(b.flow.chooseStep());
    }
    return b;
  }

  private static double worst(Basin a, Basin b, Turn turn) {
    double worst = Math.abs(a.flow.time() - b.flow.time());
    for (int j = 0; j < N; j++) {
      for (int i = 0; i < N; i++) {
        int[] at = turn.of(i, j);
        double f = a.state.fill(a.grid.cell(i, j));
        worst = Math.max(worst, Math.abs(f - b.state.fill(b.grid.cell(at[0], at[1]))));
      }
    }
    return worst;
  }

  private static final Turn SAME = (i, j) -> new int[] {i, j};

  @Test
  void mirroredCaseGivesTheMirroredAnswer() {
    Turn mirror = (i, j) -> new int[] {N - 1 - i, j};
    Basin a = run(SAME, new double[] {1.0, 0.0}, false);
    assertThat(a.state.totalLiquid()).isGreaterThan(0.05 * a.grid.totalVolume());
    assertThat(worst(a, run(mirror, new double[] {-1.0, 0.0}, false), mirror)).isLessThan(1e-10);
  }

  @Test
  void quarterTurnGivesTheTurnedAnswer() {
    Turn turn = (i, j) -> new int[] {N - 1 - j, i};
    Basin a = run(SAME, new double[] {1.0, 0.0}, false);
    assertThat(worst(a, run(turn, new double[] {0.0, 1.0}, false), turn)).isLessThan(1e-10);
  }

  @Test
  void orderOfGatesDoesNotMatter() {
    Basin a = run(SAME, new double[] {1.0, 0.0}, false);
    assertThat(worst(a, run(SAME, new double[] {1.0, 0.0}, true), SAME)).isLessThan(1e-12);
  }

  @Test
  void anotherPullIsNoticed() {
    Basin a = run(SAME, new double[] {1.0, 0.0}, false);
    assertThat(worst(a, run(SAME, new double[] {1.0, 0.05}, false), SAME)).isGreaterThan(1e-6);
  }

  @Test
  void sameCaseGivesTheSameBits() {
    Basin a = run(SAME, new double[] {1.0, 0.0}, false);
    Basin b = run(SAME, new double[] {1.0, 0.0}, false);
    assertThat(b.state.liquid).containsExactly(a.state.liquid);
    assertThat(b.state.pressure).containsExactly(a.state.pressure);
  }

  @Test
  void metalAndAirAreKept() {
    Basin b = run(SAME, new double[] {1.0, 0.0}, false);
    double in = b.flow.gates.passed(0) + b.flow.gates.passed(1);
    assertThat(b.state.totalLiquid()).isCloseTo(in, offset(1e-12 * in));
    double air = b.flow.pockets.held() + b.flow.pockets.leaked();
    double before = 101325.0 / (287.05 * 600.0) * b.grid.totalVolume();
    assertThat(air).isCloseTo(before, offset(1e-9 * before));
  }
}
