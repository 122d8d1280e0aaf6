package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.casting.Pour;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Band;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Distance to spare is what a longer piece would have filled: of the closed form (Flemings,
 * Solidification Processing, ch. 7, from memory) where there is one, else of a longer strip poured
 * for real.
 */
class DistanceToSpareExactSolutionTest {
  /** Length that a 2 mm plate fills at 0.5 m/s over a mould kept at 500 degC [m]. */
  private static final double EXACT = 1.11985568;

  private static PourResult pour(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }

  private static PourResult plate(double length, double contact) {
    return pour(
        SampleJob.plate(length, 0.002)
            .medium(SampleFoundry.roundMould(contact))
            .mouldAt(500.0 + SampleJob.ZERO)
            .checking(SampleJob.Options.bare().mouldStays().entersAt(0.5)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.7, 0.95})
  void shorterPlateHasTheRestOfTheExactLengthToSpare(double share) {
    PourResult result = plate(share * EXACT, 1000.0);
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(result.margin().limitedBy()).isEqualTo(Margin.LimitedBy.HEAT);
    double length = share * EXACT + result.margin().distance().orElseThrow();
    // 0.5 % of the whole, as for the length itself
    assertThat(length).isCloseTo(EXACT, withinPercentage(0.5));
  }

  @Test
  void doubledContactFails() {
    PourResult result = plate(0.4 * EXACT, 2000.0);
    double length = 0.4 * EXACT + result.margin().distance().orElseThrow();
    assertThat(length).isNotCloseTo(EXACT, withinPercentage(5.0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5})
  void longerStripInSandGoesOnAsFarAsWasSaid(double length) {
    PourResult fills = pour(sandStrip(length));
    PourResult stops = pour(sandStrip(1.5));
    assertThat(fills.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(stops.outcome()).isInstanceOf(Outcome.Misrun.class);
    double said = fills.margin().distance().orElseThrow();
    assertThat(said).isGreaterThan(0.1);
    // 4 %: the made-up channel keeps the warming of the last quarter, which still grows a little
    assertThat(length + said).isCloseTo(stops.reach(), withinPercentage(4.0));
  }

  @Test
  void metalThatRunsOutIsToldApartFromHeat() {
    // up to 0.749 kg metal ends the longer run, above that heat; 7 % below that border
    PourResult result = pour(sandStrip(0.5).melted(0.7));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(result.margin().limitedBy()).isEqualTo(Margin.LimitedBy.METAL);
    PourResult plenty = pour(sandStrip(0.5));
    assertThat(result.margin().distance().orElseThrow())
        .isLessThan(plenty.margin().distance().orElseThrow());
  }

  @Test
  void metalThatNeverFreezesIsNotFollowedForEver() {
    PourResult result =
        pour(
            SampleJob.plate(0.3, 0.002)
                .alloy(SampleFoundry.pureMetal())
                .checking(SampleJob.Options.bare().mouldStays().mush(0.0).entersAt(0.5)));
    assertThat(result.margin().distance()).hasValue(Margin.FAR);
  }

  @Test
  void pieceThatStopsIsMissingWhatItSays() {
    PourResult stops = pour(sandStrip(1.5));
    Stop stop = stops.stops().get(0);
    assertThat(stops.margin().distance().orElseThrow()).isEqualTo(-stop.missing());
  }

  private static SampleJob sandStrip(double length) {
    // in whole sections: rims that stiffen later feed the middle more than the last quarter says
    return SampleJob.strip(length, 0.03, 0.004)
        .checking(SampleJob.Options.ordinary().wholeSections())
        .alloy(SampleFoundry.tinBronze())
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .crack(5e-5)
        .sprue(0.12, 0.018, 0.014)
        .vent(length, 0.006)
        .melted(4.0)
        .waits(40.0, 15.0)
        .pour(new Pour.AtRate(Band.typed(0.4)));
  }
}
