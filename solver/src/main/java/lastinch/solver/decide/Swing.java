package lastinch.solver.decide;

import java.util.Objects;
import lastinch.solver.material.Band;

/**
 * What one unknown does to a pour by itself.
 *
 * @param unknown the figure
 * @param band its band in the case
 * @param marginLow signed margin with the figure at its low end [-]
 * @param marginHigh the same at its high end [-]
 * @param fillsLow whether the pour fills at the low end
 * @param fillsHigh the same at the high end
 * @param share of the spread of the signed margin that comes from it [-]; all shares make 1
 */
public record Swing(
    Unknown unknown,
    Band band,
    double marginLow,
    double marginHigh,
    boolean fillsLow,
    boolean fillsHigh,
    double share) {
  public Swing {
    Objects.requireNonNull(unknown, "unknown");
    Objects.requireNonNull(band, "band");
  }

  /** Half the change of signed margin from low to high [-]; positive when more is better. */
  public double half() {
    return 0.5 * (marginHigh - marginLow);
  }
}
