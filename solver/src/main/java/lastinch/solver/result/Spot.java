package lastinch.solver.result;

import java.util.Objects;

/**
 * A place in a channel.
 *
 * @param passage channel name
 * @param at distance along it [m]
 */
public record Spot(String passage, double at) {
  public Spot {
    Objects.requireNonNull(passage, "passage");
  }
}
