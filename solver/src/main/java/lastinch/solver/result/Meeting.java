package lastinch.solver.result;

import java.util.Objects;

/**
 * Where two fronts met.
 *
 * @param passage channel name
 * @param at distance along it [m]
 * @param time [s]
 * @param temperatureA of one leading metal [K]
 * @param temperatureB of the other [K]
 * @param solidFraction mean of both [-]
 * @param kind what became of it
 */
public record Meeting(
    String passage,
    double at,
    double time,
    double temperatureA,
    double temperatureB,
    double solidFraction,
    Kind kind) {
  public Meeting {
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(kind, "kind");
  }

  /** Joins, shows a line, or does not join. */
  public enum Kind {
    JOINED,
    LAP,
    COLD_SHUT
  }
}
