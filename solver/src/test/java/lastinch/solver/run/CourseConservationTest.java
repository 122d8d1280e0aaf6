package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import org.junit.jupiter.api.Test;

/** The course of a pour against the result it ends in. */
class CourseConservationTest {
  private static final PourResult RESULT =
      DryPour.run(SampleJob.featherInSand(6.0).build(), RunObserver.NONE, () -> false);
  private static final FillHistory COURSE = RESULT.course();
  private static final String PIECE = "piece";

  private static PassageRecord piece() {
    return RESULT.passages().stream()
        .filter(p -> p.role() == PassageRecord.Role.PIECE)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void momentsRiseSpreadOverTheRunAndEndWithIt() {
    int last = COURSE.size() - 1;
    assertThat(COURSE.size()).isBetween(12, 33);
    for (int k = 1; k <= last; k++) {
      assertThat(COURSE.time(k)).isGreaterThan(COURSE.time(k - 1));
    }
    assertThat(COURSE.time(last)).isEqualTo(RESULT.outcome().time());
    assertThat(COURSE.time(last / 2)).isBetween(0.3 * COURSE.time(last), 0.7 * COURSE.time(last));
  }

  @Test
  void lastMomentIsTheEndOfTheResult() {
    PassageRecord piece = piece();
    int last = COURSE.size() - 1;
    for (int i = 0; i < piece.size(); i++) {
      if (COURSE.fill(PIECE, last, i) > 0.0) {
        // Kept in single precision: 1e-4 K at these heats.
        assertThat(COURSE.temperature(PIECE, last, i))
            .isCloseTo(piece.finalTemperature(i), within(1e-3));
        assertThat(COURSE.solid(PIECE, last, i)).isCloseTo(piece.finalSolid(i), within(1e-6));
      }
    }
  }

  @Test
  void metalPassesTheGateBeforeItStandsInThePiece() {
    PassageRecord piece = piece();
    int last = COURSE.samples() - 1;
    assertThat(COURSE.gates()).containsExactly("gate");
    for (int k = 1; k <= last; k++) {
      assertThat(COURSE.passed(0, k)).isGreaterThanOrEqualTo(COURSE.passed(0, k - 1) - 1e-6);
    }
    // Metal reaches the piece only after the boss is full, so none stands there before.
    int before = 0;
    while (COURSE.time(before) < piece.arrivalTime(0)) {
      assertThat(COURSE.fill(PIECE, before, piece.size() / 2)).isZero();
      before++;
    }
    assertThat(before).isPositive();
    assertThat(COURSE.fill(PIECE, COURSE.size() - 1, 0)).isEqualTo(1.0);
    assertThat(COURSE.passed(0, last)).isPositive();
  }
}
