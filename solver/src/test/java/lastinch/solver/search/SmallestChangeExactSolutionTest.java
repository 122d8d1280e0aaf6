package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Bound;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Levers;
import lastinch.solver.levers.Owned;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.Trial;
import org.junit.jupiter.api.Test;

/** The smallest change against invented laws whose answers are known, and against a closed form. */
class SmallestChangeExactSolutionTest {
  private static final double SPARE = 0.2;

  @Test
  void aRisingLawIsMetAtItsRootToTheMark() {
    // 0.5 - 0.08 s = 0.2 at 3.75 s; fills at all from 6.25 s: the job itself fills
    LeverAnswer answer = searched("emptiesIn", j -> 0.5 - 0.08 * InventedPours.seconds(j));
    assertThat(answer.kind()).isEqualTo(LeverAnswer.Kind.ENOUGH);
    assertThat(value(answer)).isCloseTo(3.7, within(1e-9));
    assertThat(answer.justShort().orElseThrow().value()).isCloseTo(3.8, within(1e-9));
    assertThat(answer.stopsAt()).isEmpty();
  }

  @Test
  void whereItFailsAltogetherIsFoundToo() {
    // stops short above 5 s, has 20 % to spare under 3 s
    LeverAnswer answer = searched("emptiesIn", j -> 0.1 * (5.0 - InventedPours.seconds(j)));
    assertThat(value(answer)).isCloseTo(3.0, within(1e-9));
    assertThat(answer.justShort().orElseThrow().value()).isCloseTo(3.1, within(1e-9));
    assertThat(answer.stopsAt().orElseThrow().value()).isCloseTo(5.1, within(0.1001));
    assertThat(answer.stopsAt().orElseThrow().glance().filled()).isFalse();
  }

  @Test
  void aLawThatTurnsBackIsMetOnTheNearSide() {
    // best at 3.5 s, 20 % from 3.5 - sqrt(0.5) to 3.5 + sqrt(0.5) = 4.207 s, worse again below
    ToDoubleFunction<PourCase> law =
        j -> 0.3 - 0.2 * StrictMath.pow(InventedPours.seconds(j) - 3.5, 2.0);
    LeverAnswer answer = searched("emptiesIn", law);
    assertThat(value(answer)).isCloseTo(4.2, within(1e-9));
    // a search that took the law for monotone would look at the end of practice and give up
    PourCase fastest = SampleJob.featherInSand(1.1 / 1.2).build();
    assertThat(law.applyAsDouble(fastest)).isLessThan(SPARE);
  }

  @Test
  void theLastMarksOfPracticeAreTriedAtBothEnds() {
    Lever lever = InventedPours.lever(InventedPours.feather(), "emptiesIn");
    double high = lever.mark((long) Math.floor(lever.practical().high().value() / 0.1 + 1e-6));
    double low = lever.mark((long) Math.ceil(lever.practical().low().value() / 0.1 - 1e-6));
    for (double end : new double[] {low, high}) {
      LeverAnswer answer =
          searched("emptiesIn", j -> SPARE + 0.01 - 0.5 * Math.abs(InventedPours.seconds(j) - end));
      assertThat(value(answer)).isCloseTo(end, within(1e-9));
    }
  }

  @Test
  void ofTwoIslandsTheNearerIsTaken() {
    // 20 % to spare from 1.5 to 2.5 s and from 8 to 9 s, nothing between; 6 s is nearer to 8 s
    LeverAnswer answer =
        searched(
            "emptiesIn",
            j -> {
              double s = InventedPours.seconds(j);
              double far = 0.5 - Math.abs(s - 2.0);
              double near = 0.5 - Math.abs(s - 8.5);
              return SPARE + 1e-9 + Math.max(far, near);
            });
    assertThat(value(answer)).isCloseTo(8.0, within(1e-9));
    assertThat(answer.justShort().orElseThrow().value()).isCloseTo(7.9, within(1e-9));
  }

