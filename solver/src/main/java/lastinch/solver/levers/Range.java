package lastinch.solver.levers;

import java.util.Objects;

/** From one end to the other, with the reason of each. */
public record Range(Bound low, Bound high) {
  public Range {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (!(low.value() <= high.value())) {
      throw new IllegalArgumentException("range " + low.value() + " to " + high.value());
    }
  }

  static Range physics(double low, double high) {
    return new Range(Bound.ours(low, Bound.Reason.PHYSICS), Bound.ours(high, Bound.Reason.PHYSICS));
  }

  /** Whether a value lies inside, ends included. */
  public boolean holds(double value) {
    return value >= low.value() && value <= high.value();
  }

  /** What both ranges hold; the ends of {@code this} where it is the narrower. */
  Range within(Range other) {
    Bound from = low.value() >= other.low.value() ? low : other.low;
    Bound to = high.value() <= other.high.value() ? high : other.high;
    return from.value() <= to.value() ? new Range(from, to) : other;
  }
}
