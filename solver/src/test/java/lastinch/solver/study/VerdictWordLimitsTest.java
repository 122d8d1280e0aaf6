package lastinch.solver.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Meeting;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.uncertainty.BandedJob;
import org.junit.jupiter.api.Test;

/** The word is the first that holds. */
class VerdictWordLimitsTest {
  private static final PourResult BASE =
      DryPour.run(BandedJob.exact(6.0), RunObserver.NONE, () -> false);
  private static final PourResult STOPS = result(new Outcome.Misrun(1.0), 0.0, false);
  private static final PourResult EASY = result(new Outcome.Filled(1.0), 0.5, false);
  private static final PourResult TIGHT = result(new Outcome.Filled(1.0), 0.09, false);
  private static final PourResult ROUND = result(new Outcome.Filled(1.0), 0.5, true);
  private static final PourResult APART =
      result(new Outcome.Filled(1.0), 0.5, false, List.of(third(Meeting.Kind.COLD_SHUT)));
  private static final PourResult GONE =
      result(new Outcome.BrokeDown(1.0, "piece", "time", "test"), 0.0, false);

  @Test
  void stopsShortOnlyWhenNoneOfThreeFills() {
    assertThat(VerdictWord.of(STOPS, List.of(STOPS, STOPS))).contains(VerdictWord.STOPS_SHORT);
    assertThat(VerdictWord.of(STOPS, List.of(STOPS, EASY))).contains(VerdictWord.MAY_STOP_SHORT);
    assertThat(VerdictWord.of(STOPS)).contains(VerdictWord.STOPS_SHORT);
  }

  @Test
  void fillsInWordsOfWhatHappensOnOtherDays() {
    assertThat(VerdictWord.of(EASY, List.of(STOPS, EASY))).contains(VerdictWord.LIKELY_FILLS);
    assertThat(VerdictWord.of(EASY, List.of(TIGHT, EASY))).contains(VerdictWord.FILLS);
    assertThat(VerdictWord.of(TIGHT)).contains(VerdictWord.JUST_FILLS);
    assertThat(VerdictWord.of(TIGHT, List.of(EASY, EASY))).contains(VerdictWord.JUST_FILLS);
    assertThat(VerdictWord.of(EASY, List.of(EASY, EASY))).contains(VerdictWord.FILLS);
  }

  @Test
  void nextToNoHeatToSpareIsNeverLikely() {
    assertThat(VerdictWord.of(TIGHT, List.of(STOPS, EASY))).contains(VerdictWord.JUST_FILLS);
  }

  @Test
  void aFullMouldWhoseStreamsDoNotJoinDoesNotFill() {
    assertThat(VerdictWord.fills(APART)).isFalse();
    assertThat(VerdictWord.isFull(APART)).isTrue();
    assertThat(VerdictWord.of(APART)).contains(VerdictWord.DOES_NOT_JOIN);
    assertThat(VerdictWord.of(APART, List.of(STOPS, APART))).contains(VerdictWord.DOES_NOT_JOIN);
    assertThat(VerdictWord.of(APART, List.of(STOPS, EASY))).contains(VerdictWord.MAY_NOT_JOIN);
    assertThat(VerdictWord.of(EASY, List.of(APART, EASY))).contains(VerdictWord.LIKELY_FILLS);
    assertThat(VerdictWord.of(STOPS, List.of(STOPS, APART))).contains(VerdictWord.STOPS_SHORT);
  }

  @Test
  void aGlanceAtItIsBetweenStoppingAndFilling() {
    PourCase job = BandedJob.exact(6.0);
    RunSummary apart = RunSummary.of(job, APART);
    assertThat(apart.filled()).isFalse();
    assertThat(apart.fillsWith(0.0)).isFalse();
    assertThat(Goal.heat(0.0).isMetBy(apart)).isFalse();
    assertThat(apart.answered()).isTrue();
    assertThat(apart.mark()).isEqualTo(RunSummary.Mark.APART);
    assertThat(apart.goodness())
        .isBetween(RunSummary.of(job, STOPS).goodness(), RunSummary.of(job, EASY).goodness());
    // the shorter part breaks off at a third of the length
    assertThat(apart.signed()).isCloseTo(-1.0 / 3.0, within(1e-12));
  }

  @Test
  void roundedEdgeComesAfterStoppingAndBeforeFilling() {
    assertThat(VerdictWord.of(ROUND, List.of(STOPS, EASY))).contains(VerdictWord.LIKELY_FILLS);
    assertThat(VerdictWord.of(ROUND, List.of(TIGHT, EASY))).contains(VerdictWord.EDGES_ROUNDED);
    assertThat(VerdictWord.of(EASY, List.of(ROUND, EASY))).contains(VerdictWord.FILLS);
    assertThat(VerdictWord.isEdgeRounded(ROUND)).isTrue();
    assertThat(VerdictWord.isEdgeRounded(EASY)).isFalse();
  }

  @Test
  void runsWithoutVerdictDoNotCount() {
    assertThat(VerdictWord.of(GONE, List.of(EASY, EASY))).isEmpty();
    assertThat(VerdictWord.of(EASY, List.of(GONE, EASY))).contains(VerdictWord.FILLS);
    assertThat(VerdictWord.of(STOPS, List.of(GONE, STOPS))).contains(VerdictWord.STOPS_SHORT);
  }

  /** A meeting at a third of the piece. */
  private static Meeting third(Meeting.Kind kind) {
    Limb limb = BandedJob.exact(6.0).piece().limbs().get(0);
    return new Meeting(
        limb.name(), limb.length() / 3.0, 1.0, 1250.0, 1250.0, 0.2, kind, "low gate", "top gate");
  }

  @Test
  void aLineThatShowsIsStillOnePiece() {
    PourResult line = result(new Outcome.Filled(1.0), 0.5, false, List.of(third(Meeting.Kind.LAP)));
    assertThat(VerdictWord.fills(line)).isTrue();
    assertThat(VerdictWord.of(line)).contains(VerdictWord.FILLS);
  }

  private static PourResult result(Outcome outcome, double heat, boolean rounded) {
    return result(outcome, heat, rounded, BASE.meetings());
  }

  private static PourResult result(
      Outcome outcome, double heat, boolean rounded, List<Meeting> meetings) {
    EdgeStretch rim =
        new EdgeStretch(0.0, 0.3, rounded ? EdgeStretch.State.ROUNDED : EdgeStretch.State.FULL);
    return BASE.changed()
        .outcome(outcome)
        .filledFraction(1.0)
        .stops(List.of())
        .edges(List.of(rim))
        .meetings(meetings)
        .margin(new Margin(heat, OptionalDouble.of(0.1), Margin.LimitedBy.HEAT))
        .build();
  }
}
