package lastinch.solver.levers;

import java.util.List;
import java.util.Objects;
import lastinch.solver.casting.PourCase;

/**
 * Something about a job that can be moved. A value outside {@link #physical} cannot be set; outside
 * {@link #practical} it can, and whoever shows it says so. Nothing is assumed about which way
 * helps.
 *
 * @param key what it is, the name of its words
 * @param part which one, when a job has several; empty else
 * @param unit of its values
 * @param now value in the job it was made for
 * @param nowLow lower end of the range in which it lies nine times in ten; {@code now} when typed
 *     as exact
 * @param nowHigh upper end
 * @param choices names of the choices when the unit is {@link LeverUnit#CHOICE}
 * @param physical what can be described at all
 * @param practical what a small shop does
 * @param zero a value on the marks of the instrument it is set by
 * @param step distance of those marks
 * @param effort of changing it
 * @param owned values for which the shop has the tool, rising; empty when it is not made with one
 * @param setter puts a value into a job
 */
public record Lever(
    String key,
    String part,
    LeverUnit unit,
    double now,
    double nowLow,
    double nowHigh,
    List<String> choices,
    Range physical,
    Range practical,
    double zero,
    double step,
    Effort effort,
    List<Double> owned,
    Setter setter) {
  public Lever {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(unit, "unit");
    choices = List.copyOf(choices);
    Objects.requireNonNull(physical, "physical");
    Objects.requireNonNull(practical, "practical");
    Objects.requireNonNull(effort, "effort");
    owned = List.copyOf(owned);
    Objects.requireNonNull(setter, "setter");
    if (!(step > 0.0)) {
      throw new IllegalArgumentException(key + ": step = " + step);
    }
  }

  /** Puts a value into a job; other things stay as they are. */
  @FunctionalInterface
  public interface Setter {
    /** The job with the value. */
    PourCase set(PourCase job, double value);
  }

  /**
   * The job with this lever at a value.
   *
   * @throws IllegalArgumentException when the value cannot be described
   */
  public PourCase set(PourCase job, double value) {
    if (!physical.holds(value)) {
      throw new IllegalArgumentException(key + " = " + value + ", allowed " + physical);
    }
    return setter.set(job, value);
  }

  /** Whether its values are choices or counts, with nothing between them. */
  public boolean stepwise() {
    return unit == LeverUnit.CHOICE || unit == LeverUnit.COUNT;
  }

  /** The value on a mark. */
  public double mark(long number) {
    return zero + number * step;
  }

  /** The mark next to a value. */
  public long nearestMark(double value) {
    return Math.round((value - zero) / step);
  }
}
