package lastinch.solver.material;

import java.util.Arrays;

/** A property against temperature, straight between its points and level beyond them. */
public final class Curve {
  private final double[] at;
  private final double[] value;

  private Curve(double[] at, double[] value) {
    if (at.length != value.length || at.length == 0) {
      throw new IllegalArgumentException(
          "a curve needs as many temperatures as values, got "
              + at.length
              + " and "
              + value.length);
    }
    for (int i = 0; i < at.length; i++) {
      if (!Double.isFinite(at[i]) || !Double.isFinite(value[i]) || (i > 0 && at[i] <= at[i - 1])) {
        throw new IllegalArgumentException("curve temperatures must be finite and rise at " + i);
      }
    }
    this.at = at.clone();
    this.value = value.clone();
  }

  /** A property that does not change with temperature. */
  public static Curve constant(double value) {
    return new Curve(new double[] {300.0}, new double[] {value});
  }

  /**
   * A property by points.
   *
   * @param temperature rising temperatures [K]
   * @param value the property there, in its owner's SI unit
   */
  public static Curve of(double[] temperature, double[] value) {
    return new Curve(temperature, value);
  }

  /** Whether the property is the same at all temperatures. */
  public boolean isConstant() {
    for (double v : value) {
      if (v != value[0]) {
        return false;
      }
    }
    return true;
  }

  /** The property at a temperature [K]. */
  public double at(double temperature) {
    int n = at.length;
    if (temperature <= at[0]) {
      return value[0];
    }
    if (temperature >= at[n - 1]) {
      return value[n - 1];
    }
    int i = Arrays.binarySearch(at, temperature);
    if (i >= 0) {
      return value[i];
    }
    int right = -i - 1;
    double share = (temperature - at[right - 1]) / (at[right] - at[right - 1]);
    return value[right - 1] + share * (value[right] - value[right - 1]);
  }

  /** The same shape with every value multiplied by {@code factor}. */
  public Curve times(double factor) {
    double[] scaled = value.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new Curve(at, scaled);
  }

  /** Copy of the temperatures [K]. */
  public double[] temperatures() {
    return at.clone();
  }

  /** Copy of the values. */
  public double[] values() {
    return value.clone();
  }
}
