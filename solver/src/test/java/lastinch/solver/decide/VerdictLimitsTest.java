package lastinch.solver.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;
import org.junit.jupiter.api.Test;

/** The word is the first that holds. */
class VerdictLimitsTest {
  private static final PourResult BASE =
      DryPour.run(BandedJob.exact(6.0), RunObserver.NONE, () -> false);
  private static final PourResult STOPS = result(new Outcome.Misrun(1.0), 0.0, false);
  private static final PourResult EASY = result(new Outcome.Filled(1.0), 0.5, false);
  private static final PourResult TIGHT = result(new Outcome.Filled(1.0), 0.09, false);
  private static final PourResult ROUND = result(new Outcome.Filled(1.0), 0.5, true);
  private static final PourResult GONE =
      result(new Outcome.BrokeDown(1.0, "piece", "time", "test"), 0.0, false);

  @Test
  void stopsShortOnlyWhenNoneOfThreeFills() {
    assertThat(Verdict.of(STOPS, List.of(STOPS, STOPS))).contains(Verdict.STOPS_SHORT);
    assertThat(Verdict.of(STOPS, List.of(STOPS, EASY))).contains(Verdict.MAY_STOP_SHORT);
    assertThat(Verdict.of(STOPS)).contains(Verdict.STOPS_SHORT);
  }

  @Test
  void fillsInWordsOfWhatHappensOnOtherDays() {
    assertThat(Verdict.of(EASY, List.of(STOPS, EASY))).contains(Verdict.LIKELY_FILLS);
    assertThat(Verdict.of(EASY, List.of(TIGHT, EASY))).contains(Verdict.JUST_FILLS);
    assertThat(Verdict.of(TIGHT)).contains(Verdict.JUST_FILLS);
    assertThat(Verdict.of(EASY, List.of(EASY, EASY))).contains(Verdict.FILLS);
  }

  @Test
  void roundedEdgeComesAfterStoppingAndBeforeJustFilling() {
    assertThat(Verdict.of(ROUND, List.of(STOPS, EASY))).contains(Verdict.LIKELY_FILLS);
    assertThat(Verdict.of(ROUND, List.of(TIGHT, EASY))).contains(Verdict.EDGES_ROUNDED);
    assertThat(Verdict.of(EASY, List.of(ROUND, EASY))).contains(Verdict.FILLS);
    assertThat(Verdict.isEdgeRounded(ROUND)).isTrue();
    assertThat(Verdict.isEdgeRounded(EASY)).isFalse();
  }

  @Test
  void runsWithoutVerdictDoNotCount() {
    assertThat(Verdict.of(GONE, List.of(EASY, EASY))).isEmpty();
    assertThat(Verdict.of(EASY, List.of(GONE, EASY))).contains(Verdict.FILLS);
    assertThat(Verdict.of(STOPS, List.of(GONE, STOPS))).contains(Verdict.STOPS_SHORT);
  }

  private static PourResult result(Outcome outcome, double heat, boolean rounded) {
    EdgeStretch rim =
        new EdgeStretch(0.0, 0.3, rounded ? EdgeStretch.State.ROUNDED : EdgeStretch.State.FULL);
    return new PourResult(
        outcome,
        1.0,
        BASE.reach(),
        BASE.flowLimitedBy(),
        BASE.entered(),
        BASE.mouldAtEdge(),
        BASE.slurryShare(),
        BASE.sprueStanding(),
        BASE.cupFullAt(),
        BASE.massToRim(),
        List.of(),
        List.of(rim),
        BASE.gates(),
        BASE.meetings(),
        BASE.laps(),
        BASE.findings(),
        new Margin(heat, OptionalDouble.of(0.1), Margin.LimitedBy.HEAT),
        BASE.ledger(),
        BASE.passages(),
        BASE.track(),
        BASE.accounts(),
        BASE.record(),
        BASE.course());
  }
}
