package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.Side;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.physics.Gravity;
import lastinch.solver.physics.Losses;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import org.junit.jupiter.api.Test;

/** What the hand, the cup and the sprue decide. */
class PouringLimitsTest {
  @Test
  void thickerSectionAddsLittleReachWhileTheHandLimits() {
    PourResult thin = poured(byHand(2e-3));
    PourResult thick = poured(byHand(4e-3));
    assertThat(thin.flowLimitedBy()).isEqualTo(FlowLimit.HAND);
    assertThat(thick.flowLimitedBy()).isEqualTo(FlowLimit.HAND);
    // twice the thickness lasts twice as long at half the speed, a little more as rims stiffen; a
    // standing head makes it over 1.8 times
    assertThat(thick.reach() / thin.reach()).isBetween(0.9, 1.65);
  }

  @Test
  void thickerSectionAddsMuchReachUnderAStandingHead() {
    double thin = poured(underHead(2e-3)).reach();
    double thick = poured(underHead(4e-3)).reach();
    assertThat(thick / thin).isGreaterThan(1.8);
  }

  @Test
  void sprueFillsFromTheFlowOnThatItsGateCannotPass() {
    double flow = passes();
    PourResult below = poured(throughGate(0.96 * flow));
    PourResult above = poured(throughGate(1.04 * flow));
    assertThat(has(below, Finding.Kind.SPRUE_NEVER_FULL)).isTrue();
    assertThat(below.flowLimitedBy()).isEqualTo(FlowLimit.HAND);
    assertThat(below.sprueStanding()).isBetween(0.10, 0.1199);
    assertThat(has(above, Finding.Kind.SPRUE_NEVER_FULL)).isFalse();
    assertThat(above.sprueStanding()).isCloseTo(0.12, within(1e-9));
    assertThat(above.flowLimitedBy()).isEqualTo(FlowLimit.GATES);
  }

  @Test
  void tiltOfNothingIsFlat() {
    PourResult flat = poured(SampleJob.featherInSand(6.0));
    PourResult tilted = poured(SampleJob.featherInSand(6.0).attitude(Orientation.tilted(0.0)));
    assertThat(Bits.of(tilted)).isEqualTo(Bits.of(flat));
  }

  @Test
  void runWithTooLittleMetalEndsForWantOfIt() {
    PourResult result = poured(SampleJob.featherInSand(2.0).melted(0.4));
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(result.stops().get(0).reason()).isEqualTo(StopReason.NO_METAL);
    assertThat(result.margin().limitedBy()).isEqualTo(Margin.LimitedBy.METAL);
    assertThat(has(result, Finding.Kind.CUP_RUNS_EMPTY)).isTrue();
    assertThat(has(result, Finding.Kind.TOO_LITTLE_METAL)).isTrue();
    assertThat(result.accounts().left()).isCloseTo(0.0, within(1e-9));
  }

  @Test
  void handThatSeesTheCupSpillsNothing() {
    PourResult result = poured(SampleJob.featherInSand(0.5).melted(1.5));
    assertThat(result.accounts().spilled()).isZero();
    assertThat(result.accounts().left()).isGreaterThan(0.5);
  }

  @Test
  void measuredPourRunsOverAFullCup() {
    Curve rate = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 3.0});
    PourResult result =
        poured(SampleJob.featherInSand(2.0).melted(3.0).pour(new Pour.ByCurve(rate)));
    assertThat(result.accounts().spilled()).isGreaterThan(1.0);
    assertThat(has(result, Finding.Kind.CUP_OVERFLOWS)).isTrue();
    assertThat(Math.abs(result.accounts().metalError())).isLessThan(1e-10);
    assertThat(Math.abs(result.accounts().heatError())).isLessThan(1e-6);
  }

  /** What the gate passes under the full sprue, by its losses [kg/s]. */
  private static double passes() {
    double gate = 0.01 * 0.004;
    double foot = Math.PI / 4.0 * 0.016 * 0.016;
    double piece = 0.1 * 0.02;
    double losses =
        Losses.suddenContraction(foot, gate)
            + Losses.MITRE_BEND
            + Losses.suddenExpansion(gate, piece)
            + gate / piece * gate / piece;
    return 8000.0 * gate * Math.sqrt(2.0 * Gravity.G * 0.12 / losses);
  }

  private static SampleJob throughGate(double rate) {
    return SampleJob.strip(0.8, 0.1, 0.02)
        .gateAt(Side.THICK_END, 0.01, 0.004, 0.01)
        .cup(0.1, 0.01)
        .sprue(0.12, 0.016, 0.016)
        .vent(0.8, 0.05)
        .alloy(SampleFoundry.neverFreezesNorHolds())
        .mouldAt(1150.0 + SampleJob.ZERO)
        .melted(14.0)
        .pour(new Pour.AtRate(Band.typed(rate)))
        .checking(SampleJob.Options.bare().friction(0.0));
  }

  private static SampleJob byHand(double thickness) {
    return bronzeStrip(thickness).sprue(0.15, 0.016, 0.016).melted(5.0).empties(50.0);
  }

  private static SampleJob underHead(double thickness) {
    return bronzeStrip(thickness).checking(SampleJob.Options.ordinary().cupKeptAt(0.15));
  }

  private static SampleJob bronzeStrip(double thickness) {
    return SampleJob.strip(2.0, 0.02, thickness)
        .alloy(SampleFoundry.tinBronze())
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .crack(1e-4)
        .vent(2.0, 4e-3);
  }

  private static boolean has(PourResult result, Finding.Kind kind) {
    return result.findings().stream().anyMatch(f -> f.kind() == kind);
  }

  private static PourResult poured(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }
}
