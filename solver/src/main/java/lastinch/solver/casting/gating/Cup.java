package lastinch.solver.casting.gating;

import lastinch.solver.material.Checks;

/**
 * Pouring cup, a round well of even width.
 *
 * @param across inside [m]
 * @param depth floor to rim [m]
 */
public record Cup(double across, double depth) {
  public Cup {
    Checks.within("across", across, 5e-3, 1.0, "m");
    Checks.within("depth", depth, 1e-3, 1.0, "m");
  }

  /** Plan area [m2]. */
  public double area() {
    return Math.PI / 4 * across * across;
  }

  /** Volume to the rim [m3]. */
  public double volume() {
    return area() * depth;
  }
}
