package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.network.flow.Channel;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Metal lumped across a 2 mm plate runs at 0.5 m/s over a mould that warms up, without freezing:
 * erfc and inverse-transform solutions of a hot fluid between conducting half-spaces (Lauwerier
 * 1955, same mathematics). Temperatures in degC, 1150 in, mould at 500.
 */
class RunOverWarmingMouldExactSolutionTest {
  private static final double[] AT = {0.05, 0.1, 0.25, 0.5};

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1139.81390, 1128.39688, 1081.86238",
    "0, 2, 1142.98921, 1135.59560, 1110.58488",
    "2000, 1, 1140.81939, 1130.82267, 1093.58599",
    "2000, 2, 1143.36351, 1136.43750, 1113.59820"
  })
  void metalBehindTheFrontIsAsWarmAsTheClosedForm(
      double contact, double time, double at50, double at100, double at250) {
    NetworkRun run = runTo(contact, time, false);
    // 2 K: heat steps of 10 ms, 20 ms where metal has long been; a mould that never warms is off by
    // 30 K and more at 250 mm
    assertThat(temperature(run, AT[0])).isCloseTo(at50, within(2.0));
    assertThat(temperature(run, AT[1])).isCloseTo(at100, within(2.0));
    assertThat(temperature(run, AT[2])).isCloseTo(at250, within(2.0));
  }

  @ParameterizedTest
  @CsvSource({"0, 1053.91630", "2000, 1065.57746"})
  void metalHalfWayBackIsAsWarmAsTheClosedForm(double contact, double at500) {
    assertThat(temperature(runTo(contact, 2.0, false), AT[3])).isCloseTo(at500, within(2.0));
  }

  @Test
  void leadingMetalFollowsItsOwnClock() {
    NetworkRun run = runTo(2000.0, 1.0, false);
    Channel c = run.state.channels[0];
    double x = c.positionA();
    assertThat(x).isCloseTo(0.5, within(2e-3));
    double exact = 500.0 + 650.0 * Math.exp(-2000.0 * x / (8000.0 * 450.0 * 1e-3 * 0.5));
    double tip = run.melt.table.temperature(c.frontA.enthalpy) - SampleJob.ZERO;
    // 0.5 K of 277 lost; half the contact is off by 120 K
    assertThat(tip).isCloseTo(exact, within(0.5));
  }

  @Test
  void heatIsAccountedFor() {
    NetworkRun run = runTo(2000.0, 2.0, false);
    assertThat(run.books.close(run.forcedMass(), 0.0).heatError()).isCloseTo(0.0, within(1e-6));
  }

  @Test
  void mouldThatNeverWarmsFails() {
    NetworkRun run = runTo(2000.0, 2.0, true);
    assertThat(temperature(run, AT[2])).isNotCloseTo(1113.59820, within(20.0));
  }

  @Test
  void halvedContactFailsAtTheFront() {
    NetworkRun run = runTo(1000.0, 1.0, false);
    double tip = run.melt.table.temperature(run.state.channels[0].frontA.enthalpy) - SampleJob.ZERO;
    assertThat(tip).isNotCloseTo(872.939723, within(50.0));
  }

  private static NetworkRun runTo(double contact, double time, boolean cold) {
    SampleJob.Options options = SampleJob.Options.bare().entersAt(0.5).cell(0.01);
    if (contact == 0.0) {
      options.perfectContact();
    }
    if (cold) {
      options.mouldStays();
    }
    NetworkRun run =
        new NetworkRun(
            SampleJob.plate(3.0, 0.002)
                .alloy(SampleFoundry.neverFreezes())
                .medium(SampleFoundry.roundMould(contact == 0.0 ? 1e9 : contact))
                .checking(options)
                .build());
    while (run.state.time < time - 1e-9) {
      run.step();
    }
    run.finishHeat();
    return run;
  }

  private static double temperature(NetworkRun run, double at) {
    Channel c = run.state.channels[0];
    double[] degrees = new double[c.shape.cells];
    for (int i = 0; i < degrees.length; i++) {
      degrees[i] = run.melt.table.temperature(c.enthalpy(i, run.melt.density)) - SampleJob.ZERO;
    }
    return c.shape.interpolate(degrees, at);
  }
}
