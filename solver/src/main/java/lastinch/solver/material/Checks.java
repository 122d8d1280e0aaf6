package lastinch.solver.material;

import java.util.Locale;

/** Range checks for values that must be right before physics sees them. NaN always fails. */
public final class Checks {
  private Checks() {}

  /**
   * Returns {@code value} if it lies in {@code [low, high]}.
   *
   * @throws IllegalArgumentException naming the value, the range and the unit, otherwise
   */
  public static double within(String name, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw outside(name, value, low, high, unit);
    }
    return value;
  }

  /** On its own, so that the check itself is small enough to be compiled into its callers. */
  private static IllegalArgumentException outside(
      String name, double value, double low, double high, String unit) {
    return new IllegalArgumentException(
        String.format(
            Locale.ROOT, "%s = %s %s, allowed %s to %s %s", name, value, unit, low, high, unit));
  }
}
