package lastinch.solver.levers;

import lastinch.solver.material.Checks;

/**
 * Smallest steps a person's instruments show; answers fall on them.
 *
 * @param heatZero a round temperature [K]; others are whole steps from it
 * @param heat step of a meter worth asking for [K]
 * @param ruler step of a ruler [m]
 * @param calipers step of calipers [m]
 */
public record Marks(double heatZero, double heat, double ruler, double calipers) {
  public Marks {
    Checks.within("heat", heat, 1e-3, 100.0, "K");
    Checks.within("ruler", ruler, 1e-6, 0.1, "m");
    Checks.within("calipers", calipers, 1e-6, 0.01, "m");
  }
}
