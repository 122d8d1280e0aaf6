package lastinch.solver.levers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastinch.solver.casting.Flask;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import lastinch.solver.search.InventedPours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every lever at the ends of what it can do, and where it stands. */
class LeversLimitsTest {
  private static final Owned SHOP =
      new Owned(
          InventedPours.marks(),
          List.of(0.020, 0.032),
          List.of(new Owned.Pin(0.018, 0.014), new Owned.Pin(0.022, 0.02)),
          List.of(new Owned.Strip(0.015, 0.012)),
          OptionalDouble.of(2.0),
          OptionalDouble.empty(),
          List.of(new Owned.OtherMetal(SampleFoundry.roundBronze(), SampleFoundry.sand())),
          List.of(
              new Owned.OtherMould(
                  "gypsum",
                  named("gypsum", SampleFoundry.gypsum()),
                  Band.typed(753.15),
                  Band.typed(0.0),
                  Band.typed(0.0))));

  private static final Flask CAN =
      new Flask(0.1, 0.48, 2e-3, 0.018, Band.typed(60.0), 7900.0, 500.0, 0.8);

  static Stream<Case> everyLever() {
    return Stream.of(
            SampleJob.featherInSand(6.0).build(),
            SampleJob.featherInGypsum(2.5).build(),
            SampleJob.featherInSand(6.0).pour(new Pour.AtRate(Band.typed(0.4))).build(),
            SampleJob.featherInSand(6.0).pour(new Pour.CupFull(Band.typed(3.0))).build(),
            SampleJob.featherInGypsum(2.5).flask(CAN).build(),
            withSideGates(SampleJob.featherInSand(6.0).build(), 0.1, 0.2),
            withThinRim(SampleJob.featherInSand(6.0).build()))
        .flatMap(job -> Levers.of(job, SHOP).stream().map(lever -> new Case(job, lever)));
  }

  record Case(PourCase job, Lever lever) {
    @Override
    public String toString() {
      return lever.key();
    }
  }

  @ParameterizedTest
  @MethodSource("everyLever")
  void leftWhereItStandsItChangesNothing(Case c) {
    assertThat(c.lever().set(c.job(), c.lever().now())).isEqualTo(c.job());
  }

  @ParameterizedTest
  @MethodSource("everyLever")
  void movedItChangesTheJobAndNotTheOneItCameFrom(Case c) {
    double there = movedOn(c.lever());
    PourCase before = c.lever().set(c.job(), c.lever().now());
    PourCase moved = c.lever().set(c.job(), there);
    assertThat(moved).isNotEqualTo(c.job());
    assertThat(before).isEqualTo(c.job());
    assertThat(c.lever().set(moved, c.lever().now())).satisfies(this::isComplete);
  }

  @ParameterizedTest
  @MethodSource("everyLever")
  void bothEndsOfPracticeCanBeSetAndHaveAReasonAndASource(Case c) {
    for (Bound end : List.of(c.lever().practical().low(), c.lever().practical().high())) {
      assertThat(c.lever().set(c.job(), end.value())).satisfies(this::isComplete);
      assertThat(end.source().reference()).isNotBlank();
    }
    assertThat(c.lever().physical().holds(c.lever().now())).isTrue();
    assertThat(c.lever().practical().holds(c.lever().now())).isTrue();
  }

  @ParameterizedTest
  @MethodSource("everyLever")
  void beyondPhysicsItIsRefused(Case c) {
    double above = c.lever().physical().high().value() * 1.001 + 1e-6;
    assertThatThrownBy(() -> c.lever().set(c.job(), above))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(c.lever().key());
  }

  /** What is added starts again from nothing; what can be put in once is no lever any more. */
  @ParameterizedTest
  @MethodSource("everyLever")
  void aJobAtAnotherValueSaysThatValue(Case c) {
    Lever lever = c.lever();
    double there = movedOn(lever);
    PourCase moved = lever.set(c.job(), there);
    Optional<Lever> found = Levers.find(Levers.of(moved, SHOP), lever.key(), lever.part());
    switch (lever.key()) {
      case "overflow", "gateNumber" -> assertThat(found).isEmpty();
      case "alloy" ->
          assertThat(moved.metal().alloy().name()).isEqualTo(lever.choices().get((int) there));
      case "medium" ->
          assertThat(moved.mould().medium().name()).isEqualTo(lever.choices().get((int) there));
      case "thicker", "edge" -> assertThat(found.orElseThrow().now()).isZero();
      default -> assertThat(found.orElseThrow().now()).isCloseTo(there, within(1e-9));
    }
  }

  @Test
  void bandsGoWithTheValue() {
    PourCase job = InventedPours.feather();
    PourCase typed = job.withPour(new Pour.Empties(Band.typed(6.0, 1.8)));
    Lever lever = InventedPours.lever(typed, "emptiesIn");
    assertThat(lever.band().low()).isCloseTo(4.2, within(1e-12));
    Lever faster = InventedPours.lever(lever.set(typed, 3.0), "emptiesIn");
    assertThat(faster.band().low()).isCloseTo(2.1, within(1e-12));
    assertThat(faster.band().high()).isCloseTo(3.9, within(1e-12));
  }

