package lastinch.solver.casting.gating;

import lastinch.solver.material.Checks;

/**
 * Round pocket under the foot of the sprue.
 *
 * @param across [m]
 * @param depth below the runner floor [m]
 */
public record Well(double across, double depth) {
  public Well {
    Checks.within("across", across, 1e-3, 0.5, "m");
    Checks.within("depth", depth, 1e-4, 0.5, "m");
  }
}
