package lastinch.solver.physics;

import java.util.function.DoubleUnaryOperator;

/** Simpson's rule, for checks that integrate a closure. */
final class Quadrature {
  private static final int INTERVALS = 2000;

  private Quadrature() {}

  /** Integral of {@code f} from {@code from} to {@code to}. */
  static double integral(DoubleUnaryOperator f, double from, double to) {
    double h = (to - from) / INTERVALS;
    double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
    for (int i = 1; i < INTERVALS; i++) {
      sum += (i % 2 == 0 ? 2.0 : 4.0) * f.applyAsDouble(from + i * h);
    }
    return sum * h / 3.0;
  }
}
