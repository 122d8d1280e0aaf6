package lastinch.solver.result;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What was to spare.
 *
 * @param heat share of the spendable heat left at the worst place on arrival [-]; 0 when it stopped
 * @param distance to spare beyond the tip when it fills [m]; minus the missing length when it stops
 * @param limitedBy what would end a longer run
 */
public record Margin(double heat, OptionalDouble distance, LimitedBy limitedBy) {
  /**
   * A longer way than this is not followed [m]; a distance of this much means at least that;
   * chosen.
   */
  public static final double FAR = 2.0;

  public Margin {
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(limitedBy, "limitedBy");
  }

  public enum LimitedBy {
    HEAT,
    METAL,
    PUSH,
    AIR
  }
}
