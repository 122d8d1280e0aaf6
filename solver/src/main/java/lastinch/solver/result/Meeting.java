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
 * @param gateA gate that the one came through, empty when it came through none
 * @param gateB gate that the other came through, empty when it came through none
 */
public record Meeting(
    String passage,
    double at,
    double time,
    double temperatureA,
    double temperatureB,
    double solidFraction,
    Kind kind,
    String gateA,
    String gateB) {
  public Meeting {
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(gateA, "gateA");
    Objects.requireNonNull(gateB, "gateB");
  }

  /** Joins, shows a line, or does not join. */
  public enum Kind {
    JOINED,
    LAP,
    COLD_SHUT
  }
}
