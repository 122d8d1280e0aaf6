package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lastinch.solver.charge.MeltProperties;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.EdgeStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/**
 * Rims against what can be worked out by hand: how long metal at rest in one stays open, what
 * pushes on it, and where one state gives way to the next.
 */
class RestingRimExactSolutionTest {
  private static final double G = 9.80665;
  private static final double DENSITY = 8000.0;
  private static final double THICK = 3e-3;
  private static final double EDGE = 2e-3;
  private static final double WALL = 500.0 + SampleJob.ZERO;
  private static final double CONTACT = 1000.0;

  private static PourResult pour(SampleJob job) {
    return DryPour.run(job.build(), RunObserver.NONE, () -> false);
  }

  @Test
  void metalAtRestInARimFreezesShutInTheTimeThatItsHeatTakesToLeave() {
    NetworkRun run =
        new NetworkRun(
            SampleJob.empty()
                .station(0.0, 0.04, THICK, EDGE)
                .station(0.5, 0.04, THICK, EDGE)
                .alloy(SampleFoundry.pureMetal())
                .medium(SampleFoundry.roundMould(CONTACT))
                .mouldAt(WALL)
                .checking(SampleJob.Options.bare().mush(0.0).mouldStays().entersAt(0.5))
                .build());
    int cell = -1;
    while (cell < 0) {
      run.step();
      cell = firstReached(run);
    }
    MeltProperties melt = run.state.melt;
    // two faces and the face at its end, from a strip 4 mm broad; metal and contact in series
    double area = 4e-3 * EDGE;
    double wetted = 2.0 * 4e-3 + EDGE;
    double series = 1.0 / (1.0 / CONTACT + 2.0 * area / wetted / (6.0 * melt.conductivity));
    double pull = series * wetted / (melt.density * area);
    double freezes = 1000.0 + SampleJob.ZERO;
    double hot = melt.table.temperature(run.rims.enthalpy(cell));
    double cools = melt.specificHeat / pull * Math.log((hot - WALL) / (freezes - WALL));
    double shuts = 0.85 * melt.table.latentHeat() / (pull * (freezes - WALL));
    double dt = 1e-4;
    double time = 0.0;
    while (run.rims.isLive(cell) && time < 100.0) {
      run.rims.rest(cell, dt, WALL);
      time += dt;
    }
    // plain steps of 0.1 ms, thousands of them: 0.1 % leaves room for the last one and its curve
    assertThat(time).isCloseTo(cools + shuts, withinPercentage(0.1));
    assertThat(shuts).isGreaterThan(cools);
  }

  private static int firstReached(NetworkRun run) {
    for (int cell = 0; cell < run.state.allCells; cell++) {
      if (run.rims.strip(cell).isThere() && run.rims.isReached(cell)) {
        return cell;
      }
    }
    return -1;
  }

  @Test
  void rimThatIsAsTheMiddleIsKeptAsWarmFromBehind() {
    // 8 mm wide: the two strips are the whole section, with the same wall for the same metal
    PourResult result = pour(halves(1.0));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    int last = result.passages().get(0).size() - 1;
    double middle = result.passages().get(0).arrivalTemperature(last);
    assertThat(result.edgeAtStations().get(1).temperature()).isCloseTo(middle, within(1.0));
    // what comes from behind is twenty times that, and more
    PourResult alone = pour(halves(0.0));
    double unwarmed = alone.passages().get(0).arrivalTemperature(last);
    assertThat(middle - unwarmed).isGreaterThan(20.0);
  }

  private static SampleJob halves(double spreading) {
    double edge = THICK * (1.0 - 1e-6);
    return SampleJob.empty()
        .station(0.0, 8e-3, THICK, edge)
        .station(0.9, 8e-3, THICK, edge)
        .medium(SampleFoundry.roundMould(CONTACT))
        .mouldAt(WALL)
        .checking(SampleJob.Options.bare().spreading(spreading).mouldStays().entersAt(0.5));
  }

