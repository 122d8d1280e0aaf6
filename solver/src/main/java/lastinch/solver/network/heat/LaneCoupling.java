package lastinch.solver.network.heat;

import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.Lane;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.layout.SectionRims;
import lastinch.solver.physics.Slurry;

/**
 * What middle and rims of a section do to each other: heat goes across, and cold rims hold back.
 */
final class LaneCoupling {
  /**
   * Friction over that of slow flow from which metal counts as fully turbulent [-]: f Re of a
   * smooth slot at Re 4000 over 96.
   */
  private static final double FULLY = 1.65;

  private final MeltProperties melt;

  LaneCoupling(NetworkState state) {
    melt = state.melt;
  }

  /**
   * Lets heat go between the lanes of a cell for a time [s], implicit in the difference.
   *
   * @param enthalpy of both lanes [J/kg], changed in place
   */
  void conduct(Channel c, int i, double dt, double[] enthalpy) {
    Lane middle = c.middle;
    Lane rims = c.lanes[Lane.RIMS];
    SectionRims section = c.shape.rims(i);
    double massM = c.mass(middle, i, melt.density);
    double massR = c.mass(rims, i, melt.density);
    if (massM <= 0.0 || massR <= 0.0) {
      return;
    }
    double warm = melt.table.temperature(enthalpy[Lane.MIDDLE]);
    double cold = melt.table.temperature(enthalpy[Lane.RIMS]);
    double length = c.shape.dx * c.fill(i);
    double link = 2.0 * melt.conductivity * section.join() * length / section.breadth();
    double slack = dt * link * (1.0 / massM + 1.0 / massR) / melt.specificHeat;
    double passed = dt * link * (warm - cold) / (1.0 + slack);
    middle.heat[i] -= passed;
    rims.heat[i] += passed;
    enthalpy[Lane.MIDDLE] = middle.heat[i] / massM;
    enthalpy[Lane.RIMS] = rims.heat[i] / massR;
  }

  /**
   * Sets how turbulent the flow of a cell is, by how far friction is over that of slow flow, and
   * what stiffening and skin have left of how its rims flow against its middle.
   */
  void ease(Channel c, int i) {
    Lane middle = c.middle;
    Lane rims = c.lanes[Lane.RIMS];
    double fast = fast(c, i);
    c.turbulence[i] = Math.min(1.0, (fast - 1.0) / (FULLY - 1.0));
    if (isShut(rims, i)) {
      c.rimEase[i] = 0.0;
      return;
    }
    double open = rims.openShare[i] / middle.openShare[i];
    double slow = open * open * open * middle.thickening[i] / rims.thickening[i];
    c.rimEase[i] = Math.min(1.0, Math.min(open * Math.sqrt(open), fast * slow));
  }

  /** Friction of the middle over that of slow flow at the same speed [-], 1 or more. */
  private double fast(Channel c, int i) {
    Lane middle = c.middle;
    double viscosity = melt.flowingViscosity() * middle.thickening[i];
    double diameter = c.shape.hydraulicDiameter[i] * middle.openShare[i];
    double flow = c.full || c.frontOf(i) == c.frontA ? c.flowA : c.flowB;
    double speed = c.lead(i) * Math.abs(flow) / (c.shape.meanArea[i] * middle.openShare[i]);
    double reynolds = melt.density * speed * diameter / viscosity;
    double laminar = c.shape.laminarProduct[i];
    return Math.max(1.0, melt.friction.product(reynolds, laminar, diameter) / laminar);
  }

  private boolean isShut(Lane lane, int i) {
    double open = lane.gap[i] * lane.openShare[i];
    return Slurry.isShut(
        false, lane.slurry[i], melt.flowStop, open, Slurry.openGapStop(lane.gap[i]));
  }
}
