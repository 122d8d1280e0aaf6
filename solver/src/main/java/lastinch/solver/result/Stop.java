package lastinch.solver.result;

import java.util.Objects;
import java.util.Optional;

/**
 * Where and why a front stopped.
 *
 * @param passage channel name
 * @param at distance along it [m]
 * @param way which way its metal came
 * @param missing length of channel left empty beyond it [m]; of a hole between two fronts it is
 *     told with the first of them, 0 with the other
 * @param time [s]
 * @param reason main reason
 * @param closedAt where the way closed, when it froze upstream
 * @param temperature of the leading metal [K]
 * @param solidFraction of the leading metal [-]
 * @param balance pushes at the front when it stopped [Pa], all terms
 */
public record Stop(
    String passage,
    double at,
    Way way,
    double missing,
    double time,
    StopReason reason,
    Optional<Spot> closedAt,
    double temperature,
    double solidFraction,
    PushBalance balance) {
  /** Which way a front was going. */
  public enum Way {
    /** Away from the channel's start, towards the tip. */
    UP,
    /** Towards the channel's start, from the tip. */
    DOWN,
    /** Across: it stopped beside metal that goes on along the channel. */
    ASIDE
  }

  public Stop {
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(passage, "passage");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(closedAt, "closedAt");
    Objects.requireNonNull(balance, "balance");
  }
}
