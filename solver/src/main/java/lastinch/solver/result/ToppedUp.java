package lastinch.solver.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a pour stands when the hand has stopped, some time after the verdict.
 *
 * @param time when it was over [s]
 * @param ended why
 * @param cupFullAt when the cup first stood at its rim [s]; empty if it never did
 * @param cupLevel metal over the sprue's mouth [m]
 * @param sprueStanding height of metal standing in the sprue over its foot [m]
 * @param levels of feeders and overflows, in the order of the gating
 * @param poured so far [kg]
 * @param left in the crucible [kg]
 * @param spilled over the cup's rim [kg]
 */
public record ToppedUp(
    double time,
    Ended ended,
    OptionalDouble cupFullAt,
    double cupLevel,
    double sprueStanding,
    List<Level> levels,
    double poured,
    double left,
    double spilled) {
  /** Longest that is poured on after the verdict [s]; our choice. */
  public static final double LONGEST = 20.0;

  /** Speed of a surface under which it counts as at rest [m/s]; our choice. */
  public static final double AT_REST = 2e-3;

  /** Seconds of the pour between two calls of an observer [s]; our choice. */
  public static final double TOLD_EVERY = 0.1;

  /** Why topping up was over. */
  public enum Ended {
    AT_REST,
    TOO_LONG,
    CANCELLED,
    BROKE_DOWN
  }

  /**
   * Metal in a feeder or an overflow.
   *
   * @param name as in the plan
   * @param height of metal over its lower end [m]
   * @param filled share of its room [-]
   */
  public record Level(String name, double height, double filled) {}

  public ToppedUp {
    levels = List.copyOf(levels);
  }
}
