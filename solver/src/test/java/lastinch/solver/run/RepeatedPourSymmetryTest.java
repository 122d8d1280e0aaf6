package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same job gives the same bits, watched or not; a run that is stopped hands over what it has.
 */
class RepeatedPourSymmetryTest {
  @ParameterizedTest
  @ValueSource(ints = {3, 14, 22, 36, 41, 58})
  void sameJobGivesTheSameBits(int number) {
    PourCase job = SeededJobs.job(number).build();
    String once = Bits.of(DryPour.run(job, RunObserver.NONE, () -> false));
    assertThat(Bits.of(DryPour.run(job, RunObserver.NONE, () -> false))).isEqualTo(once);
    PourCase again = SeededJobs.job(number).build();
    assertThat(Bits.of(DryPour.run(again, RunObserver.NONE, () -> false))).isEqualTo(once);
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 12, 37, 61, 128, 194})
  void sameNetworkGivesTheSameBits(int number) {
    String once = Bits.of(DryPour.run(SeededNetworks.job(number), RunObserver.NONE, () -> false));
    assertThat(Bits.of(DryPour.run(SeededNetworks.job(number), RunObserver.NONE, () -> false)))
        .isEqualTo(once);
  }

  @Test
  void watchingChangesNothingAndTellsOfEvenProgress() {
    PourCase job = SampleJob.featherInSand(6.0).build();
    List<Double> times = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    PourResult watched =
        DryPour.run(
            job,
            (time, filled) -> {
              times.add(time);
              shares.add(filled);
            },
            () -> false);
    assertThat(Bits.of(watched))
        .isEqualTo(Bits.of(DryPour.run(job, RunObserver.NONE, () -> false)));
    assertThat(times).hasSizeBetween(10, 400).isSorted();
    assertThat(shares).isSorted().allMatch(s -> s >= 0.0 && s <= 1.0);
  }

  @Test
  void differentJobsGiveDifferentBits() {
    String one =
        Bits.of(DryPour.run(SampleJob.featherInSand(6.0).build(), RunObserver.NONE, () -> false));
    String other =
        Bits.of(
            DryPour.run(SampleJob.featherInSand(6.000001).build(), RunObserver.NONE, () -> false));
    assertThat(one).isNotEqualTo(other);
  }

  @Test
  void stoppedRunHandsOverWhatItHas() {
    AtomicInteger polls = new AtomicInteger();
    PourResult result =
        DryPour.run(
            SampleJob.featherInSand(5.0).build(),
            RunObserver.NONE,
            () -> polls.incrementAndGet() == 500);
    assertThat(result.outcome()).isInstanceOf(Outcome.Cancelled.class);
    assertThat(polls).hasValue(500);
    assertThat(result.record().steps()).isEqualTo(500);
    assertThat(result.outcome().time()).isPositive();
    assertThat(result.filledFraction()).isBetween(0.01, 0.99);
    assertThat(result.track().size()).isPositive();
    assertThat(Math.abs(result.accounts().metalError())).isLessThan(1e-10);
    assertThat(Math.abs(result.accounts().heatError())).isLessThan(1e-6);
  }
}
