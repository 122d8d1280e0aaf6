package lastinch.solver.levers;

/** What a lever's value is measured in; decides how a person reads and types it. */
public enum LeverUnit {
  /** Temperature [K]. */
  HEAT,
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
  /** [m3]. */
  VOLUME,
  /** [rad]. */
  ANGLE,
  /** [W/(m2 K)]. */
  HEAT_PULL,
  /** [-]. */
  SHARE,
  /** How many. */
  COUNT,
  /** Number of a choice, from 0. */
  CHOICE
}
