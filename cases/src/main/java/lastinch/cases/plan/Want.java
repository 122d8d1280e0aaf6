package lastinch.cases.plan;

import java.util.OptionalDouble;

/**
 * What the person asks of the pour.
 *
 * @param heatToSpare share of the heat that shall be left [-]
 */
public record Want(OptionalDouble heatToSpare) {
  /** Heat to spare that is wanted where the plan does not say [-]; our own choice. */
  private static final double USUAL_SPARE = 0.20;

  /** Nothing asked. */
  public static final Want NOTHING = new Want(OptionalDouble.empty());

  /** Share of the heat that shall be left, usual where nothing is asked [-]. */
  public double spare() {
    return heatToSpare.orElse(USUAL_SPARE);
  }
}
