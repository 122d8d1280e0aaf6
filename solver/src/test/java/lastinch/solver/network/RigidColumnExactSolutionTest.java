package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Columns of metal as rigid bodies: start-up of a full pipe (White, Fluid Mechanics, from memory),
 * filling of a dry one (x dv/dt + v^2 (1 + f x/D)/2 = g H, derived), a cavity filled from below and
 * a sprue tapered after the falling stream (any fluids text). Figures by the closed forms.
 */
class RigidColumnExactSolutionTest {
  private static final SectionShape ROUND = SectionShape.ellipse(0.01, 0.01);

  @ParameterizedTest
  @CsvSource({
    "0.1, 0.380052799, 0.0193073626",
    "0.2, 0.696052400, 0.0738276944",
    "0.5, 1.14809278, 0.366240161",
    "1.0, 1.24807688, 0.976338492"
  })
  void fullPipeStartsUp(double time, double speed, double way) {
    Bench pipe = Bench.full(0.5, 0.0, 0.05, 0.2, 1.5, s -> ROUND);
    int steps = 2000;
    double gone = 0.0;
    for (int k = 0; k < steps; k++) {
      double before = pipe.channel.flowA;
      pipe.flow(time / steps);
      gone += 0.5 * (before + pipe.channel.flowA) / ROUND.area() * time / steps;
    }
    // steps of 0.5 ms and less are worth 1e-6; a loss left out shifts these by 10 % and more
    assertThat(pipe.channel.flowA / ROUND.area()).isCloseTo(speed, withinPercentage(0.1));
    assertThat(gone).isCloseTo(way, withinPercentage(0.1));
  }

