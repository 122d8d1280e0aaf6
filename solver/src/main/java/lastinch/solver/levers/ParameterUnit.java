package lastinch.solver.levers;

/** What a figure of a job is measured in; decides how a person reads and types it. */
public enum ParameterUnit {
  /** A temperature [K]. */
  HEAT,
  /** A difference of temperatures [K]. */
  HEAT_DIFFERENCE,
  /** [K/s]. */
  COOLING_RATE,
  /** Seconds [s]. */
  TIME,
  /** Place or size [m]. */
  LENGTH,
  /** Added to a size [m]; 0 leaves it as it is. */
  LENGTH_CHANGE,
  /** [kg]. */
  MASS,
  /** [kg/s]. */
  MASS_RATE,
  /** [m/s]. */
  SPEED,
  /** [m3]. */
  VOLUME,
  /** [rad]. */
  ANGLE,
  /** [W/(m2 K)]. */
  HEAT_PULL,
  /** [W/(m K)]. */
  CONDUCTIVITY,
  /** [kg/m3]. */
  DENSITY,
  /** [m2]. */
  PERMEABILITY,
  /** [J/kg]. */
  LATENT_HEAT,
  /** [J/(kg K)]. */
  SPECIFIC_HEAT,
  /** [Pa s]. */
  VISCOSITY,
  /** [N/m]. */
  SURFACE_TENSION,
  /** 0 to 1 [-]. */
  SHARE,
  /** [-]. */
  FACTOR,
  /** How many. */
  COUNT,
  /** Number of a choice, from 0. */
  CHOICE
}
