package lastinch.solver.network.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.SectionForm;
import org.junit.jupiter.api.Test;

/** Areas and walls of rims against their integrals; 1e-9 % is rounding. */
class SectionRimsExactSolutionTest {
  private static final double ROUNDING = 1e-9;

  @Test
  void stripHasTwoSquareEnds() {
    SectionRims rims = SectionRims.of(SectionForm.FLAT, 20e-3, 3e-3, 46e-3);
    assertThat(rims.area()).isCloseTo(2.0 * 2e-3 * 3e-3, withinPercentage(ROUNDING));
    assertThat(rims.perimeter()).isCloseTo(4.0 * 2e-3 + 2.0 * 3e-3, withinPercentage(ROUNDING));
    assertThat(rims.join()).isEqualTo(3e-3);
  }

  @Test
  void narrowStripGivesHalfItsWidth() {
    SectionRims rims = SectionRims.of(SectionForm.FLAT, 6e-3, 2e-3, 16e-3);
    assertThat(rims.breadth()).isEqualTo(1.5e-3);
  }

  /**
   * Outer halves of a parabola: 5/24 of width times thickness, 3/4 of it thick where they begin.
   */
  @Test
  void lensThinsOut() {
    SectionShape lens = SectionShape.of(SectionForm.LENS, 24e-3, 3.6e-3);
    SectionRims rims = lens.rims();
    assertThat(rims.breadth()).isEqualTo(6e-3);
    assertThat(rims.area()).isCloseTo(5.0 / 24.0 * 24e-3 * 3.6e-3, withinPercentage(ROUNDING));
    assertThat(rims.join()).isCloseTo(0.75 * 3.6e-3, withinPercentage(ROUNDING));
    assertThat(lens.perimeter() - rims.perimeter()).isCloseTo(24e-3, withinPercentage(ROUNDING));
  }

  @Test
  void drawnSectionAsFullAsALensIsOne() {
    double width = 24e-3;
    double thick = 3.6e-3;
    SectionShape lens = SectionShape.of(SectionForm.LENS, width, thick);
    SectionShape drawn =
        SectionShape.cut(width, thick, 2.0 / 3.0 * width * thick, lens.perimeter());
    assertThat(drawn.rims().area()).isCloseTo(lens.rims().area(), withinPercentage(ROUNDING));
    assertThat(drawn.rims().join()).isCloseTo(lens.rims().join(), withinPercentage(ROUNDING));
  }

  @Test
  void roundHasNone() {
    assertThat(SectionShape.of(SectionForm.ROUND, 8e-3, 4e-3).rims()).isEqualTo(SectionRims.NONE);
  }
}