  @Test
  void fullPipeWithoutItsEntryLossFails() {
    Bench pipe = Bench.full(0.5, 0.0, 0.05, 0.2, 0.0, s -> ROUND);
    for (int k = 0; k < 1000; k++) {
      pipe.flow(1e-3);
    }
    assertThat(pipe.channel.flowA / ROUND.area()).isNotCloseTo(1.24807688, withinPercentage(10.0));
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 1.86331503, 0.0260349374",
    "0.1, 1.75725564, 0.0536766600",
    "0.2, 1.57494161, 0.113867962",
    "0.5, 1.20031637, 0.334207700",
    "1.0, 0.882899801, 0.827768112"
  })
  void dryPipeFills(double way, double speed, double time) {
    Passing passing = passing(way, 5.0 * 0.004, 0.2);
    // 1 %: the first free step of a dry pipe is worth 0.3 %; friction left out is off by 10 % at 50
    // mm
    assertThat(passing.speed).isCloseTo(speed, withinPercentage(1.0));
    assertThat(passing.time).isCloseTo(time, withinPercentage(1.0));
  }

  @Test
  void dryPipeWithoutFrictionTakesItsSpeedAtOnce() {
    Passing passing = passing(0.3, 0.0, 0.2);
    assertThat(passing.speed).isCloseTo(Math.sqrt(2.0 * Gravity.G * 0.2), withinPercentage(1.0));
  }

  @Test
  void dryPipeWithoutFrictionFailsTheClosedForm() {
    assertThat(passing(0.05, 0.0, 0.2).speed).isNotCloseTo(1.86331503, withinPercentage(5.0));
    assertThat(passing(1.0, 0.0, 0.2).time).isNotCloseTo(0.827768112, withinPercentage(5.0));
  }

  @Test
  void metalStopsWhereItsHeatClockSaysUnderRealHeadAndFriction() {
    SampleJob job =
        SampleJob.plate(3.0, 0.002)
            .checking(
                SampleJob.Options.bare().mouldStays().friction(0.03).cupKeptAt(0.2).cell(0.02));
    PourResult result = DryPour.run(job.build(), RunObserver.NONE, () -> false);
    // clock from the front's heat, 2.2397 s; a front judged by its cell would run 6 % longer
    assertThat(result.outcome().time()).isCloseTo(2.23971135, withinPercentage(0.5));
    assertThat(result.reach()).isCloseTo(1.78011388, withinPercentage(1.0));
    int last = result.track().size() - 1;
    assertThat(result.track().speed(last)).isCloseTo(0.542137725, withinPercentage(2.0));
  }

  @Test
  void halvedFrictionFailsTheArrest() {
    SampleJob job =
        SampleJob.plate(3.0, 0.002)
            .checking(
                SampleJob.Options.bare().mouldStays().friction(0.015).cupKeptAt(0.2).cell(0.02));
    PourResult result = DryPour.run(job.build(), RunObserver.NONE, () -> false);
    assertThat(result.reach()).isNotCloseTo(1.78011388, withinPercentage(10.0));
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 1.48964435, 1.58474510",
    "0.1, 3.18046657, 1.37241394",
    "0.2, 7.79987906, 0.792363553"
  })
  void cavityFillsFromBelow(double height, double time, double gateSpeed) {
    Passing passing = fromBelow(height, 0.64);
    // 0.5 %: quasi-steady form against a column with its own inertia, worth 0.05 %
    assertThat(passing.time).isCloseTo(time, withinPercentage(0.5));
    assertThat(passing.speed * 40e-4 / 80e-6).isCloseTo(gateSpeed, withinPercentage(0.5));
  }

  @Test
  void cavityWithAnOpenGateLossFailsTheFilling() {
    assertThat(fromBelow(0.1, 1.0).time).isNotCloseTo(3.18046657, withinPercentage(5.0));
  }

  @Test
  void sprueTaperedAfterTheStreamHoldsOpenAirAtEveryDepth() {
    Bench sprue = drained(z -> 0.008 * Math.sqrt(Math.sqrt(0.25 / (0.05 + z))));
    double rate = sprue.channel.flowA;
    assertThat(rate).isCloseTo(0.111324143e-3, withinPercentage(0.1));
    for (int f = 0; f <= sprue.channel.shape.cells; f++) {
      assertThat(pressureInside(sprue, f)).as("face %d", f).isCloseTo(0.0, within(0.01));
    }
  }

  @Test
  void straightSpruePullsAir() {
    Bench sprue = drained(z -> 0.008);
    assertThat(pressureInside(sprue, 0)).isLessThan(-0.5);
  }

  /** Pressure at a face over the weight of the metal above it, from flow and area there [-]. */
  private static double pressureInside(Bench sprue, int face) {
    double depth = 0.05 + face * sprue.channel.shape.dx;
    double speed = sprue.channel.flowA / sprue.channel.shape.faceArea[face];
    return 1.0 - speed * speed / (2.0 * Gravity.G * depth);
  }

  private static Bench drained(java.util.function.DoubleUnaryOperator diameter) {
    Bench sprue =
        Bench.full(
            0.2,
            0.2,
            0.01,
            0.05,
            0.0,
            z -> SectionShape.ellipse(diameter.applyAsDouble(z), diameter.applyAsDouble(z)));
    for (int k = 0; k < 2000; k++) {
      sprue.flow(1e-3);
    }
    return sprue;
  }

  private static Passing passing(double way, double friction, double head) {
    PourCase job =
        SampleJob.plate(1.5, 0.002)
            .checking(
                SampleJob.Options.bare().water().friction(friction).cupKeptAt(head).cell(0.01))
            .build();
    return Passing.of(new NetworkRun(job), 0, way);
  }

  private static Passing fromBelow(double height, double lostShare) {
    double ratio = 80e-6 / 40e-4;
    double inGate = 1.0 / lostShare - (1.0 - ratio) * (1.0 - ratio) - ratio * ratio;
    PourCase job =
        SampleJob.strip(0.24, 0.1, 0.04)
            .attitude(Orientation.UPRIGHT_TIP_UP)
            .gateAt(Side.THICK_END, 0.02, 0.004, 0.001)
            .checking(
                SampleJob.Options.bare().water().friction(0.0).entryLoss(inGate).cupKeptAt(0.25))
            .build();
    return Passing.of(new NetworkRun(job), 1, height);
  }

  /** When and how fast a front passed a place. */
  private record Passing(double time, double speed) {
    static Passing of(NetworkRun run, int channel, double way) {
      Channel c = run.state.channels[channel];
      double at = 0.0;
      double time = 0.0;
      double speed = 0.0;
      while (c.positionA() < way) {
        assertThat(run.steps()).isLessThan(200_000);
        at = c.positionA();
        time = run.state.time;
        speed = c.frontA.speed;
        run.step();
      }
      double next = c.positionA();
      double now = run.state.time;
      return new Passing(
          Bench.between(at, time, next, now, way),
          Bench.between(at, speed, next, c.frontA.speed, way));
    }
  }
}
