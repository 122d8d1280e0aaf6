package lastinch.solver.uncertainty;

import java.util.Objects;
import lastinch.solver.material.Band;
import lastinch.solver.study.Measure;
import lastinch.solver.study.RunSummary;

/**
 * What one unknown does to a pour by itself.
 *
 * @param unknown the figure
 * @param band its band in the case
 * @param low what comes of the pour with the figure at its low end
 * @param high the same at its high end
 * @param measure by which it is judged
 * @param share of the spread of the measure that comes from it [-]; all shares make 1
 */
public record OneAtATimeEffect(
    UncertainInput unknown,
    Band band,
    RunSummary low,
    RunSummary high,
    Measure measure,
    double share) {
  public OneAtATimeEffect {
    Objects.requireNonNull(unknown, "unknown");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    Objects.requireNonNull(measure, "measure");
  }

  /**
   * Half the change of the measure from low to high; positive when more of the figure is better.
   */
  public double half() {
    return half(measure, low, high);
  }

  static double half(Measure measure, RunSummary low, RunSummary high) {
    return 0.5 * (measure.goodness(high.get(measure)) - measure.goodness(low.get(measure)));
  }
}
