package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.result.ToppedUp;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What whoever runs a pour may rely on, whichever solver fills. */
class FillingSolverContractLimitsTest {
  /** The limit of both solvers' accounts; a cell that is lost is a hundred times this. */
  private static final double METAL = 1e-9;

  private static final double HEAT = 1e-6;

  static Stream<FillingSolver> solvers() {
    return Stream.of(DryPour.NETWORK, DryPour.plane(PlaneSettings.squares(4e-3)));
  }

  private static SampleJob feather(double reading) {
    return SampleJob.featherInSand(6.0).reads(reading + SampleJob.ZERO);
  }

  private static PourResult fill(FillingSolver solver, PourCase job) {
    return DryPour.run(solver, job, Phase.FILLING, RunObserver.NONE, () -> false).filling();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void theSameJobGivesTheSameBits(FillingSolver solver) {
    PourCase job = feather(1150.0).build();
    assertThat(Bits.of(fill(solver, job))).isEqualTo(Bits.of(fill(solver, job)));
    assertThat(Bits.of(fill(solver, feather(1150.001).build())))
        .isNotEqualTo(Bits.of(fill(solver, job)));
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void accountsClose(FillingSolver solver) {
    PourResult result = fill(solver, feather(1150.0).build());
    assertThat(result.accounts().metalError()).isCloseTo(0.0, within(METAL));
    assertThat(result.accounts().heatError()).isCloseTo(0.0, within(HEAT));
    assertThat(result.accounts().poured()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void whatStopsShortSaysWhereAndWhatFillsHasNoStop(FillingSolver solver) {
    PourResult cold = fill(solver, feather(1040.0).build());
    assertThat(cold.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(cold.stops()).isNotEmpty();
    assertThat(cold.margin().heat()).isZero();
    assertThat(cold.margin().distance().orElseThrow()).isNegative();
    PourResult hot = fill(solver, SampleJob.featherInSand(3.0).build());
    assertThat(hot.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(hot.stops()).isEmpty();
    assertThat(hot.margin().heat()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void hotterMetalComesNoLessFar(FillingSolver solver) {
    double last = 0.0;
    for (double reading : new double[] {1040.0, 1080.0, 1120.0}) {
      double reach = fill(solver, feather(reading).build()).reach();
      assertThat(reach).isGreaterThanOrEqualTo(last);
      last = reach;
    }
    assertThat(last).isPositive();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void timeAndFillOnlyGrowAndPhasesComeInOrder(FillingSolver solver) {
    double[] last = new double[2];
    List<Phase> phases = new java.util.ArrayList<>();
    RunObserver observer =
        new RunObserver() {
          @Override
          public void onStep(double time, double filled) {
            assertThat(time).isGreaterThanOrEqualTo(last[0]);
            assertThat(filled).isGreaterThanOrEqualTo(last[1]);
            last[0] = time;
            last[1] = filled;
          }

          @Override
          public void onPhase(Phase phase) {
            phases.add(phase);
          }
        };
    PourCase job = feather(1150.0).build();
    Poured poured = DryPour.run(solver, job, Phase.TOPPING_UP, observer, () -> false);
    assertThat(last[0]).isPositive();
    assertThat(phases).containsExactly(Phase.FILLING, Phase.TOPPING_UP);
    assertThat(poured.toppedUp()).isPresent();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void toppingUpChangesNothingOfTheVerdictAndPoursNoLess(FillingSolver solver) {
    PourCase job = feather(1150.0).build();
    Poured poured = DryPour.run(solver, job, Phase.TOPPING_UP, RunObserver.NONE, () -> false);
    assertThat(Bits.of(poured.filling())).isEqualTo(Bits.of(fill(solver, job)));
    ToppedUp stood = poured.toppedUp().orElseThrow();
    assertThat(stood.poured()).isGreaterThanOrEqualTo(poured.filling().accounts().poured());
    assertThat(stood.time()).isGreaterThanOrEqualTo(poured.filling().outcome().time());
    assertThat(stood.cupFullAt().isPresent() || stood.left() < METAL).isTrue();
  }

  @Test
  void aHistoryThatIsFullEndsWithTheVerdict() {
    for (double seconds = 3.0; seconds < 9.0; seconds += 0.5) {
      PourCase job = SampleJob.featherInSand(seconds).build();
      Poured poured =
          DryPour.run(DryPour.NETWORK, job, Phase.TOPPING_UP, RunObserver.NONE, () -> false);
      assertThat(poured.filling().course().time(poured.filling().course().size() - 1))
          .isEqualTo(poured.filling().outcome().time());
    }
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void aPourThatIsStoppedSaysSoAndIsNotToppedUp(FillingSolver solver) {
    int[] polls = new int[1];
    PourCase job = feather(1150.0).build();
    Poured poured =
        DryPour.run(solver, job, Phase.TOPPING_UP, RunObserver.NONE, () -> polls[0]++ > 40);
    assertThat(poured.filling().outcome()).isInstanceOf(Outcome.Cancelled.class);
    assertThat(poured.toppedUp()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void toppingUpCanBeStopped(FillingSolver solver) {
    try (Filling filling = solver.begin(feather(1150.0).build())) {
      filling.fill(RunObserver.NONE, () -> false);
      assertThat(filling.topUp(RunObserver.NONE, () -> true).ended())
          .isEqualTo(ToppedUp.Ended.CANCELLED);
    }
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void whatASolverDoesNotHaveIsNamedBeforeItPours(FillingSolver solver) {
    Checking.StartsWet nowhere = new Checking.StartsWet("no such channel", 0.0, 0.2, 0.0);
    SampleJob.Options options = SampleJob.Options.ordinary().startsWet(List.of(nowhere));
    PourCase job = SampleJob.featherInSand(6.0).checking(options).build();
    List<Need> needs = solver.needs(job);
    assertThat(needs).hasSize(1);
    assertThatThrownBy(() -> fill(solver, job))
        .isInstanceOfSatisfying(UnsupportedCase.class, e -> assertThat(e.needs()).isEqualTo(needs));
  }
}
