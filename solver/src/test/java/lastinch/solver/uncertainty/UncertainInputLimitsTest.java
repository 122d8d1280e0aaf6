package lastinch.solver.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The list of what nobody knows is complete, and setting one figure leaves the others alone. */
class UncertainInputLimitsTest {
  /** Figures with a band that filling does not ask for, or that only warn. */
  private static final Set<String> NOT_ASKED =
      Set.of(
          "densitySolid",
          "shrinkage",
          "pourTemperature",
          "ceiling",
          "ventDischarge",
          "airConvection",
          "glow");

  @Test
  void everyBandOfEveryKindOfJobIsOnTheListOrNotAskedFor() throws ReflectiveOperationException {
    PourCase bySeconds = BandedJob.allOpen();
    PourCase byRate = bySeconds.withPour(new Pour.AtRate(band(0.4, 0.31, 0.47)));
    PourCase byCup = bySeconds.withPour(new Pour.CupFull(band(3.0, 2.1, 3.7)));
    for (PourCase job : List.of(bySeconds, byRate, byCup)) {
      List<Band> listed = new ArrayList<>();
      for (UncertainInput unknown : UncertainInput.values()) {
        unknown.band(job).ifPresent(listed::add);
      }
      List<String> missed = new ArrayList<>();
      collect(job, "job", listed, missed);
      assertThat(missed).isEmpty();
    }
  }

  @Test
  void bandThatTheListForgetsWouldBeNoticed() throws ReflectiveOperationException {
    List<String> missed = new ArrayList<>();
    collect(BandedJob.allOpen(), "job", List.of(), missed);
    assertThat(missed).hasSizeGreaterThan(20).contains("reading", "contactLiquid", "out");
  }

  private static void collect(Object from, String name, List<Band> listed, List<String> missed)
      throws ReflectiveOperationException {
    if (from instanceof Band band) {
      boolean found =
          listed.stream().anyMatch(l -> l.value() == band.value() && l.high() == band.high());
      if (!found && !NOT_ASKED.contains(name)) {
        missed.add(name);
      }
    } else if (from instanceof Optional<?> optional) {
      if (optional.isPresent()) {
        collect(optional.get(), name, listed, missed);
      }
    } else if (from instanceof Collection<?> many) {
      for (Object each : many) {
        collect(each, name, listed, missed);
      }
    } else if (from.getClass().isRecord() && from.getClass().getName().startsWith("lastinch")) {
      for (RecordComponent part : from.getClass().getRecordComponents()) {
        collect(part.getAccessor().invoke(from), part.getName(), listed, missed);
      }
    }
  }

  private static Band band(double best, double low, double high) {
    return new Band(best, low, high, BandedJob.allOpen().metal().reading().source());
  }

  @ParameterizedTest
  @EnumSource(UncertainInput.class)
  void settingOneFigureLeavesTheOthersAlone(UncertainInput unknown) {
    PourCase job = BandedJob.allOpen();
    if (unknown == UncertainInput.POUR_RATE) {
      job = job.withPour(new Pour.AtRate(band(0.4, 0.31, 0.47)));
    }
    double wanted = unknown.towards(job, true, 1.0);
    PourCase moved = unknown.set(job, wanted);
    assertThat(unknown.band(moved).orElseThrow().value()).isEqualTo(wanted);
    for (UncertainInput other : EnumSet.complementOf(EnumSet.of(unknown))) {
      assertThat(other.band(moved)).as(other.name()).isEqualTo(other.band(job));
    }
    double best = unknown.band(job).orElseThrow().value();
    assertThat(unknown.band(unknown.set(moved, best)).orElseThrow().value()).isEqualTo(best);
  }

  @Test
  void jobWithoutFlaskOrShellHasNoFiguresOfThem() {
    PourCase job = BandedJob.exact(6.0);
    assertThat(UncertainInput.OUT_OF_KILN.band(job)).isEmpty();
    assertThat(UncertainInput.SHELL_WALL.band(job)).isEmpty();
    assertThat(UncertainInput.POUR_RATE.band(job)).isEmpty();
    assertThat(UncertainInput.openIn(job)).isEmpty();
    assertThatThrownBy(() -> UncertainInput.OUT_OF_KILN.set(job, 30.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("OUT_OF_KILN");
  }

  @Test
  void bandIsCutWhereItWouldReachWhatCannotBe() {
    PourCase job = BandedJob.with(BandedJob.exact(6.0), UncertainInput.POUR_SECONDS, -0.5, 2.5);
    Band cut = UncertainInput.POUR_SECONDS.band(job).orElseThrow();
    assertThat(cut.low()).isPositive();
    assertThat(cut.high()).isEqualTo(15.0);
  }

  @Test
  void wideBandIsHalvedOnTheScaleOfItsLogarithmAndNarrowOneEvenly() {
    PourCase wide = BandedJob.with(BandedJob.exact(6.0), UncertainInput.CONTACT_LIQUID, 0.5, 2.0);
    double best = UncertainInput.CONTACT_LIQUID.band(wide).orElseThrow().value();
    // rounding of exp and log only
    assertThat(UncertainInput.CONTACT_LIQUID.towards(wide, true, 0.5) / best)
        .isCloseTo(Math.sqrt(2.0), within(1e-12));
    assertThat(UncertainInput.CONTACT_LIQUID.towards(wide, false, 0.5) / best)
        .isCloseTo(Math.sqrt(0.5), within(1e-12));
    PourCase narrow = BandedJob.with(BandedJob.exact(6.0), UncertainInput.CONTACT_LIQUID, 0.8, 1.4);
    assertThat(UncertainInput.CONTACT_LIQUID.towards(narrow, true, 0.5) / best)
        .isCloseTo(1.2, within(1e-12));
  }
}
