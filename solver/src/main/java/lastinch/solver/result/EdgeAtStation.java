package lastinch.solver.result;

import java.util.Objects;

/**
 * The rim at one station.
 *
 * @param passage limb it belongs to
 * @param at distance from the limb's first station [m]
 * @param edge thickness of the rim [m]
 * @param state full, rounded or empty
 * @param cause what rounded it
 * @param temperature of the metal in the rim as it arrives [K]; that of the mould where none comes
 * @param push greatest pressure at the rim while it could still move [Pa]
 * @param needed pressure that so thin a rim asks for [Pa]
 */
public record EdgeAtStation(
    String passage,
    double at,
    double edge,
    EdgeStretch.State state,
    EdgeStretch.Cause cause,
    double temperature,
    double push,
    double needed) {
  public EdgeAtStation {
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(cause, "cause");
  }
}
