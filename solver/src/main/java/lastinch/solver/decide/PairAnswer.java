package lastinch.solver.decide;

import java.util.List;
import java.util.Objects;

/**
 * Two levers moved together. Both runs were made.
 *
 * @param first one lever
 * @param firstValue where it has to stand
 * @param second the other
 * @param secondValue where it has to stand
 * @param glance what comes of it
 * @param shortFirst the first lever just short of it
 * @param shortSecond the second lever just short of it
 * @param justShort what comes of that
 * @param lookOuts what comes with the answer
 */
public record PairAnswer(
    Lever first,
    double firstValue,
    Lever second,
    double secondValue,
    Glance glance,
    double shortFirst,
    double shortSecond,
    Glance justShort,
    List<LookOut> lookOuts) {
  public PairAnswer {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
    Objects.requireNonNull(glance, "glance");
    Objects.requireNonNull(justShort, "justShort");
    lookOuts = List.copyOf(lookOuts);
  }
}
