package lastinch.solver.physics;

import lastinch.solver.material.Basis;
import lastinch.solver.material.Checks;
import lastinch.solver.material.Citation;

/**
 * Ways out for the air ahead of the metal. Every flow is a mass rate [kg/s], positive outward, with
 * a twin that gives its slope against the pocket's pressure [kg/(s Pa)] for implicit steps. Volume
 * at pocket conditions is the mass rate over {@link DryAir#density}.
 *
 * <ul>
 *   <li>Vent: ideal gas through a sharp hole, subsonic or choked. Straight line through zero within
 *       1 Pa of balance, where the true slope has no limit. Holes of 0.3 mm up.
 *   <li>Parting crack: laminar isothermal flow between plates, never more than the crack's mouth
 *       passes as an orifice. Cracks of 0.02 to 0.5 mm, Mach number below 0.3 inside.
 *   <li>Mould: isothermal Darcy flow spreading from a buried cylinder, quasi-steady out to the
 *       depth the pressure has reached. Permeability 1e-14 to 1e-9 m2; slip and inertia neglected.
 * </ul>
 */
public final class AirEscape {
  /** Where the laws come from. */
  public static final Citation SOURCE =
      new Citation(
          Basis.MEMORY,
          "White, Fluid Mechanics (nozzle, slot); Darcy 1856; Carslaw & Jaeger (buried cylinder)",
          "depth reached by the pressure, 2 r + sqrt(pi k p t/(mu phi)), is ours");

  /**
   * Discharge coefficient of the mouth of a parting crack [-]; White, Fluid Mechanics, from memory.
   */
  public static final double SLIT_DISCHARGE = 0.8;

  /** Pressure out over pressure in below which a hole is choked [-]. */
  public static final double CHOKING_RATIO =
      StrictMath.pow(
          2.0 / (DryAir.HEAT_RATIO + 1.0), DryAir.HEAT_RATIO / (DryAir.HEAT_RATIO - 1.0));

  /**
   * Distance from balance within which a hole passes air in proportion to it [Pa]; numerical, the
   * true slope has no limit: halved no stop moves.
   */
  private static final double LINEAR_BELOW = 1.0;

  /** Power of the pressure ratio in the first term of the nozzle law [-], ideal gas. */
  private static final double LOW_POWER = 2.0 / DryAir.HEAT_RATIO;

  /** Power of the pressure ratio in the second term [-], ideal gas. */
  private static final double HIGH_POWER = (DryAir.HEAT_RATIO + 1.0) / DryAir.HEAT_RATIO;

  /** Factor under the root of the subsonic nozzle law [-], ideal gas. */
  private static final double SUBSONIC = 2.0 * DryAir.HEAT_RATIO / (DryAir.HEAT_RATIO - 1.0);

  /**
   * Choked mass rate over area, pressure and the root of gas constant times temperature [-], ideal
   * gas.
   */
  private static final double CHOKED =
      Math.sqrt(DryAir.HEAT_RATIO)
          * StrictMath.pow(
              2.0 / (DryAir.HEAT_RATIO + 1.0),
              (DryAir.HEAT_RATIO + 1.0) / (2.0 * (DryAir.HEAT_RATIO - 1.0)));

  /**
   * Least depth pressed, in radii of the pocket [-]; ours, keeps the logarithm over zero: no plan
   * comes near it.
   */
  private static final double LEAST_DEPTH = 1.05;

  private AirEscape() {}

  /**
   * Mass rate through a hole [kg/s].
   *
   * @param opening discharge coefficient times area [m2]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature in the pocket [K]
   * @param outside pressure outside, absolute [Pa]
   * @param outsideTemperature [K]
   */
  public static double orificeFlow(
      double opening,
      double pressure,
      double temperature,
      double outside,
      double outsideTemperature) {
    checkOpening(opening, pressure, temperature, outside, outsideTemperature);
    double over = pressure - outside;
    if (Math.abs(over) < LINEAR_BELOW) {
      return over * linearSlope(opening, outside, temperature, outsideTemperature, over >= 0.0);
    }
    return over > 0.0
        ? opening * nozzle(pressure, outside, temperature)
        : -opening * nozzle(outside, pressure, outsideTemperature);
  }

