package lastinch.solver.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Margin;
import lastinch.solver.result.Meeting;
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
  private static final PourResult APART =
      result(new Outcome.Filled(1.0), 0.5, false, List.of(third(Meeting.Kind.COLD_SHUT)));
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
    assertThat(Verdict.of(EASY, List.of(TIGHT, EASY))).contains(Verdict.FILLS);
    assertThat(Verdict.of(TIGHT)).contains(Verdict.JUST_FILLS);
    assertThat(Verdict.of(TIGHT, List.of(EASY, EASY))).contains(Verdict.JUST_FILLS);
    assertThat(Verdict.of(EASY, List.of(EASY, EASY))).contains(Verdict.FILLS);
  }

  @Test
  void nextToNoHeatToSpareIsNeverLikely() {
    assertThat(Verdict.of(TIGHT, List.of(STOPS, EASY))).contains(Verdict.JUST_FILLS);
  }

  @Test
  void aFullMouldWhoseStreamsDoNotJoinDoesNotFill() {
    assertThat(Verdict.fills(APART)).isFalse();
    assertThat(Verdict.isFull(APART)).isTrue();
    assertThat(Verdict.of(APART)).contains(Verdict.DOES_NOT_JOIN);
    assertThat(Verdict.of(APART, List.of(STOPS, APART))).contains(Verdict.DOES_NOT_JOIN);
    assertThat(Verdict.of(APART, List.of(STOPS, EASY))).contains(Verdict.MAY_NOT_JOIN);
    assertThat(Verdict.of(EASY, List.of(APART, EASY))).contains(Verdict.LIKELY_FILLS);
    assertThat(Verdict.of(STOPS, List.of(STOPS, APART))).contains(Verdict.STOPS_SHORT);
  }

  @Test
  void aGlanceAtItIsBetweenStoppingAndFilling() {
    PourCase job = BandedJob.exact(6.0);
    Glance apart = Glance.of(job, APART);
    assertThat(apart.filled()).isFalse();
    assertThat(apart.fillsWith(0.0)).isFalse();
    assertThat(Goal.heat(0.0).isMetBy(apart)).isFalse();
    assertThat(apart.answered()).isTrue();
    assertThat(apart.mark()).isEqualTo(Glance.Mark.APART);
    assertThat(apart.goodness())
        .isBetween(Glance.of(job, STOPS).goodness(), Glance.of(job, EASY).goodness());
    // the shorter part breaks off at a third of the length
    assertThat(apart.signed()).isCloseTo(-1.0 / 3.0, within(1e-12));
  }

  @Test
  void roundedEdgeComesAfterStoppingAndBeforeFilling() {
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

  /** A meeting at a third of the piece. */
  private static Meeting third(Meeting.Kind kind) {
    Limb limb = BandedJob.exact(6.0).piece().limbs().get(0);
    return new Meeting(
        limb.name(), limb.length() / 3.0, 1.0, 1250.0, 1250.0, 0.2, kind, "low gate", "top gate");
  }

  @Test
  void aLineThatShowsIsStillOnePiece() {
    PourResult line = result(new Outcome.Filled(1.0), 0.5, false, List.of(third(Meeting.Kind.LAP)));
    assertThat(Verdict.fills(line)).isTrue();
    assertThat(Verdict.of(line)).contains(Verdict.FILLS);
  }

  private static PourResult result(Outcome outcome, double heat, boolean rounded) {
    return result(outcome, heat, rounded, BASE.meetings());
  }

  private static PourResult result(
      Outcome outcome, double heat, boolean rounded, List<Meeting> meetings) {
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
        meetings,
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
