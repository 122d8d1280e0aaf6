package lastinch.cases.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.material.FreezingCurve;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Solid shares of the catalogue's curves against the figures they were chosen for. */
class FreezingCurvePublishedTest {
  private static final double ICE = 273.15;

  /** Half of the last figure of the expected shares. */
  private static final Offset<Double> LAST_FIGURE = Offset.offset(0.005);

  private static double solid(String alloy, double celsius) {
    return Catalogue.builtIn().alloy(alloy).freezing().solidFraction(celsius + ICE);
  }

  /**
   * Freezing without diffusion in the solid (Scheil 1942) along the liquidus fitted through CDA
   * figures of copper-tin, share of tin kept 0.45.
   */
  @ParameterizedTest
  @CsvSource({"979, 0.23", "969, 0.31", "949, 0.43", "798.0001, 0.75"})
  void tinBronzeFollowsTheCurvedLine(double celsius, double share) {
    assertThat(solid("tin bronze", celsius)).isEqualTo(share, LAST_FIGURE);
    assertThat(solid("gunmetal", celsius)).isEqualTo(share, LAST_FIGURE);
  }

  @Test
  void aStraightLineForTinBronzeFailsTheSameCheck() {
    FreezingCurve wrong = new FreezingCurve.Straight(999 + ICE, 831 + ICE);
    assertThat(Math.abs(wrong.solidFraction(979 + ICE) - 0.23)).isGreaterThan(0.08);
    assertThat(Math.abs(wrong.solidFraction(949 + ICE) - 0.43)).isGreaterThan(0.08);
  }

  @Test
  void theRestOfTinBronzeFreezesAtTheArrest() {
    assertThat(solid("tin bronze", 797.9999)).isEqualTo(1.0);
  }

  /** Scheil with 7 % silicon, 0.13 kept by the solid, eutectic 577 degC. */
  @Test
  void a356IsHalfSolidWhenTheEutecticIsReached() {
    assertThat(solid("A356", 577.0001)).isEqualTo(0.49, LAST_FIGURE);
    assertThat(solid("A356", 576.9999)).isEqualTo(1.0);
    FreezingCurve wrong = new FreezingCurve.Straight(613 + ICE, 557 + ICE);
    assertThat(Math.abs(wrong.solidFraction(577 + ICE) - 0.49)).isGreaterThan(0.1);
  }

  /**
   * Computed from SGTE silver-copper data for a start of 896 degC; the table keeps degrees below
   * the start, which is 893 degC here.
   */
  @ParameterizedTest
  @CsvSource({"884, 0.22", "874, 0.39", "864, 0.51", "844, 0.66", "779.0001, 0.87"})
  void sterlingFollowsItsTable(double celsius, double share) {
    assertThat(solid("sterling silver", celsius)).isEqualTo(share, Offset.offset(1e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "silicon bronze, 971, 821",
    "aluminium bronze, 1038, 1027",
    "coin alloy, 1045, 1015",
    "yellow brass, 941, 913",
    "red brass, 1010, 854",
    "pewter, 293, 243"
  })
  void theOthersFreezeAlongAStraightLine(String alloy, double start, double end) {
    assertThat(Catalogue.builtIn().alloy(alloy).freezing())
        .isEqualTo(new FreezingCurve.Straight(start + ICE, end + ICE));
  }

  @ParameterizedTest
  @CsvSource({
    "pure copper, 1084.6",
    "pure silver, 961.8",
    "pure aluminium, 660.3",
    "pure tin, 231.93",
    "pure zinc, 419.5"
  })
  void pureMetalsFreezeAtOneHeat(String alloy, double celsius) {
    FreezingCurve curve = Catalogue.builtIn().alloy(alloy).freezing();
    assertThat(curve).isInstanceOf(FreezingCurve.Isothermal.class);
    assertThat(curve.liquidus()).isEqualTo(celsius + ICE, Offset.offset(1e-9));
  }
}
