package lastinch.solver.casting;

import java.util.Objects;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Checks;

/**
 * What is in the crucible.
 *
 * @param alloy the metal
 * @param melted mass in the crucible [kg]
 * @param reading temperature read in the crucible [K]
 * @param waiting from the reading to first metal in the cup [s]
 * @param coolingRate lost while waiting [K/s]
 * @param lipLoss lost over the lip and in the stream [K]
 */
public record Metal(
    Alloy alloy, double melted, Band reading, Band waiting, Band coolingRate, Band lipLoss) {
  public Metal {
    Objects.requireNonNull(alloy, "alloy");
    Checks.within("melted", melted, 1e-4, 1000.0, "kg");
    Checks.within("reading", reading.value(), 300.0, 2500.0, "K");
    Checks.within("waiting", waiting.value(), 0.0, 3600.0, "s");
    Checks.within("coolingRate", coolingRate.value(), 0.0, 100.0, "K/s");
    Checks.within("lipLoss", lipLoss.value(), 0.0, 300.0, "K");
  }

  /** Temperature of the metal as it enters the cup [K]. */
  public double entered() {
    return reading.value() - coolingRate.value() * waiting.value() - lipLoss.value();
  }

  public Metal withAlloy(Alloy other) {
    return new Metal(other, melted, reading, waiting, coolingRate, lipLoss);
  }

  public Metal withReading(Band other) {
    return new Metal(alloy, melted, other, waiting, coolingRate, lipLoss);
  }

  public Metal withWaiting(Band other) {
    return new Metal(alloy, melted, reading, other, coolingRate, lipLoss);
  }

  public Metal withCoolingRate(Band other) {
    return new Metal(alloy, melted, reading, waiting, other, lipLoss);
  }

  public Metal withLipLoss(Band other) {
    return new Metal(alloy, melted, reading, waiting, coolingRate, other);
  }
}
