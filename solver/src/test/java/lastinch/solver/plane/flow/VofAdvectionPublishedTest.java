package lastinch.solver.plane.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import lastinch.solver.plane.PrescribedFlow;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Published shapes carried by prescribed speeds. Demands: slotted disk 0.02 on 200 x 200 (published
 * sharp schemes 0.011 to 0.013, schemes with a smeared surface above 0.03), reversed shear 0.012
 * (Youngs 0.0086, flux-corrected transport 0.031), reversed vortex 4e-3 of area. Rudman, Int. J.
 * Numer. Meth. Fluids 24 (1997) 671; Rider and Kothe, J. Comput. Phys. 141 (1998) 112; from memory.
 */
class VofAdvectionPublishedTest {
  private static double disk(double x, double y) {
    boolean slot = Math.abs(x - 2.0) < 0.06 && y < 2.25 + 0.6;
    double r2 = (x - 2.0) * (x - 2.0) + (y - 2.75) * (y - 2.75);
    return slot ? -1.0 : 0.25 - r2;
  }

  private static double turn(boolean smeared, double[] bounds) {
    PrescribedFlow flow = new PrescribedFlow(200, 4.0);
    flow.fill(VofAdvectionPublishedTest::disk);
    flow.stream((x, y) -> -0.25 * ((x - 2.0) * (x - 2.0) + (y - 2.0) * (y - 2.0)));
    double[] before = flow.state.liquid.clone();
    double mass = flow.state.totalLiquid();
    int steps = 1600;
    for (int k = 0; k < steps; k++) {
      if (smeared) {
        flow.smearedStep(4.0 * Math.PI / steps);
      } else {
        flow.step(4.0 * Math.PI / steps);
      }
      bounds[0] = Math.min(bounds[0], flow.bounds()[0]);
      bounds[1] = Math.max(bounds[1], flow.bounds()[1]);
    }
    assertThat(flow.state.totalLiquid()).isCloseTo(mass, offset(1e-12 * mass));
    return flow.differenceTo(before);
  }

  @Test
  void slottedDiskComesRoundWithinTwoPercent() {
    double[] bounds = {0.0, 1.0};
    assertThat(turn(false, bounds)).isLessThan(0.02);
    assertThat(bounds[0]).isGreaterThanOrEqualTo(-1e-10);
    assertThat(bounds[1]).isLessThanOrEqualTo(1.0 + 1e-10);
  }

  @Test
  void slottedDiskIsLostByUpwindShares() {
    assertThat(turn(true, new double[] {0.0, 1.0})).isGreaterThan(0.2);
  }

  private static double shear(int steps) {
    PrescribedFlow flow = new PrescribedFlow(100, Math.PI);
    double cy = 0.2 * (1.0 + Math.PI);
    flow.fill(
        (x, y) ->
            Math.PI * Math.PI / 25.0
                - (x - Math.PI / 2.0) * (x - Math.PI / 2.0)
                - (y - cy) * (y - cy));
    double[] before = flow.state.liquid.clone();
    double dt = 0.25 * Math.PI / 100.0;
    flow.stream((x, y) -> Math.sin(x) * Math.sin(y));
    for (int k = 0; k < steps; k++) {
      flow.step(dt);
    }
    flow.stream((x, y) -> -Math.sin(x) * Math.sin(y));
    for (int k = 0; k < steps; k++) {
      flow.step(dt);
    }
    return flow.differenceTo(before);
  }

  @Test
  void shearedDiskReturns() {
    assertThat(shear(1000)).isLessThan(0.012);
  }

  private static double vortex(int n, double period) {
    PrescribedFlow flow = new PrescribedFlow(n, 1.0);
    flow.fill((x, y) -> 0.0225 - (x - 0.5) * (x - 0.5) - (y - 0.75) * (y - 0.75));
    double[] before = flow.state.liquid.clone();
    int steps = (int) Math.ceil(period * n * 4.0);
    double dt = period / steps;
    for (int k = 0; k < steps; k++) {
      double c = Math.cos(Math.PI * (k + 0.5) / steps) / Math.PI;
      flow.stream(
          (x, y) -> {
            double sx = Math.sin(Math.PI * x);
            double sy = Math.sin(Math.PI * y);
            return c * sx * sx * sy * sy;
          });
      flow.step(dt);
    }
    double off = 0.0;
    for (int c = 0; c < before.length; c++) {
      off += Math.abs(flow.state.liquid[c] - before[c]);
    }
    return off / 1e-3;
  }

  @Test
  void vortexGivesTheDiskBackAndFinerIsBetter() {
    double coarse = vortex(64, 2.0);
    double fine = vortex(128, 2.0);
    assertThat(fine).isLessThan(6e-4);
    assertThat(coarse).isLessThan(2e-3);
    assertThat(fine).isLessThan(0.5 * coarse);
  }

  /** Rider and Kothe have 1.44e-3 here, a plain scheme of the same kind 2.2e-3. */
  @Test
  @Tag("nightly")
  void vortexThatDrawsTheDiskOutLongGivesItBack() {
    assertThat(vortex(128, 8.0)).isLessThan(4e-3);
  }
}