  /**
   * Slope of {@link #orificeFlow} against the pocket's pressure [kg/(s Pa)], never negative.
   *
   * @param opening discharge coefficient times area [m2]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature in the pocket [K]
   * @param outside pressure outside, absolute [Pa]
   * @param outsideTemperature [K]
   */
  public static double orificeSlope(
      double opening,
      double pressure,
      double temperature,
      double outside,
      double outsideTemperature) {
    checkOpening(opening, pressure, temperature, outside, outsideTemperature);
    double over = pressure - outside;
    if (Math.abs(over) < LINEAR_BELOW) {
      return linearSlope(opening, outside, temperature, outsideTemperature, over >= 0.0);
    }
    boolean out = over > 0.0;
    double up = out ? pressure : outside;
    double ratio = (out ? outside : pressure) / up;
    double root = Math.sqrt(DryAir.GAS_CONSTANT * (out ? temperature : outsideTemperature));
    if (ratio <= CHOKING_RATIO) {
      return out ? opening * CHOKED / root : 0.0;
    }
    double log = StrictMath.log(ratio);
    double low = StrictMath.exp(LOW_POWER * log);
    double high = StrictMath.exp(HIGH_POWER * log);
    double g = Math.sqrt(low - high);
    double bend = (LOW_POWER * low - HIGH_POWER * high) / (2.0 * g);
    double scale = opening * Math.sqrt(SUBSONIC) / root;
    return out ? scale * (g - bend) : -scale * bend / ratio;
  }

  /**
   * Mass rate through a crack along the parting line [kg/s].
   *
   * @param crack opening of the crack [m]
   * @param length of crack beside the pocket [m]
   * @param depth way through the crack to the outside [m]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature of the air in the crack [K]
   * @param outside pressure outside, absolute [Pa]
   */
  public static double crackFlow(
      double crack,
      double length,
      double depth,
      double pressure,
      double temperature,
      double outside) {
    double laminar = crackFactor(crack, length, depth, temperature) * squares(pressure, outside);
    double mouth = mouthFlow(crack, length, pressure, temperature, outside);
    return Math.abs(laminar) <= Math.abs(mouth) ? laminar : mouth;
  }

  /**
   * Slope of {@link #crackFlow} against the pocket's pressure [kg/(s Pa)], never negative.
   *
   * @param crack opening of the crack [m]
   * @param length of crack beside the pocket [m]
   * @param depth way through the crack to the outside [m]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature of the air in the crack [K]
   * @param outside pressure outside, absolute [Pa]
   */
  public static double crackSlope(
      double crack,
      double length,
      double depth,
      double pressure,
      double temperature,
      double outside) {
    double factor = crackFactor(crack, length, depth, temperature);
    double laminar = factor * squares(pressure, outside);
    double mouth = mouthFlow(crack, length, pressure, temperature, outside);
    return Math.abs(laminar) <= Math.abs(mouth)
        ? 2.0 * factor * pressure
        : orificeSlope(
            SLIT_DISCHARGE * crack * length, pressure, temperature, outside, temperature);
  }

  /**
   * Mass rate into the mould [kg/s].
   *
   * @param permeability [m2]
   * @param shapeFactor from {@link #shapeFactor}, or area over thickness of a plain wall [m]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature of the air in the mould [K]
   * @param outside pressure behind the mould, absolute [Pa], may be 0
   */
  public static double mouldFlow(
      double permeability,
      double shapeFactor,
      double pressure,
      double temperature,
      double outside) {
    return mouldFactor(permeability, shapeFactor, temperature) * squares(pressure, outside);
  }

  /**
   * Slope of {@link #mouldFlow} against the pocket's pressure [kg/(s Pa)], never negative.
   *
   * @param permeability [m2]
   * @param shapeFactor [m]
   * @param pressure in the pocket, absolute [Pa]
   * @param temperature of the air in the mould [K]
   */
  public static double mouldSlope(
      double permeability, double shapeFactor, double pressure, double temperature) {
    Checks.within("pressure", pressure, 0.0, Double.MAX_VALUE, "Pa");
    return 2.0 * mouldFactor(permeability, shapeFactor, temperature) * pressure;
  }

