package lastinch.solver.result;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one gate did.
 *
 * @param name of the gate
 * @param at where it enters the piece, distance from the first station [m]; negative in the boss
 * @param first time metal first passed it [s], absent when it never did
 * @param froze time it closed by freezing [s], absent when it stayed open
 * @param peakSpeed [m/s]
 * @param share of the metal in the piece that came through it [-]
 */
public record GateRecord(
    String name,
    double at,
    OptionalDouble first,
    OptionalDouble froze,
    double peakSpeed,
    double share) {
  public GateRecord {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(froze, "froze");
  }
}
