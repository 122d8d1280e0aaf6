package lastinch.solver.result;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.filling.RunObserver;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Where lap lines are told of. */
class LapThresholdsPinnedTest {
  @Test
  void thresholdsAreThoseThatTheGuideTells() {
    assertThat(LapStretch.CLEAN).isEqualTo(0.30);
    assertThat(LapStretch.PLAIN).isEqualTo(0.60);
    assertThat(LapStretch.HALTS).isEqualTo(1.00);
  }

  @Test
  void everyPlaceFromTheThresholdOnLiesInAStretchAndNoOtherDoes() {
    PourResult result =
        DryPour.run(SampleJob.featherInSand(6.0).build(), RunObserver.NONE, () -> false);
    int marked = 0;
    for (PassageRecord p : result.passages()) {
      for (int i = 0; i < p.size(); i++) {
        if (p.role() != PassageRecord.Role.PIECE || !p.reached(i)) {
          continue;
        }
        double at = p.at(i);
        boolean told =
            result.laps().stream()
                .anyMatch(l -> l.passage().equals(p.name()) && l.from() <= at && at <= l.to());
        assertThat(told).as("at %s m: %s", at, p.lapIndex(i)).isEqualTo(p.lapIndex(i) >= 0.30);
        marked += told ? 1 : 0;
      }
    }
    assertThat(marked).isGreaterThan(3);
  }
}
