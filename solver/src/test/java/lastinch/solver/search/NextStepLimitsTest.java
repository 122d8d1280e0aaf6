package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.Finding;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.run.DryPour;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.VerdictWord;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.Bands;
import org.junit.jupiter.api.Test;

/** What is offered as the next step, against invented outcomes whose answers are known. */
class NextStepLimitsTest {
  private static final double WANTED = 0.2;
  private static final PourCase JOB = InventedPours.feather();
  private static final double NOW = InventedPours.seconds(JOB);
  private static final PourResult RUN = DryPour.run(JOB, RunObserver.NONE, () -> false);

  private static NextStep step(Function<PourCase, RunSummary> outcome) {
    Pourer pourer = (job, stop) -> outcome.apply(job);
    BandStudy exact =
        new BandStudy(
            RUN, RUN, RUN, List.of(), VerdictWord.FILLS, Optional.empty(), Optional.empty());
    RunSummary base = outcome.apply(JOB);
    try (RunCache studies = new RunCache(pourer, 2, RunCache.Watch.NONE, () -> false)) {
      return NextStep.among(
              studies,
              JOB,
              exact,
              Owned.nothing(InventedPours.marks()),
              new Trouble.Pair(base, base, WANTED))
          .orElseThrow();
    }
  }

  /** Fills with so much to spare where that is not negative; the gate at a speed [m/s]. */
  private static RunSummary glance(double spare, double speed) {
    EnumSet<Finding.Kind> found = EnumSet.noneOf(Finding.Kind.class);
    if (speed > 0.5) {
      found.add(Finding.Kind.GATE_SPLASHES);
    }
    boolean fills = spare >= 0.0;
    return new RunSummary(
        fills ? RunSummary.End.FILLED : RunSummary.End.STOPPED,
        InventedPours.measured(spare, speed),
        1200.0,
        Optional.empty(),
        FlowLimit.HAND,
        fills ? Optional.empty() : Optional.of(StopReason.SLUSH),
        found);
  }

  private static double gate(PourCase job) {
    return job.gating().gates().get(0).width();
  }

  @Test
  void aPourThatStopsShortStopsWhateverItsStreamsDo() {
    RunSummary stopped = glance(-0.5, 0.3);
    RunSummary met =
        new RunSummary(
            stopped.end(),
            stopped.measured(),
            stopped.coldest(),
            Optional.of(Meeting.Kind.COLD_SHUT),
            stopped.limitedBy(),
            stopped.reason(),
            stopped.findings());
    assertThat(Trouble.of(new Trouble.Pair(met, met, WANTED)))
        .containsExactly(Trouble.STOPS, Trouble.BAD_POUR_FAILS);
  }

  @Test
  void aPourThatStopsIsMadeFasterAsFarAsItTakes() {
    // fills from 4.5 s, has what is wanted from 3.5 s on: two thirds of 6 s are not enough
    NextStep next = step(job -> glance(0.2 * (4.5 - InventedPours.seconds(job)), 0.3));
    assertThat(next.troubles()).first().isEqualTo(Trouble.STOPS);
    NextStep.Change change = next.change().orElseThrow();
    assertThat(change.lever().key()).isEqualTo("emptiesIn");
    assertThat(change.value()).isLessThanOrEqualTo(3.5);
    assertThat(change.best().heat()).isGreaterThanOrEqualTo(WANTED);
    assertThat(change.brings()).isEmpty();
  }

  @Test
  void moreSecondsAreNeverOfferedWhereHeatIsScarce() {
    // slower would calm the gate, and it fills with half of what is wanted
    NextStep next = step(job -> glance(0.1, 0.6 * NOW / InventedPours.seconds(job)));
    assertThat(next.troubles()).containsExactly(Trouble.LITTLE_SPARE, Trouble.SPLASHES);
    assertThat(next.change()).isEmpty();
  }

  @Test
  void whereHeatIsPlentyASlowerPourMayCalmTheGate() {
    NextStep next = step(job -> glance(0.6, 0.6 * NOW / InventedPours.seconds(job)));
    NextStep.Change change = next.change().orElseThrow();
    assertThat(change.helps()).isEqualTo(Trouble.SPLASHES);
    assertThat(change.value()).isGreaterThan(NOW);
    assertThat(change.mended()).isTrue();
  }

  @Test
  void aFasterPourThatWouldSplashIsNotOfferedToAPieceThatFills() {
    NextStep next =
        step(
            job ->
                glance(
                    0.05 + 0.1 * (NOW - InventedPours.seconds(job)),
                    0.45 * NOW / InventedPours.seconds(job)));
    assertThat(next.change()).isEmpty();
    assertThat(next.tried()).isPositive();
  }

  @Test
  void aWiderGateThatCostsNoHeatIsOfferedWhereNothingHelpsTheHeat() {
    double wide = gate(JOB);
    NextStep next = step(job -> glance(0.15, 0.6 * wide / gate(job)));
    NextStep.Change change = next.change().orElseThrow();
    assertThat(change.lever().key()).isEqualTo("gateWide");
    assertThat(change.helps()).isEqualTo(Trouble.SPLASHES);
  }

  @Test
  void aPourThatStopsIsNotToldToCalmItsGate() {
    double wide = gate(JOB);
    NextStep next = step(job -> glance(-0.4, 0.6 * wide / gate(job)));
    assertThat(next.change()).isEmpty();
  }

  @Test
  void whatBringsNothingIsNotOffered() {
    NextStep next = step(job -> glance(-0.3, 0.3));
    assertThat(next.change()).isEmpty();
    assertThat(next.furthest()).isEmpty();
    assertThat(next.tried()).isBetween(1, 10);
  }

  @Test
  void whatHelpsButDoesNotFillIsNamedAsFurthest() {
    NextStep next = step(job -> glance(-0.1 * InventedPours.seconds(job), 0.3));
    assertThat(next.change()).isEmpty();
    assertThat(next.furthest().orElseThrow().lever().key()).isEqualTo("emptiesIn");
    assertThat(next.furthest().orElseThrow().value()).isLessThan(NOW);
  }

  @Test
  void whereNothingIsWrongNothingIsPoured() {
    AtomicInteger runs = new AtomicInteger();
    NextStep next =
        step(
            job -> {
              runs.incrementAndGet();
              return glance(0.5, 0.3);
            });
    assertThat(next.troubles()).isEmpty();
    assertThat(next.change()).isEmpty();
    assertThat(runs).as("the plan's own").hasValue(1);
  }

  @Test
  void whatIsOfferedIsWhatAPourOfItGives() {
    PourCase slow = InventedPours.feather();
    BandStudy bands = Bands.around(slow, RUN, Measure.MARGIN, 2, () -> false).orElseThrow();
    try (RunCache studies = RunCache.onAllCores(RunCache.Watch.NONE, () -> false)) {
      NextStep next =
          NextStep.of(studies, slow, bands, Owned.nothing(InventedPours.marks()), WANTED)
              .orElseThrow();
      for (NextStep.Change change : next.change().or(next::furthest).stream().toList()) {
        PourCase changed = change.lever().set(slow, change.value());
        assertThat(RunSummary.of(changed, DryPour.run(changed, RunObserver.NONE, () -> false)))
            .isEqualTo(change.best());
      }
      assertThat(next.tried()).isPositive();
    }
  }
}
