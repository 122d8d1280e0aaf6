package lastinch.solver.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.Measure;
import lastinch.solver.study.SignedMargin;
import lastinch.solver.study.VerdictWord;
import org.junit.jupiter.api.Test;

/** Bands at their limits: nothing open, one thing open, several, stopped. */
class BandsLimitsTest {
  private static PourResult pour(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  private static BandStudy study(PourCase job, int workers) {
    return Bands.around(job, pour(job), Measure.MARGIN, workers, () -> false).orElseThrow();
  }

  private static PourCase atEnd(PourCase job, boolean up) {
    return UncertainInput.POUR_SECONDS.set(job, UncertainInput.POUR_SECONDS.towards(job, up, 1.0));
  }

  @Test
  void whereAllIsKnownEveryDayIsTheBestDay() {
    PourCase job = BandedJob.exact(6.0);
    BandStudy study = study(job, 1);
    assertThat(study.swings()).isEmpty();
    assertThat(study.unlucky().reach()).isEqualTo(study.best().reach());
    assertThat(study.lucky().reach()).isEqualTo(study.best().reach());
    assertThat(study.verdict()).isEqualTo(VerdictWord.of(study.best()).orElseThrow());
    assertThat(study.weakest()).isEmpty();
    assertThat(study.measure()).isEmpty();
  }

  @Test
  void withOneThingOpenTheDaysAreItsEnds() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, 0.7, 1.3);
    BandStudy study = study(job, 1);
    assertThat(study.swings()).hasSize(1);
    OneAtATimeEffect swing = study.swings().get(0);
    assertThat(swing.share()).isEqualTo(1.0);
    assertThat(swing.half()).as("more seconds are worse").isNegative();
    PourResult slow = pour(atEnd(job, true));
    PourResult quick = pour(atEnd(job, false));
    assertThat(study.unlucky().reach()).isEqualTo(slow.reach());
    assertThat(study.lucky().reach()).isEqualTo(quick.reach());
    assertThat(swing.high().signed()).isEqualTo(SignedMargin.of(job, slow));
    assertThat(swing.low().signed()).isEqualTo(SignedMargin.of(job, quick));
    assertThat(study.measure()).contains(UncertainInput.POUR_SECONDS);
  }

  @Test
  void badAndGoodEndsAreToldByTheSign() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.READING, 0.99, 1.01);
    OneAtATimeEffect swing = study(job, 1).swings().get(0);
    assertThat(swing.half()).as("hotter is better").isPositive();
    assertThat(study(job, 1).unlucky().entered()).isLessThan(pour(job).entered());
  }

  @Test
  void severalOpenThingsShareTheSpreadBySquaresAndEachMovesByItsRoot() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, 0.7, 1.3);
    job = BandedJob.with(job, UncertainInput.READING, 0.99, 1.01);
    BandStudy study = study(job, 2);
    double sum = study.swings().stream().mapToDouble(OneAtATimeEffect::share).sum();
    assertThat(sum).isCloseTo(1.0, within(1e-12));
    OneAtATimeEffect reading = study.swings().get(0);
    OneAtATimeEffect seconds = study.swings().get(1);
    double ratio = reading.half() / seconds.half();
    assertThat(reading.share() / seconds.share()).isCloseTo(ratio * ratio, within(1e-12));
    // the entered heat of the unlucky day shows how far the reading was moved
    double moved = study.best().entered() - study.unlucky().entered();
    double half = 0.01 * job.metal().reading().value();
    // the table of heat is straight over 0.15 K, its rounding far below 0.01 K
    assertThat(moved).isCloseTo(half * Math.sqrt(reading.share()), within(0.01));
    // moving everything to its end, the plainly wrong corner, would be told apart
    assertThat(Math.abs(moved - half)).isGreaterThan(1.0);
  }

  @Test
  void workersChangeNoBit() {
    PourCase job = BandedJob.with(BandedJob.exact(5.0), UncertainInput.POUR_SECONDS, 0.7, 1.3);
    job = BandedJob.with(job, UncertainInput.CONTACT_LIQUID, 0.5, 2.0);
    BandStudy alone = study(job, 1);
    BandStudy together = study(job, 3);
    assertThat(together.swings()).isEqualTo(alone.swings());
    assertThat(together.unlucky().ledger()).isEqualTo(alone.unlucky().ledger());
    assertThat(together.lucky().accounts()).isEqualTo(alone.lucky().accounts());
    assertThat(together.verdict()).isEqualTo(alone.verdict());
  }

  @Test
  void shareOfMushIsRunOnlyWhereItIsMixed() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.RANGE_RATIO, 1.0 / 3.0, 3.0);
    PourResult best = pour(job);
    assertThat(best.slurryShare()).as("tin bronze in sand runs as mush").isGreaterThan(0.9);
    assertThat(Bands.applying(job, best)).isEmpty();
    PourCase even = UncertainInput.RANGE_RATIO.set(job, 40.0);
    PourResult mixed = pour(even);
    assertThat(mixed.slurryShare()).isBetween(0.1, 0.9);
    assertThat(Bands.applying(even, mixed)).containsExactly(UncertainInput.RANGE_RATIO);
  }

  @Test
  void askedToStopItHandsOverNothing() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, 0.7, 1.3);
    PourResult best = pour(job);
    for (int workers : List.of(1, 2)) {
      AtomicInteger polls = new AtomicInteger();
      assertThat(
              Bands.around(job, best, Measure.MARGIN, workers, () -> polls.incrementAndGet() > 50))
          .isEmpty();
    }
  }

  @Test
  void runWithoutVerdictHasNoBands() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, 0.7, 1.3);
    AtomicInteger polls = new AtomicInteger();
    PourResult stopped = DryPour.run(job, RunObserver.NONE, () -> polls.incrementAndGet() > 50);
    assertThat(stopped.outcome()).isInstanceOf(Outcome.Cancelled.class);
    assertThat(Bands.around(job, stopped, Measure.MARGIN, 1, () -> false)).isEmpty();
  }
}
