package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact solutions: draining, bottom filling, a chain of losses, tapered sprue, falling stream. */
class HydraulicsExactTest {
  private static final double CUP = 100e-4;
  private static final double HOLE = 1e-4;

  @ParameterizedTest
  @CsvSource({"1.0, 10.0963755", "0.62, 16.2844767"})
  void cupDrainsAsTorricelliSays(double discharge, double expected) {
    // 9 digits given, Simpson's error below them
    assertThat(drainTime(discharge)).isCloseTo(expected, within(1e-6));
  }

  @Test
  void cupKeptAtItsFirstSpeedFailsTheDrain() {
    double speed = Losses.steadySpeed(0.20, 1.0);
    assertThat(speed).isCloseTo(1.98090888, within(1e-8));
    assertThat(CUP * 0.15 / (HOLE * speed)).isNotCloseTo(10.0963755, withinPercentage(10.0));
  }

  @ParameterizedTest
  @CsvSource({"0.05, 1.48964435", "0.1, 3.18046657", "0.2, 7.79987906"})
  void cavityFillsFromBelow(double height, double expected) {
    double k = 1.0 / (0.8 * 0.8);
    double time =
        Quadrature.integral(z -> 40e-4 / (80e-6 * Losses.steadySpeed(0.25 - z, k)), 0.0, height);
    assertThat(time).isCloseTo(expected, within(1e-7));
  }

  @Test
  void gateSpeedFallsAsTheCavityFills() {
    double k = 1.0 / (0.8 * 0.8);
    assertThat(Losses.steadySpeed(0.25, k)).isCloseTo(1.77177877, within(1e-8));
    assertThat(Losses.steadySpeed(0.05, k)).isCloseTo(0.792363553, within(1e-8));
  }

  @Test
  void lossChainSetsTheSpeed() {
    double friction = 0.025 * 0.30 / 0.008;
    double k = Losses.SHARP_INLET + Losses.MITRE_BEND + Losses.EXIT + friction;
    assertThat(k).isCloseTo(3.5375, within(1e-12));
    double v = Losses.steadySpeed(0.25, k);
    assertThat(v).isCloseTo(1.17752811, within(1e-8));
    assertThat(v * Math.PI * 0.004 * 0.004).isCloseTo(59.1890183e-6, within(1e-13));
  }

  @Test
  void chainWithoutItsExitFails() {
    double k = Losses.SHARP_INLET + Losses.MITRE_BEND + 0.025 * 0.30 / 0.008;
    assertThat(Losses.steadySpeed(0.25, k)).isNotCloseTo(1.17752811, withinPercentage(5.0));
  }

  @Test
  void lossesOnTwoSpeedsAddOnOne() {
    double k = Losses.referredTo(1.1, 2.0, 1.0) + 2.35;
    assertThat(Losses.steadySpeed(0.25, k)).isCloseTo(1.36695700, within(1e-8));
    assertThat(Losses.steadySpeed(0.25, k) / 2.0).isCloseTo(0.683478498, within(1e-9));
  }

  @Test
  void suddenChangesOfSection() {
    assertThat(Losses.suddenExpansion(1.0, 2.0)).isEqualTo(0.25);
    assertThat(Losses.suddenExpansion(1.0, 1.0)).isZero();
    assertThat(Losses.suddenExpansion(1e-9, 1.0)).isCloseTo(Losses.EXIT, within(1e-8));
    assertThat(Losses.suddenContraction(2.0, 1.0)).isEqualTo(0.25);
    assertThat(Losses.suddenContraction(1.0, 1.0)).isZero();
    assertThat(Losses.suddenContraction(1.0, 1e-9)).isCloseTo(Losses.SHARP_INLET, within(1e-8));
  }

  @Test
  void taperedSprueHoldsOpenAirAtEveryDepth() {
    assertThat(FreeFall.areaRatio(0.05, 0.25)).isCloseTo(0.447213595, within(1e-9));
    double exit = Math.PI * 0.004 * 0.004;
    double rate = exit * FreeFall.speedAfter(0.0, 0.25);
    assertThat(rate).isCloseTo(0.111324143e-3, within(1e-12));
    assertThat(widthAt(0.05)).isCloseTo(11.9627902e-3, within(1e-10));
    assertThat(widthAt(0.10)).isCloseTo(10.0594674e-3, within(1e-10));
    assertThat(widthAt(0.15)).isCloseTo(9.08975493e-3, within(1e-10));
    assertThat(widthAt(0.20)).isCloseTo(8.45897011e-3, within(1e-10));
    for (double head = 0.05; head <= 0.25; head += 0.01) {
      double area = Math.PI * widthAt(head) * widthAt(head) / 4.0;
      double speed = rate / area;
      // what is left of the head after the speed head is the pressure; round-off only
      assertThat(head - SplashLimit.fallHeight(speed)).isCloseTo(0.0, within(1e-12));
    }
  }

  @Test
  void straightSprueDoesNotHoldOpenAir() {
    double rate = Math.PI * 0.004 * 0.004 * FreeFall.speedAfter(0.0, 0.25);
    double speed = rate / (Math.PI * 0.004 * 0.004);
    assertThat(0.10 - SplashLimit.fallHeight(speed)).isNotCloseTo(0.0, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 1.03489130, 0.289885518, 0.0749124667",
    "0.1, 1.43248037, 0.209426954, 0.115441424",
    "0.2, 2.00349694, 0.149738187, 0.173649026"
  })
  void fallingStreamSpeedsUpAndThins(double drop, double speed, double share, double time) {
    double v = FreeFall.speedAfter(0.3, drop);
    assertThat(v).isCloseTo(speed, within(1e-8));
    assertThat(0.3 / v).isCloseTo(share, within(1e-9));
    double behind = SplashLimit.fallHeight(0.3);
    assertThat(FreeFall.areaRatio(behind, behind + drop)).isCloseTo(share, within(1e-9));
    assertThat(FreeFall.time(0.3, drop, Gravity.G)).isCloseTo(time, within(5e-10));
  }

  @Test
  void streamWithoutPullKeepsItsSpeed() {
    assertThat(FreeFall.time(0.5, 0.1, 0.0)).isEqualTo(0.2);
    assertThat(FreeFall.time(0.0, 0.0, 0.0)).isZero();
    assertThat(FreeFall.time(0.0, 1.0, 2.0)).isEqualTo(1.0);
  }

  private static double drainTime(double discharge) {
    double k = 1.0 / (discharge * discharge);
    return Quadrature.integral(h -> CUP / (HOLE * Losses.steadySpeed(h, k)), 0.05, 0.20);
  }

  private static double widthAt(double head) {
    return 0.008 / Math.sqrt(FreeFall.areaRatio(head, 0.25));
  }
}
