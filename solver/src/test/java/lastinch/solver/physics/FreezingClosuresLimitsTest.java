package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Limits of slurry, contact, laps and spreading. */
class FreezingClosuresLimitsTest {
  @Test
  void isothermalMetalIsAPureSkinFormer() {
    double r = Slurry.separation(933.0, 933.0, 5e5, 2e-3, 200.0);
    assertThat(r).isZero();
    assertThat(Slurry.mushShare(r, 3.0)).isZero();
    assertThat(Slurry.separation(933.0, 933.0, 0.0, 2e-3, 200.0)).isZero();
  }

  @Test
  void metalThatLosesNoHeatIsAllMush() {
    double r = Slurry.separation(1273.0, 1073.0, 0.0, 2e-3, 50.0);
    assertThat(r).isInfinite();
    assertThat(Slurry.mushShare(r, 3.0)).isEqualTo(1.0);
  }

  @Test
  void stiffSlurryStopsAtTheLargestFactor() {
    assertThat(Slurry.viscosityFactor(0.3, 0.3)).isEqualTo(Slurry.LARGEST_FACTOR);
    assertThat(Slurry.viscosityFactor(0.9, 0.3)).isEqualTo(Slurry.LARGEST_FACTOR);
    assertThat(Slurry.viscosityFactor(0.5 - 1e-12, 0.5)).isEqualTo(Slurry.LARGEST_FACTOR);
    double before = 0.0;
    for (double f = 0.0; f < 0.3; f += 0.001) {
      double factor = Slurry.viscosityFactor(f, 0.3);
      assertThat(factor).isGreaterThan(before);
      before = factor;
    }
  }

  @Test
  void leastOpenGapIsAShareOfThickAndAnAbsoluteOfThinSections() {
    assertThat(Slurry.openGapStop(2e-3)).isCloseTo(3e-4, within(1e-18));
    assertThat(Slurry.openGapStop(0.5e-3)).isEqualTo(1e-4);
  }

  @Test
  void gapWithoutAWidthOpensAtOnce() {
    assertThat(ContactLaw.gapShare(0.49, 0.5, 0.5)).isZero();
    assertThat(ContactLaw.gapShare(0.51, 0.5, 0.5)).isEqualTo(1.0);
  }

  @Test
  void perfectGapPassesNothingOnceOpen() {
    assertThat(ContactLaw.conductance(0.0, 900.0, 0.0)).isEqualTo(900.0);
    assertThat(ContactLaw.conductance(0.5, 900.0, 0.0)).isZero();
  }

  @Test
  void gapConductanceDoesNotMatterBeforeTheSkinFrees() {
    double share = ContactLaw.gapShare(0.3, 0.4, 0.9);
    assertThat(ContactLaw.conductance(share, 900.0, 100.0))
        .isEqualTo(ContactLaw.conductance(share, 900.0, 400.0));
  }

  @Test
  void standingFrontCoolsForTheTimeItStood() {
    assertThat(LapIndex.tau(2e-3, 3.9e-3, 0.0, 3.0)).isEqualTo(3.0);
    // a front that has just come to rest is no better off than one creeping at the limit
    assertThat(LapIndex.tau(2e-3, 3.9e-3, 0.0, 0.0))
        .isEqualTo(LapIndex.tau(2e-3, 3.9e-3, LapIndex.STANDING, 0.0));
    assertThat(LapIndex.tau(2e-3, 3.9e-3, LapIndex.STANDING, 9.0)).isCloseTo(0.5, within(1e-12));
    // thick sections roll over a capillary length
    assertThat(LapIndex.tau(20e-3, 3.9e-3, 0.1, 0.0)).isCloseTo(0.039, within(1e-12));
  }

  @Test
  void metalAtRestSpreadsByConductionOnly() {
    assertThat(TaylorArisDispersion.plates(1e-5, 0.0, 2e-3, 0.0, 0.0)).isEqualTo(1e-5);
    assertThat(TaylorArisDispersion.round(1e-5, 0.0, 2e-3, 0.0, 0.0)).isEqualTo(1e-5);
  }
}
