package lastinch.solver.search;

import java.util.List;
import java.util.Objects;
import lastinch.solver.levers.Lever;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunSummary;

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
    RunSummary glance,
    double shortFirst,
    double shortSecond,
    RunSummary justShort,
    List<LookOut> lookOuts) {
  public PairAnswer {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
    Objects.requireNonNull(glance, "glance");
    Objects.requireNonNull(justShort, "justShort");
    lookOuts = List.copyOf(lookOuts);
  }
}