  /**
   * How far into the mould the pocket's air presses [m], measured from the middle of the pocket.
   *
   * @param radius perimeter of the section over 2 pi [m]
   * @param distance from the middle of the pocket to the nearest free surface of the mould [m]
   * @param permeability [m2]
   * @param porosity [-], above 0
   * @param pressure in the pocket, absolute [Pa]
   * @param viscosity of the air in the mould [Pa s]
   * @param time since the pocket was closed [s]
   */
  public static double pressedDepth(
      double radius,
      double distance,
      double permeability,
      double porosity,
      double pressure,
      double viscosity,
      double time) {
    Checks.within("radius", radius, 1e-9, Double.MAX_VALUE, "m");
    Checks.within("distance", distance, 0.0, Double.MAX_VALUE, "m");
    Checks.within("permeability", permeability, 0.0, 1e-6, "m2");
    Checks.within("porosity", porosity, 1e-6, 1.0, "-");
    Checks.within("pressure", pressure, 0.0, Double.MAX_VALUE, "Pa");
    Checks.within("viscosity", viscosity, 1e-7, 1.0, "Pa s");
    Checks.within("time", time, 0.0, Double.MAX_VALUE, "s");
    double travelled = Math.sqrt(Math.PI * permeability * pressure * time / (viscosity * porosity));
    return Math.min(distance, 2.0 * radius + travelled);
  }

  /**
   * Shape factor of a pocket in the mould [m]: a buried cylinder plus one rounded end.
   *
   * @param length of the pocket [m]
   * @param radius perimeter of the section over 2 pi [m]
   * @param pressedDepth from {@link #pressedDepth} [m]; taken as at least 1.05 radii
   */
  public static double shapeFactor(double length, double radius, double pressedDepth) {
    Checks.within("length", length, 0.0, Double.MAX_VALUE, "m");
    Checks.within("radius", radius, 1e-9, Double.MAX_VALUE, "m");
    Checks.within("pressedDepth", pressedDepth, 0.0, Double.MAX_VALUE, "m");
    double ratio = Math.max(pressedDepth / radius, LEAST_DEPTH);
    return 2.0 * Math.PI * length / StrictMath.log(2.0 * ratio) + Math.PI * radius;
  }

  private static double nozzle(double up, double down, double temperature) {
    double root = Math.sqrt(DryAir.GAS_CONSTANT * temperature);
    double ratio = down / up;
    if (ratio <= CHOKING_RATIO) {
      return up * CHOKED / root;
    }
    double log = StrictMath.log(ratio);
    double g = StrictMath.exp(LOW_POWER * log) - StrictMath.exp(HIGH_POWER * log);
    return up * Math.sqrt(SUBSONIC * g) / root;
  }

  private static double linearSlope(
      double opening,
      double outside,
      double temperature,
      double outsideTemperature,
      boolean outward) {
    return outward
        ? opening * nozzle(outside + LINEAR_BELOW, outside, temperature) / LINEAR_BELOW
        : opening
            * nozzle(outside, Math.max(0.0, outside - LINEAR_BELOW), outsideTemperature)
            / LINEAR_BELOW;
  }

  private static void checkOpening(
      double opening,
      double pressure,
      double temperature,
      double outside,
      double outsideTemperature) {
    Checks.within("opening", opening, 0.0, Double.MAX_VALUE, "m2");
    Checks.within("pressure", pressure, 0.0, Double.MAX_VALUE, "Pa");
    Checks.within("temperature", temperature, 100.0, 5000.0, "K");
    Checks.within("outside", outside, 0.0, Double.MAX_VALUE, "Pa");
    Checks.within("outsideTemperature", outsideTemperature, 100.0, 5000.0, "K");
  }

  private static double squares(double pressure, double outside) {
    Checks.within("pressure", pressure, 0.0, Double.MAX_VALUE, "Pa");
    Checks.within("outside", outside, 0.0, Double.MAX_VALUE, "Pa");
    return (pressure - outside) * (pressure + outside);
  }

  private static double crackFactor(double crack, double length, double depth, double temperature) {
    Checks.within("crack", crack, 0.0, 0.01, "m");
    Checks.within("length", length, 0.0, Double.MAX_VALUE, "m");
    Checks.within("depth", depth, 1e-6, Double.MAX_VALUE, "m");
    return length
        * crack
        * crack
        * crack
        / (24.0 * DryAir.viscosity(temperature) * DryAir.GAS_CONSTANT * temperature * depth);
  }

  private static double mouthFlow(
      double crack, double length, double pressure, double temperature, double outside) {
    return orificeFlow(
        SLIT_DISCHARGE * crack * length, pressure, temperature, outside, temperature);
  }

  private static double mouldFactor(double permeability, double shapeFactor, double temperature) {
    Checks.within("permeability", permeability, 0.0, 1e-6, "m2");
    Checks.within("shapeFactor", shapeFactor, 0.0, Double.MAX_VALUE, "m");
    return permeability
        * shapeFactor
        / (2.0 * DryAir.viscosity(temperature) * DryAir.GAS_CONSTANT * temperature);
  }
}
