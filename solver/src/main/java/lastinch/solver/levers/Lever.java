package lastinch.solver.levers;

import java.util.List;
import java.util.Objects;
import lastinch.solver.casting.PourCase;
import lastinch.solver.material.Band;

/**
 * Something about a job that can be moved. A value outside {@link #physical} cannot be set; outside
 * {@link #practical} it can, and whoever shows it says so. Nothing is assumed about which way
 * helps.
 *
 * @param key what it is, the name of its words
 * @param part which one, when a job has several; empty else
 * @param parameter the figure that it moves
 * @param band value in the job it was made for, and where it lies nine times in ten
 * @param choices names of the choices when the unit is {@link ParameterUnit#CHOICE}
 * @param physical what can be described at all
 * @param practical what a small shop does
 * @param zero a value on the marks of the instrument it is set by
 * @param step distance of those marks
 * @param effort of changing it
 * @param owned values for which the shop has the tool, rising; empty when it is not made with one
 */
public record Lever(
    String key,
    String part,
    JobParameter parameter,
    Band band,
    List<String> choices,
    Range physical,
    Range practical,
    double zero,
    double step,
    Effort effort,
    List<Double> owned) {
  public Lever {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(parameter, "parameter");
    Objects.requireNonNull(band, "band");
    choices = List.copyOf(choices);
    Objects.requireNonNull(physical, "physical");
    Objects.requireNonNull(practical, "practical");
    Objects.requireNonNull(effort, "effort");
    owned = List.copyOf(owned);
    if (!(step > 0.0)) {
      throw new IllegalArgumentException(key + ": step = " + step);
    }
  }

  /** What its values are measured in. */
  public ParameterUnit unit() {
    return parameter.unit();
  }

  /** Value in the job it was made for. */
  public double now() {
    return band.value();
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
    return parameter.move(job, value);
  }

  /** Whether its values are choices or counts, with nothing between them. */
  public boolean stepwise() {
    return unit() == ParameterUnit.CHOICE || unit() == ParameterUnit.COUNT;
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
