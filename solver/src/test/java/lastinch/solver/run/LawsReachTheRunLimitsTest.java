package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.result.PourResult;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Figures that belong to every pour are read by both filling solvers, from the job alone. */
class LawsReachTheRunLimitsTest {
  static Stream<FillingSolver> solvers() {
    return Stream.of(DryPour.NETWORK, DryPour.plane(PlaneSettings.squares(4e-3)));
  }

  private static PourResult pour(
      FillingSolver solver, SampleJob sample, UnaryOperator<ModelCoefficients> changed) {
    PourCase job = sample.build();
    return DryPour.run(
            solver,
            job.withLaws(changed.apply(job.laws())),
            Phase.FILLING,
            RunObserver.NONE,
            () -> false)
        .filling();
  }

  private static ModelCoefficients with(ModelCoefficients l, double vent, double air, double glow) {
    return new ModelCoefficients(
        l.spreading(),
        l.rangeRatio(),
        l.turns(),
        Band.typed(vent),
        Band.typed(air),
        Band.typed(glow));
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void aNarrowerVentDischargeHoldsTheMetal(FillingSolver solver) {
    SampleJob vented = SampleJob.featherInSand(3.0).vent(0.31, 2e-3);
    PourResult usual = pour(solver, vented, l -> l);
    PourResult narrow = pour(solver, vented, l -> with(l, 0.05, 10.0, 0.8));
    assertThat(narrow.filledFraction() / narrow.outcome().time())
        .isLessThan(usual.filledFraction() / usual.outcome().time());
  }

  @ParameterizedTest
  @MethodSource("solvers")
  void aShellLosesMoreHeatToMovingAirAndWhenItGlowsMore(FillingSolver solver) {
    SampleJob shell = SampleJob.featherInGypsum(2.5).shell(1e-3);
    double usual = pour(solver, shell, l -> l).accounts().heatToAir();
    double windy = pour(solver, shell, l -> with(l, 0.8, 100.0, 0.8)).accounts().heatToAir();
    double bright = pour(solver, shell, l -> with(l, 0.8, 10.0, 0.2)).accounts().heatToAir();
    assertThat(usual).isPositive();
    assertThat(windy).isGreaterThan(1.2 * usual);
    assertThat(bright).isLessThan(0.8 * usual);
  }
}
