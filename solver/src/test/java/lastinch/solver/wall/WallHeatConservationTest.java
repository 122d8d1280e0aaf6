package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.material.SampleMetals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heat given is heat held or lost, whatever the step; limits that hold for any step; repeatability.
 */
class WallHeatConservationTest {
  /** Rounding of some thousand steps; a leak of one part in a million is far above it. */
  private static final double ROUNDING = 1e-11;

  private static final double COLD = 300.0;
  private static final double POUR = 1150.0 + ZERO;

  private static MetalTable bronze() {
    return MetalTable.of(SampleMetals.scheilBronze(), false, 280.0, 1500.0);
  }

  private static WallGrid grid() {
    return WallGrid.usual(6e-7, 20.0);
  }

  @ParameterizedTest
  @CsvSource({"0, Infinity", "240, 0.004", "600, 0.0101", "0, 0.00001"})
  void heatGivenIsHeatHeld(double curvature, double depth) {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(3, grid(), Rig.sandTable(), metal);
    columns.open(1, COLD, curvature, depth);
    double h = metal.enthalpy(POUR);
    double start = h;
    for (int i = 0; i < 2000; i++) {
      double contact = i % 7 == 0 ? INFINITE : 100.0 + i;
      h = columns.exchange(1, Rig.step(i, 1e-2), contact, 8.0, h);
    }
    double given = (start - h) * 8.0;
    assertThat(columns.held(1)).isCloseTo(given, within(ROUNDING * given));
    assertThat(columns.lostToAir(1)).isZero();
    assertThat(columns.held(0)).isZero();
  }

  @Test
  void heatGivenToAShellIsHeldOrLostToAir() {
    MetalTable metal = bronze();
    WallColumns columns =
        WallColumns.shell(1, grid(), Rig.sandTable(), metal, OuterAir.of(293.0, 10.0, 0.8));
    columns.open(0, 1100.0, 100.0, 6e-3);
    double h = metal.enthalpy(POUR);
    double start = h;
    for (int i = 0; i < 3000; i++) {
      h = columns.exchange(0, 0.05, 1500.0, 8.0, h);
    }
    double given = (start - h) * 8.0;
    assertThat(columns.lostToAir(0)).isGreaterThan(0.1 * given);
    assertThat(columns.held(0) + columns.lostToAir(0)).isCloseTo(given, within(ROUNDING * given));
  }

  @Test
  void heatGivenToAMouldThatStaysAtItsHeatIsBooked() {
    MetalTable metal = bronze();
    WallColumns columns = WallColumns.fixed(1, grid(), Rig.sandTable(), metal);
    columns.open(0, COLD, 0.0, INFINITE);
    double h = metal.enthalpy(POUR);
    double start = h;
    for (int i = 0; i < 500; i++) {
      h = columns.exchange(0, 1e-2, 1000.0, 8.0, h);
    }
    double given = (start - h) * 8.0;
    assertThat(columns.held(0)).isCloseTo(given, within(ROUNDING * given));
    assertThat(columns.faceTemperature(0)).isEqualTo(COLD);
  }

