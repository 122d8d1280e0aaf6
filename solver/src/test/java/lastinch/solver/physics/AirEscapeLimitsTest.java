package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits: balance, slopes against differences, vacuum behind the mould. */
class AirEscapeLimitsTest {
  private static final double OUT = DryAir.OPEN_AIR;

  @ParameterizedTest
  @ValueSource(doubles = {30e3, 50e3, 60e3, 90e3, 101e3, 101330, 102e3, 130e3, 180e3, 250e3})
  void ventSlopeIsTheSlopeOfItsFlow(double p) {
    double d = 0.01;
    double above = AirEscape.orificeFlow(1e-6, p + d, 800.0, OUT, 300.0);
    double below = AirEscape.orificeFlow(1e-6, p - d, 800.0, OUT, 300.0);
    // truncation 5e-7 at 5 Pa from balance, less elsewhere; a lost factor would show at once
    assertThat(AirEscape.orificeSlope(1e-6, p, 800.0, OUT, 300.0))
        .isCloseTo((above - below) / (2.0 * d), withinPercentage(1e-4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, -0.3})
  void ventIsAStraightLineNearBalance(double over) {
    double slope = AirEscape.orificeSlope(1e-6, OUT + over, 800.0, OUT, 300.0);
    assertThat(AirEscape.orificeFlow(1e-6, OUT + over, 800.0, OUT, 300.0))
        .isCloseTo(slope * over, withinPercentage(1e-9));
    assertThat(slope).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.0, -1.0})
  void ventHasNoJumpWhereTheLineEnds(double over) {
    double inside = AirEscape.orificeFlow(1e-6, OUT + over * 0.999999, 800.0, OUT, 300.0);
    double outside = AirEscape.orificeFlow(1e-6, OUT + over * 1.000001, 800.0, OUT, 300.0);
    // a millionth of a pascal each side moves the flow by up to 2e-6 of itself
    assertThat(outside).isCloseTo(inside, withinPercentage(1e-3));
  }

  @Test
  void nothingFlowsInBalance() {
    assertThat(AirEscape.orificeFlow(1e-6, OUT, 800.0, OUT, 300.0)).isZero();
    assertThat(AirEscape.crackFlow(1e-4, 0.3, 0.05, OUT, 500.0, OUT)).isZero();
    assertThat(AirEscape.mouldFlow(1e-12, 0.3, OUT, 500.0, OUT)).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {90e3, 102e3, 150e3})
  void crackAndMouldSlopesAreTheSlopesOfTheirFlows(double p) {
    double d = 1.0;
    double crack =
        AirEscape.crackFlow(5e-5, 0.3, 0.05, p + d, 500.0, OUT)
            - AirEscape.crackFlow(5e-5, 0.3, 0.05, p - d, 500.0, OUT);
    assertThat(AirEscape.crackSlope(5e-5, 0.3, 0.05, p, 500.0, OUT))
        .isCloseTo(crack / (2.0 * d), withinPercentage(1e-6));
    double mould =
        AirEscape.mouldFlow(1e-12, 0.3, p + d, 500.0, OUT)
            - AirEscape.mouldFlow(1e-12, 0.3, p - d, 500.0, OUT);
    assertThat(AirEscape.mouldSlope(1e-12, 0.3, p, 500.0))
        .isCloseTo(mould / (2.0 * d), withinPercentage(1e-6));
  }

  @Test
  void vacuumBehindTheMouldDrawsAirThrough() {
    double drawn = AirEscape.mouldFlow(1e-12, 0.3, OUT, 500.0, 0.0);
    double pushed = AirEscape.mouldFlow(1e-12, 0.3, OUT + 5000.0, 500.0, OUT);
    assertThat(drawn).isGreaterThan(9.0 * pushed);
    assertThat(AirEscape.orificeFlow(1e-6, 0.5, 800.0, 0.0, 300.0)).isPositive();
    assertThat(AirEscape.orificeFlow(1e-6, 0.0, 800.0, 0.5, 300.0)).isNegative();
  }

  @Test
  void tightMouldOrNoCrackPassesNothing() {
    assertThat(AirEscape.mouldFlow(0.0, 0.3, 2e5, 500.0, OUT)).isZero();
    assertThat(AirEscape.crackFlow(0.0, 0.3, 0.05, 2e5, 500.0, OUT)).isZero();
    assertThat(AirEscape.crackSlope(0.0, 0.3, 0.05, 2e5, 500.0, OUT)).isZero();
  }

  @Test
  void pocketAsWideAsItsCoverKeepsAFiniteShapeFactor() {
    double cover = AirEscape.shapeFactor(0.1, 0.02, 0.0);
    assertThat(cover).isEqualTo(AirEscape.shapeFactor(0.1, 0.02, 0.021));
    assertThat(cover).isGreaterThan(AirEscape.shapeFactor(0.1, 0.02, 0.03));
  }
}