  @Test
  void airThatIsShutInPushesBackOnTheRimToo() {
    double head = 0.05;
    PourResult result =
        pour(
            SampleJob.empty()
                .station(0.0, 0.03, THICK, EDGE)
                .station(3.0, 0.03, THICK, EDGE)
                .alloy(SampleFoundry.neverFreezesNorHolds())
                .medium(SampleFoundry.roundMould(CONTACT))
                .checking(SampleJob.Options.bare().pushesBack().friction(4.0).cupKeptAt(head)));
    assertThat(result.outcome()).isInstanceOf(Outcome.Misrun.class);
    // at rest the air pushes as hard as the metal: nothing is left to press it into the rim
    double full = DENSITY * G * head;
    assertThat(result.edgeAtStations().get(0).push()).isLessThan(0.9 * full);
  }

  @Test
  void metalStandsOverTheRimNoHigherThanTheCupHolds() {
    double tall = 0.12;
    double deep = 0.03;
    PourResult result =
        pour(
            SampleJob.empty()
                .station(0.0, 0.03, THICK, EDGE)
                .station(0.2, 0.03, THICK, EDGE)
                .alloy(SampleFoundry.neverFreezes())
                .medium(SampleFoundry.roundMould(CONTACT))
                .vent(0.2, 0.01)
                .cup(0.03, deep)
                .sprueAt(tall, 0.018, 0.014, lastinch.solver.casting.Side.THICK_END)
                .melted(20.0)
                .empties(8.0));
    assertThat(result.outcome()).isInstanceOf(Outcome.Filled.class);
    // 20 kg would stand metres high in so narrow a cup
    assertThat(result.edgeAtStations().get(0).push())
        .isCloseTo(DENSITY * G * (tall + deep), withinPercentage(0.1));
  }

  @Test
  void oneStateGivesWayToTheNextOnTheFaceBetweenTwoCells() {
    double head = 0.05;
    double thinnest = 2.0 * 1.2 / (DENSITY * G * head);
    double length = 0.2;
    PourResult result =
        pour(
            SampleJob.empty()
                .station(0.0, 0.03, 8e-3, 2.0 * thinnest)
                .station(length, 0.03, 8e-3, 0.5 * thinnest)
                .alloy(SampleFoundry.neverFreezes())
                .medium(SampleFoundry.roundMould(CONTACT))
                .vent(length, 0.01)
                .checking(SampleJob.Options.bare().pushesBack().cupKeptAt(head)));
    int cells = result.passages().get(0).size();
    double dx = length / cells;
    // the rim thins straight from 2 to 0.5: middles up to two thirds of the way still take metal
    long full = Math.round(length * 2.0 / 3.0 / dx);
    EdgeStretch rounded = result.edges().get(1);
    assertThat(rounded.cause()).isEqualTo(EdgeStretch.Cause.PUSH);
    assertThat(rounded.from()).isCloseTo(full * dx, within(1e-9));
  }

  @Test
  void rimThatFreezesOnTheWayStopsInsideTheCellAndNotOnItsFace() {
    double width = 0.04;
    double dx = 0.02;
    PourResult result =
        pour(
            SampleJob.empty()
                .station(0.0, width, THICK, EDGE)
                .station(3.0, width, THICK, EDGE)
                .medium(SampleFoundry.roundMould(CONTACT))
                .mouldAt(WALL)
                .checking(SampleJob.Options.bare().cell(dx).mouldStays().entersAt(0.5)));
    assertThat(result.passages().get(0).size()).isEqualTo(150);
    double middle = width * THICK / (2.0 * (width + THICK));
    double rim = 4e-3 * EDGE / (2.0 * 4e-3 + EDGE);
    // both lose heat by the same law from the first middle on, the rim faster by its modulus
    double first = 0.5 * dx;
    double expected = first + (result.reach() - first) * rim / middle;
    assertThat(result.edges().get(1).cause()).isEqualTo(EdgeStretch.Cause.HEAT);
    // a fifth of a cell: what a straight line between two middles is off by stays well below
    assertThat(result.edges().get(0).to()).isCloseTo(expected, within(0.2 * dx));
  }
}
