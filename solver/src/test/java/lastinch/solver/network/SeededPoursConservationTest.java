package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import lastinch.solver.casting.Orientation;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.result.ConservationFigures;
import lastinch.solver.result.Outcome;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SeededJobs;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Books of a fixed set of jobs of every attitude, mould, section and pour: nothing is lost, nothing
 * breaks, nothing speeds up out of nothing.
 */
class SeededPoursConservationTest {
  static IntStream numbers() {
    return IntStream.range(0, 75);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void booksClose(int number) {
    SeededPour pour = SeededPour.number(number);
    assertThat(pour.ended()).as("%s: %s", SeededJobs.words(number), pour.result.outcome()).isTrue();
    booksClose(pour, SeededJobs.words(number));
    // 0.1 % of the energy brought in; energy made of nothing at an event shows as 1 % and more
    assertThat(pour.result.accounts().workError()).as(SeededJobs.words(number)).isLessThan(1e-3);
    assertThat(pour.run.hydraulics.unsettled()).as("flows that did not settle").isZero();
  }

  @Test
  void setHoldsPoursThatFillAndPoursThatDoNot() {
    long filled = 0;
    for (int number = 0; number < 75; number++) {
      filled += SeededPour.number(number).result.outcome() instanceof Outcome.Filled ? 1 : 0;
    }
    assertThat(filled).isBetween(75L / 10, 75L - 75L / 5);
  }

  @Test
  @Tag("nightly")
  void booksCloseOverAThousandJobs() {
    int rough = 0;
    for (int number = 75; number < 1000; number++) {
      SeededPour pour = SeededPour.number(number);
      assertThat(pour.ended()).as(SeededJobs.words(number)).isTrue();
      booksClose(pour, SeededJobs.words(number));
      rough += pour.result.accounts().workError() > 1e-3 ? 1 : 0;
    }
    // falls that fill a channel from both sides at once may be off by more
    assertThat(rough).isLessThan(15);
  }

  private static void booksClose(SeededPour pour, String words) {
    ConservationFigures accounts = pour.result.accounts();
    assertThat(Math.abs(accounts.metalError())).as("metal, %s", words).isLessThan(1e-10);
    assertThat(Math.abs(accounts.heatError())).as("heat, %s", words).isLessThan(1e-6);
    assertThat(Math.abs(accounts.airError())).as("air, %s", words).isLessThan(1e-10);
    // a flow that left a spike would exceed what any section can have by tens
    assertThat(pour.speedOverBound()).as("speed, %s", words).isLessThan(1.1);
    assertThat(pour.result.filledFraction()).isBetween(0.0, 1.0);
    assertThat(accounts.poured() + accounts.left())
        .isCloseTo(pour.run.job.metal().melted(), org.assertj.core.api.Assertions.within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void noSpeedOutdoesAFallWhereTheSectionIsTheSameThroughout(int number) {
    Orientation[] stands = {
      Orientation.FLAT,
      Orientation.tilted(0.2),
      Orientation.tilted(-0.2),
      Orientation.UPRIGHT_TIP_UP,
      Orientation.UPRIGHT_TIP_DOWN
    };
    double across = 0.012;
    double side = Math.sqrt(Math.PI / 4.0) * across;
    SampleJob job =
        SampleJob.strip(0.1 + 0.005 * number, side, side)
            .section(SectionForm.FLAT)
            .attitude(stands[number % 5])
            .medium(SampleFoundry.sand())
            .mouldAt(293.15)
            .crack(1e-4)
            .cup(0.05, 0.04)
            .sprue(0.05 + 0.004 * number, across, across)
            .runner(0.05, side, side)
            .gateAt(number % 2 == 0 ? Side.THICK_END : Side.TIP, side, side, 0.01)
            .alloy(SampleFoundry.tinBronze())
            .melted(1.5)
            .empties(1.0 + 0.05 * number);
    SeededPour pour = SeededPour.of(job);
    assertThat(pour.ended()).isTrue();
    assertThat(pour.speedOverBound()).isLessThan(1.1);
  }
}
