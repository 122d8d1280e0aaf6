package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.plane.record.MeetingLines;
import lastinch.solver.result.Meeting;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two ways of equal length, metal coming down each at one speed, mould at its heat: where, when and
 * how hot the fronts meet follows from kinematics and the front's own clock, exp(-2 h t / (rho b
 * c)) above the liquidus, with the latent heat below it. Gap 2 mm, 1000 W/(m2 K), 1150 into 500
 * degC; the channel has no sides.
 */
class OppositeFrontsExactSolutionTest {
  private static final double CELL = 2e-3;
  private static final double GAP = 2e-3;
  private static final int ACROSS = 4;

  private static PlaneRun poured(double way, double speed, boolean swapped) {
    return poured(way, speed, swapped, 1000.0);
  }

  private static PlaneRun poured(double way, double speed, boolean swapped, double contact) {
    int n = (int) Math.rint(2.0 * way / CELL);
    EvenPlate channel = new EvenPlate(n, ACROSS, CELL, GAP, false);
    if (swapped) {
      channel.gate("right", n - 1, 0, ACROSS - 1).gate("left", 0, 0, ACROSS - 1);
    } else {
      channel.gate("left", 0, 0, ACROSS - 1).gate("right", n - 1, 0, ACROSS - 1);
    }
    PourCase job =
        EvenPlate.withTwoGates(SampleJob.strip(way, 0.01, GAP), swapped)
            .medium(SampleFoundry.roundMould(contact))
            .checking(SampleJob.Options.bare().mouldStays().entersAt(speed))
            .build();
    PlaneRun run = new PlaneRun(job, channel.map());
    run.run((time, filled) -> {}, () -> EvenPlate.isFull(run));
    return run;
  }

  private static Meeting met(PlaneRun run) {
    List<MeetingLines.Line> lines = new MeetingLines(run).find();
    assertThat(lines).hasSize(1);
    return lines.get(0).meeting();
  }

  /** Place 1 cell, time 1 %, 3 K, 0.01 of solid, as the check asks. */
  @ParameterizedTest
  @CsvSource({
    "0.3, 0.3, 997.983858, 0.0134409",
    "0.6, 0.3, 963.011610, 0.246589",
    "0.3, 0.15, 963.011610, 0.246589"
  })
  void frontsMeetHalfWay(double way, double speed, double celsius, double solid) {
    Meeting meeting = met(poured(way, speed, false));
    assertThat(meeting.at()).isCloseTo(way, within(CELL));
    assertThat(meeting.time()).isCloseTo(way / speed, within(0.01 * way / speed));
    assertThat(meeting.temperatureA() - SampleJob.ZERO).isCloseTo(celsius, within(3.0));
    assertThat(meeting.temperatureB() - SampleJob.ZERO).isCloseTo(celsius, within(3.0));
    assertThat(meeting.solidFraction()).isCloseTo(solid, within(0.01));
    assertThat(meeting.kind()).isEqualTo(solid > 0.15 ? Meeting.Kind.COLD_SHUT : Meeting.Kind.LAP);
  }

  @Test
  void orderOfTheGatesChangesNothing() {
    PlaneRun one = poured(0.3, 0.3, false);
    PlaneRun other = poured(0.3, 0.3, true);
    Meeting a = met(one);
    Meeting b = met(other);
    assertThat(other.recorder.time).containsExactly(one.recorder.time);
    assertThat(other.recorder.enthalpy).containsExactly(one.recorder.enthalpy);
    assertThat(b).isEqualTo(a);
    assertThat(List.of(a.gateA(), a.gateB())).containsExactly("left", "right");
  }

  /** The mean of the cells behind, which keeps what came in later, is no clock of the front. */
  @Test
  void heatOfTheCellsThemselvesFails() {
    PlaneRun run = poured(0.3, 0.3, false);
    double worst = 0.0;
    for (int c = 0; c < run.grid.size; c++) {
      if (run.map.isOpen(run.mapCell[c]) && Math.abs(along(run, c) - 0.3) < 2.0 * CELL) {
        double mean = run.heat.temperatureOf(run.flow.state, c) - SampleJob.ZERO;
        worst = Math.max(worst, Math.abs(mean - 997.983858));
      }
    }
    assertThat(worst).isGreaterThan(3.0);
  }

  private static double along(PlaneRun run, int c) {
    return run.grid.volume[c] > 0.0 ? run.map.along(run.mapCell[c]) : Double.MAX_VALUE;
  }

  /** A contact a tenth worse leaves it 8 K hotter: more than what is allowed. */
  @Test
  void anotherContactFails() {
    double found = met(poured(0.3, 0.3, false, 900.0)).temperatureA() - SampleJob.ZERO;
    assertThat(found).isNotCloseTo(997.983858, within(3.0));
  }
}
