package lastinch.solver.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Spot;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules of judgement hold at their limits and in both solvers. */
class JudgeLimitsTest {
  static Stream<FillingSolver> solvers() {
    return Stream.of(DryPour.NETWORK, DryPour.plane(PlaneSettings.squares(4e-3)));
  }

  private static Judge judge(PourCase job) {
    return new Judge(job, new MeltProperties(job, 293.0));
  }

  private static List<Finding.Kind> kinds(Judge judge) {
    return judge.heaviestFirst().stream().map(Finding::kind).toList();
  }

  @Test
  void aGateSplashesAboveTheTradesLimitAndSeriouslyAtTwiceIt() {
    PourCase job = SampleJob.featherInSand(6.0).build();
    Judge judge = judge(job);
    judge.gate("slow", 0.5);
    assertThat(judge.heaviestFirst()).isEmpty();
    judge.gate("fast", 0.51);
    judge.gate("faster", 1.01);
    assertThat(judge.heaviestFirst())
        .extracting(Finding::severity)
        .containsExactly(Finding.Severity.SERIOUS, Finding.Severity.WATCH);
    assertThat(judge.heaviestFirst().get(0).as(Finding.GateSplashes.class).speed()).isEqualTo(1.01);
    assertThat(judge.heaviestFirst().get(0).where()).contains(new Spot("faster", 0.0));
  }

  @Test
  void figuresOfAFindingAreThoseOfItsRecord() {
    Judge judge = judge(SampleJob.featherInSand(6.0).build());
    judge.metal(1e3, false);
    Finding short1 = judge.heaviestFirst().get(0);
    assertThat(short1.kind()).isEqualTo(Finding.Kind.TOO_LITTLE_METAL);
    assertThat(short1.figures()).containsOnlyKeys("needed", "melted");
    assertThat(short1.figures().get("melted"))
        .isEqualTo(short1.as(Finding.TooLittleMetal.class).melted());
    assertThatThrownBy(() -> short1.as(Finding.Falls.class)).isInstanceOf(ClassCastException.class);
    Judge fed = judge(SampleJob.featherInSand(6.0).build());
    fed.metal(1e3, true);
    assertThat(kinds(fed)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void twoPourTimesThatDisagreeAreToldByBoth(FillingSolver solver) {
    PourCase apart =
        SampleJob.featherInSand(6.0).pour(new Pour.Both(Band.typed(6.0), Band.typed(1.0))).build();
    assertThat(
            DryPour.run(solver, apart, Phase.FILLING, RunObserver.NONE, () -> false)
                .filling()
                .findings())
        .extracting(Finding::kind)
        .contains(Finding.Kind.POUR_TIMES_DISAGREE);
  }

  @Test
  void aSprueThatOnceStoodFullWasFull() {
    FlowLimitTally tally = new FlowLimitTally();
    tally.stands(0.05, false);
    tally.byHand(1e-5, 0.03, 0.12, 1.0);
    assertThat(tally.wasFull()).isFalse();
    // twice the flow by four times the head
    assertThat(tally.couldPass()).isCloseTo(2.0, within(1e-12));
    assertThat(tally.limit()).isEqualTo(FlowLimit.HAND);
    tally.stands(0.12, true);
    tally.stands(0.01, false);
    tally.by(FlowLimit.AIR, 1.5);
    assertThat(tally.wasFull()).isTrue();
    assertThat(tally.mostStanding()).isEqualTo(0.12);
    assertThat(tally.limit()).isEqualTo(FlowLimit.AIR);
  }

  @Test
  void aSlipIsNotTakenForSquaresThatAreTooFine() {
    PourCase job = SampleJob.featherInSand(6.0).build();
    assertThat(DryPour.plane(PlaneSettings.squares(1e-5)).needs(job))
        .containsExactly(Need.SQUARES_TOO_FINE);
    assertThatThrownBy(
            () ->
                DryPour.run(
                    DryPour.plane(PlaneSettings.squares(0.2)),
                    job,
                    Phase.FILLING,
                    RunObserver.NONE,
                    () -> false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cell");
  }
}
