package lastinch.solver.shop;

import static lastinch.solver.material.SampleMetals.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Flask;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.material.MouldTable;
import lastinch.solver.material.SampleMoulds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A flask in air against the exact infinite cylinder: radius 50 mm, k 0.6, density 1200, c 1000,
 * film 60 W/(m2 K), 700 into 20 degrees (Carslaw and Jaeger, ch. 7), through a can of next to no
 * heat; and against the lump where the investment conducts so well that a lump is right.
 */
class FlaskCoolingExactSolutionTest {
  private static final double AIR = 20.0 + ZERO;
  private static final double KILN = 700.0 + ZERO;

  private static Flask flask(double wall, double steelDensity) {
    return new Flask(0.1, 0.3, wall, 6e-3, Band.typed(60.0), steelDensity, 600.0, 0.8);
  }

  @ParameterizedTest
  @CsvSource({
    "300, 692.745007, 245.720321",
    "600, 618.057995, 176.103082",
    "1200, 412.510103, 111.485771",
    "1800, 265.514369, 76.5017663"
  })
  void coreStaysHotAsInTheExactCylinder(double seconds, double centre, double surface) {
    Curve profile =
        FlaskCooling.profile(
            flask(1e-4, 1.0),
            MouldTable.constant(0.6, 1.2e6, 200.0, 1500.0),
            KILN,
            seconds,
            AIR,
            (hot, air) -> 60.0);
    // 2 K of 680 K: a thermocouple in a flask is no better
    assertThat(profile.at(0.05) - ZERO).isCloseTo(centre, within(2.0));
    assertThat(profile.at(0.0) - ZERO).isCloseTo(surface, within(2.0));
  }

  @Test
  void halfTheConductivityFails() {
    Curve profile =
        FlaskCooling.profile(
            flask(1e-4, 1.0),
            MouldTable.constant(0.3, 1.2e6, 200.0, 1500.0),
            KILN,
            1200.0,
            AIR,
            (hot, air) -> 60.0);
    assertThat(Math.abs(profile.at(0.05) - ZERO - 412.510103)).isGreaterThan(2.0);
  }

  @Test
  void lumpIsRightWhereTheFillingConductsWell() {
    double seconds = 900.0;
    double film = 60.0;
    double wall = 2e-3;
    Curve profile =
        FlaskCooling.profile(
            flask(wall, 7850.0),
            MouldTable.constant(1e4, 1.2e6, 200.0, 1500.0),
            KILN,
            seconds,
            AIR,
            (hot, air) -> film);
    double radius = 0.05;
    double outside = radius + wall;
    double heat =
        1.2e6 * radius * radius / 2.0
            + 7850.0 * 600.0 * (outside * outside - radius * radius) / 2.0;
    double lump = AIR + (KILN - AIR) * StrictMath.exp(-film * outside * seconds / heat);
    // first order in the step: 0.5 s of a time constant of 900 s
    assertThat(profile.at(0.02)).isCloseTo(lump, within(0.001 * (KILN - AIR)));
  }

  @Test
  void flaskStraightFromTheKilnHasItsHeat() {
    MouldMedium investment =
        SampleMoulds.medium(Curve.constant(0.4), Curve.constant(1050.0), 1150.0);
    Curve profile = FlaskCooling.profile(flask(2e-3, 7850.0), investment, KILN, 0.0, AIR);
    assertThat(profile.at(0.0)).isCloseTo(KILN, within(1e-9));
    assertThat(profile.at(0.05)).isCloseTo(KILN, within(1e-9));
  }
}
