package lastinch.solver.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.Station;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.Phase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.material.Band;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.result.StopReason;
import org.junit.jupiter.api.Test;

/** Whole pours over the plane through the facade. */
class PlanePourLimitsTest {
  private static final double LENGTH = 0.3;

  private static SampleJob strip(double thickness, double reads) {
    return SampleJob.strip(LENGTH, 0.06, thickness)
        .alloy(SampleFoundry.tinBronze())
        .sprue(0.085, 0.016, 0.012)
        .gateAt(Side.THICK_END, 0.06, thickness, 0.005)
        .pour(new Pour.AtRate(Band.typed(1.5)))
        .reads(reads + SampleJob.ZERO)
        .medium(SampleFoundry.sand())
        .mouldAt(293.15);
  }

  private static Poured plane(PourCase job) {
    return DryPour.run(
        DryPour.plane(PlaneSettings.squares(4e-3).keeping(0.05)),
        job,
        Phase.FILLING,
        RunObserver.NONE,
        () -> false);
  }

  private static PourResult network(PourCase job) {
    return DryPour.run(job, RunObserver.NONE, () -> false);
  }

  private static PassageRecord piece(PourResult result) {
    return result.passages().stream()
        .filter(p -> p.role() == PassageRecord.Role.PIECE)
        .findFirst()
        .orElseThrow();
  }

  private static double hottestDifference(PourResult a, PourResult b, double from, double to) {
    PassageRecord one = piece(a);
    PassageRecord other = piece(b);
    double most = 0.0;
    for (double s = from; s < to; s += 0.01) {
      int i = (int) (s / LENGTH * one.size());
      int k = (int) (s / LENGTH * other.size());
      most = Math.max(most, Math.abs(one.arrivalTemperature(i) - other.arrivalTemperature(k)));
    }
    return most;
  }

  /**
   * A wide plate that stops short, the sprue full: both solvers stop it within 8 %. The plane has
   * no rim loss in its middle and its front runs out ragged, both for 2 to 5 %; without warming of
   * the front from behind the network stops 25 % earlier. Heat at arrival within 5 K from where the
   * metal has left the gate behind.
   */
  @Test
  void aWidePlateStopsWhereTheNetworkStopsIt() {
    PourCase job =
        strip(1.1e-3, 1065.0)
            .checking(SampleJob.Options.ordinary().wholeSections().spreading(1))
            .build();
    PourResult wide = plane(job).filling();
    PourResult along = network(job);
    assertThat(along.outcome()).isInstanceOf(Outcome.Misrun.class);
    double stop = wide.filledFraction() * LENGTH;
    assertThat(stop).isCloseTo(along.reach(), offset(0.08 * along.reach()));
    assertThat(hottestDifference(wide, along, 0.06, 0.9 * along.reach())).isLessThan(5.0);
  }

  /** The same comparison tells a front that nothing warms from behind. */
  @Test
  void aFrontThatNothingWarmsFallsOut() {
    PourCase job =
        strip(1.1e-3, 1065.0).checking(SampleJob.Options.ordinary().spreading(1)).build();
    // whole sections: a middle that runs ahead of its rims would warm the front too
    SampleJob.Options alone = SampleJob.Options.ordinary().wholeSections().spreading(0);
    PourCase cold = strip(1.1e-3, 1065.0).checking(alone).build();
    double stop = plane(job).filling().filledFraction() * LENGTH;
    assertThat(Math.abs(stop / network(cold).reach() - 1.0)).isGreaterThan(0.16);
  }

  @Test
  void booksOfAStopClose() {
    PourResult result = plane(strip(1.1e-3, 1065.0).build()).filling();
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(result.stops()).isNotEmpty();
    assertThat(result.accounts().metalError()).isCloseTo(0.0, offset(1e-10));
    assertThat(result.accounts().heatError()).isCloseTo(0.0, offset(1e-6));
    assertThat(result.accounts().airError()).isCloseTo(0.0, offset(1e-9));
    assertThat(result.margin().distance().orElseThrow()).isNegative();
    assertThat(result.record().solver()).startsWith("plane");
  }

  @Test
  void aThickStripFillsAndItsMomentsRiseToTheEnd() {
    Poured pour = plane(strip(4e-3, 1150.0).build());
    PourResult result = pour.filling();
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    assertThat(result.stops()).isEmpty();
    assertThat(result.margin().heat()).isBetween(0.0, 1.0);
    PlaneField field = pour.field().orElseThrow();
    assertThat(field.moments().size()).isGreaterThan(5);
    double before = -1.0;
    for (PlaneField.Moment m : field.moments()) {
      assertThat(m.time()).isGreaterThanOrEqualTo(before);
      before = m.time();
    }
    PassageRecord piece = piece(result);
    for (int i = 1; i < piece.size(); i++) {
      assertThat(piece.reached(i)).isTrue();
    }
  }

