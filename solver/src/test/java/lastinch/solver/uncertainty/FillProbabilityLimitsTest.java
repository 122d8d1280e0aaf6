package lastinch.solver.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.search.InventedPours;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import org.junit.jupiter.api.Test;

/** Chance where it is known: nothing open, one thing open, several, all; stopped. */
class FillProbabilityLimitsTest {
  private static final PourCase EXACT = BandedJob.exact(6.0);

  private static FillProbability sure(Pourer pourer, PourCase job, int threads) {
    try (RunCache studies = new RunCache(pourer, threads, RunCache.Watch.NONE, () -> false)) {
      return FillProbability.of(studies, job, Measure.MARGIN, 1024, false);
    }
  }

  /** Heat to spare falls a tenth a second from nothing at 6 s. */
  private static Pourer bySeconds() {
    return InventedPours.by(j -> 0.1 * (6.0 - InventedPours.seconds(j)));
  }

  @Test
  void whereAllIsKnownOneDayStandsForAll() {
    FillProbability sure = sure(bySeconds(), EXACT, 1);
    assertThat(sure.chance()).isEqualTo(new ChanceInterval(1.0, 1.0, 1.0));
    assertThat(sure.influences()).isEmpty();
    assertThat(sure.runs()).isEqualTo(1);
  }

