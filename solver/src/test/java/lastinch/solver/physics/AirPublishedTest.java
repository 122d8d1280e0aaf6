package lastinch.solver.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Published comparison: U.S. Standard Atmosphere 1976 at sea level, from memory. */
class AirPublishedTest {
  @Test
  void viscosityOfAir() {
    // table to 5 digits; a power law T^0.7 fitted at 1000 K would be 4 % off
    assertThat(DryAir.viscosity(288.15)).isCloseTo(1.7894e-5, withinPercentage(0.02));
  }

  @Test
  void powerLawFailsTheViscosity() {
    assertThat(DryAir.viscosity(1000.0) * StrictMath.pow(0.28815, 0.7))
        .isNotCloseTo(1.7894e-5, withinPercentage(2.0));
  }

  @Test
  void densityOfAir() {
    assertThat(DryAir.density(DryAir.OPEN_AIR, 288.15)).isCloseTo(1.2250, within(5e-5));
  }
}