  @Test
  void whereNothingIsEnoughTheBestThereIsAndItsEndAreNamed() {
    LeverAnswer answer = searched("emptiesIn", j -> -0.05 * InventedPours.seconds(j));
    assertThat(answer.kind()).isEqualTo(LeverAnswer.Kind.NOT_ENOUGH);
    assertThat(answer.end().orElseThrow().reason()).isEqualTo(Bound.Reason.BRISK_HAND);
    assertThat(answer.at()).isEmpty();
  }

  @Test
  void whatHasNoSayIsCalledInert() {
    LeverAnswer answer = searched("vent", j -> -0.3);
    assertThat(answer.kind()).isEqualTo(LeverAnswer.Kind.NO_HELP);
    assertThat(answer.inert()).isTrue();
  }

  @Test
  void aSizeTheShopOwnsIsTakenWhereItWillDo() {
    PourCase job = InventedPours.feather();
    Owned shop =
        new Owned(
            InventedPours.marks(),
            List.of(0.026, 0.032),
            List.of(),
            List.of(),
            java.util.OptionalDouble.empty(),
            java.util.OptionalDouble.empty(),
            List.of(),
            List.of());
    Lever lever = Levers.find(Levers.of(job, shop), "gateWide", "").orElseThrow();
    Pourer law = InventedPours.by(j -> 10.0 * j.gating().gates().get(0).width() - 0.1 + 1e-9);
    try (RunCache studies = InventedPours.studies(law)) {
      LeverAnswer answer = new LeverSearch(studies, job, lever, Goal.heat(SPARE)).smallest();
      assertThat(value(answer)).isCloseTo(0.030, within(1e-9));
      assertThat(answer.chosen().orElseThrow().value()).isEqualTo(0.032);
    }
  }

  @Test
  void whereTheEdgeIsAskedForAChangeThatLeavesItRoundedComesLast() {
    PourCase job = InventedPours.feather();
    LeverAnswer rounded = notEnough(InventedPours.lever(job, "emptiesIn"), 0.15, true);
    LeverAnswer sharp = notEnough(InventedPours.lever(job, "emptiesIn"), 0.10, false);
    Goal edge = Goal.heat(SPARE).withFullEdge();
    assertThat(SmallestChange.cost(sharp, edge)).isLessThan(SmallestChange.cost(rounded, edge));
    Goal heat = Goal.heat(SPARE);
    assertThat(SmallestChange.cost(sharp, heat)).isGreaterThan(SmallestChange.cost(rounded, heat));
  }

  /** An answer of which the best leaves so much heat to spare, at the value as it is. */
  private static LeverAnswer notEnough(Lever lever, double heat, boolean rounded) {
    RunSummary g = InventedPours.glance(heat);
    Trial best = new Trial(lever.now(), g.with(Measure.EDGE, rounded ? 1.0 : 0.0));
    return new LeverAnswer(
        lever,
        LeverAnswer.Kind.NOT_ENOUGH,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        best,
        Optional.empty(),
        false,
        List.of(),
        List.of(best));
  }

  @Test
  void whenItFillsAlreadyItIsSaidHowFarEachThingMaySlip() {
    PourCase job = InventedPours.feather();
    Pourer law = InventedPours.by(j -> 0.6 - 0.05 * InventedPours.seconds(j));
    try (RunCache studies = InventedPours.studies(law)) {
      SmallestChange least =
          SmallestChange.of(
              studies, job, List.of(InventedPours.lever(job, "emptiesIn")), Goal.heat(SPARE));
      assertThat(least.already()).isTrue();
      LeverAnswer answer = least.answers().get(0);
      assertThat(answer.kind()).isEqualTo(LeverAnswer.Kind.MAY_SLIP);
      assertThat(value(answer)).isCloseTo(8.0, within(0.1001));
      assertThat(answer.justShort().orElseThrow().glance().fillsWith(SPARE)).isFalse();
    }
  }

