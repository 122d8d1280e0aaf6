package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.EdgeAtStation;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import org.junit.jupiter.api.Test;

/**
 * Rims at their limits: as thick as the middle, thinner by a known ratio, too thin for the push.
 */
class RimLimitsTest {
  private static final double SPEED = 0.5;
  private static final double THICK = 3e-3;

  private static PourResult pour(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }

  /** A strip over a mould that stays at its heat, entered at a held speed. */
  private static SampleJob strip(double length, double width, double edge) {
    return SampleJob.empty()
        .station(0.0, width, THICK, edge)
        .station(length, width, THICK, edge)
        .medium(SampleFoundry.roundMould(1000.0))
        .mouldAt(500.0 + SampleJob.ZERO)
        .checking(SampleJob.Options.bare().mouldStays().entersAt(SPEED));
  }

  @Test
  void rimAsThickAsTheMiddleIsNone() {
    PourResult result = pour(strip(3.0, 0.03, THICK));
    assertThat(result.edges()).isEmpty();
    assertThat(result.edgeAtStations()).isEmpty();
  }

  @Test
  void halfTheSectionThatIsAllButAsThickCoolsAsTheMiddleDoes() {
    // 8 mm wide: the two strips are the whole section, with the same wall for the same metal
    PourResult result = pour(strip(0.9, 8e-3, THICK * (1.0 - 1e-6)));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(states(result)).containsExactly(EdgeStretch.State.FULL);
    int last = result.passages().get(0).size() - 1;
    // 0.3 K of 150: both follow the mark's own midpoint rule, in steps of different length
    assertThat(result.edgeAtStations().get(1).temperature())
        .isCloseTo(result.passages().get(0).arrivalTemperature(last), within(0.3));
  }

  @Test
  void thinnerRimStopsEarlierByTheRatioOfItsModulus() {
    double width = 0.04;
    double edge = 2e-3;
    PourResult result = pour(strip(3.0, width, edge));
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    double middle = width * THICK / (2.0 * (width + THICK));
    double breadth = 4e-3;
    double rim = breadth * edge / (2.0 * breadth + edge);
    double first = 0.5 * result.passages().get(0).length() / result.passages().get(0).size();
    double expected = first + (result.reach() - first) * rim / middle;
    EdgeStretch full = result.edges().get(0);
    assertThat(full.state()).isEqualTo(EdgeStretch.State.FULL);
    assertThat(result.edges().get(1).cause()).isEqualTo(EdgeStretch.Cause.HEAT);
    // 0.3 %: a tenth of what leaving out the face at the rim's end would do
    assertThat(full.to()).isCloseTo(expected, withinPercentage(0.3));
    // a rim that has no end face, and one that is the middle: plainly wrong models
    double endless = first + (result.reach() - first) * 0.5 * edge / middle;
    assertThat(full.to()).isNotCloseTo(endless, withinPercentage(3.0));
    assertThat(full.to()).isNotCloseTo(result.reach(), withinPercentage(3.0));
  }

  @Test
  void rimTakesNoMetalWhereItIsThinnerThanThePushCanEnter() {
    double head = 0.05;
    double tension = 1.2;
    double thinnest = 2.0 * tension / (8000.0 * 9.80665 * head);
    double length = 0.2;
    SampleJob job =
        SampleJob.empty()
            .station(0.0, 0.03, 8e-3, 2.0 * thinnest)
            .station(length, 0.03, 8e-3, 0.5 * thinnest)
            .alloy(SampleFoundry.neverFreezes())
            .medium(SampleFoundry.roundMould(1000.0))
            .vent(length, 0.01)
            .checking(SampleJob.Options.bare().pushesBack().cupKeptAt(head));
    PourResult result = pour(job);
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(states(result)).containsExactly(EdgeStretch.State.FULL, EdgeStretch.State.ROUNDED);
    assertThat(result.edges().get(1).cause()).isEqualTo(EdgeStretch.Cause.PUSH);
    double cell = length / result.passages().get(0).size();
    // the rim thins straight from 2 to 0.5: it crosses 1 at two thirds of the way, by cells
    assertThat(result.edges().get(1).from()).isCloseTo(length * 2.0 / 3.0, within(cell));
    // half the tension, a plainly wrong law, would put it beyond the end
    assertThat(result.edges().get(1).from()).isLessThan(0.9 * length);
    EdgeAtStation root = result.edgeAtStations().get(0);
    assertThat(root.needed()).isCloseTo(2.0 * tension / (2.0 * thinnest), withinPercentage(0.01));
    assertThat(root.push()).isCloseTo(8000.0 * 9.80665 * head, withinPercentage(0.5));
  }

