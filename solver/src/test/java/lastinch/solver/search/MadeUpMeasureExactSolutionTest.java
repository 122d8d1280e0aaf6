package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Lever;
import lastinch.solver.levers.Owned;
import lastinch.solver.levers.ParameterUnit;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Measure;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.solver.uncertainty.BandedJob;
import lastinch.solver.uncertainty.Bands;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.solver.uncertainty.UncertainInput;
import org.junit.jupiter.api.Test;

/** A measure that no class knows is wanted, mapped and split as those that every run has. */
class MadeUpMeasureExactSolutionTest {
  /** Marks that the ladle leaves: twelve over the seconds that the pour takes. */
  private static final Measure MARKS =
      new Measure(
          "marks", ParameterUnit.COUNT, false, (job, result) -> 12.0 / InventedPours.seconds(job));

  private static final Measure GATES =
      new Measure("gates", ParameterUnit.COUNT, true, (job, result) -> job.gating().gates().size());

  /** Three marks and no more, that is four seconds and no less. */
  private static final Goal FEW = Goal.heat(0.0).and(new Goal.Want(MARKS, 3.0));

  private static final PourCase QUICK = SampleJob.featherInSand(2.0).build();

  /** Whatever is poured, this comes of it: a piece that fills. */
  private static final PourResult FULL = DryPour.run(QUICK, RunObserver.NONE, () -> false);

  private static RunCache studies(Measure asked) {
    return InventedPours.studies(Pourer.of((job, stop) -> FULL, asked));
  }

  @Test
  void theSmallestChangeIsTheOneThatMeetsIt() {
    try (RunCache studies = studies(MARKS)) {
      List<Lever> levers = List.of(InventedPours.lever(QUICK, "emptiesIn"));
      SmallestChange least = SmallestChange.of(studies, QUICK, levers, FEW);
      assertThat(least.base().filled()).isTrue();
      assertThat(least.already()).isFalse();
      assertThat(least.answers().get(0).chosen().orElseThrow().value())
          .isCloseTo(4.0, within(0.1 + 1e-9));
      assertThat(SmallestChange.of(studies, QUICK, levers, Goal.heat(0.0)).already()).isTrue();
    }
  }

  @Test
  void theLineOfAMapLiesWhereItIsMet() {
    Lever seconds = InventedPours.lever(QUICK, "emptiesIn");
    Lever waiting = InventedPours.lever(QUICK, "waiting");
    OperatingMap.Question question =
        new OperatingMap.Question(seconds, 1.5, 7.5, waiting, 5.0, 40.0, 7, 4, FEW);
    try (RunCache studies = studies(MARKS)) {
      List<OperatingMap.Line> lines = OperatingMap.of(studies, QUICK, question).lines();
      assertThat(lines).hasSize(1);
      assertThat(lines.get(0).parts()).isEqualTo(OperatingMap.Parts.SPARE);
      // a sixteenth of a step of the map
      assertThat(lines.get(0).across())
          .hasSizeGreaterThanOrEqualTo(4)
          .allSatisfy(s -> assertThat(s).isCloseTo(4.0, within(1.0 / 16.0)));
    }
  }

  @Test
  void gatesAreCutUntilItIsMet() {
    Goal two = Goal.heat(0.0).and(new Goal.Want(GATES, 2.0));
    Owned owned = Owned.nothing(InventedPours.marks());
    Pourer pourer =
        (job, stop) -> InventedPours.glance(0.5).with(GATES, job.gating().gates().size());
    try (RunCache studies = InventedPours.studies(pourer)) {
      assertThat(GatePlacement.of(studies, QUICK, owned, two, 3).best().layout().number())
          .isEqualTo(2);
      assertThat(
              GatePlacement.of(studies, QUICK, owned, Goal.heat(0.0), 3).best().layout().number())
          .isEqualTo(1);
    }
  }

  @Test
  void itsSpreadIsSplitAmongWhatIsNotKnown() {
    PourCase open = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, 0.8, 1.2);
    open = BandedJob.with(open, UncertainInput.READING, 0.99, 1.01);
    try (RunCache studies = studies(MARKS)) {
      FillProbability sure = FillProbability.of(studies, open, MARKS, 256, false);
      assertThat(sure.influences().get(0).unknown()).isEqualTo(UncertainInput.POUR_SECONDS);
      // all of it; from 256 runs a share is known to a few hundredths
      assertThat(sure.influences().get(0).alone()).isCloseTo(1.0, within(0.05));
      assertThat(sure.influences().get(1).alone()).isLessThan(0.05);
    }
  }

  @Test
  void badIsTheSideOnWhichItIsWorse() {
    PourCase open = BandedJob.with(BandedJob.exact(2.0), UncertainInput.POUR_SECONDS, 0.8, 1.2);
    open = BandedJob.with(open, UncertainInput.READING, 0.99, 1.01);
    PourResult best = DryPour.run(open, RunObserver.NONE, () -> false);
    BandStudy study = Bands.around(open, best, MARKS, 2, () -> false).orElseThrow();
    assertThat(study.weakest()).contains(UncertainInput.POUR_SECONDS);
    // the quick pour leaves more marks: the bad one is at the low end, 1.6 s
    assertThat(InventedPours.seconds(Bands.day(open, study.swings(), false)))
        .isCloseTo(1.6, within(1e-9));
  }

  @Test
  void whatWasNotAskedForIsNotMadeUp() {
    RunSummary plain = RunSummary.of(QUICK, FULL);
    assertThatThrownBy(() -> plain.get(MARKS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("marks");
    assertThat(RunSummary.of(QUICK, FULL, MARKS).get(MARKS)).isEqualTo(6.0);
  }
}
