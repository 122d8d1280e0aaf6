package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Side;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.physics.Gravity;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where a push is balanced: entry into a slot (Young-Laplace), air locked in ahead of the metal
 * (Boyle), a front held by its own weight, and the speed at which a gate is said to splash
 * (Campbell, Castings, from memory). Metal that never freezes, in a mould as hot as itself.
 */
class StandingFrontExactSolutionTest {
  @ParameterizedTest
  @CsvSource({"0.0005, 61.1620795", "0.001, 30.5810398", "0.002, 15.2905199"})
  void slotIsEnteredByMoreHeadThanItsPushAsksForAndNotByLess(double thickness, double head) {
    double width = 2.0;
    double exact = head * 1e-3 * (1.0 + thickness / width);
    PourResult below = poured(slot(thickness, width, 0.99 * exact));
    assertThat(below.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(below.filledFraction()).isZero();
    assertThat(below.reach()).isZero();
    assertThat(below.stops().get(0).reason()).isEqualTo(StopReason.CAPILLARITY);
    assertThat(below.margin().limitedBy()).isEqualTo(Margin.LimitedBy.PUSH);
    PourResult above = poured(slot(thickness, width, 1.01 * exact));
    assertThat(above.outcome()).isInstanceOf(Outcome.Filled.class);
  }

  @Test
  void slotWithoutSurfaceTensionIsEnteredByAnyHead() {
    SampleJob job = slot(0.001, 2.0, 0.005).alloy(SampleFoundry.neverFreezesNorHolds()).crack(1e-3);
    assertThat(poured(job).outcome()).isInstanceOf(Outcome.Filled.class);
  }

  @ParameterizedTest
  @CsvSource({"5000, 0.0470256290", "11772, 0.104087642"})
  void lockedInAirIsPressedTogetherUntilItPushesBack(double push, double share) {
    PourResult result = poured(sealed(push));
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    // 1 %; air that warmed up while pressed (no heat to the wall) would stop 28 % earlier
    assertThat(result.filledFraction()).isCloseTo(share, withinPercentage(1.0));
    assertThat(result.stops().get(0).reason()).isEqualTo(StopReason.AIR);
    assertThat(result.stops().get(0).balance().air()).isCloseTo(push, withinPercentage(1.0));
    assertThat(Math.abs(result.accounts().airError())).isLessThan(1e-10);
  }

  @Test
  void lockedInAirIsNotPressedAsIfItWarmed() {
    double adiabatic = 0.0338200629;
    double got = poured(sealed(5000.0)).filledFraction();
    assertThat(got).isNotCloseTo(adiabatic, withinPercentage(20.0));
  }

  @Test
  void cavityWithAWayOutForItsAirFills() {
    SampleJob job = sealed(5000.0).vent(0.3, 0.01);
    assertThat(poured(job).outcome()).isInstanceOf(Outcome.Filled.class);
  }

  @Test
  void metalClimbsAsHighAsItsHead() {
    SampleJob job =
        SampleJob.strip(0.3, 0.02, 0.01)
            .attitude(Orientation.UPRIGHT_TIP_UP)
            .mouldAt(1150.0 + SampleJob.ZERO)
            .alloy(SampleFoundry.neverFreezesNorHolds())
            .checking(SampleJob.Options.bare().cupKeptAt(0.1));
    PourResult result = poured(job);
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    // rises, swings and comes to rest within a tenth of a millimetre; a lost 1 % of head is ten
    assertThat(result.reach()).isCloseTo(0.1, within(5e-4));
  }

  @Test
  void frontIsSaidToSplashFromItsCriticalSpeedOn() {
    // 1.2 N/m and 8000 kg/m3: 0.391714874 m/s
    assertThat(found(entering(0.391714874 * 0.99), Finding.Kind.FRONT_SPLASHES)).isFalse();
    assertThat(found(entering(0.391714874 * 1.01), Finding.Kind.FRONT_SPLASHES)).isTrue();
  }

  @Test
  void gateIsSaidToSplashFromTheTradesSpeedOn() {
    assertThat(found(throughGate(0.5 * 0.99), Finding.Kind.GATE_SPLASHES)).isFalse();
    assertThat(found(throughGate(0.5 * 1.01), Finding.Kind.GATE_SPLASHES)).isTrue();
  }

  private static boolean found(SampleJob job, Finding.Kind kind) {
    return poured(job).findings().stream().anyMatch(f -> f.kind() == kind);
  }

  private static SampleJob entering(double speed) {
    return SampleJob.strip(0.5, 0.05, 0.01)
        .mouldAt(1150.0 + SampleJob.ZERO)
        .alloy(SampleFoundry.neverFreezes())
        .checking(SampleJob.Options.bare().entersAt(speed));
  }

  /** Gate and piece of one section, without friction: one speed, that of the head. */
  private static SampleJob throughGate(double speed) {
    return SampleJob.strip(0.5, 0.05, 0.01)
        .gateAt(Side.THICK_END, 0.05, 0.01, 0.02)
        .mouldAt(1150.0 + SampleJob.ZERO)
        .alloy(SampleFoundry.neverFreezes())
        .checking(
            SampleJob.Options.bare().friction(0.0).cupKeptAt(speed * speed / (2.0 * Gravity.G)));
  }

  private static SampleJob slot(double thickness, double width, double head) {
    return SampleJob.strip(0.1, width, thickness)
        .alloy(SampleFoundry.neverFreezes())
        .mouldAt(1150.0 + SampleJob.ZERO)
        .crack(1e-3)
        .vent(0.1, 0.02)
        .checking(SampleJob.Options.bare().pushesBack().cupKeptAt(head));
  }

  private static SampleJob sealed(double push) {
    return SampleJob.strip(0.3, 0.02, 0.01)
        .alloy(SampleFoundry.neverFreezesNorHolds())
        .mouldAt(1150.0 + SampleJob.ZERO)
        .checking(SampleJob.Options.bare().pushesBack().cupKeptAt(push / (8000.0 * Gravity.G)));
  }

  private static PourResult poured(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }
}
