package lastinch.solver.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The mould table against the curves it stands for. */
class MouldTableExactSolutionTest {
  private static final double DENSITY = 1290.0;
  private static final Curve HEAT =
      Curve.of(new double[] {500.0, 700.0, 900.0}, new double[] {990.0, 1115.0, 1130.0});
  private static final Curve CONDUCTIVITY =
      Curve.of(new double[] {293.0, 773.0, 1273.0}, new double[] {0.7, 0.5, 0.9});

  private static MouldMedium medium(Curve conductivity, double factor, Curve heat) {
    return SampleMoulds.medium(conductivity, factor, heat, DENSITY);
  }

  @Test
  void heatIsTheIntegralOfTheCapacity() {
    MouldTable table = MouldTable.of(medium(CONDUCTIVITY, 1.0, HEAT), 300.0, 1300.0);
    double to = 800.0;
    int n = 100_000;
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      sum += DENSITY * HEAT.at(300.0 + (to - 300.0) * (i + 0.5) / n) * (to - 300.0) / n;
    }
    // a hundredth of a degree of heat
    assertThat(table.heat(to)).isCloseTo(sum, within(0.01 * DENSITY * 1000.0));
    assertThat(table.temperature(sum)).isCloseTo(to, within(0.01));
  }

  @Test
  void conductivityCarriesItsFactor() {
    MouldTable table = MouldTable.of(medium(CONDUCTIVITY, 1.5, HEAT), 300.0, 1300.0);
    for (double t = 310.0; t < 1300.0; t += 31.0) {
      // kinks of the curve fall between knots 2 K apart: 2 K x 8e-4 W/(m K) per K / 4
      assertThat(table.conductivityAt(t)).isCloseTo(1.5 * CONDUCTIVITY.at(t), within(1e-3));
      assertThat(table.capacityAt(t)).isCloseTo(DENSITY * HEAT.at(t), within(DENSITY * 1.5));
    }
  }

  @Test
  void mediumThatDoesNotVaryIsCalledConstant() {
    MouldTable table =
        MouldTable.of(medium(Curve.constant(0.6), 2.0, Curve.constant(1000.0)), 300.0, 1300.0);
    assertThat(table.constant()).isTrue();
    assertThat(table.conductivityAt(777.0)).isEqualTo(1.2);
    assertThat(table.capacityAt(777.0)).isCloseTo(1.29e6, within(1e-6));
    assertThat(MouldTable.of(medium(CONDUCTIVITY, 1.0, HEAT), 300.0, 1300.0).constant()).isFalse();
  }

  @Test
  void tableGoesOnStraightBeyondItsEnds() {
    MouldTable table = MouldTable.of(medium(CONDUCTIVITY, 1.0, HEAT), 300.0, 1300.0);
    double beyond = table.heat(1300.0) + DENSITY * 1130.0 * 50.0;
    assertThat(table.temperature(beyond)).isCloseTo(1350.0, within(0.1));
    assertThat(table.temperature(table.heat(250.0))).isCloseTo(250.0, within(1e-9));
  }
}
