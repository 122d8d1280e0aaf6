package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.OriginStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import lastinch.solver.run.SampleNetworks;
import org.junit.jupiter.api.Test;

/** Every place that metal reached has the gate it came through, and metal of two gates meets. */
class OriginConservationTest {
  private static PourResult poured() {
    return pour(SampleNetworks.uprightThreeGates());
  }

  private static PourResult pour(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  @Test
  void stretchesOfTheGatesCoverThePieceOnce() {
    PourResult result = poured();
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    List<OriginStretch> piece =
        OriginStretch.of(result).stream().filter(s -> s.passage().equals("piece")).toList();
    double at = 0.0;
    for (OriginStretch stretch : piece) {
      assertThat(stretch.from()).isCloseTo(at, org.assertj.core.api.Assertions.within(1e-9));
      assertThat(stretch.gate()).isIn("low", "middle", "top");
      at = stretch.to();
    }
    assertThat(at).isCloseTo(0.32, org.assertj.core.api.Assertions.within(1e-9));
    // metal of the low gate falls through to the tip first and rises from there
    assertThat(piece.get(piece.size() - 1).gate()).isEqualTo("low");
  }

  @Test
  void poolThatStoodAndMetalOfAnotherGateThatFallsOnItMeet() {
    // in whole sections a pool stands in the limb before metal of the gate above comes down to it
    PourResult result =
        pour(
            SampleNetworks.uprightThreeGates()
                .withChecking(SampleJob.Options.ordinary().wholeSections().build()));
    assertThat(result.meetings()).isNotEmpty();
    Meeting meeting = result.meetings().get(0);
    assertThat(meeting.gateA()).isNotEqualTo(meeting.gateB());
    assertThat(meeting.temperatureB()).isGreaterThan(meeting.temperatureA());
  }

  @Test
  void oneGateAloneMeetsNothing() {
    PourResult result = pour(SampleJob.featherInSand(5.0).build());
    assertThat(result.meetings()).isEmpty();
    assertThat(OriginStretch.of(result)).allMatch(s -> s.gate().equals("gate"));
  }
}