  @Test
  void twoLeversShareTheWayAndTheRunJustShortOfThemDoesNotDoIt() {
    // neither 3 s alone nor no waiting alone is enough; together they are
    PourCase job = InventedPours.feather();
    Pourer law =
        InventedPours.by(
            j ->
                0.04 * (4.5 - Math.max(3.0, InventedPours.seconds(j)))
                    + 4e-3 * (40.0 - j.metal().waiting().value()));
    List<Lever> levers =
        List.of(InventedPours.lever(job, "emptiesIn"), InventedPours.lever(job, "waiting"));
    try (RunCache studies = InventedPours.studies(law)) {
      SmallestChange least = SmallestChange.of(studies, job, levers, Goal.heat(SPARE));
      assertThat(least.answers()).noneMatch(a -> a.kind() == LeverAnswer.Kind.ENOUGH);
      PairAnswer pair = least.pairs().get(0);
      assertThat(pair.glance().fillsWith(SPARE)).isTrue();
      assertThat(pair.justShort().fillsWith(SPARE)).isFalse();
      assertThat(least.pick().orElseThrow().because())
          .isEqualTo(SmallestChange.Because.TWO_TOGETHER);
    }
  }

  @Test
  void mouldHeatForAPlateIsThatOfTheClosedForm() {
    // length at which a share k is solid: Flemings, Solidification Processing, ch. 7, from memory
    double length = 1.0;
    PourCase job = plate(length, 300.0);
    Lever lever = InventedPours.lever(job, "mouldTemperature");
    double exact = mouldHeat(length);
    try (RunCache studies = InventedPours.studies(Pourer.DRY)) {
      LeverAnswer answer = new LeverSearch(studies, job, lever, Goal.heat(SPARE)).smallest();
      // 2 K: one mark, and half a cell, in whose middle arrival is noted, which is worth 1.2 K
      assertThat(value(answer)).isCloseTo(exact + SampleJob.ZERO, within(2.0));
      assertThat(answer.justShort().orElseThrow().glance().fillsWith(SPARE)).isFalse();
      // without the spare heat 34 K less would do: a search for filling alone is told apart
      assertThat(answer.stopsAt().orElseThrow().value()).isLessThan(value(answer) - 30.0);
    }
  }

  private static PourCase plate(double length, double mould) {
    return SampleJob.plate(length, 2e-3)
        .medium(SampleFoundry.roundMould(1000.0))
        .mouldAt(mould + SampleJob.ZERO)
        .checking(SampleJob.Options.bare().mouldStays().entersAt(0.5).cell(length / 160.0))
        .build();
  }

  /** Mould heat [degC] at which a fifth of the spendable heat is left at the end of the plate. */
  private static double mouldHeat(double length) {
    double spendable = 450.0 * 150.0 + 0.3 * (190e3 + 450.0 * 150.0);
    double left = (0.3 * (190e3 + 450.0 * 150.0) - SPARE * spendable);
    double share = left / (190e3 + 450.0 * 150.0);
    double low = 300.0;
    double high = 900.0;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (run(middle, share) < length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double run(double mould, double share) {
    double seconds = 8000.0 * 2e-3 / (2.0 * 1000.0);
    double range = 450.0 + 190e3 / 150.0;
    double hot = seconds * 450.0 * StrictMath.log((1150.0 - mould) / (1000.0 - mould));
    double mush =
        seconds * range * StrictMath.log((1000.0 - mould) / (1000.0 - 150.0 * share - mould));
    return 0.5 * (hot + mush);
  }

  private static LeverAnswer searched(String key, ToDoubleFunction<PourCase> law) {
    PourCase job = InventedPours.feather();
    try (RunCache studies = InventedPours.studies(InventedPours.by(law))) {
      return new LeverSearch(studies, job, InventedPours.lever(job, key), Goal.heat(SPARE))
          .smallest();
    }
  }

  private static double value(LeverAnswer answer) {
    return answer.at().orElseThrow().value();
  }
}
