package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MetalTable;
import lastinch.solver.uncertainty.UncertainInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of every metal in every mould can be drawn to both ends of its range. */
class EveryBandLimitsTest {
  @TempDir Path folder;

  static Stream<Arguments> everyMetalInEveryMould() {
    List<String> media = Catalogue.builtIn().mediumNames();
    return Bench.MATERIALS.alloyNames().stream()
        .flatMap(a -> media.stream().map(m -> Arguments.of(a, m)));
  }

  private PourCase job(String alloy, String medium) {
    String text =
        Bench.flat()
            .replace("alloy: tin bronze", "alloy: " + alloy)
            .replace("reads: 1150 degC +- 15 degC", "reads: don't know");
    PourCase job = ((ReadResult.Sound) new Bench(folder).read(text)).plan().pourCase();
    return job.withMould(
        job.mould()
            .withMedium(
                Bench.MATERIALS.medium(medium, Materials.Make.NOT_SAID, alloy).orElseThrow()));
  }

  @ParameterizedTest
  @MethodSource("everyMetalInEveryMould")
  void everyOpenFigureReachesBothEnds(String alloy, String medium) {
    PourCase job = job(alloy, medium);
    List<UncertainInput> open = UncertainInput.openIn(job);
    assertThat(open)
        .contains(UncertainInput.READING, UncertainInput.CONTACT_LIQUID, UncertainInput.FLOW_STOP);
    for (UncertainInput unknown : open) {
      for (boolean up : List.of(true, false)) {
        PourCase moved = unknown.set(job, unknown.towards(job, up, 1.0));
        FreezingCurve curve = moved.metal().alloy().freezing();
        assertThat(curve.endOfFreezing()).isLessThanOrEqualTo(curve.liquidus());
        MetalTable table = MetalTable.of(moved.metal().alloy(), false, 280.0, 2000.0);
        assertThat(table.solid(table.enthalpy(curve.liquidus() + 1.0))).isZero();
        assertThat(table.solid(table.enthalpy(curve.endOfFreezing() - 1.0))).isEqualTo(1.0);
      }
    }
  }

  @Test
  void startAndEndOfAStraightLineMoveTogether() {
    PourCase job = job("yellow brass", "green sand");
    double low = UncertainInput.START_OF_FREEZING.towards(job, false, 1.0);
    FreezingCurve moved = UncertainInput.START_OF_FREEZING.set(job, low).metal().alloy().freezing();
    FreezingCurve best = job.metal().alloy().freezing();
    assertThat(low).isLessThan(best.endOfFreezing());
    // 1e-9 K: rounding alone
    assertThat(moved.liquidus() - moved.endOfFreezing())
        .isCloseTo(best.liquidus() - best.endOfFreezing(), within(1e-9));
  }

  @Test
  void anArrestGivesWayToAStartBelowItAndAPureMetalToOneAboveIt() {
    FreezingCurve scheil = new FreezingCurve.Scheil(1200.0, 1050.0, 1350.0, 4.0, 0.3, 0.4);
    assertThat(scheil.startingAt(1040.0).endOfFreezing()).isEqualTo(1040.0);
    assertThat(scheil.startingAt(1360.0).liquidus()).isEqualTo(1360.0);
    FreezingCurve lever = new FreezingCurve.Lever(1200.0, 1050.0, 1350.0, 0.4);
    assertThat(lever.startingAt(1040.0).endOfFreezing()).isEqualTo(1040.0);
    assertThat(lever.startingAt(1360.0).liquidus()).isEqualTo(1360.0);
  }
}