  @Test
  void heatGivenByAThickPlaceIsHeatHeld() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(2, grid(), Rig.sandTable(), metal);
    double h = metal.enthalpy(POUR);
    columns.openThick(1, COLD, 50.0, INFINITE, 9e-3, h);
    double given = 0.0;
    for (int i = 0; i < 3000; i++) {
      double after = columns.exchange(1, Rig.step(i, 1e-2), 1200.0, 72.0, h);
      given += (h - after) * 72.0;
      h = after + (i < 500 ? 20.0 : 0.0);
      columns.shift(1, h);
    }
    assertThat(columns.held(1)).isCloseTo(given, within(ROUNDING * given));
    assertThat(columns.surfaceSolid(1)).isGreaterThan(metal.solid(h));
    assertThat(columns.unsettled()).isZero();
  }

  @Test
  void bodyInAirLosesWhatIsNotInTheWall() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(1, grid(), Rig.sandTable(), metal);
    columns.open(0, COLD, 0.0, INFINITE);
    double h = metal.enthalpy(POUR);
    double start = h;
    double air = 0.0;
    for (int i = 0; i < 500; i++) {
      h = columns.exchangeInAir(0, 1e-2, 800.0, 8.0, h, 150.0, 293.0);
      air += columns.airLoss();
    }
    double given = (start - h) * 8.0;
    assertThat(air).isGreaterThan(0.01 * given);
    assertThat(columns.held(0) + air).isCloseTo(given, within(ROUNDING * given));
  }

  @Test
  void wideningKeepsTheHeatOfTheWholeWall() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(1, grid(), Rig.sandTable(), metal);
    columns.open(0, COLD, 120.0, INFINITE);
    double share = 0.05;
    double h = metal.enthalpy(POUR);
    double given = 0.0;
    for (int i = 0; i < 400; i++) {
      double after = columns.exchange(0, 2e-3, 1200.0, 8.0, h);
      given += (h - after) * 8.0 * share;
      h = after;
      double wider = Math.min(1.0, share + 0.003);
      columns.widen(0, share, wider);
      share = wider;
    }
    assertThat(columns.held(0) * share).isCloseTo(given, within(ROUNDING * given));
    assertThat(columns.faceTemperature(0)).isBetween(COLD, POUR);
    columns.widen(0, 0.0, 1.0);
    assertThat(columns.held(0)).isZero();
    assertThat(columns.faceTemperature(0)).isCloseTo(COLD, within(1e-9));
  }

  @Test
  void freshWallOfAWidenedColumnIsAsColdAsItWas() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(1, grid(), Rig.sandTable(), metal);
    columns.open(0, COLD, 120.0, INFINITE);
    double h = metal.enthalpy(POUR);
    for (int i = 0; i < 50; i++) {
      h = columns.exchange(0, 2e-3, 1200.0, 8.0, h);
    }
    double face = columns.faceTemperature(0);
    double held = columns.held(0);
    columns.widen(0, 0.25, 1.0);
    assertThat(columns.held(0)).isCloseTo(0.25 * held, within(ROUNDING * held));
    assertThat(columns.faceTemperature(0))
        .isCloseTo(0.25 * face + 0.75 * COLD, within(ROUNDING * face));
    // the metal meets the colder wall at once: it loses more than against the old one alone
    WallColumns old = new WallColumns(1, grid(), Rig.sandTable(), metal);
    old.open(0, COLD, 120.0, INFINITE);
    double same = metal.enthalpy(POUR);
    for (int i = 0; i < 50; i++) {
      same = old.exchange(0, 2e-3, 1200.0, 8.0, same);
    }
    assertThat(columns.exchange(0, 2e-3, 1200.0, 8.0, h))
        .isLessThan(old.exchange(0, 2e-3, 1200.0, 8.0, same));
  }

  @Test
  void longestStepsStayBetweenMetalAndMould() {
    MetalTable metal = bronze();
    for (double dt : new double[] {1e-6, 1.0, 1e3, 1e6}) {
      WallColumns columns = new WallColumns(2, grid(), Rig.sandTable(), metal);
      columns.open(0, COLD, 0.0, INFINITE);
      double h = metal.enthalpy(POUR);
      double thick = h;
      columns.openThick(1, COLD, 0.0, INFINITE, 9e-3, h);
      double highest = POUR;
      for (int i = 0; i < 20; i++) {
        h = columns.exchange(0, dt, INFINITE, 4.0, h);
        thick = columns.exchange(1, dt, INFINITE, 72.0, thick);
        assertThat(metal.temperature(h)).as("dt %s", dt).isBetween(COLD, highest + 1e-6);
        assertThat(columns.faceTemperature(0)).isBetween(COLD - 1e-6, POUR);
        assertThat(metal.temperature(thick)).isBetween(COLD, POUR + 1e-6);
        highest = metal.temperature(h);
      }
    }
  }

  /** Taking the wall's heat with the metal's old temperature undershoots the mould. */
  @Test
  void couplingWithTheOldTemperatureFailsAtLongSteps() {
    MetalTable metal = Rig.warmBody(450.0, 60.0);
    WallColumns columns = new WallColumns(1, grid(), Rig.mould(), metal);
    columns.open(0, COLD + 1000.0, 0.0, INFINITE);
    double h = metal.enthalpy(POUR + 500.0);
    double coldest = Double.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      h -= columns.exchangeAt(0, 100.0, INFINITE, metal.temperature(h)) / 4.0;
      coldest = Math.min(coldest, metal.temperature(h));
    }
    assertThat(coldest).isLessThan(COLD + 1000.0);
  }

  /** Bodies at one temperature exchange nothing. */
  @Test
  void equalTemperaturesStayAsTheyAre() {
    MetalTable metal = bronze();
    MouldTable mould = Rig.sandTable();
    WallColumns columns = new WallColumns(1, grid(), mould, metal);
    columns.open(0, 900.0, 300.0, INFINITE);
    double h = metal.enthalpy(900.0);
    double after = h;
    for (int i = 0; i < 100; i++) {
      after = columns.exchange(0, 0.1, 1000.0, 8.0, after);
    }
    assertThat(after).isCloseTo(h, within(1e-3));
  }

  /** Doubling conductivities, contact and both heats leaves every temperature as it was. */
  @Test
  void scalingAllFiguresTogetherChangesNothing() {
    double[] h = new double[2];
    for (int i = 0; i < 2; i++) {
      double f = i + 1.0;
      MetalTable metal = Rig.warmBody(450.0, 60.0);
      MouldTable mould = MouldTable.constant(f * Rig.K, f * Rig.DENSITY_HEAT, 200.0, 1800.0);
      WallColumns columns = new WallColumns(1, grid(), mould, metal);
      columns.open(0, 1000.0, 100.0, INFINITE);
      h[i] = metal.enthalpy(1500.0);
      for (int n = 0; n < 300; n++) {
        h[i] = columns.exchange(0, 1e-2, f * 1000.0, f * 8.0, h[i]);
      }
    }
    assertThat(h[1]).isCloseTo(h[0], within(1e-9 * 450.0 * 500.0));
  }

  @Test
  void repeatedRunGivesTheSameBits() {
    assertThat(Double.doubleToRawLongBits(mixedRun()))
        .isEqualTo(Double.doubleToRawLongBits(mixedRun()));
  }

  private static double mixedRun() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(2, grid(), Rig.sandTable(), metal);
    double h = metal.enthalpy(POUR);
    columns.open(0, COLD, 80.0, 8e-3);
    columns.openThick(1, COLD, 0.0, INFINITE, 6e-3, h);
    double a = h;
    double b = h;
    for (int i = 0; i < 500; i++) {
      a = columns.exchange(0, Rig.step(i, 7e-3), 1200.0, 6.0, a);
      b = columns.exchange(1, Rig.step(i, 7e-3), 1200.0, 48.0, b);
    }
    return a + b + columns.held(0) + columns.faceTemperature(1);
  }

  @Test
  void timeLoopAllocatesNothing() {
    MetalTable metal = bronze();
    WallColumns columns = new WallColumns(2, grid(), Rig.sandTable(), metal);
    double h = metal.enthalpy(POUR);
    columns.open(0, COLD, 0.0, INFINITE);
    columns.openThick(1, COLD, 0.0, INFINITE, 9e-3, h);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    double a = loop(columns, h, 1000);
    threads.getThreadAllocatedBytes(self);
    long before = threads.getThreadAllocatedBytes(self);
    a = loop(columns, a, 1000);
    long bytes = threads.getThreadAllocatedBytes(self) - before;
    assertThat(a).isLessThan(h);
    // one object per step would be 16000 at least; asking itself may cost some
    assertThat(bytes).isLessThan(1000L);
  }

  private static double loop(WallColumns columns, double h, int steps) {
    double a = h;
    double b = h;
    for (int i = 0; i < steps; i++) {
      a = columns.exchange(0, 2e-3, 1200.0, 6.0, a);
      b = columns.exchange(1, 2e-3, 1200.0, 72.0, b);
      columns.widen(0, 0.999, 1.0);
    }
    return a;
  }
}
