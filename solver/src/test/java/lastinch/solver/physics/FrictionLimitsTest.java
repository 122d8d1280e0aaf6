package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits: rest, the join between laminar and turbulent, slopes, mirrored flow. */
class FrictionLimitsTest {
  private static final double RHO = 8000.0;
  private static final double MU = 3e-3;
  private static final double DH = 4e-3;

  @ParameterizedTest
  @ValueSource(doubles = {57.0, 64.0, 80.0, 96.0})
  void gradientRisesWithSpeedThroughTheJoin(double laminar) {
    double before = 0.0;
    for (double re = 50.0; re < 1e6; re *= 1.002) {
      double gradient = Friction.product(re, laminar) * re;
      assertThat(gradient).isGreaterThan(before);
      before = gradient;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {2000.0, 4000.0, 6e4})
  void factorHasNoJump(double reynolds) {
    double below = Friction.product(reynolds * (1.0 - 1e-9), Friction.SLOT);
    double above = Friction.product(reynolds * (1.0 + 1e-9), Friction.SLOT);
    // a step of 2e-9 in Re may move the product by a few 1e-9 of itself
    assertThat(above).isCloseTo(below, withinPercentage(1e-6));
  }

  @Test
  void laminarLawHoldsUpToItsEndAndTurbulentFromItsStart() {
    assertThat(Friction.product(2000.0, 64.0)).isEqualTo(64.0);
    assertThat(Friction.product(2100.0, 64.0)).isGreaterThan(64.0);
    assertThat(Friction.product(4000.0, 64.0)).isEqualTo(Friction.product(4000.0, 96.0));
    assertThat(Friction.product(3900.0, 64.0)).isNotEqualTo(Friction.product(3900.0, 96.0));
    // half-way, half of each
    double half = 0.5 * (64.0 + 0.316 * StrictMath.pow(3000.0, 0.75));
    assertThat(Friction.product(3000.0, 64.0)).isCloseTo(half, within(1e-9));
  }

  @Test
  void restIsFinite() {
    double over = Friction.gradientOverSpeed(RHO, MU, 0.0, DH, Friction.SLOT);
    assertThat(over).isCloseTo(96.0 * MU / (2.0 * DH * DH), within(1e-9));
    assertThat(Friction.product(0.0, Friction.ROUND)).isEqualTo(Friction.ROUND);
    assertThatThrownBy(() -> Friction.factor(0.0, Friction.ROUND))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("reynolds");
  }

  @Test
  void metalWithoutViscosityHasNoFriction() {
    assertThat(Friction.gradientOverSpeed(RHO, 0.0, 1.0, DH, Friction.SLOT)).isZero();
  }

  @Test
  void flowBackwardsMeetsTheSameFriction() {
    assertThat(Friction.gradientOverSpeed(RHO, MU, -1.3, DH, Friction.SLOT))
        .isEqualTo(Friction.gradientOverSpeed(RHO, MU, 1.3, DH, Friction.SLOT));
  }

  @ParameterizedTest
  @CsvSource({"1e4, 0.001", "1e5, 0.02"})
  void roughWallsDragMore(double reynolds, double roughness) {
    assertThat(Friction.colebrook(reynolds, roughness))
        .isGreaterThan(Friction.colebrook(reynolds, 0.0) * 1.01);
  }

  @Test
  void flatRectangleIsASlot() {
    assertThat(Friction.laminarProductRectangle(0.0)).isEqualTo(Friction.SLOT);
  }
}