  @Test
  void rimNeverFeedsBackOnTheFlow() {
    PourCase thin = feather(0.3).build();
    PourCase none = feather(1.0).build();
    PourResult a = DryPour.run(thin, RunObserver.NONE, () -> false);
    PourResult b = DryPour.run(none, RunObserver.NONE, () -> false);
    assertThat(a.edges()).isNotEqualTo(b.edges());
    assertThat(a.reach()).isEqualTo(b.reach());
    assertThat(a.outcome()).isEqualTo(b.outcome());
    assertThat(a.ledger()).isEqualTo(b.ledger());
    assertThat(a.accounts()).isEqualTo(b.accounts());
  }

  private static SampleJob feather(double edgeShare) {
    SampleJob job = SampleJob.empty();
    double[] at = {0.0, 0.16, 0.32};
    double[] thick = {6e-3, 3.6e-3, 1.2e-3};
    for (int i = 0; i < at.length; i++) {
      job.station(at[i], 0.03, thick[i], edgeShare * thick[i]);
    }
    return job.boss(0.04, 0.022, 0.018)
        .alloy(SampleFoundry.tinBronze())
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .runner(0.06, 0.015, 0.012)
        .gateIntoBoss(0.02, 0.003, 0.015)
        .vent(0.315, 0.003)
        .melted(1.4)
        .waits(40.0, 15.0)
        .empties(5.0);
  }

  @Test
  void hotterMetalLeavesLessOfTheRimRounded() {
    double cold = roundedLength(pour(SampleJob.featherInSand(3.0)));
    double hot = roundedLength(pour(SampleJob.featherInSand(3.0).reads(1250.0 + SampleJob.ZERO)));
    assertThat(cold).isPositive();
    assertThat(hot).isLessThan(cold);
  }

  private static double roundedLength(PourResult result) {
    return result.edges().stream()
        .filter(e -> e.state() != EdgeStretch.State.FULL)
        .mapToDouble(e -> e.to() - e.from())
        .sum();
  }

  @Test
  void stretchesFollowEachOtherFromOneEndToTheOther() {
    for (double seconds : new double[] {2.0, 4.0, 6.0, 9.0}) {
      PourResult result = pour(SampleJob.featherInSand(seconds));
      List<EdgeStretch> edges = result.edges();
      assertThat(edges.get(0).from()).isZero();
      assertThat(edges.get(edges.size() - 1).to()).isEqualTo(0.32);
      for (int i = 1; i < edges.size(); i++) {
        assertThat(edges.get(i).from()).isEqualTo(edges.get(i - 1).to());
        assertThat(edges.get(i).from()).isLessThan(edges.get(i).to());
      }
      boolean stops = result.outcome() instanceof Outcome.Misrun;
      assertThat(states(result).contains(EdgeStretch.State.EMPTY)).isEqualTo(stops);
      if (stops) {
        // the rim ends where the middle does, to a cell
        assertThat(edges.get(edges.size() - 1).from()).isCloseTo(result.reach(), within(4e-3));
      }
    }
  }

  private static List<EdgeStretch.State> states(PourResult result) {
    return result.edges().stream().map(EdgeStretch::state).toList();
  }
}
