package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.ToDoubleFunction;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import lastinch.solver.study.RunSummary;
import org.junit.jupiter.api.Test;

/** Maps over two levers against laws whose lines are known, and against a closed form. */
class OperatingMapExactSolutionTest {
  private static final double SPARE = 0.2;

  @Test
  void aStraightLineIsMetToAThirtySecondOfAStep() {
    // fills where s < 5 + (wait - 20) / 10, with the spare heat 2 s earlier
    OperatingMap room =
        mapped(j -> 0.1 * (5.0 - InventedPours.seconds(j)) + 0.01 * (wait(j) - 20.0), 11);
    double step = 0.5;
    List<OperatingMap.Line> fills = lines(room, OperatingMap.Parts.FILLS);
    assertThat(fills).hasSize(1);
    for (int i = 0; i < fills.get(0).across().size(); i++) {
      double exact = 5.0 + (fills.get(0).up().get(i) - 20.0) / 10.0;
      // half of the last sixteenth of a step, along the edge it was halved on
      assertThat(fills.get(0).across().get(i)).isCloseTo(exact, within(step / 31.0));
    }
    for (OperatingMap.Line line : lines(room, OperatingMap.Parts.SPARE)) {
      for (int i = 0; i < line.across().size(); i++) {
        double exact = 3.0 + (line.up().get(i) - 20.0) / 10.0;
        assertThat(line.across().get(i)).isCloseTo(exact, within(step / 31.0));
      }
    }
    // a line left where the grid has it would be off by up to half a step
    assertThat(step / 2.0).isGreaterThan(10.0 * step / 31.0);
  }

  @Test
  void twoIslandsGiveTwoClosedLines() {
    OperatingMap room =
        mapped(
            j -> {
              double s = InventedPours.seconds(j);
              double w = (wait(j) - 22.5) / 10.0;
              double a = StrictMath.hypot(s - 3.2, w);
              double b = StrictMath.hypot(s - 5.8, w);
              return 0.8 - Math.min(a, b);
            },
            21);
    List<OperatingMap.Line> fills = lines(room, OperatingMap.Parts.FILLS);
    assertThat(fills).hasSize(2);
    for (OperatingMap.Line line : fills) {
      int last = line.across().size() - 1;
      assertThat(line.across().get(0)).isEqualTo(line.across().get(last));
      assertThat(line.up().get(0)).isEqualTo(line.up().get(last));
      double middle = line.across().get(0) < 4.5 ? 3.2 : 5.8;
      for (int i = 0; i <= last; i++) {
        double w = (line.up().get(i) - 22.5) / 10.0;
        // a thirty-second of a step of 0.25 s or 1.75 s of waiting, seen at a slant
        assertThat(StrictMath.hypot(line.across().get(i) - middle, w))
            .isCloseTo(0.8, within(0.012));
      }
    }
  }

  @Test
  void plateOfTheClosedFormHasItsLineWhereTheFormHasIt() {
    // longest run goes with thickness over 2 (A/S): Flemings, Solidification Processing, ch. 7
    PourCase job =
        SampleJob.plate(0.8, 2e-3)
            .medium(SampleFoundry.roundMould(1000.0))
            .mouldAt(500.0 + SampleJob.ZERO)
            .checking(SampleJob.Options.bare().mouldStays().entersAt(0.5).cell(0.01))
            .build();
    Lever heat = InventedPours.lever(job, "mouldTemperature");
    Lever thick = InventedPours.lever(job, "thicker");
    double cold = 350.0 + SampleJob.ZERO;
    double hot = 550.0 + SampleJob.ZERO;
    OperatingMap.Question question =
        new OperatingMap.Question(heat, cold, hot, thick, -0.6e-3, 0.0, 4, 3, Goal.heat(SPARE));
    try (RunCache studies = InventedPours.studies(Pourer.DRY)) {
      OperatingMap room = OperatingMap.of(studies, job, question);
      List<OperatingMap.Line> fills = lines(room, OperatingMap.Parts.FILLS);
      assertThat(fills).hasSize(1);
      for (int i = 0; i < fills.get(0).across().size(); i++) {
        double mould = fills.get(0).across().get(i) - SampleJob.ZERO;
        double section = job.piece().limbs().get(0).stations().get(0).thickness();
        double t = section + fills.get(0).up().get(i);
        // 1 %: half of a sixteenth of a step is 2 K or 9 um; doubled contact would halve the run
        assertThat(run(t, mould)).isCloseTo(0.8, within(0.012));
      }
    }
  }

