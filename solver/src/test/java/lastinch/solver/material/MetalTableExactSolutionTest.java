package lastinch.solver.material;

import static lastinch.solver.material.SampleMetals.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The enthalpy table against the integral it stands for. */
class MetalTableExactSolutionTest {
  private static final double COLD = 400.0;
  private static final double HOT = 1600.0;

  /** Smaller than a tenth of a degree, which is far below what any thermocouple shows. */
  private static final double TEMPERATURE = 0.05;

  /** A two-hundredth of the narrowest band of the flow stop (0.2). */
  private static final double SHARE = 1e-3;

  static Stream<Arguments> alloys() {
    return Stream.of(
        Arguments.of("straight", SampleMetals.straightBronze()),
        Arguments.of("scheil", SampleMetals.scheilBronze()),
        Arguments.of("lever", SampleMetals.leverAlloy()),
        Arguments.of("pure", SampleMetals.pureMetal()),
        Arguments.of("points", SampleMetals.tableAlloy()));
  }

  /** h at a temperature above the arrest or in the solid, by fine steps from the liquidus. */
  private static double integral(Alloy alloy, double temperature) {
    double cs = alloy.specificHeatSolid().value();
    double cl = alloy.specificHeatLiquid().value();
    FreezingCurve curve = alloy.freezing();
    double start = curve.liquidus();
    if (temperature >= start) {
      return cl * (temperature - start);
    }
    double low = Math.max(temperature, Math.nextUp(curve.endOfFreezing()));
    int n = 20000;
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      double t = start - (start - low) * (i + 0.5) / n;
      double fs = start == curve.endOfFreezing() ? 0.0 : curve.solidFraction(t);
      sum += (fs * cs + (1.0 - fs) * cl) * (start - low) / n;
    }
    double h = -sum - alloy.latentHeat().value() * curve.solidFraction(temperature);
    return temperature < low ? h - cs * (low - temperature) : h;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("alloys")
  void temperatureAndShareMatchTheIntegral(String name, Alloy alloy) {
    MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
    double end = alloy.freezing().endOfFreezing();
    for (double t = COLD + 1.0; t < HOT; t += 3.7) {
      double h = integral(alloy, t);
      double fs = alloy.freezing().solidFraction(t);
      assertThat(table.temperature(h)).as("temperature at %s", t).isCloseTo(t, within(TEMPERATURE));
      assertThat(table.solid(h)).as("share at %s, end %s", t, end).isCloseTo(fs, within(SHARE));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("alloys")
  void enthalpyIsTheInverseOfTheTable(String name, Alloy alloy) {
    MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
    double end = alloy.freezing().endOfFreezing();
    for (double t = COLD + 1.0; t < HOT; t += 3.7) {
      assertThat(table.temperature(table.enthalpy(t))).isCloseTo(t, within(1e-9));
    }
    double before = table.enthalpy(end);
    assertThat(table.temperature(before)).isCloseTo(end, within(1e-9));
    assertThat(table.temperature(before + table.spacing())).isGreaterThan(end + 1e-3);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("alloys")
  void arrestGivesUpTheRestOfTheLatentHeatAtOneTemperature(String name, Alloy alloy) {
    MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
    double end = alloy.freezing().endOfFreezing();
    double shareBefore =
        alloy.liquidus() == end ? 0.0 : alloy.freezing().solidFraction(Math.nextUp(end));
    double before = table.enthalpy(end);
    double width = (1.0 - shareBefore) * alloy.latentHeat().value();
    assertThat(table.solid(before)).isCloseTo(shareBefore, within(SHARE));
    double middle = before - 0.5 * width;
    assertThat(table.temperature(middle)).isCloseTo(end, within(TEMPERATURE));
    assertThat(table.solid(middle)).isCloseTo(0.5 * (1.0 + shareBefore), within(SHARE));
    assertThat(table.solid(before - width - table.spacing())).isEqualTo(1.0);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("alloys")
  void enthalpyAtAShareOfSolidIsFoundAgain(String name, Alloy alloy) {
    MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
    for (double fs = 0.05; fs <= 1.0; fs += 0.05) {
      assertThat(table.solid(table.enthalpyAtSolid(fs))).isCloseTo(fs, within(1e-9));
    }
    assertThat(table.enthalpyAtSolid(0.0)).isEqualTo(0.0);
  }

  @Test
  void enthalpyIsZeroForLiquidAtTheLiquidus() {
    for (Arguments a : alloys().toList()) {
      Alloy alloy = (Alloy) a.get()[1];
      MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
      assertThat(table.temperature(0.0)).isCloseTo(alloy.liquidus(), within(1e-9));
      assertThat(table.solid(0.0)).isEqualTo(0.0);
      assertThat(table.liquidus()).isEqualTo(alloy.liquidus());
      assertThat(table.latentHeat()).isEqualTo(alloy.latentHeat().value());
    }
  }

  @Test
  void straightFreezingReplacesTheAlloysOwnCurveOnRequest() {
    Alloy alloy = SampleMetals.scheilBronze();
    MetalTable own = MetalTable.of(alloy, false, COLD, HOT);
    MetalTable straight = MetalTable.of(alloy, true, COLD, HOT);
    double half = 0.5 * (1000.0 + 798.0) + ZERO;
    assertThat(straight.solid(straight.enthalpy(half))).isCloseTo(0.5, within(SHARE));
    assertThat(own.solid(own.enthalpy(half))).isGreaterThan(0.6);
  }

  @Test
  void lookUpsBeyondTheEndsGiveTheEndAndAreCounted() {
    MetalTable table = MetalTable.of(SampleMetals.straightBronze(), false, COLD, HOT);
    double hottest = table.temperature(table.knot(table.pieces()));
    assertThat(table.clamps()).isZero();
    assertThat(table.temperature(1e9)).isEqualTo(hottest);
    assertThat(table.solid(-1e9)).isEqualTo(1.0);
    assertThat(table.enthalpy(5000.0)).isEqualTo(table.knot(table.pieces()));
    assertThat(table.clamps()).isEqualTo(3);
    table.resetClamps();
    assertThat(table.clamps()).isZero();
  }

  @Test
  void conductivityIsBlendedByShareOfSolid() {
    MetalTable table = MetalTable.of(SampleMetals.straightBronze(), false, COLD, HOT);
    assertThat(table.conductivity(1000.0)).isEqualTo(60.0);
    assertThat(table.conductivity(table.enthalpyAtSolid(0.5))).isCloseTo(90.0, within(0.1));
    assertThat(table.conductivity(-350e3)).isEqualTo(120.0);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("alloys")
  void settlingSolvesTheHeatBalanceExactly(String name, Alloy alloy) {
    MetalTable table = MetalTable.of(alloy, false, COLD, HOT);
    double mass = 6.0;
    for (double h = -350e3; h < 100e3; h += 9173.0) {
      for (double slope = 1.0; slope < 1e7; slope *= 7.0) {
        double wall = 700.0;
        double after = table.settle(h, mass, -slope * wall, slope);
        double rest = mass * (after - h) + slope * (table.temperature(after) - wall);
        double scale = mass * Math.abs(h) + slope * 1500.0;
        assertThat(rest / scale).as("h %s slope %s", h, slope).isCloseTo(0.0, within(1e-13));
      }
    }
  }

  @Test
  void tableOfAWrongLatentHeatIsNoticed() {
    Alloy right = SampleMetals.scheilBronze();
    Alloy wrong = SampleMetals.alloy(right.freezing(), 195e3, 420.0, 500.0);
    MetalTable table = MetalTable.of(wrong, false, COLD, HOT);
    double t = 900.0 + ZERO;
    assertThat(Math.abs(table.temperature(integral(right, t)) - t)).isGreaterThan(TEMPERATURE);
  }

  @Test
  void pointsThatFallAreRefused() {
    double[] two = {1.0, 1.0};
    assertThatThrownBy(
            () ->
                MetalTable.byPoints(
                    new double[] {-1.0, 1.0},
                    new double[] {500.0, 400.0},
                    new double[] {0.0, 0.0},
                    two,
                    1.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at point 1");
    assertThatThrownBy(
            () ->
                MetalTable.byPoints(
                    new double[] {1.0, 2.0}, new double[] {400.0, 500.0}, two, two, 1.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("enthalpy 0");
  }
}
