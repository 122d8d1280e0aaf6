package lastinch.solver.inlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.Pour;
import lastinch.solver.casting.gating.Cup;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cup of 100 cm2 over a hole of 1 cm2: Torricelli's drain (White, Fluid Mechanics), balance. */
class PouringCupExactSolutionTest {
  private static final double DENSITY = 8000.0;
  private static final double ACROSS = Math.sqrt(4.0 * 100e-4 / Math.PI);

  @ParameterizedTest
  @CsvSource({"1.0, 10.0963755, 20.1927511", "0.62, 16.2844767, 32.5689534"})
  void cupDrainsAsTorricelliSays(double discharge, double to50, double empty) {
    PouringCup cup = filledTo(0.2, 1.0 / (discharge * discharge) - 1.0);
    // 0.5 % of the drain; a cup that kept its first speed would be 25 % early
    double first = timeTo(cup, 0.05);
    assertThat(first).isCloseTo(to50, withinPercentage(0.5));
    assertThat(first + timeTo(cup, 0.0)).isCloseTo(empty, withinPercentage(0.5));
  }

  @Test
  void metalLeavesAtTheSpeedOfItsHead() {
    assertThat(filledTo(0.2, 0.0).leavingSpeed()).isCloseTo(1.98090888, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.5", "1.0, 1.0", "1.5, 1.0"})
  void floorOfACupIsWhatTheMouthLeavesAndNeverLessThanNothing(double mouth, double taken) {
    Cup round = new Cup(0.04, 0.05);
    PouringCup cup =
        new PouringCup(
            new Pour.Empties(Band.typed(1.0)), round, DENSITY, 1.0, 1.0, mouth * round.area(), 0.0);
    cup.pour(0.0, 1e-3);
    double side = Math.PI * 0.04 * cup.level();
    double floor = (1.0 - taken) * round.area();
    assertThat(cup.wall() * cup.wettedShare()).isCloseTo(floor + side, withinPercentage(1e-9));
    assertThat(cup.wettedShare()).isBetween(0.0, 1.0);
  }

  @Test
  void whatTheHandKeepsBackStaysInTheCrucible() {
    PouringCup cup = cup(new Pour.Empties(Band.typed(2.0)), 30.0);
    double given = 0.0;
    for (int k = 0; k < 400; k++) {
      given += cup.pour(k * 0.01, 0.01);
    }
    double room = 0.25 * 100e-4 * DENSITY;
    assertThat(given).isCloseTo(room, within(1e-9));
    assertThat(cup.left()).isCloseTo(30.0 - room, within(1e-9));
    assertThat(cup.spilled()).isZero();
    assertThat(cup.isFull()).isTrue();
  }

  @Test
  void whatAMeasuredPourGivesTooMuchRunsOver() {
    Curve rate = Curve.of(new double[] {0.0, 2.0}, new double[] {15.0, 15.0});
    PouringCup cup = cup(new Pour.ByCurve(rate), 30.0);
    for (int k = 0; k < 400; k++) {
      cup.pour(k * 0.01, 0.01);
    }
    assertThat(cup.crucibleEmpty()).isTrue();
    assertThat(cup.spilled()).isCloseTo(30.0 - 0.25 * 100e-4 * DENSITY, within(1e-9));
    assertThat(cup.poured()).isCloseTo(30.0, within(1e-9));
  }

  @Test
  void metalPutBackOverTheRimSpills() {
    PouringCup cup = filledTo(0.25, 0.0);
    cup.draw(-1e-5);
    assertThat(cup.spilled()).isCloseTo(1e-5 * DENSITY, within(1e-12));
    assertThat(cup.level()).isEqualTo(0.25);
  }

  private static double timeTo(PouringCup cup, double level) {
    double time = 0.0;
    while (cup.level() > level) {
      assertThat(time).isLessThan(100.0);
      cup.drainFree(1e-3);
      time += 1e-3;
    }
    return time;
  }

  private static PouringCup filledTo(double level, double loss) {
    double mass = level * 100e-4 * DENSITY;
    PouringCup cup =
        new PouringCup(
            new Pour.AtRate(Band.typed(mass)),
            new Cup(ACROSS, 0.25),
            DENSITY,
            mass,
            mass,
            1e-4,
            loss);
    cup.pour(0.0, 1.0);
    return cup;
  }

  private static PouringCup cup(Pour pour, double melted) {
    return new PouringCup(pour, new Cup(ACROSS, 0.25), DENSITY, melted, 1.0, 1e-4, 0.5);
  }
}
