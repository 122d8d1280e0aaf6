package lastinch.solver.wall;

import lastinch.solver.material.Checks;
import lastinch.solver.physics.DryAir;

/**
 * What lies behind the outer end of a column: nothing that takes heat, or air.
 *
 * @param present whether the column ends in air; a shell does
 * @param temperature of air and surroundings [K]
 * @param convection film coefficient [W/(m2 K)]
 * @param emissivity of the outer face [-]
 */
public record OuterAir(boolean present, double temperature, double convection, double emissivity) {
  /** No flux at the outer end. */
  public static final OuterAir NONE = new OuterAir(false, DryAir.SHOP, 0.0, 0.0);

  public OuterAir {
    Checks.within("temperature", temperature, 200.0, 2000.0, "K");
    Checks.within("convection", convection, 0.0, 1e5, "W/(m2 K)");
    Checks.within("emissivity", emissivity, 0.0, 1.0, "-");
  }

  /** Air that takes heat by convection and radiation. */
  public static OuterAir of(double temperature, double convection, double emissivity) {
    return new OuterAir(true, temperature, convection, emissivity);
  }
}
