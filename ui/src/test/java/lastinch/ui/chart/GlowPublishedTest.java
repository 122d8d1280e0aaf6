package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.ui.chart.paper.Glow;
import lastinch.ui.chart.paper.Observer1931;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Glow colours against published ones. */
class GlowPublishedTest {
  /**
   * Black body colours of the CIE 1931 observer: Wyszecki and Stiles, Color Science, 2nd ed. 1982,
   * from memory; illuminant A at 2856 K: CIE 15. A tenth of what 100 K change.
   */
  @ParameterizedTest
  @CsvSource({
    "1000, 0.6528, 0.3444",
    "1500, 0.5857, 0.3931",
    "2000, 0.5267, 0.4133",
    "2856, 0.4476, 0.4074",
  })
  void blackBodiesHaveTheirPublishedColours(double kelvin, double x, double y) {
    double[] got = Glow.chromaticity(kelvin);
    assertThat(got[0]).isCloseTo(x, within(0.002));
    assertThat(got[1]).isCloseTo(y, within(0.002));
  }

  @Test
  void aBodyAHundredDegreesOffIsFoundOut() {
    double[] got = Glow.chromaticity(1600.0);
    assertThat(Math.abs(got[0] - 0.5857)).isGreaterThan(0.004);
  }

  @Test
  void evenLightIsWhite() {
    // The three functions are made to have one and the same area: 1/3 each.
    double[] xyz = Observer1931.sees(l -> 1.0);
    double sum = xyz[0] + xyz[1] + xyz[2];
    assertThat(xyz[0] / sum).isCloseTo(1.0 / 3.0, within(2e-4));
    assertThat(xyz[1] / sum).isCloseTo(1.0 / 3.0, within(2e-4));
    double[] swapped = Observer1931.sees(l -> l > 600e-9 ? 1.0 : 0.9);
    assertThat(swapped[0] / (swapped[0] + swapped[1] + swapped[2]))
        .isNotCloseTo(1.0 / 3.0, within(2e-3));
  }

  @Test
  void hotterBodiesAreYellower() {
    double before = Glow.chromaticity(800.0)[0];
    for (double t = 850.0; t <= 2000.0; t += 50.0) {
      double x = Glow.chromaticity(t)[0];
      assertThat(x).isLessThan(before);
      before = x;
    }
  }
}
