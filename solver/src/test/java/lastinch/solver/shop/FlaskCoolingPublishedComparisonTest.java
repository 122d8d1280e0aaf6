package lastinch.solver.shop;

import static lastinch.solver.material.SampleMetals.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Flask;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.SampleMoulds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A 2 mm steel can with gypsum block (k 0.40, density 1150, c 1050, emissivity 0.8) in still air,
 * compared with a separate flat estimate of our own, not a measurement: degrees of the steel and at
 * 3, 6, 10, 15, 25 mm. A flask so wide that it is flat is taken. The steel agrees to 4 K; in the
 * block the estimate is up to 20 K hotter at the same depth, as if its depths were counted from 0.7
 * mm further in. The bounds, 6 and 22 K, are far below the 100 K and more by which a flask of one
 * temperature would miss.
 */
class FlaskCoolingPublishedComparisonTest {
  @ParameterizedTest
  @CsvSource({
    "650, 60, 519, 600, 630, 645, 650, 650",
    "650, 120, 461, 549, 593, 626, 644, 650",
    "650, 300, 381, 461, 510, 561, 604, 641",
    "540, 120, 406, 470, 500, 524, 536, 540",
    "730, 120, 496, 604, 658, 700, 722, 730"
  })
  void investmentUnderTheCanCoolsAsEstimated(
      double kiln, double seconds, double steel, double a, double b, double c, double d, double e) {
    Flask flask = new Flask(2.0, 0.3, 2e-3, 6e-3, Band.typed(60.0), 7850.0, 600.0, 0.8);
    Curve profile =
        FlaskCooling.profile(
            flask,
            SampleMoulds.medium(Curve.constant(0.40), Curve.constant(1050.0), 1150.0),
            kiln + ZERO,
            seconds,
            20.0 + ZERO);
    double[] depth = {3e-3, 6e-3, 10e-3, 15e-3, 25e-3};
    double[] expected = {a, b, c, d, e};
    assertThat(profile.at(0.0) - ZERO).isCloseTo(steel, within(6.0));
    for (int i = 0; i < depth.length; i++) {
      assertThat(profile.at(depth[i]) - ZERO)
          .as("at %s m", depth[i])
          .isCloseTo(expected[i], within(22.0));
    }
    assertThat(e - (profile.at(0.0) - ZERO)).isGreaterThan(22.0);
  }
}
