package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.material.FilmForming;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact solutions: plate resistance, surface under a steady flux, spreading, stiffening slurry. */
class FreezingClosuresExactTest {
  @Test
  void plateResistanceIsThatOfAParabola() {
    double b = 3e-3;
    double k = 40.0;
    // unit flux out of both faces of an evenly cooling plate: T(y) - T(face) = y (b - y)/(b k)
    double mean = Quadrature.integral(y -> y * (b - y) / (b * k), 0.0, b) / b;
    assertThat(ContactLaw.plateResistance(b, k)).isCloseTo(mean, withinPercentage(1e-9));
  }

  @Test
  void contactAndPlateAddAsResistances() {
    assertThat(ContactLaw.inSeries(1000.0, 1e-3)).isEqualTo(500.0);
    assertThat(ContactLaw.inSeries(1000.0, 0.0)).isEqualTo(1000.0);
    assertThat(ContactLaw.inSeries(0.0, 1e-3)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0.4, 0", "0.525, 0.15625", "0.65, 0.5", "0.775, 0.84375", "0.9, 1", "1, 1", "0, 0"})
  void gapOpensBetweenItsThresholds(double mostSolid, double share) {
    assertThat(ContactLaw.gapShare(mostSolid, 0.4, 0.9)).isCloseTo(share, within(1e-12));
  }

  @Test
  void halfOpenGapPassesTheGeometricMean() {
    assertThat(ContactLaw.conductance(0.5, 900.0, 100.0)).isCloseTo(300.0, within(1e-9));
    assertThat(ContactLaw.conductance(0.0, 900.0, 100.0)).isEqualTo(900.0);
    assertThat(ContactLaw.conductance(1.0, 900.0, 100.0)).isEqualTo(100.0);
  }

  @Test
  void surfaceDropsWithTheRootOfTimeUnderASteadyFlux() {
    double k = 40.0;
    double rho = 8000.0;
    double c = 450.0;
    double diffusivity = k / (rho * c);
    double exact = 2.0 * 5e5 / k * Math.sqrt(diffusivity * 0.01 / Math.PI);
    assertThat(LapIndex.surfaceDrop(5e5, 0.01, k, rho, c)).isCloseTo(exact, withinPercentage(1e-9));
  }

  @Test
  void lapIndexOfATinBronzeTip() {
    double tau = LapIndex.tau(2e-3, 3.9e-3, 0.1, 0.0);
    assertThat(tau).isCloseTo(0.01, within(1e-15));
    double drop = LapIndex.surfaceDrop(5e5, tau, 40.0, 8000.0, 450.0);
    // 2 x 5e5 x sqrt(0.01/pi)/12000
    assertThat(drop).isCloseTo(4.70158, within(1e-5));
    double surface = LapIndex.surfaceEnthalpy(1000.0, 450.0, drop);
    assertThat(surface).isCloseTo(-1115.711, within(1e-3));
    double share = -surface / 190e3;
    assertThat(share).isCloseTo(5.87216e-3, within(1e-8));
    assertThat(LapIndex.index(share, 0.3, FilmForming.NO)).isCloseTo(0.0195739, within(1e-7));
    assertThat(LapIndex.index(share, 0.3, FilmForming.MILD)).isCloseTo(0.1695739, within(1e-7));
    assertThat(LapIndex.index(share, 0.3, FilmForming.YES)).isCloseTo(0.3195739, within(1e-7));
  }

  @Test
  void spreadingBetweenPlatesIsTaylors() {
    // u/U = 6 y (1 - y); D/kappa = 1 + Pe^2 int G^2 dy, G = int (u/U - 1) dy
    double excess =
        Quadrature.integral(
            y -> {
              double g = 3.0 * y * y - 2.0 * y * y * y - y;
              return g * g;
            },
            0.0,
            1.0);
    double peclet = 0.1 * 2e-3 / 1e-5;
    assertThat(TaylorArisDispersion.plates(1e-5, 0.1, 2e-3, 1000.0, 0.0))
        .isCloseTo(1e-5 * (1.0 + peclet * peclet * excess), withinPercentage(1e-8));
  }

  @Test
  void spreadingInAPipeIsTaylors() {
    // u/U = 2 (1 - 4 r^2), r on the diameter; D/kappa = 1 + 8 Pe^2 int G^2/r dr
    double excess =
        8.0
            * Quadrature.integral(
                r -> {
                  double g = r * r / 2.0 - 2.0 * r * r * r * r;
                  return r == 0.0 ? 0.0 : g * g / r;
                },
                0.0,
                0.5);
    double peclet = 0.1 * 2e-3 / 1e-5;
    assertThat(TaylorArisDispersion.round(1e-5, 0.1, 2e-3, 1000.0, 0.0))
        .isCloseTo(1e-5 * (1.0 + peclet * peclet * excess), withinPercentage(1e-8));
  }

  @Test
  void platesLawFailsForAPipe() {
    double plates = TaylorArisDispersion.plates(1e-5, 0.1, 2e-3, 1000.0, 0.0) - 1e-5;
    double pipe = TaylorArisDispersion.round(1e-5, 0.1, 2e-3, 1000.0, 0.0) - 1e-5;
    assertThat(plates).isNotCloseTo(pipe, withinPercentage(5.0));
  }

  @Test
  void turbulenceLimitsSpreading() {
    double kappa = 1e-5;
    double wallSpeed = 2.0 * Math.sqrt(0.03 / 8.0);
    assertThat(TaylorArisDispersion.plates(kappa, 2.0, 2e-3, 20000.0, 0.03))
        .isCloseTo(kappa + 5.0 * 4e-3 * wallSpeed, withinPercentage(1e-9));
    assertThat(TaylorArisDispersion.round(kappa, -2.0, 2e-3, 20000.0, 0.03))
        .isCloseTo(kappa + 5.0 * 2e-3 * wallSpeed, withinPercentage(1e-9));
    // just above the limit the laminar law is the smaller one and stays
    assertThat(TaylorArisDispersion.plates(kappa, 0.1, 2e-3, 2301.0, 0.05))
        .isEqualTo(TaylorArisDispersion.plates(kappa, 0.1, 2e-3, 2299.0, 0.05));
  }

  @Test
  void slurryStiffensFromEinsteinsLaw() {
    // 1 + 2.5 f, next term 2.5 f^2 (2.5 + 1/0.3)/2 = 7e-6
    assertThat(Slurry.viscosityFactor(1e-3, 0.3)).isCloseTo(1.0025, within(1e-5));
    assertThat(Slurry.viscosityFactor(0.15, 0.3)).isCloseTo(1.681792831, within(1e-9));
    assertThat(Slurry.viscosityFactor(0.0, 0.3)).isEqualTo(1.0);
  }

  @Test
  void separationComparesTheRangeWithTheDropAcrossASkin() {
    // 200 K x 4 x 50 W/(m K)/(5e5 W/m2 x 2 mm)
    assertThat(Slurry.separation(1273.0, 1073.0, 5e5, 2e-3, 50.0)).isCloseTo(40.0, within(1e-12));
    assertThat(Slurry.mushShare(40.0, 3.0)).isCloseTo(1600.0 / 1609.0, within(1e-15));
    assertThat(Slurry.mushShare(3.0, 3.0)).isEqualTo(0.5);
  }
}
