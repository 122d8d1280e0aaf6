package lastinch.solver.network.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.Checking.StartsWet;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.network.layout.NetworkScope;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Metal in place at the start is part of the pour: it shortens the way and stands in the books. */
class MetalInPlaceExactSolutionTest {
  private static final double LENGTH = 0.4;
  private static final double SPEED = 0.5;

  private static PourCase plate(StartsWet... metal) {
    return SampleJob.plate(LENGTH, 0.003)
        .checking(
            SampleJob.Options.bare()
                .water()
                .friction(0.0)
                .entersAt(SPEED)
                .startsWet(List.of(metal)))
        .build();
  }

  private static PourResult pour(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  @Test
  void whatIsInPlaceShortensTheTimeByItsLength() {
    PourResult result = pour(plate(new StartsWet("piece", 0.0, 0.1, SPEED)));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    // one step of the flow, 5 ms at most; the 0.2 s of metal in place are forty of them
    assertThat(result.outcome().time()).isCloseTo((LENGTH - 0.1) / SPEED, within(5e-3));
    assertThat(pour(plate()).outcome().time()).isCloseTo(LENGTH / SPEED, within(5e-3));
  }

  @Test
  void metalInPlaceStandsInTheBooks() {
    PourResult result = pour(plate(new StartsWet("piece", 0.0, 0.1, SPEED)));
    PourResult dry = pour(plate());
    // rounding of a sum over some hundred steps
    assertThat(Math.abs(result.accounts().metalError())).isLessThan(1e-10);
    assertThat(result.accounts().poured())
        .isCloseTo(dry.accounts().poured(), within(1e-6 * dry.accounts().poured()));
  }

  @Test
  void metalAtTheFarEndMeetsTheStream() {
    PourResult result = pour(plate(new StartsWet("piece", 0.3, LENGTH, 0.0)));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    // as above
    assertThat(result.outcome().time()).isCloseTo(0.3 / SPEED, within(5e-3));
  }

  @Test
  void aStretchThatHangsAtNoEndIsNotTaken() {
    assertThat(NetworkScope.missing(plate(new StartsWet("piece", 0.1, 0.2, 0.0))))
        .containsExactly(Need.STARTS_WET);
    assertThat(NetworkScope.missing(plate(new StartsWet("no such channel", 0.0, 0.2, 0.0))))
        .containsExactly(Need.STARTS_WET);
    assertThat(NetworkScope.missing(plate(new StartsWet("piece", 0.0, 0.2, 0.0)))).isEmpty();
    assertThat(plate(new StartsWet("piece", 0.0, 0.2, 0.0)).checking()).isNotEqualTo(Checking.NONE);
  }
}
