package lastinch.solver.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.MetalTable;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The heat account adds up to what the leading metal had less what it has left. */
class HeatLossBudgetConservationTest {
  /** Of some 300 degrees' worth; rounding leaves 1e-15, a cell left out would show as 1e-3. */
  private static final double CLOSED = 1e-9;

  static Stream<PourCase> pours() {
    return Stream.of(
        SampleJob.featherInSand(14.0).build(),
        SampleJob.featherInSand(12.0).build(),
        SampleJob.featherInSand(20.0).alloy(SampleFoundry.roundBronze()).build());
  }

  @ParameterizedTest
  @MethodSource("pours")
  void theLinesAddUpToTheHeatFromTheReadingToTheTip(PourCase job) {
    PourResult result = DryPour.run(job, RunObserver.NONE, () -> false);
    double perDegree = job.metal().alloy().specificHeatLiquid().value();
    double had = job.metal().reading().value() - job.metal().alloy().liquidus();
    double spent = had - heatAtTheStop(job, result) / perDegree;
    HeatLossBudget account = HeatLossBudget.of(job, result);
    assertThat(account.spent()).isCloseTo(spent, within(CLOSED * spent));
    assertThat(account.lines().stream().mapToDouble(HeatLossBudget.Line::degrees).sum())
        .isCloseTo(spent, within(CLOSED * spent));
  }

  @ParameterizedTest
  @MethodSource("pours")
  void theLedgerClosesOnTheHeatPouredLessTheHeatAtTheTip(PourCase job) {
    PourResult result = DryPour.run(job, RunObserver.NONE, () -> false);
    double ledger = result.ledger().stream().mapToDouble(l -> l.lost() - l.gained()).sum();
    double lost = table(job).enthalpy(job.metal().entered()) - heatAtTheStop(job, result);
    assertThat(ledger).isCloseTo(lost, within(CLOSED * lost));
    double without = result.ledger().stream().skip(1).mapToDouble(l -> l.lost() - l.gained()).sum();
    assertThat(without).as("a place left out").isNotCloseTo(lost, within(1e-3 * lost));
  }

  @ParameterizedTest
  @MethodSource("pours")
  void warmthFromBehindIsTheSumOfWhatCameInAtEveryPlace(PourCase job) {
    HeatLossBudget account =
        HeatLossBudget.of(job, DryPour.run(job, RunObserver.NONE, () -> false));
    double kept = account.lines().stream().mapToDouble(HeatLossBudget.Line::kept).sum();
    double taken =
        account.lines().stream()
            .filter(l -> l.kind() == HeatLossBudget.Kind.FROM_BEHIND)
            .mapToDouble(HeatLossBudget.Line::degrees)
            .sum();
    assertThat(kept).isCloseTo(-taken, within(CLOSED * kept));
  }

  private static double heatAtTheStop(PourCase job, PourResult result) {
    return table(job).enthalpy(result.stops().get(0).temperature());
  }

  private static MetalTable table(PourCase job) {
    return MetalTable.of(job.metal().alloy(), false, 300.0, 1600.0);
  }

  @Test
  void anAccountWithoutTheMetalBehindDoesNotAddUp() {
    PourCase job = SampleJob.featherInSand(14.0).build();
    HeatLossBudget account =
        HeatLossBudget.of(job, DryPour.run(job, RunObserver.NONE, () -> false));
    double behind =
        account.lines().stream()
            .filter(l -> l.kind() == HeatLossBudget.Kind.FROM_BEHIND)
            .mapToDouble(HeatLossBudget.Line::degrees)
            .sum();
    assertThat(behind).isLessThan(-1.0);
  }

  @Test
  void everyStretchOfThePieceThatMetalReachedHasItsLine() {
    PourCase job = SampleJob.featherInSand(14.0).build();
    PourResult result = DryPour.run(job, RunObserver.NONE, () -> false);
    HeatLossBudget account = HeatLossBudget.of(job, result);
    double last =
        account.lines().stream()
            .filter(l -> l.kind() == HeatLossBudget.Kind.PIECE)
            .mapToDouble(HeatLossBudget.Line::to)
            .max()
            .orElseThrow();
    assertThat(last).isCloseTo(result.reach(), within(1e-3));
    assertThat(account.lines()).allMatch(l -> l.seconds() >= 0.0);
  }
}
