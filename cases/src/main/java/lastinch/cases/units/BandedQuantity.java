package lastinch.cases.units;

import java.util.Objects;

/**
 * A value with its typed band: nine times in ten the truth lies inside.
 *
 * @param best the value
 * @param low SI value of the lower end, at most that of {@code best}
 * @param high SI value of the upper end
 * @param banded whether a band was typed; else both ends are the value
 */
public record BandedQuantity(Quantity best, double low, double high, boolean banded) {
  public BandedQuantity {
    Objects.requireNonNull(best, "best");
  }
}
