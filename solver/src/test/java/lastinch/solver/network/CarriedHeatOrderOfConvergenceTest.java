package lastinch.solver.network;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.filling.RunObserver;
import lastinch.solver.network.layout.SectionShape;
import lastinch.solver.run.DryPour;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Test;

/**
 * How fast errors fall with the grid: heat carried through a full channel, leading metal's mark.
 */
class CarriedHeatOrderOfConvergenceTest {
  private static final double LENGTH = 1.0;
  private static final SectionShape ROUND = SectionShape.ellipse(0.01, 0.01);

  @Test
  void smoothRiseIsCarriedToSecondOrder() {
    double coarse = carryError(100);
    double fine = carryError(200);
    double finest = carryError(400);
    // L1 of a rise without an extreme; donor cells give 1
    assertThat(order(coarse, fine)).isGreaterThan(1.8);
    assertThat(order(fine, finest)).isGreaterThan(1.8);
  }

  @Test
  void nothingIsCarriedBeyondWhatThereWas() {
    Bench pipe = rise(100);
    carry(pipe, 100);
    for (int i = 0; i < 100; i++) {
      assertThat(enthalpy(pipe, i)).isBetween(-1e-7, 1e5 + 1e-7);
    }
  }

  @Test
  void leadingMetalsLengthConvergesToSecondOrder() {
    double coarse = lengthError(8e-3);
    double fine = lengthError(4e-3);
    double finest = lengthError(2e-3);
    // steps of a quarter cell, 4 to 1 ms; the mark itself never sees the grid
    assertThat(order(coarse, fine)).isGreaterThan(1.8);
    assertThat(order(fine, finest)).isGreaterThan(1.8);
  }

  private static double order(double coarse, double fine) {
    return Math.log(coarse / fine) / Math.log(2.0);
  }

  private static double lengthError(double cell) {
    double exact = 1.11985568;
    SampleJob job =
        SampleJob.plate(1.6 * exact, 0.002)
            .checking(SampleJob.Options.bare().mouldStays().entersAt(0.5).cell(cell));
    return Math.abs(DryPour.run(job.build(), RunObserver.NONE, () -> false).reach() - exact);
  }

  private static double carryError(int cells) {
    Bench pipe = rise(cells);
    carry(pipe, cells);
    double error = 0.0;
    for (int i = 0; i < cells; i++) {
      error += Math.abs(enthalpy(pipe, i) - mean(i, cells, 0.4)) / cells;
    }
    return error;
  }

  /** A rise from cold metal ahead to hot metal behind, about a fifth of the way in. */
  private static Bench rise(int cells) {
    Bench pipe = Bench.full(LENGTH, 0.0, LENGTH / cells, 0.1, 0.0, s -> ROUND);
    for (int i = 0; i < cells; i++) {
      pipe.channel.middle.heat[i] = pipe.density * pipe.channel.wet[i] * mean(i, cells, 0.0);
    }
    pipe.state.cupEnthalpy = 1e5;
    return pipe;
  }

  /** Four tenths of the channel on, in steps of 0.4 cells. */
  private static void carry(Bench pipe, int cells) {
    pipe.channel.flowA = ROUND.area();
    for (int k = 0; k < cells; k++) {
      pipe.transport.advance(0.4 / cells);
    }
  }

  private static double enthalpy(Bench pipe, int i) {
    return pipe.channel.enthalpy(i, pipe.density);
  }

  /** Cell mean of half a hyperbolic tangent's step, moved on. */
  private static double mean(int i, int cells, double moved) {
    double width = 0.06;
    double a = (i * LENGTH / cells - 0.3 - moved) / width;
    double b = ((i + 1) * LENGTH / cells - 0.3 - moved) / width;
    double integral = Math.log(Math.cosh(b) / Math.cosh(a)) / (b - a);
    return 1e5 * 0.5 * (1.0 - integral);
  }
}
