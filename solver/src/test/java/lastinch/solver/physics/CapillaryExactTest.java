package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact solutions: entry pressure, capillary rise, splash limit. */
class CapillaryExactTest {
  private static final double SLOT = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @CsvSource({
    "1.20, 8000, 0.5, 61.1620795",
    "1.20, 8000, 1, 30.5810398",
    "1.20, 8000, 2, 15.2905199",
    "0.92, 9300, 0.5, 40.3362818",
    "0.92, 9300, 1, 20.1681409",
    "0.92, 9300, 2, 10.0840705",
    "0.87, 2380, 0.5, 149.050446",
    "0.87, 2380, 1, 74.5252229",
    "0.87, 2380, 2, 37.2626115",
    "1.284637, 7950, 0.5, 65.8876900",
    "1.284637, 7950, 1, 32.9438450",
    "1.284637, 7950, 2, 16.4719225"
  })
  void slotTakesThisHeadToEnter(double tension, double density, double gap, double head) {
    double push = Capillary.push(tension, Math.PI, 1.0, gap * 1e-3, SLOT);
    assertThat(push / (density * Gravity.G) * 1e3).isCloseTo(head, within(1e-6));
  }

  @Test
  void roundHoleTakesTwiceASlot() {
    double strength = Capillary.strength(1.2, Math.PI, 1.0);
    assertThat(strength).isEqualTo(2.4);
    assertThat(Capillary.push(strength, 1e-3, SLOT)).isCloseTo(2400.0, within(1e-9));
    // 4 gamma/d
    assertThat(Capillary.push(strength, 1e-3, 1e-3)).isCloseTo(4800.0, within(1e-9));
    assertThat(Capillary.push(strength, 1e-3, 4e-3)).isCloseTo(3000.0, within(1e-9));
  }

  @Test
  void filmMultipliesThePush() {
    assertThat(Capillary.push(0.87, Math.PI, 2.0, 1e-3, SLOT))
        .isCloseTo(2.0 * Capillary.push(0.87, Math.PI, 1.0, 1e-3, SLOT), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"180, 0.305810398", "130, 0.196571134"})
  void headOfBronzeEntersDownToThisGap(double degrees, double gap) {
    double strength = Capillary.strength(1.2, degrees * Math.PI / 180.0, 1.0);
    double pressure = 8000.0 * Gravity.G * 0.1;
    assertThat(Capillary.thinnestSlot(strength, pressure) * 1e3).isCloseTo(gap, within(1e-9));
  }

  @Test
  void neutralWettingNeedsNoPush() {
    // cosine of the double nearest a right angle is 6e-17
    assertThat(Capillary.push(1.2, Math.PI / 2, 1.0, 1e-3, SLOT)).isCloseTo(0.0, within(1e-9));
  }

  @Test
  void leavingTheAngleOutFails() {
    double strength = Capillary.strength(1.2, Math.PI, 1.0);
    assertThat(Capillary.thinnestSlot(strength, 7848.0) * 1e3)
        .isNotCloseTo(0.196571134, withinPercentage(10.0));
  }

  @Test
  void bronzeHasACapillaryLengthOfFourMillimetres() {
    assertThat(Capillary.length(1.2, 8000.0)).isCloseTo(3.91030e-3, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.0314840254", "0.9, 0.228628885", "0.99, 0.589292113"})
  void bronzeRisesInASlotAgainstItsWeight(double share, double time) {
    double net = 8000.0 * Gravity.G * 0.150 - Capillary.push(1.2, Math.PI, 1.0, 0.5e-3, SLOT);
    assertThat(net).isCloseTo(6972.0, within(1e-6));
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.0, 1e-3, Friction.SLOT);
    double weight = 8000.0 * Gravity.G;
    double top = net / weight;
    assertThat(top * 1e3).isCloseTo(88.8379205, within(1e-7));
    double rise = Quadrature.integral(z -> z * over / (net - weight * z), 0.0, share * top);
    // Simpson at 99 % of the top is good to 1e-6 of the time
    assertThat(rise).isCloseTo(time, withinPercentage(1e-3));
  }

  @ParameterizedTest
  @CsvSource({
    "0.90, 2400, 0.492555377, 12.3654842",
    "1.20, 8000, 0.391714874, 7.82061888",
    "0.92, 9300, 0.352998994, 6.35108509",
    "1.80, 7000, 0.448219621, 10.2395937",
    "0.77, 6600, 0.367861168, 6.89713754"
  })
  void splashLimitAndItsFall(double tension, double density, double speed, double fall) {
    double v = SplashLimit.speed(tension, density);
    assertThat(v).isCloseTo(speed, within(1e-9));
    assertThat(SplashLimit.fallHeight(v) * 1e3).isCloseTo(fall, within(1e-7));
    // speed head equals the height of a resting drop
    assertThat(SplashLimit.fallHeight(v))
        .isCloseTo(2.0 * Capillary.length(tension, density), within(1e-15));
  }

  @Test
  void oneDropHeightTheoryFailsForAnother() {
    // a drop of one capillary length instead of two
    double v = Math.sqrt(2.0 * Gravity.G * Capillary.length(1.2, 8000.0));
    assertThat(v).isNotCloseTo(0.391714874, withinPercentage(10.0));
  }

  @Test
  void tradeFigureIsHalfAMetreASecond() {
    assertThat(SplashLimit.TRADE).isEqualTo(0.5);
    assertThat(SplashLimit.fallHeight(SplashLimit.TRADE)).isCloseTo(12.742e-3, within(1e-6));
  }
}
