package lastinch.solver.result;

import java.util.Objects;

/**
 * A stretch with lap lines.
 *
 * @param passage channel name
 * @param from [m]
 * @param to [m]
 * @param worstIndex 0.3 to 0.6 faint, to 1 plain, above that the front pulses [-]
 */
public record LapStretch(String passage, double from, double to, double worstIndex) {
  public LapStretch {
    Objects.requireNonNull(passage, "passage");
  }
}
