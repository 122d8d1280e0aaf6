package lastinch.solver.plane;

import static org.assertj.core.api.Assertions.assertThat;

import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;
import lastinch.solver.result.Outcome;
import lastinch.solver.run.SampleJob;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Where a thin even strip in cold sand stops, on finer and finer squares: 1.2 mm thick, 12 mm wide,
 * fed across its whole end under 30 mm of metal, two thirds of which the gap eats up. Round figures
 * throughout. No sides: a rim freezes first, and the ragged front that it makes hides the order.
 */
class FluidityStripConvergenceTest {
  private static final double GAP = 1.2e-3;
  private static final double WIDE = 12e-3;
  private static final double LONG = 0.2;

  private static Alloy metal() {
    return new Alloy(
        "strip metal",
        new FreezingCurve.Straight(1010.0 + SampleJob.ZERO, 830.0 + SampleJob.ZERO),
        Band.typed(190e3),
        Band.typed(480.0),
        Band.typed(480.0),
        Band.typed(60.0),
        Band.typed(60.0),
        Band.typed(8000.0),
        0.0,
        Band.typed(8000.0),
        Band.typed(0.004),
        Band.typed(1.2),
        Band.typed(Math.acos(-0.8)),
        Band.typed(1.0),
        FilmForming.NO,
        Band.typed(0.35),
        Band.typed(0.05),
        Band.typed(1373.0));
  }

  private static MouldMedium sand() {
    return new MouldMedium(
        "round sand",
        MouldFamily.SAND,
        Curve.constant(0.8),
        Band.typed(1.0),
        Curve.constant(1000.0),
        Band.typed(1500.0),
        0.45,
        Band.typed(1e-10),
        Band.typed(1500.0),
        Band.typed(1500.0),
        Band.typed(0.4),
        Band.typed(0.9),
        Band.typed(2500.0));
  }

  /** Length filled where it stops [m]. */
  private static double stop(double cell, SampleJob.Options options) {
    int across = (int) Math.rint(WIDE / cell);
    EvenPlate strip =
        new EvenPlate((int) Math.rint(LONG / cell), across, cell, GAP, false)
            .gate("gate", 0, 0, across - 1);
    PourCase job =
        SampleJob.strip(LONG, WIDE, GAP)
            .gate(EvenPlate.named("gate", Side.THICK_END, WIDE, GAP))
            .alloy(metal())
            .medium(sand())
            .mouldAt(25.0 + SampleJob.ZERO)
            .reads(1100.0 + SampleJob.ZERO)
            .checking(options.cupKeptAt(0.03).mush(1.0))
            .build();
    PlaneRun run = new PlaneRun(job, strip.map());
    assertThat(run.run((time, filled) -> {}, () -> false)).isInstanceOf(Outcome.Misrun.class);
    return run.flow.state.totalLiquid() / run.grid.totalVolume() * LONG;
  }

  private static double stop(double cell) {
    return stop(cell, SampleJob.Options.ordinary());
  }

  /** A change that goes on the same way and falls by a third at least: first order halves it. */
  private static void closesIn(double coarse, double fine, double finest) {
    double ratio = (finest - fine) / (fine - coarse);
    assertThat(ratio).isBetween(0.0, 2.0 / 3.0);
  }

  @Test
  void stopPlaceClosesInFromOneSide() {
    double coarse = stop(4e-3);
    double fine = stop(2e-3);
    double finest = stop(1e-3);
    closesIn(coarse, fine, finest);
    assertThat(Math.abs(finest - fine)).isLessThan(0.02 * finest);
  }

  @Test
  @Tag("nightly")
  void stopPlaceClosesInOnSquaresOfHalfAMillimetreToo() {
    double coarse = stop(2e-3);
    double fine = stop(1e-3);
    double finest = stop(0.5e-3);
    closesIn(coarse, fine, finest);
    assertThat(Math.abs(finest - fine)).isLessThan(0.01 * finest);
  }

  /** The plane carries leading metal by marks; without warming from behind it stops earlier. */
  @Test
  void withoutSpreadingItStopsEarlierAndClosesInToo() {
    double coarse = stop(4e-3, SampleJob.Options.ordinary().spreading(0.0));
    double fine = stop(2e-3, SampleJob.Options.ordinary().spreading(0.0));
    assertThat(fine).isLessThan(0.9 * stop(2e-3));
    assertThat(fine).isBetween(0.97 * coarse, 1.03 * coarse);
  }
}
