package lastinch.solver.geometry.cavity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.GapMap;
import lastinch.solver.casting.GapMap.Kind;
import lastinch.solver.casting.GapMap.Opening;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Feeder;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Overflow;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.casting.gating.Vent;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Gates, runner, overflow, feeder, vent and sprue foot on the map against their own sizes. */
class GatingMapExactSolutionTest {
  private static final double CELL = 1e-3;
  private static final double LONG = 0.2;

  /** A flat strip 6 mm thick: every gate is thinner, so none is cut in by more than a hair. */
  private static PourCase strip() {
    return SampleJob.strip(LONG, 0.03, 0.006).section(SectionForm.FLAT).build();
  }

  private static PourCase gated(
      PourCase job,
      Optional<Runner> runner,
      List<Gate> gates,
      List<Overflow> overflows,
      List<Feeder> feeders) {
    String limb = job.piece().limbs().get(0).name();
    return job.withGating(
        job.gating()
            .withWell(Optional.empty())
            .withRunner(runner)
            .withGates(gates)
            .withVents(List.of(new Vent("vent", new Place.At(limb, LONG, Side.TIP), 2e-3)))
            .withOverflows(overflows)
            .withFeeders(feeders));
  }

  private static Gate gate(PourCase job, String name, double at, Side side) {
    String limb = job.piece().limbs().get(0).name();
    return new Gate(name, new Place.At(limb, at, side), 0.02, 3e-3, 0.025);
  }

  private static double area(List<Opening> openings) {
    return openings.stream().mapToDouble(Opening::area).sum();
  }

  @Test
  void anEndGateAndItsRunnerHoldWidthTimesThicknessTimesLength() {
    PourCase job = strip();
    Runner runner = new Runner.Straight(0.06, 0.015, 0.012, 0.0);
    Gate end = gate(job, "end", 0.0, Side.THICK_END);
    GapMap map =
        CavityMap.of(gated(job, Optional.of(runner), List.of(end), List.of(), List.of()), CELL);
    // an eighth of a cell at each rim: 0.125 mm of 15 mm
    assertThat(map.volumeOf(Kind.GATE)).isCloseTo(0.02 * 3e-3 * 0.025, within(2e-8));
    assertThat(map.volumeOf(Kind.RUNNER)).isCloseTo(0.06 * 0.015 * 0.012, within(1.5e-7));
    double foot = job.gating().sprue().foot();
    assertThat(area(map.inlets())).isCloseTo(Math.PI / 4.0 * foot * foot, within(1e-12));
    assertThat(area(map.vents())).isCloseTo(Math.PI * 1e-6, within(1e-12));
  }

  @Test
  void aSideRunnerReachesPastItsGatesAndEachGateIsAPartOfItsOwn() {
    PourCase job = strip();
    Runner runner =
        new Runner.Alongside(Side.LEFT, 0.025, 0.014, 0.012, Runner.FedFrom.THICK_END, 0.03);
    List<Gate> gates =
        List.of(gate(job, "one", 0.05, Side.LEFT), gate(job, "two", 0.15, Side.LEFT));
    GapMap map = CavityMap.of(gated(job, Optional.of(runner), gates, List.of(), List.of()), CELL);
    assertThat(map.parts()).extracting(GapMap.Part::name).contains("one", "two", "runner");
    // between the gates 100 mm, at the fed end its own width, at the other end 30 mm run-on
    double length = 0.1 + 0.014 + 0.03;
    assertThat(map.volumeOf(Kind.RUNNER)).isCloseTo(length * 0.014 * 0.012, within(5e-7));
    assertThat(map.volumeOf(Kind.GATE)).isCloseTo(2 * 0.02 * 3e-3 * 0.025, within(6e-8));
  }

  @Test
  void anOverflowHoldsItsRoomAndItsNeck() {
    PourCase job = strip();
    String limb = job.piece().limbs().get(0).name();
    Overflow pocket = new Overflow("pocket", new Place.At(limb, LONG, Side.TIP), 0.012, 2e-3, 8e-6);
    GapMap map =
        CavityMap.of(
            gated(
                job,
                Optional.empty(),
                List.of(gate(job, "end", 0.0, Side.THICK_END)),
                List.of(pocket),
                List.of()),
            CELL);
    double neck = 5e-3 * 0.012 * 2e-3;
    assertThat(map.volumeOf(Kind.OVERFLOW)).isCloseTo(8e-6 + neck, within(1e-7));
    // the neck alone is more than what is let through
    assertThat(neck).isGreaterThan(1e-7);
  }

  @Test
  void aFeederIsADiscOfItsHeight() {
    PourCase job = strip();
    String limb = job.piece().limbs().get(0).name();
    Feeder feeder =
        new Feeder("feeder", new Place.At(limb, 0.1, Side.LEFT), 0.03, 0.04, 5e-3, false, false);
    GapMap map =
        CavityMap.of(
            gated(
                job,
                Optional.empty(),
                List.of(gate(job, "end", 0.0, Side.THICK_END)),
                List.of(),
                List.of(feeder)),
            CELL);
    double disc = Math.PI / 4.0 * 0.03 * 0.03 * 0.04;
    // its neck, 5 mm square and some 2.5 mm long, comes on top
    assertThat(map.volumeOf(Kind.FEEDER)).isBetween(disc, 1.01 * disc);
    double square = 0.03 * 0.03 * 0.04;
    assertThat(square).as("a square taken for a disc").isGreaterThan(1.2 * disc);
  }
}
