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
  /** Largest index that leaves no mark [-]; our own threshold, an estimate, as are the others. */
  public static final double CLEAN = 0.3;

  /** Index from which laps are plain, not faint [-]; our own threshold, an estimate. */
  public static final double PLAIN = 0.6;

  /** Index above which the front pulses or halts [-]; our own threshold, an estimate. */
  public static final double HALTS = 1.0;

  public LapStretch {
    Objects.requireNonNull(passage, "passage");
  }
}
