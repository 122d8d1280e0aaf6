package lastinch.solver.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Metal;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import org.junit.jupiter.api.Test;

/** What a melt loses on its way to the cup, by metal and temperature. */
class LipLossLimitsTest {
  private static final double ZERO_C = 273.15;
  private static final Citation PRACTICE =
      new Citation(Basis.PRACTICE, "common practice, no source", "");
  private static final Band RATE = new Band(2.0, 1.5, 3.0, PRACTICE);

  /** Rounding of a handful of operations, far below any figure of practice. */
  private static final double ROUNDING = 1e-12;

  private static Alloy metal(double heat, double density, double liquidus) {
    Band one = Band.typed(1.0);
    return new Alloy(
        "a metal",
        new FreezingCurve.Isothermal(liquidus),
        Band.typed(100e3),
        Band.typed(heat),
        Band.typed(400),
        Band.typed(30),
        Band.typed(60),
        Band.typed(density),
        -0.8,
        Band.typed(8000),
        Band.typed(3e-3),
        one,
        Band.typed(Math.PI),
        one,
        FilmForming.NO,
        Band.typed(0.35),
        Band.typed(0.05),
        Band.typed(liquidus + 50));
  }

  private static final Alloy BRONZE = metal(480.0, 7880.0, ZERO_C + 999);
  private static final Alloy TIN = metal(245.0, 6930.0, ZERO_C + 293);

  @Test
  void bronzeAtTheTemperatureOfPracticeKeepsItsFigureToTheBit() {
    Band same = LipLoss.forMetal(RATE, BRONZE, 1150.0 + 273.15);
    assertThat(same.value()).isEqualTo(RATE.value());
    assertThat(same.low()).isEqualTo(RATE.low());
    assertThat(same.high()).isEqualTo(RATE.high());
  }

  @Test
  void aMeltAsColdAsTheShopLosesNothing() {
    assertThat(LipLoss.givenOff(293.15)).isZero();
    assertThat(LipLoss.givenOff(280.0)).isZero();
  }

  @Test
  void veryHotMetalGlowsAwayWithTheFourthPower() {
    double ratio = LipLoss.givenOff(20000.0) / LipLoss.givenOff(10000.0);
    // at 10000 K air takes 3e5 of 4.5e8 W/m2: 7e-4 of the whole, so the ratio is short of 16 by
    // less than 0.02
    assertThat(ratio).isCloseTo(16.0, within(0.02));
  }

  @Test
  void lossGoesAgainstHeatPerDegreeAndWithTheSurfaceOfTheMass() {
    double at = ZERO_C + 1150;
    assertThat(LipLoss.share(metal(960.0, 7880.0, ZERO_C + 999), at))
        .isCloseTo(0.5, within(ROUNDING));
    assertThat(LipLoss.share(metal(480.0, 7880.0 / 8.0, ZERO_C + 999), at))
        .isCloseTo(4.0, within(ROUNDING));
  }

  @Test
  void pewterNoLongerLosesSixtyDegreesInTwentySeconds() {
    double rate = LipLoss.forMetal(RATE, TIN, ZERO_C + 320).value();
    assertThat(20.0 * rate).isBetween(1.0, 10.0);
    // the wrong model: as much per second whatever the metal
    assertThat(20.0 * RATE.value()).isGreaterThan(20.0 * rate + 30.0);
  }

  /**
   * The open surface alone of 1.5 kg of bronze in a crucible as deep as wide, by this model: it may
   * not lose more than practice sees, which has the crucible's outside in it, nor next to nothing
   * of it.
   */
  @Test
  void theOpenSurfaceAloneStaysBelowWhatPracticeSees() {
    double volume = 1.5 / 7880.0;
    double across = Math.cbrt(4.0 * volume / Math.PI);
    double area = Math.PI / 4.0 * across * across;
    double rate = LipLoss.givenOff(ZERO_C + 1150) * area / (1.5 * 480.0);
    assertThat(rate).isBetween(0.25 * RATE.low(), RATE.low());
  }

  @Test
  void anotherMetalInTheSameCrucibleTakesItsOwnLosses() {
    Band lip = new Band(15.0, 10.0, 20.0, PRACTICE);
    Metal bronze = new Metal(BRONZE, 1.5, Band.typed(ZERO_C + 1150), Band.typed(20.0), RATE, lip);
    Metal tin = LipLoss.exchanged(bronze, TIN, Band.typed(ZERO_C + 320));
    assertThat(tin.coolingRate().value())
        .isCloseTo(LipLoss.forMetal(RATE, TIN, ZERO_C + 320).value(), within(ROUNDING));
    assertThat(tin.lipLoss().value() / lip.value())
        .isCloseTo(tin.coolingRate().value() / RATE.value(), within(ROUNDING));
    Metal back = LipLoss.exchanged(bronze, BRONZE, bronze.reading());
    assertThat(back.coolingRate().value()).isEqualTo(RATE.value());
  }
}
