package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Dry air as an ideal gas, 200 to 2000 K and up to 5 bar. Sutherland's law is fitted to about 1900
 * K; against tables it is within 3 % to 1500 K.
 */
public final class DryAir {
  /** Where the figures come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "U.S. Standard Atmosphere 1976 (viscosity after Sutherland); White, Fluid Mechanics",
          "gas constant 287.05, specific heat ratio 1.4 held constant");

  /** Gas constant [J/(kg K)]; U.S. Standard Atmosphere 1976, from memory. */
  public static final double GAS_CONSTANT = 287.05;

  /** Ratio of specific heats, held constant [-]; White, Fluid Mechanics, from memory. */
  public static final double HEAT_RATIO = 1.4;

  /** Temperature of the air in the shop, 20 degC [K]; chosen. */
  public static final double SHOP = 293.15;

  /** Pressure of the open air at sea level [Pa]; U.S. Standard Atmosphere 1976, from memory. */
  public static final double OPEN_AIR = 101325.0;

  /** Factor of Sutherland's law [kg/(s m K^0.5)]; U.S. Standard Atmosphere 1976, from memory. */
  private static final double SUTHERLAND_FACTOR = 1.458e-6;

  /** Temperature of Sutherland's law [K]; U.S. Standard Atmosphere 1976, from memory. */
  private static final double SUTHERLAND_TEMPERATURE = 110.4;

  private DryAir() {}

  /**
   * Viscosity [Pa s].
   *
   * @param temperature [K], 100 to 3000
   */
  public static double viscosity(double temperature) {
    Checks.within("temperature", temperature, 100.0, 3000.0, "K");
    return SUTHERLAND_FACTOR
        * temperature
        * Math.sqrt(temperature)
        / (temperature + SUTHERLAND_TEMPERATURE);
  }

  /**
   * Density [kg/m3].
   *
   * @param pressure absolute [Pa], not negative
   * @param temperature [K]
   */
  public static double density(double pressure, double temperature) {
    Checks.within("pressure", pressure, 0.0, Double.MAX_VALUE, "Pa");
    Checks.within("temperature", temperature, 100.0, 3000.0, "K");
    return pressure / (GAS_CONSTANT * temperature);
  }
}
