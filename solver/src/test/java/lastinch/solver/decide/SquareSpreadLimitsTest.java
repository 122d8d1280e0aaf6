package lastinch.solver.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Pours over squares a little finer and coarser: a fixed list, the first pour among them. */
class SquareSpreadLimitsTest {
  private static final double SQUARE = 5e-3;
  private static final PourCase JOB = SampleJob.featherInSand(12.0).build();

  private static SquareSpread spread(int threads) {
    PourResult first = Pourer.overPlane(SQUARE).of(JOB, () -> false);
    Pourer unasked =
        (job, stop) -> {
          throw new AssertionError("asked for a glance");
        };
    try (Studies studies = new Studies(unasked, threads, Studies.Watch.NONE, () -> false)) {
      return SquareSpread.around(JOB, SQUARE, first, Pourer::overPlane, studies).orElseThrow();
    }
  }

  @Test
  void theSameSquaresAndAnswersWhateverTheThreads() {
    SquareSpread spread = spread(1);
    assertThat(spread(3)).isEqualTo(spread);
    assertThat(spread.runs()).hasSize(SquareSpread.more() + 1);
    List<Double> squares = spread.runs().stream().map(SquareSpread.Run::square).toList();
    assertThat(squares).isSorted().contains(SQUARE);
    assertThat(spread.unfilled().low()).isLessThanOrEqualTo(spread.unfilled().high());
  }

  @Test
  void someThatFillAndSomeThatStopAreDivided() {
    SquareSpread.Run fills = new SquareSpread.Run(2e-3, true, 0.32, 0.0);
    SquareSpread.Run stops = new SquareSpread.Run(2.1e-3, false, 0.27, 0.05);
    SquareSpread.Run further = new SquareSpread.Run(2.2e-3, false, 0.29, 0.04);
    SquareSpread both = new SquareSpread(List.of(fills, stops, further));
    assertThat(both.isDivided()).isTrue();
    assertThat(both.reach()).isEqualTo(new SquareSpread.Ends(0.27, 0.29));
    assertThat(both.unfilled()).isEqualTo(new SquareSpread.Ends(0.0, 0.05));
    assertThat(new SquareSpread(List.of(fills)).isDivided()).isFalse();
    assertThat(new SquareSpread(List.of(stops, further)).isDivided()).isFalse();
  }
}
