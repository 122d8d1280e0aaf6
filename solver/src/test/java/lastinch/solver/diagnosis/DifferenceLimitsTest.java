package lastinch.solver.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import lastinch.solver.casting.PourCase;
import lastinch.solver.run.SampleJob;
import lastinch.solver.search.InventedPours;
import lastinch.solver.study.RunCache;
import org.junit.jupiter.api.Test;

/** What made the difference, where it is known: one part, two only together, none. */
class DifferenceLimitsTest {
  private static final PourCase SLOW = SampleJob.featherInSand(6.0).build();

  @Test
  void thePartThatTurnsItIsNamedFirst() {
    PourCase brisk = SampleJob.featherInSand(2.8).mouldAt(300.0).build();
    Difference d =
        between(j -> 0.1 * (5.0 - InventedPours.seconds(j)) + 1e-4 * heat(j), SLOW, brisk);
    assertThat(d.kind()).isEqualTo(Difference.Kind.ONE_PART);
    assertThat(d.swaps().get(0).key()).isEqualTo("pour");
    assertThat(d.swaps()).extracting(Difference.Swap::key).containsExactly("pour", "mouldHeat");
    // the gain is that of the pour alone: 0.32, and the step of 1 from stopping to filling
    assertThat(d.gain(d.swaps().get(0))).isCloseTo(1.0 + 0.32, within(1e-9));
  }

  @Test
  void twoPartsThatOnlyWorkTogetherAreSaidTo() {
    PourCase other = SampleJob.featherInSand(2.8).sprue(0.2, 0.02, 0.02).build();
    Difference d =
        between(j -> InventedPours.seconds(j) < 5.0 && tall(j) > 0.15 ? 0.4 : -0.4, SLOW, other);
    assertThat(d.kind()).isEqualTo(Difference.Kind.TOGETHER);
    assertThat(d.swaps()).extracting(Difference.Swap::key).contains("pour", "sprue");
  }

  @Test
  void whenEachOfTwoPartsWouldDoItAloneThatIsSaid() {
    PourCase other = SampleJob.featherInSand(2.8).sprue(0.2, 0.02, 0.02).build();
    Difference d =
        between(j -> InventedPours.seconds(j) < 5.0 || tall(j) > 0.15 ? 0.4 : -0.4, SLOW, other);
    assertThat(d.kind()).isEqualTo(Difference.Kind.ANY_PART);
  }

  @Test
  void plansThatEndAlikeHaveNoDifference() {
    PourCase other = SampleJob.featherInSand(2.8).build();
    assertThat(between(j -> 0.3, SLOW, other).kind()).isEqualTo(Difference.Kind.ALIKE);
  }

  @Test
  void theSamePlanTwiceDiffersInNothing() {
    Difference d = between(j -> -0.2, SLOW, SampleJob.featherInSand(6.0).build());
    assertThat(d.kind()).isEqualTo(Difference.Kind.ALIKE);
    assertThat(d.swaps()).extracting(Difference.Swap::key).doesNotContain("pour", "gates");
  }

  @Test
  void aLargerMeltIsPouredNoFasterWhenItIsSwapped() {
    PourCase big = SampleJob.featherInSand(6.0).melted(2.2).build();
    Difference d = between(j -> j.pour().rate(j.metal().melted(), 1.0) - 0.3, SLOW, big);
    Difference.Swap pour = d.swaps().get(0);
    assertThat(pour.key()).isEqualTo("pour");
    // 2.2 kg in 6 s is 0.367 kg/s, the rate the swap must have, whatever is melted
    assertThat(pour.taken().signed()).isCloseTo(2.2 / 6.0 - 0.3, within(1e-9));
  }

  private static Difference between(ToDoubleFunction<PourCase> law, PourCase a, PourCase b) {
    try (RunCache studies = InventedPours.studies(InventedPours.by(law))) {
      return Difference.between(studies, a, b);
    }
  }

  private static double heat(PourCase job) {
    return job.mould().temperature().value();
  }

  private static double tall(PourCase job) {
    return job.gating().sprue().tall();
  }
}
