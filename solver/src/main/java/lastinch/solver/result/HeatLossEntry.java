package lastinch.solver.result;

import java.util.Objects;

/**
 * What one place took from the leading metal on its way.
 *
 * @param passage channel name
 * @param from [m] along it
 * @param to [m]
 * @param seconds spent there [s]
 * @param lost heat lost to the wall [J/kg]
 * @param gained heat gained from metal behind [J/kg]
 */
public record HeatLossEntry(
    String passage, double from, double to, double seconds, double lost, double gained) {
  public HeatLossEntry {
    Objects.requireNonNull(passage, "passage");
  }
}