  @Test
  void aCavityDrawnByOtherMeansIsPouredLikeItsOwn() {
    PourCase job = strip(1.1e-3, 1065.0).build();
    GapMap map = CavityMap.of(job, 4e-3);
    PourResult drawn =
        DryPour.run(
                DryPour.plane(PlaneSettings.in(map).keeping(0.05)),
                job,
                Phase.FILLING,
                RunObserver.NONE,
                () -> false)
            .filling();
    PourResult own = plane(job).filling();
    assertThat(drawn.outcome()).isEqualTo(own.outcome());
    assertThat(drawn.filledFraction()).isEqualTo(own.filledFraction());
    assertThat(drawn.record()).isEqualTo(own.record());
  }

  /**
   * A mould that lets no air out, without a vent: the air of the whole piece, pressed to what
   * stands in the sprue, takes all but a tenth of its room, so nothing gets in farther. With its
   * air let out, the same strip fills.
   */
  @Test
  void aMouldThatHoldsItsAirHoldsTheMetal() {
    PourCase tight = strip(2e-3, 1100.0).medium(SampleFoundry.roundMould(1000.0)).build();
    assertThat(tight.mould().medium().permeability().value()).isLessThan(1e-14);
    PourResult held = plane(tight).filling();
    assertThat(held.outcome()).isInstanceOf(Outcome.Misrun.class);
    assertThat(held.stops()).isNotEmpty();
    assertThat(held.stops().get(0).reason()).isEqualTo(StopReason.AIR);
    assertThat(held.filledFraction()).isLessThan(0.1);
    double network = network(tight).filledFraction();
    // a square of the strip's length
    assertThat(held.filledFraction()).isCloseTo(network, within(0.02));
  }

  /**
   * No metal is pushed much harder than by what stands in sprue and cup, 0.115 m, and by twice what
   * the gap takes to be entered (a front that meets the end adds a sixth); set metal with nowhere
   * to go had millions of pascals, for a sum that does not come out even.
   */
  @Test
  void noMetalHasMorePressureThanPushesIt() {
    Poured pour = plane(strip(1.1e-3, 1065.0).build());
    PlaneField field = pour.field().orElseThrow();

    double most = 2.0 * (9.81 * 8500.0 * 0.115 + 2.0 * 2.0 * 1.3 / 1.1e-3);
    int set = 0;
    for (PlaneField.Moment moment : field.moments()) {
      for (int k = 0; k < field.map().grid().size(); k++) {
        assertThat(Math.abs(moment.pressure(k))).isLessThan(most);
        set += moment.stopped(k) ? 1 : 0;
      }
    }
    assertThat(set).isPositive();
  }

  @Test
  void squaresThatAreTooFineAreRefused() {
    PourCase job = strip(2e-3, 1100.0).build();
    assertThatThrownBy(
            () ->
                DryPour.run(
                    DryPour.plane(PlaneSettings.squares(2e-6).keeping(1.0)),
                    job,
                    Phase.FILLING,
                    RunObserver.NONE,
                    () -> false))
        .isInstanceOfSatisfying(
            UnsupportedCase.class,
            e -> assertThat(e.needs()).containsExactly(Need.SQUARES_TOO_FINE));
  }

  /**
   * Three arms from one place: where they lie over each other a stretch has no square of its own.
   */
  @Test
  void armsThatGrowFromOnePlaceAreAllTold() {
    PourCase plain = strip(3e-3, 1150.0).build();
    List<Limb> arms = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      List<Station> stations = List.of(station(0.0), station(0.12));
      String from = k == 0 ? "" : "arm 0 thick end";
      arms.add(new Limb("arm " + k, stations, SectionForm.FLAT, from, "", (k - 1) * 0.6));
    }
    Gate gate = new Gate("gate", new Place.At("arm 0", 0.0, Side.THICK_END), 0.012, 3e-3, 5e-3);
    Gating gating =
        plain
            .gating()
            .withGates(List.of(gate))
            .withVents(List.of())
            .withOverflows(List.of())
            .withFeeders(List.of());
    PourCase job = plain.withPiece(new Piece(arms, Optional.empty())).withGating(gating);
    PourResult result = plane(job).filling();
    assertThat(result.passages())
        .filteredOn(p -> p.role() == PassageRecord.Role.PIECE)
        .extracting(PassageRecord::name)
        .containsExactly("arm 0", "arm 1", "arm 2");
  }

  private static Station station(double at) {
    return new Station(at, 0.02, 3e-3, OptionalDouble.empty(), Optional.empty());
  }

  @Test
  void theFinestSquareIsTakenAndTheNextFinerOneOfSoLargeAJobIsNot() {
    PourCase job = SampleJob.strip(3.0, 0.5, 4e-3).build();
    double finest = DryPour.finestSquare(job);
    assertThat(DryPour.plane(PlaneSettings.squares(finest)).needs(job)).isEmpty();
    assertThat(DryPour.plane(PlaneSettings.squares(0.1e-3)).needs(job))
        .containsExactly(Need.SQUARES_TOO_FINE);
  }
}
