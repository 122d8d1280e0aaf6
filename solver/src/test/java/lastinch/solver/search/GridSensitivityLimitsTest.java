package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Pourer;
import lastinch.solver.study.RunCache;
import org.junit.jupiter.api.Test;

/** Pours over squares a little finer and coarser: a fixed list, the first pour among them. */
class GridSensitivityLimitsTest {
  private static final double SQUARE = 5e-3;
  private static final PourCase JOB = SampleJob.featherInSand(12.0).build();

  private static GridSensitivity spread(int threads) {
    PourResult first = Pourer.overPlane(SQUARE).of(JOB, () -> false);
    Pourer unasked =
        (job, stop) -> {
          throw new AssertionError("asked for a glance");
        };
    try (RunCache studies = new RunCache(unasked, threads, RunCache.Watch.NONE, () -> false)) {
      return GridSensitivity.around(JOB, SQUARE, first, Pourer::overPlane, studies).orElseThrow();
    }
  }

  @Test
  void theSameSquaresAndAnswersWhateverTheThreads() {
    GridSensitivity spread = spread(1);
    assertThat(spread(3)).isEqualTo(spread);
    assertThat(spread.runs()).hasSize(GridSensitivity.more() + 1);
    List<Double> squares = spread.runs().stream().map(GridSensitivity.Run::square).toList();
    assertThat(squares).isSorted().contains(SQUARE);
    assertThat(spread.unfilled().low()).isLessThanOrEqualTo(spread.unfilled().high());
  }

  @Test
  void someThatFillAndSomeThatStopAreDivided() {
    GridSensitivity.Run fills = new GridSensitivity.Run(2e-3, true, 0.32, 0.0);
    GridSensitivity.Run stops = new GridSensitivity.Run(2.1e-3, false, 0.27, 0.05);
    GridSensitivity.Run further = new GridSensitivity.Run(2.2e-3, false, 0.29, 0.04);
    GridSensitivity both = new GridSensitivity(List.of(fills, stops, further));
    assertThat(both.isDivided()).isTrue();
    assertThat(both.reach()).isEqualTo(new GridSensitivity.Ends(0.27, 0.29));
    assertThat(both.unfilled()).isEqualTo(new GridSensitivity.Ends(0.0, 0.05));
    assertThat(new GridSensitivity(List.of(fills)).isDivided()).isFalse();
    assertThat(new GridSensitivity(List.of(stops, further)).isDivided()).isFalse();
  }
}