  @Test
  void withOneThingOpenTheChanceIsTheShareOfItsBand() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.8, 1.1);
    FillProbability sure = sure(bySeconds(), job, 2);
    // fills below the best figure; halves of 1.2 and 0.6 s: two days in three lie below it; each of
    // the 16 samples may be one day off
    assertThat(sure.chance().share()).isCloseTo(2.0 / 3.0, within(16.0 / 1024));
    assertThat(sure.chance().high() - sure.chance().low()).isLessThan(0.01);
    assertThat(sure.fills() + sure.stopped().size()).isEqualTo(1024);
    assertThat(sure.influences()).hasSize(1);
    assertThat(sure.influences().get(0).alone()).isGreaterThan(0.98);
    assertThat(sure.measure()).contains(UncertainInput.POUR_SECONDS);
  }

  @Test
  void nineDaysInTenLieInsideABand() {
    for (UncertainInput unknown :
        List.of(UncertainInput.POUR_SECONDS, UncertainInput.CONTACT_LIQUID)) {
      // the second is wide: its middle is taken on the scale of the logarithm
      double high = unknown == UncertainInput.CONTACT_LIQUID ? 2.5 : 1.1;
      PourCase job = BandedJob.with(EXACT, unknown, 0.8, high);
      Band band = unknown.band(job).orElseThrow();
      int inside = 0;
      for (int i = 0; i < 1000; i++) {
        double value = SampledInputs.drawn(job, unknown, (i + 0.5) / 1000.0);
        inside += value >= band.low() && value <= band.high() ? 1 : 0;
      }
      assertThat(inside).isEqualTo(900);
    }
  }

  @Test
  void drawnFiguresRiseWithTheirShareOfDays() {
    PourCase job = BandedJob.allOpen();
    for (UncertainInput unknown : UncertainInput.openIn(job)) {
      double before = SampledInputs.drawn(job, unknown, 1e-9);
      for (int i = 1; i < 200; i++) {
        double value = SampledInputs.drawn(job, unknown, i / 200.0);
        assertThat(value).as(unknown.name()).isGreaterThanOrEqualTo(before);
        before = value;
      }
    }
  }

  @Test
  void everyDayOfAJobWithEveryFigureOpenCanBeDescribed() {
    PourCase job = BandedJob.allOpen();
    List<UncertainInput> open = UncertainInput.openIn(job);
    double[] lowest = new double[open.size()];
    double[] highest = new double[open.size()];
    Arrays.fill(lowest, 1e-9);
    Arrays.fill(highest, 1.0 - 1e-9);
    assertThat(SampledInputs.of(job, open, lowest))
        .isNotEqualTo(SampledInputs.of(job, open, highest));
    for (double[] point : ScrambledSobol.points(open.size(), 256, 7)) {
      PourCase day = SampledInputs.of(job, open, point);
      assertThat(day.mould().medium().contactGap().value())
          .isLessThanOrEqualTo(day.mould().medium().contactLiquid().value());
      assertThat(day.mould().medium().gapOpen().value())
          .isGreaterThanOrEqualTo(day.mould().medium().skinFrees().value());
    }
  }

  @Test
  void gapOpensNoSoonerThanTheSkinFreesItselfOnAnyDay() {
    PourCase job = BandedJob.allOpen();
    MouldMedium medium = job.mould().medium();
    medium = medium.with(MouldMedium.Figure.SKIN_FREES, wide(medium.skinFrees(), 0.3, 0.9));
    medium = medium.with(MouldMedium.Figure.GAP_OPEN, wide(medium.gapOpen(), 0.4, 1.0));
    job = job.withMould(job.mould().withMedium(medium));
    List<UncertainInput> both = List.of(UncertainInput.SKIN_FREES, UncertainInput.GAP_OPEN);
    int crossed = 0;
    for (double[] point : ScrambledSobol.points(2, 64, 7)) {
      MouldMedium day = SampledInputs.of(job, both, point).mould().medium();
      double frees = SampledInputs.drawn(job, UncertainInput.SKIN_FREES, point[0]);
      double open = SampledInputs.drawn(job, UncertainInput.GAP_OPEN, point[1]);
      crossed += open < frees ? 1 : 0;
      // the gap gives way, never the skin that was drawn before it
      assertThat(day.skinFrees().value()).isEqualTo(frees);
      assertThat(day.gapOpen().value()).isEqualTo(Math.max(frees, open));
    }
    assertThat(crossed).isGreaterThan(5);
  }

  private static Band wide(Band best, double low, double high) {
    return new Band(best.value(), low, high, best.source());
  }

  @Test
  void everySampleDealsItsCoordinatesAnew() {
    int dimensions = 6;
    Set<String> first = new HashSet<>();
    Set<List<String>> all = new HashSet<>();
    for (int seed = 0; seed < 8; seed++) {
      double[][] points = ScrambledSobol.points(dimensions, 16, seed);
      List<String> patterns = new ArrayList<>();
      for (int d = 0; d < dimensions; d++) {
        patterns.add(neighbours(points, d));
      }
      first.add(patterns.get(0));
      all.add(patterns.stream().sorted().toList());
    }
    // the same coordinates each time, none left out, and not always the same one in front
    assertThat(all).hasSize(1);
    assertThat(all.iterator().next()).doesNotHaveDuplicates();
    assertThat(first.size()).isGreaterThan(2);
  }

  /**
   * Which of the first eight points shares its eighth with each of the next; no scrambling moves
   * it.
   */
  private static String neighbours(double[][] points, int d) {
    StringBuilder pairs = new StringBuilder();
    for (int j = 8; j < 16; j++) {
      for (int i = 0; i < 8; i++) {
        if ((int) (8 * points[i][d]) == (int) (8 * points[j][d])) {
          pairs.append(i);
        }
      }
    }
    return pairs.toString();
  }

  @Test
  void whatMattersMostIsNamedFirstAndTheCheapestMeasurementIsWorthItsEffort() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.9, 1.1);
    job = BandedJob.with(job, UncertainInput.CONTACT_LIQUID, 0.9, 1.1);
    double contact = job.mould().medium().contactLiquid().value();
    Pourer both =
        InventedPours.by(
            j ->
                0.05 * (6.0 - InventedPours.seconds(j)) / 6.0
                    - 0.10 * (j.mould().medium().contactLiquid().value() / contact - 1.0));
    FillProbability sure = sure(both, job, 2);
    assertThat(sure.influences().get(0).unknown()).isEqualTo(UncertainInput.CONTACT_LIQUID);
    // shares go by squares, 4 to 1; the bars are some 0.03 wide
    assertThat(sure.influences().get(0).alone()).isCloseTo(0.8, within(0.05));
    assertThat(sure.influences().get(1).alone()).isCloseTo(0.2, within(0.05));
    assertThat(sure.measure())
        .as("a clock beats a strip of metal")
        .contains(UncertainInput.POUR_SECONDS);
  }

  @Test
  void threadsChangeNothing() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.8, 1.2);
    job = BandedJob.with(job, UncertainInput.READING, 0.99, 1.01);
    assertThat(sure(bySeconds(), job, 3)).isEqualTo(sure(bySeconds(), job, 1));
  }

  @Test
  void interplayIsSeenOnlyByTheThoroughStudy() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.8, 1.2);
    job = BandedJob.with(job, UncertainInput.READING, 0.98, 1.02);
    double reading = job.metal().reading().value();
    // a product of two that are even about nothing: neither does anything alone
    Pourer product =
        InventedPours.by(
            j -> (6.0 - InventedPours.seconds(j)) * (InventedPours.reading(j) / reading - 1.0));
    try (RunCache studies = InventedPours.studies(product)) {
      FillProbability sure = FillProbability.of(studies, job, Measure.MARGIN, 1024, true);
      assertThat(sure.influences()).allMatch(i -> i.alone() < 0.1);
      assertThat(sure.inAll()).allMatch(t -> t > 0.8);
    }
  }

  @Test
  void askedToStopItSaysNothing() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.8, 1.2);
    AtomicInteger polls = new AtomicInteger();
    try (RunCache studies =
        new RunCache(bySeconds(), 2, RunCache.Watch.NONE, () -> polls.incrementAndGet() > 50)) {
      assertThatThrownBy(() -> FillProbability.of(studies, job, Measure.MARGIN, 1024, false))
          .isInstanceOf(RunCache.Cancelled.class);
    }
  }

  @Test
  void daysWithoutAnAnswerDoNotCount() {
    PourCase job = BandedJob.with(EXACT, UncertainInput.POUR_SECONDS, 0.8, 1.2);
    Pourer silent =
        (j, stop) ->
            InventedPours.seconds(j) > 6.5
                ? RunSummary.none(RunSummary.End.BROKE_DOWN)
                : InventedPours.glance(0.1);
    FillProbability sure = sure(silent, job, 2);
    assertThat(sure.chance().share()).isEqualTo(1.0);
    assertThat(sure.silent()).isBetween(200, 300);
  }
}
