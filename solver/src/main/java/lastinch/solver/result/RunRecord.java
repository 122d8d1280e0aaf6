package lastinch.solver.result;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Enough to repeat and judge a run.
 *
 * @param solver name and version
 * @param steps flow steps made
 * @param heatSteps heat steps made
 * @param limiterCounts how often each limit set the step or cut something, by key
 */
public record RunRecord(
    String solver, int steps, int heatSteps, Map<String, Integer> limiterCounts) {
  public RunRecord {
    Objects.requireNonNull(solver, "solver");
    limiterCounts = Collections.unmodifiableMap(new LinkedHashMap<>(limiterCounts));
  }
}
