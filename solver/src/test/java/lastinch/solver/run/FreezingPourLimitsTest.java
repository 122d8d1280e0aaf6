package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.material.Alloy;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.result.StopReason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Freezing at the ends of what it can do: all skin, all slush, none; and which way levers work. */
class FreezingPourLimitsTest {
  private static final double DIAMETER = 3e-3;

  @Test
  void pureMetalThatFreezesAsSkinClosesByTheInletWithALiquidTip() {
    PourResult result = DryPour.run(tube(0.0).build(), RunObserver.NONE, () -> false);
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    Stop stop = result.stops().get(0);
    assertThat(stop.reason()).isEqualTo(StopReason.FROZE_UPSTREAM);
    assertThat(stop.closedAt().orElseThrow().at()).isLessThan(3.0 * DIAMETER);
    assertThat(stop.temperature()).isCloseTo(1000.0 + SampleJob.ZERO, within(1e-6));
    assertThat(stop.solidFraction()).isZero();
    assertThat(result.reach()).isGreaterThan(100.0 * DIAMETER);
  }

  @Test
  void metalThatFreezesAsSlushStopsAtTheTip() {
    PourResult result = DryPour.run(tube(1.0).build(), RunObserver.NONE, () -> false);
    Stop stop = result.stops().get(0);
    assertThat(stop.reason()).isEqualTo(StopReason.SLUSH);
    assertThat(stop.closedAt()).isEmpty();
    assertThat(stop.solidFraction()).isCloseTo(0.9, within(0.02));
  }

  @Test
  void skinAndSlushDoNotReachEquallyFar() {
    double skin = DryPour.run(tube(0.0).build(), RunObserver.NONE, () -> false).reach();
    double slush = DryPour.run(tube(1.0).build(), RunObserver.NONE, () -> false).reach();
    assertThat(skin).isGreaterThan(1.1 * slush);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1000.0, 1050.0})
  void metalNeverFreezesInAMouldAboveItsLiquidus(double mould) {
    PourResult result =
        poured(strip(1.0, 0.8e-3).mouldAt(mould + SampleJob.ZERO).reads(1150.0 + SampleJob.ZERO));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(poured(strip(1.0, 0.8e-3)).outcome()).isInstanceOf(Outcome.Misrun.class);
  }

  @Test
  void contactAcrossAGapDoesNotMatterWhileNoSkinFreesItself() {
    PourResult wide = poured(SampleJob.featherInSand(7.0).checking(whole()));
    PourResult narrow =
        poured(
            SampleJob.featherInSand(7.0)
                .checking(whole())
                .medium(SampleFoundry.sand(1200.0, 10.0)));
    assertThat(wide.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(wide.findings()).noneMatch(f -> f.kind() == Finding.Kind.GAP_COUNTS);
    assertThat(narrow.reach()).isEqualTo(wide.reach());
    assertThat(narrow.outcome().time()).isEqualTo(wide.outcome().time());
  }

  @Test
  void contactWithLiquidMatters() {
    PourResult usual = poured(SampleJob.featherInSand(12.0));
    PourResult better =
        poured(SampleJob.featherInSand(12.0).medium(SampleFoundry.sand(1300.0, 85.0)));
    assertThat(better.reach()).isLessThan(0.97 * usual.reach());
  }

  @Test
  void hotterMetalNeverRunsShorter() {
    assertThat(reaches(t -> strip(3.0, 2e-3).reads(t), 1340.0, 1370.0, 1400.0, 1430.0, 1460.0))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  @Test
  void hotterMouldNeverRunsShorter() {
    assertThat(reaches(t -> strip(3.0, 2e-3).mouldAt(t), 293.0, 400.0, 500.0, 600.0, 700.0))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  @Test
  void moreHeadNeverRunsShorter() {
    assertThat(
            reaches(
                h -> strip(3.0, 2e-3).checking(SampleJob.Options.ordinary().cupKeptAt(h)),
                0.08,
                0.12,
                0.16,
                0.24))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  private static List<Double> reaches(
      java.util.function.DoubleFunction<SampleJob> job, double... levers) {
    return DoubleStream.of(levers).mapToObj(x -> poured(job.apply(x)).reach()).toList();
  }

  /** Whole sections, whose rims do not free themselves before the middle stops. */
  private static SampleJob.Options whole() {
    return SampleJob.Options.ordinary().wholeSections();
  }

  /** A round channel under constant head, poured half a degree above freezing. */
  private static SampleJob tube(double mush) {
    Alloy metal = SampleFoundry.pureMetal();
    return SampleJob.strip(4.0, DIAMETER, DIAMETER)
        .section(SectionForm.ROUND)
        .alloy(metal)
        .reads(metal.liquidus() + 0.5)
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .checking(SampleJob.Options.bare().mush(mush).cupKeptAt(0.3).cell(DIAMETER));
  }

  private static SampleJob strip(double length, double thickness) {
    return SampleJob.strip(length, 0.02, thickness)
        .alloy(SampleFoundry.tinBronze())
        .reads(1120.0 + SampleJob.ZERO)
        .medium(SampleFoundry.sand())
        .mouldAt(293.15)
        .crack(1e-4)
        .vent(length, 4e-3)
        .checking(SampleJob.Options.ordinary().cupKeptAt(0.3));
  }

  private static PourResult poured(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }
}