  @Test
  void moreMetalIsPouredAtTheSameRate() {
    PourCase job = InventedPours.feather();
    PourCase more = InventedPours.lever(job, "melted").set(job, 2.2);
    assertThat(more.pour().rate(2.2, 1.0)).isCloseTo(job.pour().rate(1.1, 1.0), within(1e-12));
  }

  @Test
  void noPlaceIsThinnerThanAskedAndThickPlacesStay() {
    PourCase job = InventedPours.feather();
    PourCase raised = InventedPours.lever(job, "thinnest").set(job, 2.0e-3);
    var stations = raised.piece().limbs().get(0).stations();
    assertThat(stations).allMatch(s -> s.thickness() >= 2.0e-3);
    assertThat(stations.get(2).thickness()).isEqualTo(3.6e-3);
    // the old surface falls from 2.4 mm at 240 mm to 1.2 mm at 320 mm
    assertThat(stations.get(4).at()).isCloseTo(0.24 + 0.08 / 3.0, within(1e-12));
  }

  @Test
  void moreGatesShareTheLengthOfThePieceAndTheMetalTheyHoldIsMelted() {
    PourCase job = InventedPours.feather();
    PourCase three = InventedPours.lever(job, "gateNumber").set(job, 3.0);
    double length = job.piece().limbs().get(0).length();
    assertThat(three.gating().gates()).extracting(Gate::name).doesNotHaveDuplicates();
    assertThat(three.gating().gates().get(0)).isEqualTo(job.gating().gates().get(0));
    assertThat(three.gating().gates().stream().skip(1).map(g -> ((Place.At) g.place()).distance()))
        .containsExactly(length / 3.0, length * 2.0 / 3.0);
    assertThat(three.gating().runner().orElseThrow()).isInstanceOf(Runner.Alongside.class);
    assertThat(three.metal().melted()).isGreaterThan(job.metal().melted());
    assertThat(three.pour().rate(three.metal().melted(), 1.0))
        .isCloseTo(job.pour().rate(job.metal().melted(), 1.0), within(1e-12));
  }

  @Test
  void aGateMovesAsFarAsTheNextOneLets() {
    PourCase job = withSideGates(InventedPours.feather(), 0.1, 0.2);
    Lever low = Levers.find(Levers.of(job, SHOP), "gatePlace", "at 0.1").orElseThrow();
    Lever high = Levers.find(Levers.of(job, SHOP), "gatePlace", "at 0.2").orElseThrow();
    assertThat(low.practical().low().value()).isCloseTo(0.01, within(1e-12));
    assertThat(low.practical().low().reason()).isEqualTo(Bound.Reason.PIECE_END);
    assertThat(low.practical().high().value()).isCloseTo(0.18, within(1e-12));
    assertThat(low.practical().high().reason()).isEqualTo(Bound.Reason.NEXT_GATE);
    assertThat(high.practical().low().value()).isCloseTo(0.12, within(1e-12));
    assertThat(high.practical().high().reason()).isEqualTo(Bound.Reason.PIECE_END);
  }

  /** The rim half as thick as the middle. */
  private static PourCase withThinRim(PourCase job) {
    return job.withPiece(
        job.piece()
            .withStations(
                stations ->
                    stations.stream()
                        .map(s -> s.with(s.thickness(), OptionalDouble.of(0.5 * s.thickness())))
                        .toList()));
  }

  /** Gates 20 mm wide on the left side. */
  private static PourCase withSideGates(PourCase job, double... places) {
    String limb = job.piece().limbs().get(0).name();
    List<Gate> gates = new ArrayList<>();
    for (double place : places) {
      gates.add(new Gate("at " + place, new Place.At(limb, place, Side.LEFT), 0.02, 3e-3, 0.015));
    }
    return job.withGating(job.gating().withGates(gates));
  }

  @Test
  void everyEntryIsALeverOfSomeJob() {
    List<String> seen = everyLever().map(c -> c.lever().key()).distinct().toList();
    List<String> all = Levers.ALL.stream().map(LeverEntry::key).toList();
    assertThat(all).doesNotHaveDuplicates();
    assertThat(seen).containsExactlyInAnyOrderElementsOf(all);
  }

  private static double movedOn(Lever lever) {
    double high = lever.practical().high().value();
    double low = lever.practical().low().value();
    double end = high - lever.now() >= lever.now() - low ? high : low;
    if (end == lever.now()) {
      return 1.1 * end;
    }
    return lever.stepwise() ? end : lever.now() + 0.5 * (end - lever.now());
  }

  private static MouldMedium named(String name, MouldMedium m) {
    return new MouldMedium(
        name,
        m.family(),
        m.conductivity(),
        m.conductivityFactor(),
        m.specificHeat(),
        m.density(),
        m.porosity(),
        m.permeability(),
        m.contactLiquid(),
        m.contactGap(),
        m.skinFrees(),
        m.gapOpen(),
        m.ceiling());
  }

  private void isComplete(PourCase job) {
    assertThat(job.piece().limbs()).isNotEmpty();
    assertThat(job.metal().melted()).isPositive();
  }
}
