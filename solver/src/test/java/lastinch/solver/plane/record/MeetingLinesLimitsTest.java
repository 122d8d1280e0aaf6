package lastinch.solver.plane.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.geometry.cavity.CavityMap;
import lastinch.solver.plane.PlaneRun;
import lastinch.solver.plane.flow.PlaneGrid;
import lastinch.solver.result.Meeting;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/** Lines read from given times of arrival: where streams came from both sides, and nowhere else. */
class MeetingLinesLimitsTest {
  private static final double LENGTH = 0.12;

  private static PlaneRun arriving(double hot, DoubleBinaryOperator time) {
    PourCase job =
        SampleJob.strip(LENGTH, 0.03, 0.002).gateAt(Side.THICK_END, 0.02, 0.002, 0.006).build();
    PlaneRun run = new PlaneRun(job, CavityMap.of(job, 2e-3));
    for (int c = 0; c < run.grid.size; c++) {
      if (run.piece[c] && run.grid.volume[c] > 0.0) {
        double x = run.map.along(run.mapCell[c]);
        double y = (c / run.grid.stride - PlaneGrid.HALO + 0.5) * 2e-3 - 0.5 * run.grid.ny * 2e-3;
        run.recorder.time[c] = 1.0 + time.applyAsDouble(x, y);
        run.recorder.enthalpy[c] = hot;
      }
    }
    return run;
  }

  private static List<Meeting> found(double hot, DoubleBinaryOperator time) {
    return new MeetingLines(arriving(hot, time))
        .find().stream().map(MeetingLines.Line::meeting).toList();
  }

  @Test
  void frontsFromBothEndsMeetInOneLineAcross() {
    List<Meeting> met = found(50e3, (x, y) -> -Math.abs(x - 0.07));
    assertThat(met).hasSize(1);
    assertThat(met.get(0).at()).isCloseTo(0.07, offset(2e-3));
    assertThat(met.get(0).kind()).isEqualTo(Meeting.Kind.JOINED);
  }

  @Test
  void aLineThatLiesSlantedToTheGridIsOneLineToo() {
    List<Meeting> met = found(50e3, (x, y) -> -Math.abs(x + y - 0.06));
    assertThat(met).hasSize(1);
    assertThat(met.get(0).at()).isCloseTo(0.06, offset(3e-3));
  }

  @Test
  void oneStreamMakesNone() {
    assertThat(found(50e3, (x, y) -> x)).isEmpty();
    assertThat(found(50e3, (x, y) -> Math.hypot(x, y))).isEmpty();
  }

  /** A middle that lags a little behind its sides, by 17 degrees of slant, is one front still. */
  @Test
  void aFrontWithAHollowMakesNone() {
    assertThat(found(50e3, (x, y) -> x - 0.3 * Math.abs(y))).isEmpty();
  }

  /** Two sides that close in on a middle left behind meet along it. */
  @Test
  void sidesThatCloseInMakeOneAlongTheMiddle() {
    assertThat(found(50e3, (x, y) -> 0.2 * x - Math.abs(y))).hasSize(1);
  }

  /** Round metal freezes between 1000 and 850 degC; a quarter solid is past what joins or shows. */
  @Test
  void coldMetalDoesNotJoin() {
    List<Meeting> met = found(-0.25 * 257e3, (x, y) -> -Math.abs(x - 0.07));
    assertThat(met).hasSize(1);
    assertThat(met.get(0).kind()).isEqualTo(Meeting.Kind.COLD_SHUT);
  }
}
