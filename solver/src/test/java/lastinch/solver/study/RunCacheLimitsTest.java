package lastinch.solver.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Owned;
import lastinch.solver.run.SampleJob;
import lastinch.solver.search.InventedPours;
import lastinch.solver.search.SmallestChange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many runs: the same bits however many at once, stopped half-way, gone on, one broken down. */
class RunCacheLimitsTest {

  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void realPoursGiveTheSameBitsWithAnyNumberOfThreads(int threads) {
    List<PourCase> jobs = new ArrayList<>();
    for (double seconds = 3.0; seconds < 9.0; seconds += 1.5) {
      jobs.add(SampleJob.featherInSand(seconds).build());
    }
    assertThat(poured(jobs, threads)).isEqualTo(poured(jobs, 1));
    assertThat(poured(jobs, 1)).doesNotHaveDuplicates();
  }

  private static List<Optional<RunSummary>> poured(List<PourCase> jobs, int threads) {
    try (RunCache studies = new RunCache(Pourer.DRY, threads, RunCache.Watch.NONE, () -> false)) {
      return studies.pourAll(jobs);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void aWholeSearchGivesTheSameAnswerWithAnyNumberOfThreads(int threads) {
    assertThat(searched(threads)).isEqualTo(searched(1));
  }

  private static String searched(int threads) {
    PourCase job = InventedPours.feather();
    List<Lever> levers = Levers.of(job, Owned.nothing(InventedPours.marks()));
    Pourer invented =
        InventedPours.by(
            j -> 0.5 - 0.1 * InventedPours.seconds(j) + 1e-3 * (InventedPours.reading(j) - 1423));
    try (RunCache studies = new RunCache(invented, threads, RunCache.Watch.NONE, () -> false)) {
      SmallestChange least = SmallestChange.of(studies, job, levers, Goal.heat(0.2));
      StringBuilder said = new StringBuilder();
      least
          .answers()
          .forEach(
              a ->
                  said.append(a.lever().key())
                      .append(a.kind())
                      .append(a.at())
                      .append(a.justShort())
                      .append(a.tried()));
      least.pairs().forEach(p -> said.append(p.firstValue()).append(p.secondValue()));
      return said.append(least.runs()).toString();
    }
  }

  @Test
  void noRunIsTheLastWhileNobodyKnowsHowManyThereWillBe() {
    List<String> told = new ArrayList<>();
    Pourer invented = InventedPours.by(InventedPours::seconds);
    try (RunCache studies =
        new RunCache(invented, 1, (done, all) -> told.add(done + " of " + all), () -> false)) {
      studies.pour(SampleJob.featherInSand(3.0).build());
      studies.expect(4);
      studies.pour(SampleJob.featherInSand(4.0).build());
    }
    assertThat(told).containsExactly("1 of 0", "2 of 4");
  }

  @Test
  void stoppedHalfWayItKeepsWhatItHasAndGoesOnFromThere() {
    AtomicInteger runs = new AtomicInteger();
    AtomicBoolean stop = new AtomicBoolean();
    List<PourCase> jobs = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      jobs.add(SampleJob.featherInSand(2.0 + i).build());
    }
    Pourer invented = InventedPours.counted(j -> 0.5 - 0.05 * InventedPours.seconds(j), runs);
    try (RunCache studies =
        new RunCache(
            invented, 1, (done, expected) -> stop.compareAndSet(false, done == 7), stop::get)) {
      List<Optional<RunSummary>> half = studies.pourAll(jobs);
      assertThat(half).filteredOn(Optional::isPresent).hasSize(7);
      stop.set(false);
      List<Optional<RunSummary>> whole = studies.pourAll(jobs);
      assertThat(whole).allMatch(Optional::isPresent);
      assertThat(whole.subList(0, 7)).isEqualTo(half.subList(0, 7));
      assertThat(runs.get()).isEqualTo(20);
    }
  }

  @Test
  void aRealRunThatIsStoppedGivesNoAnswerInsteadOfAHalfOne() {
    AtomicInteger polls = new AtomicInteger();
    BooleanSupplier soon = () -> polls.incrementAndGet() > 20;
    try (RunCache studies = new RunCache(Pourer.DRY, 1, RunCache.Watch.NONE, soon)) {
      assertThat(studies.pourAll(List.of(InventedPours.feather()))).containsOnly(Optional.empty());
      assertThat(studies.runs()).isZero();
    }
  }

  @Test
  void aRunThatBreaksDownIsReportedInItsPlace() {
    Pourer brittle =
        (job, stop) ->
            InventedPours.seconds(job) == 4.0
                ? RunSummary.none(RunSummary.End.BROKE_DOWN)
                : InventedPours.glance(0.3);
    List<PourCase> jobs = new ArrayList<>();
    for (double seconds : new double[] {3.0, 4.0, 5.0}) {
      jobs.add(SampleJob.featherInSand(seconds).build());
    }
    try (RunCache studies = InventedPours.studies(brittle)) {
      List<Optional<RunSummary>> all = studies.pourAll(jobs);
      assertThat(all.stream().map(g -> g.orElseThrow().end()))
          .containsExactly(RunSummary.End.FILLED, RunSummary.End.BROKE_DOWN, RunSummary.End.FILLED);
      assertThat(all.get(1).orElseThrow().mark()).isEqualTo(RunSummary.Mark.NO_ANSWER);
    }
  }

  @Test
  void aFaultOfOursIsNotSwallowed() {
    Pourer faulty =
        (job, stop) -> {
          throw new IllegalStateException("planted");
        };
    try (RunCache studies = InventedPours.studies(faulty)) {
      List<PourCase> jobs = List.of(InventedPours.feather());
      assertThatThrownBy(() -> studies.pourAll(jobs)).hasMessage("planted");
    }
  }

  @Test
  void progressCountsEveryRunOnce() {
    ConcurrentLinkedQueue<Integer> done = new ConcurrentLinkedQueue<>();
    List<PourCase> jobs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      jobs.add(SampleJob.featherInSand(2.0 + i).build());
    }
    try (RunCache studies =
        new RunCache(
            InventedPours.by(j -> 0.1),
            2,
            (made, expected) -> {
              assertThat(expected).isEqualTo(12);
              done.add(made);
            },
            () -> false)) {
      studies.expect(12);
      studies.pourAll(jobs);
    }
    assertThat(done).containsExactlyInAnyOrder(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
  }
}
