package lastinch.solver.wall;

import org.apache.commons.math3.special.Erf;

/**
 * Exact conduction in half-spaces. Source: H. S. Carslaw and J. C. Jaeger, Conduction of Heat in
 * Solids, 2nd ed. 1959, ch. 2 and sec. 13.5.
 */
final class ConductionFormulas {
  private ConductionFormulas() {}

  /** exp(x^2) erfc(x) for x not negative. */
  static double erfcx(double x) {
    if (x < 20.0) {
      return Math.exp(x * x) * Erf.erfc(x);
    }
    double y = 1.0 / (2.0 * x * x);
    return (1.0 - y + 3.0 * y * y) / (x * Math.sqrt(Math.PI));
  }

  /** Share of the step that has arrived at a depth under a face of fixed temperature. */
  static double fixedFace(double depth, double diffusivity, double t) {
    return Erf.erfc(depth / (2.0 * Math.sqrt(diffusivity * t)));
  }

  /** Share of the step that has arrived at a depth behind a film. */
  static double film(double depth, double diffusivity, double k, double h, double t) {
    double root = Math.sqrt(diffusivity * t);
    double x = depth / (2.0 * root);
    return Erf.erfc(x) - Math.exp(-x * x) * erfcx(x + h * root / k);
  }

  /** Heat taken behind a film per kelvin of step [J/(m2 K)]. */
  static double filmHeat(double effusivity, double h, double t) {
    double y = h / effusivity * Math.sqrt(t);
    return effusivity * effusivity / h * (erfcx(y) - 1.0 + 2.0 * y / Math.sqrt(Math.PI));
  }
}
