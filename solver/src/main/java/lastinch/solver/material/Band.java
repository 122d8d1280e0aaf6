package lastinch.solver.material;

import java.util.Objects;

/**
 * A figure with its credible range: nine times in ten the truth lies inside.
 *
 * @param value best figure, in the SI unit of its owner
 * @param low lower end, at most {@code value}
 * @param high upper end, at least {@code value}
 * @param source where it comes from
 */
public record Band(double value, double low, double high, Citation source) {
  public Band {
    Objects.requireNonNull(source, "source");
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "value = " + value + ", must lie in its band " + low + " to " + high);
    }
  }

  /** A figure typed by a person as exact. */
  public static Band typed(double value) {
    return new Band(value, value, value, Citation.TYPED);
  }

  /** A figure typed by a person with a half-width, both in the same unit. */
  public static Band typed(double value, double halfWidth) {
    return new Band(value, value - halfWidth, value + halfWidth, Citation.TYPED);
  }

  /** The same band with another best figure, its ends moved out if need be. */
  public Band at(double newValue) {
    return new Band(newValue, Math.min(low, newValue), Math.max(high, newValue), source);
  }

  /** Whether the ends differ from the best figure. */
  public boolean isOpen() {
    return low < high;
  }

  /** All three figures multiplied. */
  public Band times(double factor) {
    return round(value * factor, low * factor, high * factor);
  }

  /** The band round a new value, as wide in the unit of its owner as before. */
  public Band shiftedTo(double newValue) {
    double by = newValue - value;
    return round(newValue, low + by, high + by);
  }

  /** The band round a new value, as wide in percent as before. */
  public Band scaledTo(double newValue) {
    if (!(value > 0.0)) {
      return shiftedTo(newValue);
    }
    double factor = newValue / value;
    return round(newValue, low * factor, high * factor);
  }

  /** Ends that rounding has moved past the value are moved back onto it. */
  private Band round(double newValue, double newLow, double newHigh) {
    return new Band(newValue, Math.min(newValue, newLow), Math.max(newValue, newHigh), source);
  }
}
