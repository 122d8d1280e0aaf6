package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unequal plugs that run head-on into each other keep their momentum and lose energy. */
class HeadOnPlugsConservationTest {
  @ParameterizedTest
  @CsvSource({"0.3, 2e-5, -6e-6", "0.12, 5e-6, -2e-5", "0.2, 1e-5, -1e-5"})
  void momentumIsKeptWhenTheyMeet(double lengthA, double flowA, double flowB) {
    Vessels vessels = new Vessels();
    int left = vessels.joint();
    int right = vessels.joint();
    NetworkRun run =
        vessels
            .channel("level", 0.4, 0.0, 0.0, SectionShape.flat(0.01, 0.005))
            .between(left, right)
            .run(
                SampleJob.plate(1.0, 0.002)
                    .checking(SampleJob.Options.bare().water().friction(0.0).cupKeptAt(0.0))
                    .build());
    run.state.wet[left] = true;
    run.state.wet[right] = true;
    Vessels.fillFromA(run, 0, lengthA, flowA);
    Channel c = Vessels.fillFromB(run, 0, 0.4 - lengthA, flowB);
    double before = lengthA * flowA + (0.4 - lengthA) * flowB;
    double energy = lengthA * flowA * flowA + (0.4 - lengthA) * flowB * flowB;
    run.topology.settle();
    assertThat(c.full).isTrue();
    // the mean of both flows, a plainly wrong rule, misses the first two by 30 % and more
    assertThat(0.4 * c.flowA).isCloseTo(before, within(1e-12 * 0.4 * 2e-5));
    assertThat(0.4 * c.flowA * c.flowA).isLessThan(energy);
    if (lengthA != 0.2) {
      double mean = 0.5 * (flowA + flowB);
      assertThat(c.flowA).isNotCloseTo(mean, within(0.1 * Math.abs(mean)));
    }
  }
}
