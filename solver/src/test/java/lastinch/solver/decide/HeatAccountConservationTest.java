package lastinch.solver.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.casting.PourCase;
import lastinch.solver.material.MetalTable;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** The heat account adds up to what the leading metal had less what it has left. */
class HeatAccountConservationTest {
  @Test
  void theLinesAddUpToTheHeatFromTheReadingToTheTip() {
    PourCase job = SampleJob.featherInSand(20.0).alloy(SampleFoundry.roundBronze()).build();
    PourResult result = DryPour.run(job, RunObserver.NONE, () -> false);
    Stop stop = result.stops().get(0);
    MetalTable table = MetalTable.of(job.metal().alloy(), false, 300.0, 1600.0);
    double perDegree = job.metal().alloy().specificHeatLiquid().value();
    double liquidus = job.metal().alloy().liquidus();
    double had = job.metal().reading().value() - liquidus;
    double left = table.enthalpy(stop.temperature()) / perDegree;
    HeatAccount account = HeatAccount.of(job, result);
    // 1e-9 of some 250 degrees' worth, and the table's own way from heat to degrees and back
    assertThat(account.spent()).isCloseTo(had - left, within(1e-6));
    assertThat(account.lines().stream().mapToDouble(HeatAccount.Line::degrees).sum())
        .isCloseTo(account.spent(), within(1e-9));
  }

  @Test
  void anAccountWithoutTheMetalBehindDoesNotAddUp() {
    PourCase job = SampleJob.featherInSand(7.0).build();
    HeatAccount account = HeatAccount.of(job, DryPour.run(job, RunObserver.NONE, () -> false));
    double behind =
        account.lines().stream()
            .filter(l -> l.kind() == HeatAccount.Kind.FROM_BEHIND)
            .mapToDouble(HeatAccount.Line::degrees)
            .sum();
    assertThat(behind).isLessThan(-1.0);
  }

  @Test
  void everyStretchOfThePieceThatMetalReachedHasItsLine() {
    PourCase job = SampleJob.featherInSand(7.0).build();
    PourResult result = DryPour.run(job, RunObserver.NONE, () -> false);
    HeatAccount account = HeatAccount.of(job, result);
    double last =
        account.lines().stream()
            .filter(l -> l.kind() == HeatAccount.Kind.PIECE)
            .mapToDouble(HeatAccount.Line::to)
            .max()
            .orElseThrow();
    assertThat(last).isCloseTo(result.reach(), within(1e-3));
    assertThat(account.lines()).allMatch(l -> l.seconds() >= 0.0);
  }
}
