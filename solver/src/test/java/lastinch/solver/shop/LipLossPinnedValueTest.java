package lastinch.solver.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import org.junit.jupiter.api.Test;

/** How the losses on the way from crucible to cup go with mass. */
class LipLossPinnedValueTest {
  private static final Citation PRACTICE =
      new Citation(Basis.PRACTICE, "common practice, no source", "");
  private static final Band RATE = new Band(2.0, 1.5, 3.0, PRACTICE);

  @Test
  void lossGoesWithSurfaceOverMass() {
    assertThat(LipLoss.forMass(RATE, 1.5).value()).isCloseTo(2.0, within(1e-12));
    assertThat(LipLoss.forMass(RATE, 12.0).value()).isCloseTo(1.0, within(1e-12));
    assertThat(LipLoss.forMass(RATE, 1.5 / 8.0).high()).isCloseTo(6.0, within(1e-12));
    assertThat(LipLoss.forMass(RATE, 1.5 / 8.0).low()).isCloseTo(3.0, within(1e-12));
  }

  @Test
  void figureStaysCommonPractice() {
    assertThat(LipLoss.forMass(RATE, 3.0).source().basis()).isEqualTo(Basis.PRACTICE);
    assertThat(LipLoss.forMass(RATE, 3.0).source().reference())
        .isEqualTo("common practice, no source");
  }

  @Test
  void masslessMeltIsRefused() {
    assertThatThrownBy(() -> LipLoss.forMass(RATE, 0.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("melted");
  }
}
