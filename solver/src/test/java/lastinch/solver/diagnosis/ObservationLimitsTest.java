package lastinch.solver.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** What can and cannot be found together on a casting 320 mm long with one gate. */
class ObservationLimitsTest {
  private static final PourCase JOB = SampleJob.featherInSand(6.0).build();
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Observation found(
      OptionalDouble stopped, OptionalDouble lap, Observation.Lip... lip) {
    Optional<Observation.Lip> look = lip.length == 0 ? Optional.empty() : Optional.of(lip[0]);
    return new Observation(stopped, lap, look, Optional.empty(), NONE, NONE);
  }

  private static OptionalDouble at(double metres) {
    return OptionalDouble.of(metres);
  }

  @Test
  void soundFindingsHaveNoContradiction() {
    assertThat(found(at(0.18), at(0.12), Observation.Lip.ROUNDED).contradictions(JOB)).isEmpty();
    assertThat(found(at(0.32), at(0.3)).contradictions(JOB)).isEmpty();
  }

  @Test
  void nothingFoundIsNothingToExplain() {
    assertThat(found(NONE, NONE).contradictions(JOB))
        .containsExactly(Observation.Contradiction.NOTHING);
  }

  @Test
  void everythingThatCannotBeIsNamedAtOnce() {
    Observation wild =
        new Observation(
            at(0.4),
            at(0.35),
            Optional.of(Observation.Lip.LINE),
            Optional.of("back gate"),
            at(0.36),
            OptionalDouble.of(2.0));
    assertThat(wild.contradictions(JOB))
        .containsExactly(
            Observation.Contradiction.STOPPED_BEYOND,
            Observation.Contradiction.LAP_BEYOND,
            Observation.Contradiction.ROUNDED_BEYOND,
            Observation.Contradiction.LINE_WITH_ONE_STREAM,
            Observation.Contradiction.NO_SUCH_GATE,
            Observation.Contradiction.HEAVIER_THAN_MELTED);
  }

  @Test
  void aLapCannotLieWhereThereIsNoMetal() {
    assertThat(found(at(0.12), at(0.18)).contradictions(JOB))
        .containsExactly(Observation.Contradiction.LAP_BEYOND);
    // two readings, each 5 mm off, are no contradiction
    assertThat(found(at(0.12), at(0.128)).contradictions(JOB)).isEmpty();
  }

  @Test
  void aWholePieceHasNoLipAndAShortOneDoesNotWeighAsMuch() {
    assertThat(found(at(0.32), NONE, Observation.Lip.RAGGED).contradictions(JOB))
        .containsExactly(Observation.Contradiction.FILLED_WITH_LIP);
    double whole = BrokenOut.wholeMass(JOB);
    Observation heavy =
        new Observation(
            at(0.1), NONE, Optional.empty(), Optional.empty(), NONE, OptionalDouble.of(whole));
    assertThat(heavy.contradictions(JOB))
        .containsExactly(Observation.Contradiction.WEIGHT_AGAINST_LENGTH);
  }

  @Test
  void placesLieOnTheRulerOfALimbThatThereIs() {
    Observation other =
        new Observation(
            at(0.1), NONE, Optional.empty(), Optional.empty(), NONE, NONE, Optional.of("left arm"));
    assertThat(other.contradictions(JOB)).containsExactly(Observation.Contradiction.NO_SUCH_LIMB);
    Observation only =
        new Observation(
            at(0.1), NONE, Optional.empty(), Optional.empty(), NONE, NONE, Optional.of(Limb.ONLY));
    assertThat(only.contradictions(JOB)).isEmpty();
  }

  @Test
  void theRulerOfTheOnlyLimbIsThatOfThePiece() {
    PourResult result = DryPour.run(JOB, RunObserver.NONE, () -> false);
    assertThat(BrokenOut.of(JOB, result, Optional.of(Limb.ONLY)))
        .isEqualTo(BrokenOut.of(JOB, result, Optional.empty()));
  }
}
