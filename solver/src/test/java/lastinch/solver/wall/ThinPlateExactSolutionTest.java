package lastinch.solver.wall;

import static lastinch.solver.wall.Rig.DIFFUSIVITY;
import static lastinch.solver.wall.Rig.INFINITE;
import static lastinch.solver.wall.Rig.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoublePredicate;
import lastinch.solver.material.MetalTable;
import lastinch.solver.material.MouldTable;
import lastinch.solver.material.SampleMetals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A well-stirred plate between two moulds of 600 degrees, on the usual grid and steps. Without
 * freezing exact (Carslaw and Jaeger), with freezing from the integral equation of the half-space's
 * face, solved apart from this code and good to 2e-3. The tolerance is 1 % of every time.
 */
class ThinPlateExactSolutionTest {
  private static final double POUR = 1150.0 + ZERO;
  private static final double LIQUIDUS = 1000.0 + ZERO;

  private static MetalTable bronze() {
    return MetalTable.of(SampleMetals.straightBronze(), false, 500.0 + ZERO, 1200.0 + ZERO);
  }

  /** Bronze that never freezes. */
  private static MetalTable sensibleOnly() {
    return Rig.warmBody(450.0, 60.0);
  }

  /** Time until the plate's enthalpy meets a condition, interpolation left out: steps are short. */
  private static double time(
      MetalTable metal, MouldTable mould, double half, double h, DoublePredicate reached) {
    WallColumns columns = new WallColumns(1, WallGrid.usual(DIFFUSIVITY, 180.0), mould, metal);
    columns.open(0, 600.0 + ZERO, 0.0, INFINITE);
    double enthalpy = metal.enthalpy(POUR);
    double t = 0.0;
    for (int i = 0; !reached.test(enthalpy); i++) {
      double dt = Rig.step(i, t < 1.0 ? 2e-3 : 1e-2);
      enthalpy = columns.exchange(0, dt, h, 8000.0 * half, enthalpy);
      t += dt;
    }
    return t;
  }

  @ParameterizedTest
  @CsvSource({"Infinity, 3.12858474", "2000, 4.39277551", "500, 7.95254388"})
  void superheatIsLostInTime(double h, double expected) {
    MetalTable metal = sensibleOnly();
    double got = time(metal, Rig.mould(), 1.5e-3, h, e -> metal.temperature(e) <= LIQUIDUS);
    assertThat(got).isCloseTo(expected, within(0.01 * expected));
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, 1117.15087, 1136.82392, 1145.50103",
    "0.5, 1080.65968, 1106.28908, 1130.61988",
    "1, 1055.93883, 1081.84755, 1115.22578",
    "2, 1024.32414, 1048.65241, 1090.06216",
    "5, 971.276839, 990.954197, 1036.57089",
    "10, 923.553894, 938.533419, 979.887094"
  })
  void temperatureWithoutFreezing(double seconds, double perfect, double good, double poor) {
    double[] contact = {INFINITE, 2000.0, 500.0};
    double[] expected = {perfect, good, poor};
    for (int c = 0; c < contact.length; c++) {
      MetalTable metal = sensibleOnly();
      WallColumns columns =
          new WallColumns(1, WallGrid.usual(DIFFUSIVITY, 10.0), Rig.mould(), metal);
      columns.open(0, 600.0 + ZERO, 0.0, INFINITE);
      double h = metal.enthalpy(POUR);
      int n = (int) Math.rint(seconds / 2e-3);
      for (int i = 0; i < n; i++) {
        h = columns.exchange(0, 2e-3, contact[c], 12.0, h);
      }
      // 0.3 % of the 550 K between metal and mould, what 1 % of the time makes
      assertThat(metal.temperature(h) - ZERO).isCloseTo(expected[c], within(1.6));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Infinity, 3.12859, 18.8461, 40.0425, 167.93",
    "2000, 4.39279, 21.9967, 44.5836, 176.05"
  })
  void freezingTakesItsTime(double h, double start, double third, double half, double all) {
    MetalTable metal = bronze();
    double[] share = {0.0, 0.3, 0.5, 1.0};
    double[] expected = {start, third, half, all};
    for (int i = 0; i < share.length; i++) {
      double goal = metal.enthalpyAtSolid(share[i]);
      double got = time(metal, Rig.mould(), 1.5e-3, h, e -> e <= goal);
      assertThat(got).as("share %s", share[i]).isCloseTo(expected[i], within(0.01 * expected[i]));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1.13287466, 4.11494",
    "2, 3.02139320, 12.5117",
    "3, 5.61419539, 25.0994",
    "4, 8.90434318, 41.8745",
    "6, 17.5711020, 87.9869"
  })
  void thicknessSweep(double millimetres, double start, double third) {
    MetalTable metal = bronze();
    double half = 0.5e-3 * millimetres;
    double stop = metal.enthalpyAtSolid(0.3);
    double toLiquidus = time(metal, Rig.mould(), half, 1000.0, e -> e <= 0.0);
    double toStop = time(metal, Rig.mould(), half, 1000.0, e -> e <= stop);
    assertThat(toLiquidus).isCloseTo(start, within(0.01 * start));
    assertThat(toStop).isCloseTo(third, within(0.01 * third));
  }

  @Test
  void halfTheMouldConductivityFails() {
    MetalTable metal = bronze();
    MouldTable wrong = MouldTable.constant(0.3, Rig.DENSITY_HEAT, 200.0, 1800.0);
    double got = time(metal, wrong, 1.5e-3, 2000.0, e -> e <= 0.0);
    assertThat(Math.abs(got / 4.39279 - 1.0)).isGreaterThan(0.01);
  }

  /** Freezing half left out of the enthalpy is found as well. */
  @Test
  void halfTheLatentHeatFails() {
    MetalTable wrong =
        MetalTable.of(
            SampleMetals.alloy(SampleMetals.straightBronze().freezing(), 95e3, 450.0, 450.0),
            false,
            500.0 + ZERO,
            1200.0 + ZERO);
    double stop = wrong.enthalpyAtSolid(0.3);
    double got = time(wrong, Rig.mould(), 1.5e-3, 2000.0, e -> e <= stop);
    assertThat(Math.abs(got / 21.9967 - 1.0)).isGreaterThan(0.01);
  }

  /** Eight nodes through the gap of a thin plate that conducts well change nothing. */
  @Test
  void nodesThroughAThinGapAgreeWithTheLump() {
    MetalTable metal = bronze();
    WallGrid grid = WallGrid.usual(DIFFUSIVITY, 30.0);
    WallColumns lump = new WallColumns(1, grid, Rig.mould(), metal);
    WallColumns thick = new WallColumns(1, grid, Rig.mould(), metal);
    double start = metal.enthalpy(POUR);
    lump.open(0, 600.0 + ZERO, 0.0, INFINITE);
    thick.openThick(0, 600.0 + ZERO, 0.0, INFINITE, 1.5e-3, start);
    double a = start;
    double b = start;
    for (int i = 0; i < 1500; i++) {
      double dt = Rig.step(i, 1e-2);
      a = lump.exchange(0, dt, 500.0, 12.0, a);
      b = thick.exchange(0, dt, 500.0, 12.0, b);
    }
    // half gap over conductivity is 1 % of the contact's resistance, a third of it counts
    assertThat(b).isCloseTo(a, within(0.005 * (start - a)));
    assertThat(Math.abs(b - a)).isGreaterThan(0.0);
  }
}
