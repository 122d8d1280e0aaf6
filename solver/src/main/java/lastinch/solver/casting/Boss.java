package lastinch.solver.casting;

import lastinch.solver.material.Checks;

/**
 * A thick block before the first station.
 *
 * @param length along the piece [m]
 * @param width across [m]
 * @param depth through the parting plane [m]
 */
public record Boss(double length, double width, double depth) {
  public Boss {
    Checks.within("length", length, 1e-3, 2.0, "m");
    Checks.within("width", width, 1e-3, 2.0, "m");
    Checks.within("depth", depth, 1e-4, 0.5, "m");
  }
}
