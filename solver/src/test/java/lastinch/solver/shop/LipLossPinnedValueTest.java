package lastinch.solver.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import org.junit.jupiter.api.Test;

/** The figures of practice for the way from crucible to cup, and how they go with mass. */
class LipLossPinnedValueTest {
  @Test
  void usualMeltLosesTwoKelvinPerSecondAndFifteenOverTheLip() {
    Band rate = LipLoss.coolingRate();
    assertThat(new double[] {rate.low(), rate.value(), rate.high()}).containsExactly(1.5, 2.0, 3.0);
    Band lip = LipLoss.overLip();
    assertThat(new double[] {lip.low(), lip.value(), lip.high()}).containsExactly(10.0, 15.0, 20.0);
    assertThat(lip.source().basis()).isEqualTo(Basis.PRACTICE);
    assertThat(lip.source().reference()).isEqualTo("common practice, no source");
  }

  @Test
  void lossGoesWithSurfaceOverMass() {
    assertThat(LipLoss.coolingRate(1.5).value()).isCloseTo(2.0, within(1e-12));
    assertThat(LipLoss.coolingRate(12.0).value()).isCloseTo(1.0, within(1e-12));
    assertThat(LipLoss.overLip(1.5 / 8.0).high()).isCloseTo(40.0, within(1e-12));
    assertThat(LipLoss.overLip(3.0).source().basis()).isEqualTo(Basis.PRACTICE);
  }

  @Test
  void masslessMeltIsRefused() {
    assertThatThrownBy(() -> LipLoss.coolingRate(0.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("melted");
  }
}
