package lastinch.solver.uncertainty;

import java.util.Objects;
import lastinch.solver.material.Band;
import lastinch.solver.study.RunSummary;

/**
 * What one unknown does to a pour by itself.
 *
 * @param unknown the figure
 * @param band its band in the case
 * @param low what comes of the pour with the figure at its low end
 * @param high the same at its high end
 * @param share of the spread of the signed margin that comes from it [-]; all shares make 1
 */
public record OneAtATimeEffect(
    UncertainInput unknown, Band band, RunSummary low, RunSummary high, double share) {
  public OneAtATimeEffect {
    Objects.requireNonNull(unknown, "unknown");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
  }

  /** Half the change of signed margin from low to high [-]; positive when more is better. */
  public double half() {
    return 0.5 * (high.signed() - low.signed());
  }
}
