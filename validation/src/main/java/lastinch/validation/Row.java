package lastinch.validation;

import java.util.Objects;

/** One line of a study. */
public sealed interface Row permits Row.Figure, Row.Trend, Row.Told {

  /** What is compared. */
  String what();

  /** Whether it agrees, or the trend holds. */
  boolean agrees();

  /**
   * A figure that must be met.
   *
   * @param what is compared
   * @param unit of both figures, empty for a share
   * @param expected by the source
   * @param got from the product
   * @param tolerance largest difference that still agrees, same unit
   */
  record Figure(String what, String unit, double expected, double got, double tolerance)
      implements Row {
    public Figure {
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(unit, "unit");
      if (!(tolerance >= 0.0)) {
        throw new IllegalArgumentException("tolerance = " + tolerance + ", must not be negative");
      }
    }

    /** Signed difference, same unit. */
    public double error() {
      return got - expected;
    }

    @Override
    public boolean agrees() {
      return Math.abs(error()) <= tolerance;
    }
  }

  /**
   * A direction that must hold.
   *
   * @param what is looked at
   * @param expected in words
   * @param got in words
   * @param agrees whether it holds
   */
  record Trend(String what, String expected, String got, boolean agrees) implements Row {
    public Trend {
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(expected, "expected");
      Objects.requireNonNull(got, "got");
    }
  }

  /**
   * Something the product gives that nothing is held against.
   *
   * @param what is looked at
   * @param got in words
   */
  record Told(String what, String got) implements Row {
    public Told {
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(got, "got");
    }

    @Override
    public boolean agrees() {
      return true;
    }
  }
}