  private static double run(double thickness, double mould) {
    double halfThick = 0.5 * thickness * 2.0 / (2.0 + thickness);
    double seconds = 8000.0 * halfThick / 1000.0;
    double range = 450.0 + 190e3 / 150.0;
    double hot = seconds * 450.0 * StrictMath.log((1150.0 - mould) / (1000.0 - mould));
    double mush =
        seconds * range * StrictMath.log((1000.0 - mould) / (1000.0 - 150.0 * 0.3 - mould));
    return 0.5 * (hot + mush);
  }

  @Test
  void stoppedBeforeItsEndItKeepsWhatItHas() {
    PourCase job = InventedPours.feather();
    AtomicBoolean stop = new AtomicBoolean();
    try (RunCache studies =
        new RunCache(InventedPours.by(j -> 0.1), 1, (done, of) -> stop.set(done >= 9), stop::get)) {
      OperatingMap room = OperatingMap.of(studies, job, question(job, 5));
      assertThat(room.whole()).isFalse();
      assertThat(room.glances()).filteredOn(Optional::isPresent).hasSize(8);
    }
  }

  @Test
  void aRunWithoutAnswerHasNoLineRoundIt() {
    PourCase job = InventedPours.feather();
    Pourer brittle =
        (j, stop) ->
            InventedPours.seconds(j) > 4.0
                ? RunSummary.none(RunSummary.End.BROKE_DOWN)
                : InventedPours.glance(0.3);
    try (RunCache studies = InventedPours.studies(brittle)) {
      OperatingMap room = OperatingMap.of(studies, job, question(job, 5));
      assertThat(room.lines()).isEmpty();
      assertThat(room.at(4, 0).orElseThrow().mark()).isEqualTo(RunSummary.Mark.NO_ANSWER);
    }
  }

  @Test
  void reversedAndImpossibleRangesAreRefused() {
    PourCase job = InventedPours.feather();
    Lever s = InventedPours.lever(job, "emptiesIn");
    Lever w = InventedPours.lever(job, "waiting");
    List<double[]> wrong = new ArrayList<>();
    wrong.add(new double[] {7.0, 2.0});
    wrong.add(new double[] {2.0, 2.0});
    wrong.add(new double[] {-1.0, 2.0});
    for (double[] r : wrong) {
      assertThatThrownBy(
              () -> new OperatingMap.Question(s, r[0], r[1], w, 5.0, 40.0, 5, 5, Goal.heat(SPARE)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("emptiesIn");
    }
  }

  private static OperatingMap mapped(ToDoubleFunction<PourCase> law, int steps) {
    PourCase job = InventedPours.feather();
    try (RunCache studies = InventedPours.studies(InventedPours.by(law))) {
      return OperatingMap.of(studies, job, question(job, steps));
    }
  }

  private static OperatingMap.Question question(PourCase job, int steps) {
    return new OperatingMap.Question(
        InventedPours.lever(job, "emptiesIn"),
        2.0,
        7.0,
        InventedPours.lever(job, "waiting"),
        5.0,
        40.0,
        steps,
        steps,
        Goal.heat(SPARE));
  }

  private static double wait(PourCase job) {
    return job.metal().waiting().value();
  }

  private static List<OperatingMap.Line> lines(OperatingMap room, OperatingMap.Parts parts) {
    return room.lines().stream().filter(l -> l.parts() == parts).toList();
  }
}
