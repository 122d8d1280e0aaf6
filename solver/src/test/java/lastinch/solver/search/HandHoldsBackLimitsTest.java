package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.Lever;
import lastinch.solver.result.FlowLimit;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Goal;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import org.junit.jupiter.api.Test;

/**
 * While the hand holds the pour back, more section and more height do nothing; a faster hand does.
 */
class HandHoldsBackLimitsTest {
  @Test
  void thickerAndTallerDoNotFillWhileTheHandHoldsBackAndAFasterHandDoes() {
    PourCase job = SampleJob.featherInSand(13.0).build();
    List<Lever> levers =
        List.of(
            InventedPours.lever(job, "sprueTall"),
            InventedPours.lever(job, "thinnest"),
            InventedPours.lever(job, "gateThick"),
            InventedPours.lever(job, "emptiesIn"));
    try (RunCache studies = InventedPours.studies(Pourer.DRY)) {
      SmallestChange least = SmallestChange.of(studies, job, levers, Goal.heat(0.2));
      assertThat(least.base().filled()).isFalse();
      assertThat(least.base().limitedBy()).isEqualTo(FlowLimit.HAND);
      assertThat(answer(least, "sprueTall").tried())
          .filteredOn(t -> t.value() > 0.12)
          .isNotEmpty()
          .allMatch(t -> t.glance().goodness() < least.base().goodness() + 0.01);
      assertThat(kind(least, "thinnest")).isNotEqualTo(LeverAnswer.Kind.ENOUGH);
      assertThat(kind(least, "gateThick")).isNotEqualTo(LeverAnswer.Kind.ENOUGH);
      assertThat(kind(least, "emptiesIn")).isEqualTo(LeverAnswer.Kind.ENOUGH);
      assertThat(least.pick().orElseThrow().answer().orElseThrow().lever().key())
          .isEqualTo("emptiesIn");
    }
  }

  private static LeverAnswer.Kind kind(SmallestChange least, String key) {
    return answer(least, key).kind();
  }

  private static LeverAnswer answer(SmallestChange least, String key) {
    return least.answers().stream()
        .filter(a -> a.lever().key().equals(key))
        .findFirst()
        .orElseThrow();
  }
}
