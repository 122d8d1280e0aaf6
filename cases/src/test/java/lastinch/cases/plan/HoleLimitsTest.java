package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Gap;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Stop;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A strip with a gate at each end, poured too slowly: two fronts stop before they meet. */
class HoleLimitsTest {
  private static final double LENGTH = 0.240;

  @TempDir private Path folder;

  private PourResult poured(double seconds) throws IOException {
    Path file = folder.resolve("hole.yaml");
    Files.writeString(
        file,
        Bench.demo("teaching/cold-shut.yaml")
            .replaceAll("crucible empties in: .*", "crucible empties in: " + seconds + " s"));
    PourCase job = Bench.plan(CaseReader.read(file, Bench.MATERIALS)).pourCase();
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  @Test
  void whatTwoFrontsLeaveEmptyIsOneHole() throws IOException {
    PourResult result = poured(9.0);
    assertThat(result.stops()).extracting(Stop::way).containsExactly(Stop.Way.UP, Stop.Way.DOWN);
    List<Gap> gaps = result.gaps();
    assertThat(gaps).hasSize(1);
    assertThat(gaps.get(0).hole()).isTrue();
    assertThat(result.reach()).isEqualTo(gaps.get(0).from());
    // nothing else is empty; the strip is equally thick and wide throughout
    assertThat(gaps.get(0).length() / LENGTH)
        .isCloseTo(1.0 - result.filledFraction(), within(1e-9));
    assertThat(result.stops().get(0).missing()).isCloseTo(gaps.get(0).length(), within(1e-12));
    assertThat(result.margin().distance().orElseThrow())
        .isCloseTo(-gaps.get(0).length(), within(1e-12));
  }

  @Test
  void whatIsFullHasNone() throws IOException {
    assertThat(poured(4.0).gaps()).isEmpty();
  }
}
