package lastinch.solver.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/**
 * How many iterations the pressure takes, pinned as counted: a fault in either half of its
 * preconditioner leaves the answer right and shows only here.
 */
class FivePointMatrixPinnedTest {
  private static final int EDGE = 4;

  /**
   * A strip of cells with a slot of thin ones along it, walls in it, one side held at 0, two more
   * unknowns along its far side and below it, and a few cells that are cut off.
   */
  private static FivePointMatrix strip(int nx, int ny) {
    int across = (ny + EDGE - 1) / EDGE;
    FivePointMatrix s = new FivePointMatrix(nx * ny, 2, nx + ny, across * ((nx + EDGE - 1) / EDGE));
    int[] number = new int[nx * ny];
    double[] others = {0.02, 0.5};
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        double west = i > 0 ? coupling(i - 1, j, i, j) : 0.0;
        double east = i < nx - 1 ? coupling(i, j, i + 1, j) : 0.0;
        double south = j > 0 ? coupling(i, j - 1, i, j) : 0.0;
        double north = j < ny - 1 ? coupling(i, j, i, j + 1) : 0.0;
        double far = i == nx - 1 ? 0.7 : 0.0;
        double under = j == 0 && i % 5 == 2 ? 0.3 : 0.0;
        double held = i == 0 ? 2.0 : 1e-9;
        double source = Math.sin(0.3 * i) + 0.5 * Math.cos(0.9 * j);
        int k = j * nx + i;
        number[k] = s.cells();
        int below = j > 0 ? number[k - nx] : 0;
        int patch = (i / EDGE) * across + j / EDGE;
        double diagonal = west + east + south + north + far + under + held;
        s.add(diagonal, west, south, below, source, 1.0 + 0.1 * j, 0.01 * i, patch);
        others[0] += far;
        others[1] += under;
      }
    }
    s.addOther(others[0], -2.0, 1.0, 0.0);
    s.addOther(others[1], 0.5, 1.0, 0.1);
    for (int j = 0; j < ny; j++) {
      s.link(number[j * nx + nx - 1], 0, 0.7);
    }
    for (int i = 2; i < nx; i += 5) {
      s.link(number[i], 1, 0.3);
    }
    return s;
  }

  /** Coupling between two neighbours: thin along a slot, none through a wall. */
  private static double coupling(int i, int j, int i2, int j2) {
    boolean wall = i == 9 && i2 == 10 && j > 2;
    boolean cutOff = (i == 20 && j == 5) != (i2 == 20 && j2 == 5);
    if (wall || cutOff) {
      return 0.0;
    }
    boolean thin = j == 7 || j2 == 7;
    return (thin ? 0.02 : 1.0) * (1.0 + 0.3 * Math.sin(i + 2.0 * j));
  }

  private static void pinned(int nx, int ny, double tolerance, int iterations, double residual) {
    FivePointMatrix s = strip(nx, ny);
    assertThat(s.solve(tolerance, 500)).isEqualTo(iterations);
    // what is left over feels every coefficient; a hundredth is far above rounding
    assertThat(s.residual()).isCloseTo(residual, withinPercentage(1.0));
  }

  @Test
  void iterationsAreAsCounted() {
    pinned(30, 12, 1e-6, 17, 8.148e-7);
    pinned(30, 12, 1e-10, 25, 8.399e-11);
    pinned(61, 23, 1e-6, 21, 5.347e-7);
    pinned(12, 30, 1e-6, 18, 2.235e-7);
  }

  @Test
  void fourTimesAsManyCellsTakeHardlyMore() {
    int few = strip(40, 16).solve(1e-10, 500);
    assertThat(strip(160, 16).solve(1e-10, 500)).isLessThan(few + few / 4);
  }
}
