package lastinch.validation.lengths;

import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** How well lengths are met, over all rows that were added. */
final class LengthScore {
  private final SummaryStatistics logs = new SummaryStatistics();
  private int inside;

  /** Adds a row. */
  void add(MeasuredLength length, LengthPour.Found found) {
    logs.addValue(StrictMath.log(found.best() / length.measured()));
    inside += found.low() <= length.to() && found.high() >= length.from() ? 1 : 0;
  }

  /** Geometric mean of computed over measured [-]. */
  double mean() {
    return StrictMath.exp(logs.getMean());
  }

  /** Standard deviation of the logarithm, as a factor [-]. */
  double spread() {
    return StrictMath.exp(logs.getStandardDeviation());
  }

  /** Rows whose measured length lies inside the range computed. */
  int inside() {
    return inside;
  }

  /** Rows. */
  int count() {
    return (int) logs.getN();
  }
}
