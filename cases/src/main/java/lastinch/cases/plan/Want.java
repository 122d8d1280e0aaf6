package lastinch.cases.plan;

import java.util.OptionalDouble;

/**
 * What the person asks of the pour.
 *
 * @param heatToSpare share of the heat that shall be left [-]
 */
public record Want(OptionalDouble heatToSpare) {
  /** Nothing asked. */
  public static final Want NOTHING = new Want(OptionalDouble.empty());
}
