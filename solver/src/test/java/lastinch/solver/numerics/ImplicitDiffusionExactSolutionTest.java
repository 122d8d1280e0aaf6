package lastinch.solver.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Spreading between closed ends against the decay of a cosine, and its limits. */
class ImplicitDiffusionExactSolutionTest {
  /** Amplitude left of a cosine over length 1 after diffusivity x time = 0.1. */
  private static double amplitude(int cells, int steps) {
    double[] h = new double[cells];
    double[] capacity = new double[cells];
    double[] face = new double[cells];
    double dx = 1.0 / cells;
    for (int i = 0; i < cells; i++) {
      h[i] = StrictMath.cos(Math.PI * (i + 0.5) * dx);
      capacity[i] = dx;
      face[i] = 0.1 / steps / dx;
    }
    for (int n = 0; n < steps; n++) {
      ImplicitDiffusion.solve(h, capacity, face, 0, cells, new double[cells], new double[cells]);
    }
    return h[0] / StrictMath.cos(Math.PI * 0.5 * dx);
  }

  @Test
  void cosineDecaysExactly() {
    double exact = StrictMath.exp(-Math.PI * Math.PI * 0.1);
    assertThat(amplitude(100, 2000)).isCloseTo(exact, within(1e-3 * exact));
    // a tenth too little spreading is seen
    assertThat(Math.abs(StrictMath.exp(-Math.PI * Math.PI * 0.09) / exact - 1.0))
        .isGreaterThan(1e-3);
  }

  @Test
  void errorFallsInProportionToTheStep() {
    double exact = StrictMath.exp(-Math.PI * Math.PI * 0.1);
    double coarse = amplitude(400, 50) - exact;
    double fine = amplitude(400, 100) - exact;
    assertThat(coarse / fine).isBetween(1.85, 2.15);
  }

  @Test
  void sumIsKeptAndNoNewExtremesAppear() {
    int n = 40;
    double[] h = new double[n];
    double[] capacity = new double[n];
    double[] face = new double[n];
    for (int i = 0; i < n; i++) {
      h[i] = (i * 7919) % 101 - 50.0;
      capacity[i] = 0.1 + (i * 31) % 7;
      face[i] = i % 5 == 0 ? 0.0 : 1e3 * ((i * 17) % 11);
    }
    double[] before = h.clone();
    ImplicitDiffusion.solve(h, capacity, face, 3, 37, new double[n], new double[n]);
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      sum += capacity[i] * (h[i] - before[i]);
    }
    assertThat(sum).isCloseTo(0.0, within(1e-9));
    double[] inside = Arrays.copyOfRange(before, 3, 37);
    double low = Arrays.stream(inside).min().orElseThrow();
    double high = Arrays.stream(inside).max().orElseThrow();
    for (double v : Arrays.copyOfRange(h, 3, 37)) {
      assertThat(v).isBetween(low - 1e-9, high + 1e-9);
    }
    assertThat(Arrays.copyOf(h, 3)).containsExactly(Arrays.copyOf(before, 3));
    assertThat(h[37]).isEqualTo(before[37]);
  }

  @Test
  void closedFacesAndSingleCellsChangeNothing() {
    double[] h = {1.0, 5.0, 2.0};
    double[] scratch = new double[3];
    double[] ones = {1.0, 1.0, 1.0};
    ImplicitDiffusion.solve(h, ones, new double[3], 0, 3, scratch, scratch.clone());
    ImplicitDiffusion.solve(h, ones, ones, 1, 2, scratch, scratch.clone());
    assertThat(h).containsExactly(1.0, 5.0, 2.0);
  }

  @Test
  void shortArraysAreRefused() {
    double[] two = new double[2];
    double[] three = {1.0, 1.0, 1.0};
    assertThatThrownBy(() -> ImplicitDiffusion.solve(three, three, two, 0, 3, two, three))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 to 3");
  }
}
