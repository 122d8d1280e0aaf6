package lastinch.solver.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Solutions of the pressure system, and its limits. */
class FivePointMatrixExactTest {
  /** A box of n x n cells, one side held at 0, with one more unknown along the opposite side. */
  private static FivePointMatrix box(int n, boolean more) {
    return box(n, more, WorkerPair.alone());
  }

  private static FivePointMatrix box(int n, boolean more, WorkerPair team) {
    FivePointMatrix s = new FivePointMatrix(n * n, 2, n, 36, team);
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        boolean linked = more && i == n - 1;
        double sides =
            (i > 0 ? 1 : 0) + (i < n - 1 ? 1 : 0) + (j > 0 ? 1 : 0) + (j < n - 1 ? 1 : 0);
        double diagonal = sides + (i == 0 ? 2.0 : 0.0) + (linked ? 2.0 : 0.0);
        double source = Math.sin(7.0 * i / n) + j / (double) n;
        int patch = (j * 6 / n) * 6 + i * 6 / n;
        s.add(
            diagonal,
            i > 0 ? 1.0 : 0.0,
            j > 0 ? 1.0 : 0.0,
            (j - 1) * n + i,
            source,
            1.0,
            0.0,
            patch);
      }
    }
    if (more) {
      s.addOther(2.0 * n + 0.01, -3.0, 1.0, 0.0);
      for (int j = 0; j < n; j++) {
        s.link(j * n + n - 1, 0, 2.0);
      }
    }
    return s;
  }

  private static double worstResidual(FivePointMatrix s, int n, boolean more) {
    double worst = 0.0;
    double other = more ? s.other(0) : 0.0;
    double sum = 0.0;
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        int k = j * n + i;
        double here = s.cell(k);
        double r = Math.sin(7.0 * i / n) + j / (double) n;
        r += i > 0 ? s.cell(k - 1) - here : -2.0 * here;
        r += i < n - 1 ? s.cell(k + 1) - here : more ? 2.0 * (other - here) : 0.0;
        r += j > 0 ? s.cell(k - n) - here : 0.0;
        r += j < n - 1 ? s.cell(k + n) - here : 0.0;
        sum += i == n - 1 ? 2.0 * (here - other) : 0.0;
        worst = Math.max(worst, Math.abs(r));
      }
    }
    return more ? Math.max(worst, Math.abs(-3.0 - 0.01 * other + sum)) : worst;
  }

  @Test
  void solutionFulfilsItsEquations() {
    FivePointMatrix s = box(20, true);
    s.solve(1e-11, 500);
    assertThat(worstResidual(s, 20, true)).isLessThan(1e-10);
    FivePointMatrix plain = box(20, false);
    plain.solve(1e-11, 500);
    assertThat(worstResidual(plain, 20, false)).isLessThan(1e-10);
  }

  /** Whoever does which half: the same bits, for odd and even numbers of cells. */
  @ParameterizedTest
  @ValueSource(ints = {7, 20})
  void twoThreadsSolveItToTheSameBits(int n) {
    FivePointMatrix alone = box(n, true);
    int passes = alone.solve(1e-11, 500);
    try (WorkerPair team = WorkerPair.of(2)) {
      assertThat(team.isHelped()).isTrue();
      FivePointMatrix both = box(n, true, team);
      assertThat(both.solve(1e-11, 500)).isEqualTo(passes);
      for (int k = 0; k < n * n; k++) {
        assertThat(both.cell(k)).isEqualTo(alone.cell(k));
      }
      assertThat(both.other(0)).isEqualTo(alone.other(0));
    }
  }

  @Test
  void tooManyCellsAreRefused() {
    FivePointMatrix s = new FivePointMatrix(1, 0, 1, 1);
    s.add(1.0, 0.0, 0.0, 0, 1.0, 1.0, 0.0, 0);
    s.solve(1e-12, 5);
    assertThat(s.cell(0)).isCloseTo(1.0, offset(1e-12));
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> s.add(1.0, 0.0, 0.0, 0, 1.0, 1.0, 0.0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
