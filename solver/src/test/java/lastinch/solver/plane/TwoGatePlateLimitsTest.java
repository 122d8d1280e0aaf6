package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.plane.record.MeetingLines;
import lastinch.solver.result.Meeting;
import lastinch.solver.run.SampleFoundry;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A plate of 100 x 60 x 3 mm poured through gates on opposite sides: streams that meet leave one
 * line, half way by symmetry; one stream leaves none, though it turns at the far wall.
 */
class TwoGatePlateLimitsTest {
  private static final double CELL = 2e-3;
  private static final double GAP = 3e-3;
  private static final int ALONG = 50;
  private static final int ACROSS = 30;

  private static List<Meeting> poured(boolean both, int from, double speed) {
    EvenPlate plate = new EvenPlate(ALONG, ACROSS, CELL, GAP, true);
    plate.gate("left", 0, from, ACROSS - 1 - from);
    if (both) {
      plate.gate("right", ALONG - 1, from, ACROSS - 1 - from);
    }
    PourCase job =
        EvenPlate.withTwoGates(SampleJob.strip(0.1, 0.06, GAP), false)
            .alloy(SampleFoundry.tinBronze())
            .medium(SampleFoundry.sand())
            .mouldAt(293.15)
            .checking(SampleJob.Options.ordinary().entersAt(speed))
            .build();
    PlaneRun run = new PlaneRun(job, plate.map());
    run.run((time, filled) -> {}, () -> EvenPlate.isFull(run));
    assertThat(run.filledFraction()).isGreaterThan(0.998);
    return new MeetingLines(run).find().stream().map(MeetingLines.Line::meeting).toList();
  }

  /** The row of cells half way is the 25th or the 26th: within one cell. */
  @ParameterizedTest
  @CsvSource({"10, 0.15", "6, 0.3"})
  void streamsFromBothSidesMeetHalfWay(int from, double speed) {
    List<Meeting> met = poured(true, from, speed);
    assertThat(met).hasSize(1);
    assertThat(met.get(0).at()).isCloseTo(0.05, within(CELL));
    assertThat(met.get(0).temperatureA()).isCloseTo(met.get(0).temperatureB(), within(1.0));
    assertThat(List.of(met.get(0).gateA(), met.get(0).gateB())).containsExactly("left", "right");
  }

  @ParameterizedTest
  @CsvSource({"10, 0.15", "6, 0.3"})
  void oneStreamLeavesNone(int from, double speed) {
    assertThat(poured(false, from, speed)).isEmpty();
  }
}
