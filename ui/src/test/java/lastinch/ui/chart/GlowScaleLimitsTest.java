package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import lastinch.ui.chart.paper.GlowScale;
import lastinch.ui.chart.paper.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What looks lighter is hotter: in colour, in grey, to every eye. */
class GlowScaleLimitsTest {
  private static final int STEPS = 24;

  /** Bronze, silver, aluminium, pewter. */
  @ParameterizedTest
  @CsvSource({"1173, 1423", "1150, 1300", "850, 1050", "450, 600"})
  void lightnessRisesSteadily(double cold, double hot) {
    GlowScale scale = new GlowScale(cold, hot);
    double even = (GlowScale.LIGHTEST - GlowScale.DARKEST) / STEPS;
    double before = Eyes.lightness(scale.color(cold));
    assertThat(before).isCloseTo(GlowScale.DARKEST, within(0.5));
    for (int i = 1; i <= STEPS; i++) {
      double now = Eyes.lightness(scale.color(cold + (hot - cold) * i / STEPS));
      // Eight bits a colour round L* by about half a unit.
      assertThat(now - before).isCloseTo(even, within(0.6));
      before = now;
    }
    assertThat(before).isCloseTo(GlowScale.LIGHTEST, within(0.5));
  }

  @ParameterizedTest
  @EnumSource(Eyes.Kind.class)
  void everyEyeSeesItRise(Eyes.Kind eyes) {
    GlowScale scale = new GlowScale(1173.0, 1423.0);
    double before = -1.0;
    for (int i = 0; i <= STEPS; i++) {
      double now = Eyes.lightness(eyes.sees(scale.color(1173.0 + 250.0 * i / STEPS)));
      assertThat(now).isGreaterThan(before + 0.5);
      before = now;
    }
  }

  @Test
  void aPlainRainbowWouldBeFoundOut() {
    double before = -1.0;
    boolean rises = true;
    for (int i = 0; i <= STEPS; i++) {
      double now = Eyes.lightness(Color.getHSBColor(0.66f - 0.66f * i / STEPS, 1f, 1f));
      rises &= now > before;
      before = now;
    }
    assertThat(rises).isFalse();
  }

  @Test
  void bronzeGlowsOrangeAndPewterDoesNotGlow() {
    Color bronze = new GlowScale(1173.0, 1423.0).color(1300.0);
    assertThat(bronze.getRed()).isGreaterThan(bronze.getGreen() + 40);
    assertThat(bronze.getGreen()).isGreaterThan(bronze.getBlue() + 20);
    Color pewter = new GlowScale(450.0, 600.0).color(520.0);
    assertThat(pewter.getRed()).isEqualTo(pewter.getGreen()).isEqualTo(pewter.getBlue());
  }

  @Test
  void beyondItsEndsTheEndColoursHold() {
    GlowScale scale = new GlowScale(1173.0, 1423.0);
    assertThat(scale.rgb(300.0)).isEqualTo(scale.rgb(1173.0));
    assertThat(scale.rgb(2000.0)).isEqualTo(scale.rgb(1423.0));
    assertThatThrownBy(() -> new GlowScale(1200.0, 1200.0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void noShadeIsTakenForPaperOrInk() {
    GlowScale scale = new GlowScale(1173.0, 1423.0);
    assertThat(Eyes.lightness(Look.PAPER) - Eyes.lightness(scale.color(1423.0))).isGreaterThan(5.0);
    assertThat(Eyes.contrast(Look.INK, scale.color(1173.0))).isGreaterThan(1.8);
    assertThat(Eyes.contrast(Look.INK, scale.color(1300.0))).isGreaterThan(4.5);
  }
}
