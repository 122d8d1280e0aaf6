package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exact solutions: plane and round Poiseuille flow, rectangular ducts, Colebrook's equation. */
class FrictionExactTest {
  @Test
  void planePoiseuilleSpeedFollowsFromTheGradient() {
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.277777778, 2e-3, Friction.SLOT);
    // The reference is given to 9 digits.
    assertThat(1e4 / over).isCloseTo(0.277777778, within(1e-9));
    double reynolds = 8000.0 * 0.277777778 * 2e-3 / 3e-3;
    assertThat(Friction.factor(reynolds, Friction.SLOT)).isCloseTo(96.0 / 1481.48148, within(1e-9));
  }

  @Test
  void roundPipeFollowsHagenPoiseuille() {
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.1, 4e-3, Friction.ROUND);
    // 32 mu/d2, round-off only
    assertThat(over).isCloseTo(32.0 * 3e-3 / 16e-6, withinPercentage(1e-10));
  }

  @Test
  void pipeLawFailsTheSlotCheck() {
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.277777778, 2e-3, Friction.ROUND);
    assertThat(1e4 / over).isNotCloseTo(0.277777778, withinPercentage(10.0));
  }

  @ParameterizedTest
  @CsvSource({"1, 14.2270769", "0.5, 15.5480561", "0.25, 18.2327768", "0.1, 21.1688768"})
  void rectangleMatchesTheSeriesSolution(double aspect, double fanning) {
    // the polynomial is good to 0.06 %; neighbouring aspects differ by 9 %
    assertThat(Friction.laminarProductRectangle(aspect) / 4.0)
        .isCloseTo(fanning, withinPercentage(0.07));
    assertThat(series(aspect)).isCloseTo(fanning, withinPercentage(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.15, 0.2, 0.33, 0.4, 0.6, 0.7, 0.8, 0.9})
  void rectangleMatchesTheSeriesSolutionBetweenTheReferences(double aspect) {
    assertThat(Friction.laminarProductRectangle(aspect))
        .isCloseTo(4.0 * series(aspect), withinPercentage(0.07));
  }

  @ParameterizedTest
  @CsvSource({"4e3, 0.0397348964", "1e4, 0.0316"})
  void turbulentFactorIsBlasius(double reynolds, double expected) {
    assertThat(Friction.factor(reynolds, Friction.ROUND)).isCloseTo(expected, within(1e-9));
    assertThat(Friction.factor(reynolds, Friction.SLOT)).isCloseTo(expected, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {4e3, 1e4, 3e4, 7e4, 1e5, 3e5, 1e6})
  void turbulentFactorStaysNearTheImplicitSmoothLaw(double reynolds) {
    // Blasius itself is 2.3 % off at 1e4; Blasius continued to 1e6 would be 14 % off
    assertThat(Friction.factor(reynolds, Friction.ROUND))
        .isCloseTo(Friction.colebrook(reynolds, 0.0), withinPercentage(2.4));
  }

  @Test
  void blasiusContinuedFailsAtAMillion() {
    double blasius = 0.316 / StrictMath.pow(1e6, 0.25);
    double law = Friction.factor(1e6, Friction.ROUND);
    assertThat(law).isCloseTo(Friction.colebrook(1e6, 0.0), withinPercentage(3.0));
    assertThat(blasius).isNotCloseTo(law, withinPercentage(10.0));
  }

  @ParameterizedTest
  @CsvSource({
    "1e4, 0, 0.0308829504",
    "1e4, 0.01, 0.0431265847",
    "1e5, 0, 0.0179897731",
    "1e5, 0.001, 0.0221745359",
    "1e5, 0.01, 0.0385035435",
    "1e6, 0.05, 0.0715737539"
  })
  void colebrookIsSolvedToTheLastDigit(double reynolds, double roughness, double expected) {
    // nine digits given
    assertThat(Friction.colebrook(reynolds, roughness)).isCloseTo(expected, within(1e-10));
  }

  @Test
  void smoothWallFailsTheRoughCheck() {
    assertThat(Friction.factor(1e5, Friction.ROUND))
        .isNotCloseTo(0.0385035435, withinPercentage(10.0));
  }

  @Test
  void viscousSlotFillsWithTheSquareRootOfTime() {
    // 1 mm, 2000 Pa, inertia left out: x dx/dt = P/G; 105.409255 mm at 0.1 s
    double over = Friction.gradientOverSpeed(8000.0, 3e-3, 0.0, 2e-3, Friction.SLOT);
    assertThat(Math.sqrt(2.0 * 2000.0 * 0.1 / over)).isCloseTo(0.105409255, within(1e-9));
    assertThat(Math.sqrt(2.0 * 2000.0 * 0.01 / over)).isCloseTo(0.0333333333, within(1e-9));
    assertThat(Math.sqrt(2.0 * 2000.0 * 0.5 / over)).isCloseTo(0.235702260, within(1e-9));
  }

  private static double series(double aspect) {
    double sum = 0.0;
    for (int n = 199; n >= 1; n -= 2) {
      sum += StrictMath.tanh(n * Math.PI / (2.0 * aspect)) / StrictMath.pow(n, 5.0);
    }
    double pi5 = StrictMath.pow(Math.PI, 5.0);
    return 24.0 / ((1.0 + aspect) * (1.0 + aspect) * (1.0 - 192.0 * aspect * sum / pi5));
  }
}
