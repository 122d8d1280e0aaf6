package lastinch.solver.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.RunObserver;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** What can and cannot be found together on a casting 320 mm long with one gate. */
class FoundLimitsTest {
  private static final PourCase JOB = SampleJob.featherInSand(6.0).build();
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Found found(OptionalDouble stopped, OptionalDouble lap, Found.Lip... lip) {
    Optional<Found.Lip> look = lip.length == 0 ? Optional.empty() : Optional.of(lip[0]);
    return new Found(stopped, lap, look, Optional.empty(), NONE, NONE);
  }

  private static OptionalDouble at(double metres) {
    return OptionalDouble.of(metres);
  }

  @Test
  void soundFindingsHaveNoContradiction() {
    assertThat(found(at(0.18), at(0.12), Found.Lip.ROUNDED).contradictions(JOB)).isEmpty();
    assertThat(found(at(0.32), at(0.3)).contradictions(JOB)).isEmpty();
  }

  @Test
  void nothingFoundIsNothingToExplain() {
    assertThat(found(NONE, NONE).contradictions(JOB)).containsExactly(Found.Contradiction.NOTHING);
  }

  @Test
  void everythingThatCannotBeIsNamedAtOnce() {
    Found wild =
        new Found(
            at(0.4),
            at(0.35),
            Optional.of(Found.Lip.LINE),
            Optional.of("back gate"),
            at(0.36),
            OptionalDouble.of(2.0));
    assertThat(wild.contradictions(JOB))
        .containsExactly(
            Found.Contradiction.STOPPED_BEYOND,
            Found.Contradiction.LAP_BEYOND,
            Found.Contradiction.ROUNDED_BEYOND,
            Found.Contradiction.LINE_WITH_ONE_STREAM,
            Found.Contradiction.NO_SUCH_GATE,
            Found.Contradiction.HEAVIER_THAN_MELTED);
  }

  @Test
  void aLapCannotLieWhereThereIsNoMetal() {
    assertThat(found(at(0.12), at(0.18)).contradictions(JOB))
        .containsExactly(Found.Contradiction.LAP_BEYOND);
    // two readings, each 5 mm off, are no contradiction
    assertThat(found(at(0.12), at(0.128)).contradictions(JOB)).isEmpty();
  }

  @Test
  void aWholePieceHasNoLipAndAShortOneDoesNotWeighAsMuch() {
    assertThat(found(at(0.32), NONE, Found.Lip.RAGGED).contradictions(JOB))
        .containsExactly(Found.Contradiction.FILLED_WITH_LIP);
    double whole = BrokenOut.wholeMass(JOB);
    Found heavy =
        new Found(
            at(0.1), NONE, Optional.empty(), Optional.empty(), NONE, OptionalDouble.of(whole));
    assertThat(heavy.contradictions(JOB))
        .containsExactly(Found.Contradiction.WEIGHT_AGAINST_LENGTH);
  }

  @Test
  void placesLieOnTheRulerOfALimbThatThereIs() {
    Found other =
        new Found(
            at(0.1), NONE, Optional.empty(), Optional.empty(), NONE, NONE, Optional.of("left arm"));
    assertThat(other.contradictions(JOB)).containsExactly(Found.Contradiction.NO_SUCH_LIMB);
    Found only =
        new Found(
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
