package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import lastinch.solver.charge.AirEscapeLaw;
import lastinch.solver.plane.flow.FlowingLiquid;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.plane.flow.PlaneInlets;
import org.junit.jupiter.api.Test;

/** Where shut-in air and the push of thin gaps bring metal to a stop, by their own laws. */
class AirAndCapillaryLimitsTest {
  private static final double OPEN_AIR = 101325.0;

  private static PlaneInlets.Gate wholeSide(PlaneGrid grid, double gap, double loss) {
    int[] cells = new int[grid.ny];
    double[] area = new double[grid.ny];
    for (int j = 0; j < grid.ny; j++) {
      cells[j] = grid.cell(0, j);
      area[j] = 0.2 * gap * grid.dx;
    }
    return new PlaneInlets.Gate(cells, area, 1.0, 0.0, loss);
  }

  private static Basin plate(double pressure, AirEscapeLaw air) {
    PlaneGrid grid = Basin.box(50, 12, 2e-3, 3e-3);
    FlowingLiquid l = new FlowingLiquid(8000.0, 0.1, 1.2, 0.0, 1.0, 0.0, 0.0, false);
    Basin b = new Basin(grid, l, List.of(wholeSide(grid, 3e-3, 5.0)), air);
    b.flow.gates.pressure[0] = pressure;
    b.fill((x, y) -> -1.0);
    return b;
  }

  private static double filled(Basin b) {
    return b.state.totalLiquid() / b.grid.totalVolume();
  }

  @Test
  void sealedPlateStopsWhereTheGasLawSays() {
    Basin b = plate(9400.0, AirEscapeLaw.tight(600.0));
    double air = b.flow.pockets.held();
    b.runTo(2.0);
    double exact = 1.0 - OPEN_AIR / (OPEN_AIR + 9400.0);
    assertThat(filled(b)).isCloseTo(exact, offset(0.02 * exact));
    assertThat(b.flow.pockets.held()).isCloseTo(air, offset(1e-9 * air));
  }

  @Test
  void withoutTheAirTheSamePlateFills() {
    Basin b = plate(9400.0, AirEscapeLaw.NONE);
    b.runTo(2.0);
    assertThat(filled(b)).isGreaterThan(0.9);
  }

  @Test
  void sealedPlateAtTheCataloguePressuresStopsAsTabled() {
    Basin b = plate(11772.0, AirEscapeLaw.tight(600.0));
    b.runTo(2.0);
    assertThat(filled(b)).isCloseTo(0.104087642, offset(0.02 * 0.104));
  }

  @Test
  void ventLetsThePlateFillAndTheAirOut() {
    PlaneGrid grid = Basin.box(50, 12, 2e-3, 3e-3);
    AirEscapeLaw vented =
        new AirEscapeLaw(
            true,
            600.0,
            OPEN_AIR,
            OPEN_AIR,
            0.0,
            0.5,
            0.05,
            0.0,
            0.05,
            List.of(new AirEscapeLaw.Hole(grid.cell(49, 6), 2e-6)));
    Basin b = plate(9400.0, vented);
    double air = b.flow.pockets.held();
    b.runTo(2.0);
    assertThat(filled(b)).isGreaterThan(0.9);
    double booked = b.flow.pockets.held() + b.flow.pockets.leaked();
    assertThat(booked).isCloseTo(air, offset(1e-9 * air));
  }

  /**
   * A thick chamber, almost full and fed slowly, opens into a slot 1 mm thick; returns how full the
   * slot is.
   */
  private static double slot(double pressure, double capillary) {
    int nx = 30;
    int ny = 10;
    double[] gap = new double[nx * ny];
    for (int k = 0; k < gap.length; k++) {
      gap[k] = k % nx < 10 ? 4e-3 : 1e-3;
    }
    PlaneGrid grid = PlaneGrid.of(nx, ny, 1e-3, gap);
    FlowingLiquid l = new FlowingLiquid(8000.0, 0.1, 0.0, capillary, 0.0, 0.0, 0.0, false);
    Basin b = new Basin(grid, l, List.of(wholeSide(grid, 4e-3, 100.0)), AirEscapeLaw.NONE);
    b.flow.gates.pressure[0] = pressure;
    b.fill((x, y) -> 0.0095 - x);
    b.runTo(1.0);
    double full = 0.0;
    for (int j = 0; j < ny; j++) {
      for (int i = 12; i < nx; i++) {
        full += b.state.fill(grid.cell(i, j));
      }
    }
    return full / (18 * ny);
  }

  @Test
  void slotRefusesMetalUntilPressedPastItsPush() {
    assertThat(slot(2340.0, 2.4)).isLessThan(0.01);
    assertThat(slot(2460.0, 2.4)).isGreaterThan(0.1);
  }

  @Test
  void withoutTheNonWettingPushTheSlotFills() {
    assertThat(slot(2340.0, 0.0)).isGreaterThan(0.5);
  }
}
