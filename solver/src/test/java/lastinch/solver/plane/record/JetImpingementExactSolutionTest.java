package lastinch.solver.plane.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.plane.Basin;
import lastinch.solver.plane.flow.PlaneGrid;
import org.junit.jupiter.api.Test;

/** What runs against the mould, for flows laid in by hand. */
class JetImpingementExactSolutionTest {
  private static final double DX = 1e-3;
  private static final double SPEED = 1.2;

  /** The mean over 20 ms comes within 1e-4 of a steady stream after ten times that. */
  private static final double LONG = 0.2;

  private static JetImpingement impacts(PlaneGrid grid, double u, double v, double seconds) {
    Basin basin = new Basin(grid, Basin.ideal(8000.0, 0.0, 0.0), List.of(), AirEscapeLaw.NONE);
    basin.fill((x, y) -> 1.0);
    Arrays.fill(basin.state.u, u);
    Arrays.fill(basin.state.v, v);
    JetImpingement impacts = new JetImpingement(grid);
    int steps = 200;
    for (int k = 0; k < steps; k++) {
      impacts.note(basin.state, seconds / steps);
    }
    return impacts;
  }

  /** A strip of cells that lie along a line of slope 1/2, with their true open shares. */
  private static PlaneGrid slanting(int nx) {
    int ny = nx / 2 + 6;
    double[] gap = new double[nx * ny];
    double[] open = new double[nx * ny];
    double[] openX = new double[nx * ny];
    double[] openY = new double[nx * ny];
    Arrays.fill(gap, 2e-3);
    for (int j = 0; j < ny; j++) {
      for (int i = 0; i < nx; i++) {
        int k = j * nx + i;
        openX[k] = clamped(1.0 + j - (2.0 + 0.5 * i));
        int points = 40;
        int above = 0;
        int area = 0;
        for (int a = 0; a < points; a++) {
          double floor = 2.0 + 0.5 * (i + (a + 0.5) / points);
          above += j > floor ? 1 : 0;
          area += (int) Math.rint(1e6 * clamped(1.0 + j - floor));
        }
        openY[k] = (double) above / points;
        open[k] = area / 1e6 / points;
      }
    }
    return new PlaneGrid(nx, ny, DX, gap, open, openX, openY);
  }

  private static double clamped(double share) {
    return Math.max(0.0, Math.min(1.0, share));
  }

  @Test
  void aStreamSquareToAWallRunsAgainstItAtItsSpeed() {
    PlaneGrid grid = Basin.box(10, 10, DX, 2e-3);
    JetImpingement impacts = impacts(grid, SPEED, 0.0, LONG);
    assertThat(impacts.speed[grid.cell(9, 5)]).isCloseTo(SPEED, within(1e-3 * SPEED));
    assertThat(impacts.speed[grid.cell(0, 5)]).isZero();
    assertThat(impacts.speed[grid.cell(5, 5)]).isZero();
    assertThat(impacts.speed[grid.cell(5, 0)]).isZero();
  }

  /** 4 ms of a stream: a fifth of the time the mean is taken over, 1 - exp(-1/5) of its speed. */
  @Test
  void aSquirtHardlyCounts() {
    PlaneGrid grid = Basin.box(10, 10, DX, 2e-3);
    double squirt = impacts(grid, SPEED, 0.0, 4e-3).speed[grid.cell(9, 5)];
    assertThat(squirt).isCloseTo(SPEED * (1.0 - Math.exp(-0.2)), within(1e-3 * SPEED));
  }

  /** Metal along a floor of slope 1/2 glides; straight down it meets it at cos of its angle. */
  @Test
  void metalThatGlidesAlongASlantingWallDoesNotRunAgainstIt() {
    PlaneGrid grid = slanting(20);
    double length = Math.sqrt(1.25);
    JetImpingement glides = impacts(grid, SPEED / length, 0.5 * SPEED / length, LONG);
    JetImpingement falls = impacts(grid, 0.0, -SPEED, LONG);
    double against = 0.0;
    double down = 0.0;
    for (int i = 4; i < 16; i++) {
      for (int j = 1; j < grid.ny - 1; j++) {
        against = Math.max(against, glides.speed[grid.cell(i, j)]);
        down = Math.max(down, falls.speed[grid.cell(i, j)]);
      }
    }
    // a wall taken as steps would be met at 1 / length of the speed
    assertThat(against).isLessThan(0.02 * SPEED);
    assertThat(down).isCloseTo(SPEED / length, within(0.02 * SPEED));
  }
}
